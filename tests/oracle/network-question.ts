import type { FrictionLaw } from "../../packages/hydraulics/src/solve/solution.js";
import { makeLine } from "../arbitraries/make-line.js";
import type { DrawnNetwork } from "./drawn-networks.js";

/** What the other implementation answers of one line. */
export interface NetworkAnswer {
  /** null where no open pipe leads. */
  readonly head: (number | null)[];
  /** By pipe; not recorded, since heads and drinkers decide it. */
  readonly flow?: number[];
  readonly drinkerFlow: number[];
}

/**
 * A line as the other implementation reads it. Of a fitting in `fittings`, by segment, only the name is told: it finds
 * the coefficients in its own library.
 */
export function networkQuestion(
  { parts, sourceHead, atWork }: DrawnNetwork,
  friction: FrictionLaw,
  fittings: ReadonlyMap<number, string> = new Map(),
) {
  const line = makeLine(parts);
  const { segments, drinkers } = line;
  return {
    friction,
    viscosity: line.water.viscosity,
    heights: parts.heights,
    sources: parts.sources,
    sourceHead,
    pipes: parts.pipes.map(({ from, to }, s) => ({
      from,
      to,
      kind: segments.kind[s],
      shut: segments.shut[s] === 1,
      length: segments.length[s],
      bore: segments.bore[s],
      hazenWilliams: segments.hazenWilliams[s],
      roughness: segments.roughness[s],
      ...(fittings.has(s)
        ? { fitting: fittings.get(s), k1: 0, kInfinity: 0 }
        : { k1: segments.k1[s], kInfinity: segments.kInfinity[s] }),
      setting: segments.setting[s],
    })),
    drinkers: parts.drinkers.map(({ point }, d) => ({
      point,
      atWork: atWork[d],
      height: drinkers.height[d],
      coefficient: drinkers.coefficient[d],
      exponent: drinkers.exponent[d],
      openingHead: drinkers.openingHead[d],
    })),
  };
}
