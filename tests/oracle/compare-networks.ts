import { SEGMENT_KIND } from "../../packages/hydraulics/src/model/line.js";
import { prepareLine } from "../../packages/hydraulics/src/solve/prepare-line.js";
import type { LineSolution } from "../../packages/hydraulics/src/solve/solution.js";
import { solveLine } from "../../packages/hydraulics/src/solve/solve-line.js";
import { makeLine, makeMoment } from "../arbitraries/make-line.js";
import { drawMixed, MIXED_FEATURES, type MixedFeature, type MixedNetwork } from "./mixed-networks.js";
import { type NetworkAnswer, networkQuestion } from "./network-question.js";

/**
 * Within these the two answers count as one [m], [m3/s]: a ten-thousandth of a millimetre, and a fiftieth of a millilitre a
 * minute. By Hazen-Williams the last bit of a head drives that much through a short wide pipe that is idle.
 */
export const MIXED_BOUNDS = { head: 1e-7, flow: 3e-10 } as const;
/** What a shut valve may seem to pass [m3/s]. */
const NOTHING = 1e-15;

/** How far the two answers stand apart on one network, where they have one. */
export interface NetworkDifference {
  readonly network: MixedNetwork;
  /** Greatest, over points whose head is decided [m]. */
  readonly head: number;
  /** Greatest, over pipes and drinkers [m3/s]. */
  readonly flow: number;
  /** What keeps the two from being compared at all; undefined when they agree on it. */
  readonly trouble?: string;
}

/** A few numbers that stand for an answer in the record. */
export interface Digest {
  /** Heads of the points reached: how many, lowest, highest and mean [m]. */
  readonly head: readonly [number, number, number, number];
  /** Drinkers' flows: sum, and greatest [m3/s]. */
  readonly drinkers: readonly [number, number];
}

/** The networks of seeds 1 to `count`. */
export const mixedNetworks = (count: number): MixedNetwork[] =>
  Array.from({ length: count }, (_, k) => drawMixed(k + 1));

/** What the other implementation is asked, by seed. */
export const mixedQuestion = (networks: readonly MixedNetwork[]) =>
  Object.fromEntries(
    networks.map(({ seed, drawn, friction, fittings }) => [seed, networkQuestion(drawn, friction, fittings)]),
  );

export function solveMixed({ drawn, friction }: MixedNetwork): LineSolution {
  const line = makeLine(drawn.parts);
  return solveLine(prepareLine(line, friction), makeMoment(line, drawn.sourceHead, drawn.atWork));
}

/** Compares our answer with theirs, point by point and pipe by pipe. */
export function compareNetwork(
  network: MixedNetwork,
  theirs: NetworkAnswer,
  ours = solveMixed(network),
): NetworkDifference {
  const reached = theirs.head.map((head) => (head === null ? 0 : 1));
  const trouble =
    ours.outcome !== "solved"
      ? `ours ended as ${ours.outcome}`
      : ours.reached.some((one, p) => one !== reached[p])
        ? "other points are reached"
        : undefined;
  const decided = headDecided(network, ours);
  const heads = theirs.head.map((head, p) => (head === null || !decided[p] ? 0 : head - ours.head[p]!));
  const flows = [
    ...theirs.flow!.map((flow, s) => flow - ours.flow[s]!),
    ...theirs.drinkerFlow.map((flow, d) => flow - ours.drinkerFlow[d]!),
  ];
  const greatest = (list: readonly number[]) => list.reduce((most, one) => Math.max(most, Math.abs(one)), 0);
  return { network, head: greatest(heads), flow: greatest(flows), ...(trouble && { trouble }) };
}

/** Behind a one-way valve that passes nothing, and without another way in, the head may be anything. */
function headDecided({ drawn: { parts } }: MixedNetwork, { flow }: LineSolution): boolean[] {
  const decided = parts.heights.map((_, p) => parts.sources.includes(p));
  const open = parts.pipes.filter(
    ({ kind, shut }, s) => !shut && !(kind === SEGMENT_KIND.oneWay && Math.abs(flow[s]!) < NOTHING),
  );
  for (let grew = true; grew; ) {
    grew = false;
    for (const { from, to } of open) {
      if (decided[from] === decided[to]) continue;
      decided[from] = decided[to] = true;
      grew = true;
    }
  }
  return decided;
}

/** The record's stand-in for an answer, ours or theirs; our solution tells which heads are decided. */
export function digestOf(
  network: MixedNetwork,
  ours: LineSolution,
  { head, drinkerFlow }: { readonly head: ArrayLike<number | null>; readonly drinkerFlow: ArrayLike<number> },
): Digest {
  const decided = headDecided(network, ours);
  const heads = Array.from(head, (one, p) => (decided[p] ? one : null)).filter((one) => one !== null);
  const sum = (list: readonly number[]) => list.reduce((all, one) => all + one, 0);
  const flows = Array.from(drinkerFlow);
  return {
    head: [heads.length, Math.min(...heads), Math.max(...heads), sum(heads) / heads.length],
    drinkers: [sum(flows), Math.max(...flows)],
  };
}

/** What networks with a feature have in common. */
export interface FeatureRow {
  readonly feature: MixedFeature | "all";
  readonly networks: number;
  readonly points: number;
  readonly pipes: number;
  readonly drinkers: number;
}

/** How many networks, points, pipes and drinkers; in all, and by feature. Needs no answer of anybody. */
export function countFeatures(networks: readonly MixedNetwork[]): FeatureRow[] {
  const sum = (list: readonly MixedNetwork[], count: (parts: MixedNetwork["drawn"]["parts"]) => number) =>
    list.reduce((all, { drawn }) => all + count(drawn.parts), 0);
  return (["all", ...MIXED_FEATURES] as const).map((feature) => {
    const having = networks.filter(({ features }) => feature === "all" || features.has(feature));
    return {
      feature,
      networks: having.length,
      points: sum(having, ({ heights }) => heights.length),
      pipes: sum(having, ({ pipes }) => pipes.length),
      drinkers: sum(having, ({ drinkers }) => drinkers.length),
    };
  });
}

/** A row of counts with how far the answers stand apart on them. */
export interface ComparedRow extends FeatureRow {
  /** Greatest [m]. */
  readonly head: number;
  /** Greatest [m3/s]. */
  readonly flow: number;
  /** Of the networks' greatest differences, the middle one. */
  readonly middleHead: number;
  readonly middleFlow: number;
}

export function summarize(differences: readonly NetworkDifference[]): ComparedRow[] {
  return countFeatures(differences.map(({ network }) => network)).map((row) => {
    const having = differences.filter(
      ({ network }) => row.feature === "all" || network.features.has(row.feature),
    );
    const [heads, flows] = [having.map(({ head }) => head), having.map(({ flow }) => flow)];
    return {
      ...row,
      head: Math.max(0, ...heads),
      flow: Math.max(0, ...flows),
      middleHead: middle(heads),
      middleFlow: middle(flows),
    };
  });
}

const middle = (list: readonly number[]): number => [...list].sort((a, b) => a - b)[list.length >> 1] ?? 0;

/** How many the command compares, and how many of them the tests. */
export const THOUSAND = 1000;
export const SAMPLE = 100;

/** What `npm run oracle` found, as it is stored for the report. */
export interface ThousandNetworks {
  readonly rows: readonly ComparedRow[];
  /** How many networks stay under each difference of head [m]. */
  readonly spread: readonly { readonly under: number; readonly networks: number }[];
  /** Networks that could not be compared, or stand apart beyond the bounds. */
  readonly troubles: readonly string[];
  /** Versions of what was asked. */
  readonly asked: { readonly scipy: string; readonly fluids: string };
}

export function concludeNetworks(
  differences: readonly NetworkDifference[],
  asked: ThousandNetworks["asked"],
): ThousandNetworks {
  const beyond = ({ head, flow }: NetworkDifference) =>
    head > MIXED_BOUNDS.head || flow > MIXED_BOUNDS.flow ? `${head} m and ${flow} m3/s apart` : undefined;
  return {
    rows: summarize(differences),
    spread: [1e-12, 1e-10, 1e-8].map((under) => ({
      under,
      networks: differences.filter(({ head }) => head < under).length,
    })),
    troubles: differences.flatMap((one) => {
      const trouble = one.trouble ?? beyond(one);
      return trouble === undefined ? [] : [`network ${one.network.seed}: ${trouble}`];
    }),
    asked,
  };
}
