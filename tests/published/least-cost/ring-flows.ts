import type { FedNetwork } from "./fed-network.js";

/** Flows of a network in terms of those in the pipes that close its rings. */
export interface RingFlows {
  /** By pipe: its flow while no closing pipe has any [m³/s], and what it takes of the flow of each. */
  readonly base: readonly number[];
  readonly share: readonly (readonly number[])[];
  readonly rings: number;
  /** Everything drawn: water that goes nowhere in circles fills no pipe with more [m³/s]. */
  readonly most: number;
}

/** By continuity alone. A pipe that leads to a point reached before closes a ring. */
export function ringFlowsOf({ pipes, draw }: FedNetwork): RingFlows {
  const reached = new Set([0]);
  const closing: number[] = [];
  const tree: number[] = [];
  for (const [k, { to }] of pipes.entries()) {
    (reached.has(to) ? closing : tree).push(k);
    reached.add(to);
  }
  const wanted = [...draw];
  const wantedOf = draw.map(() => closing.map(() => 0));
  const base = pipes.map(() => 0);
  const share: number[][] = pipes.map((_, k) => closing.map((one) => (one === k ? 1 : 0)));
  for (const [ring, k] of closing.entries()) {
    wantedOf[pipes[k]!.from]![ring]! += 1;
    wantedOf[pipes[k]!.to]![ring]! -= 1;
  }
  for (const k of tree.reverse()) {
    const { from, to } = pipes[k]!;
    base[k] = wanted[to]!;
    share[k] = [...wantedOf[to]!];
    wanted[from]! += wanted[to]!;
    wantedOf[from] = wantedOf[from]!.map((one, ring) => one + wantedOf[to]![ring]!);
  }
  return { base, share, rings: closing.length, most: draw.reduce((sum, one) => sum + one, 0) };
}

/** A box of flows in the pipes that close rings: middle and half width by ring [m³/s]. */
export interface FlowBox {
  readonly middle: readonly number[];
  readonly half: readonly number[];
}

/** All flows there can be. */
export const wholeBox = ({ rings, most }: RingFlows): FlowBox => ({
  middle: Array.from({ length: rings }, () => 0),
  half: Array.from({ length: rings }, () => most),
});

/** Half the width of a box where it is widest; of a tree, which has but one state of flow, nothing. */
export const widthOf = ({ half }: FlowBox): number => Math.max(0, ...half);

/** A box in two, across where it is widest. */
export function halve(box: FlowBox): FlowBox[] {
  const ring = box.half.indexOf(widthOf(box));
  const quarter = box.half[ring]! / 2;
  return [-quarter, quarter].map((by) => ({
    middle: box.middle.map((one, r) => (r === ring ? one + by : one)),
    half: box.half.map((one, r) => (r === ring ? quarter : one)),
  }));
}

/** Least and greatest flow of each pipe in a box [m³/s]. */
export function flowsIn(
  { base, share }: RingFlows,
  { middle, half }: FlowBox,
): (readonly [number, number])[] {
  return base.map((alone, k) => {
    const at = share[k]!.reduce((sum, part, ring) => sum + part * middle[ring]!, alone);
    const by = share[k]!.reduce((sum, part, ring) => sum + Math.abs(part) * half[ring]!, 0);
    return [at - by, at + by] as const;
  });
}
