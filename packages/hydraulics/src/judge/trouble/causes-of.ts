import type { Mishap } from "../../model/mishap.js";
import { mishapsOf } from "../../model/mishaps-of.js";
import { supposeAirAtHumps, supposeSags } from "./air-causes.js";
import type { Bench } from "./bench.js";
import { supposeLessDrunk, supposeMoreDrunk } from "./bird-causes.js";
import { type Candidate, type CauseCode, FAULTY_PLAN, PRIORS } from "./cause.js";
import { expectTrial } from "./expect-trial.js";
import type { Expectation } from "./expectation.js";
import { supposeWeakKinds, supposeWornSeals } from "./kind-causes.js";
import { type Supposition, sourceAt, supposeMishap } from "./mishap-causes.js";
import { supposeStoppage } from "./pipe-causes.js";
import type { Sign } from "./signs.js";
import type { Trial } from "./trial.js";
import { waterTrials } from "./water-causes.js";

/** Drinkers that are each tried for faults of their own; of a longer line those that were looked at, and some evenly along it. */
const MOST_DRINKERS = 48;

export interface CausesTried {
  readonly candidates: readonly Candidate[];
  /** States solved, and drinkers that were each tried for faults of their own. */
  readonly tried: number;
  readonly drinkersTried: number;
}

/**
 * Everything that may be wrong with a plan, each solved: its mishaps one by one, what sits in a pipe or a drinker, air
 * and sags, too little water, more birds, and the plan as it is. Last comes what is in none of these.
 *
 * @param progress  called with the share of the states that are solved, from 0 to 1
 */
export function causesOf(
  bench: Bench,
  usual: Expectation,
  signs: readonly Sign[],
  progress?: (share: number) => void,
): CausesTried {
  const drinkers = drinkersToTry(bench, signs);
  const mishaps = mishapsOf(bench.asked.plan, bench.line, bench.asked.flock);
  const suppositions = [
    asDesigned(bench),
    ...bench.line.runs.map((_, r) => supposeStoppage(bench, r, signs)),
    ...supposeWeakKinds(bench),
    ...supposeWornSeals(bench),
    ...waterLow(bench),
    ...supposeSags(bench),
    supposeAirAtHumps(bench),
    supposeMoreDrunk(bench, mishaps),
    supposeLessDrunk(bench),
    ...mishaps.filter((mishap) => isTried(mishap, drinkers)).map((mishap) => supposeMishap(bench, mishap)),
  ].filter((one) => one !== undefined);
  const places = placesByCode(suppositions);
  const total = suppositions.reduce((sum, { trials }) => sum + trials.length, 0);
  let tried = 0;
  const candidates = suppositions.map(({ cause, trials }): Candidate => {
    const states = trials.map((trial) => {
      tried += 1;
      progress?.(tried / total);
      const { weight, severity } = trial;
      return { weight, severity, trial, expectation: expectTrial(bench, trial, usual) };
    });
    return { cause, prior: priorOf(bench, cause.code, places.get(cause.code) ?? 1), states };
  });
  const other = { code: "somethingElse", at: "line", id: "", index: 0 } as const;
  return {
    candidates: [...candidates, { cause: other, prior: PRIORS.somethingElse, states: [] }],
    tried,
    drinkersTried: drinkers.size,
  };
}

/** A plan that starves, drips or leaves dry by its own check is the first to be suspected. */
function priorOf({ asked }: Bench, code: CauseCode, places: number): number {
  const isFaulty = asked.judged.drinkers.some(({ verdict }) => verdict !== "good");
  if (code === "asDesigned" && isFaulty) return FAULTY_PLAN;
  return PRIORS[code] / Math.sqrt(places);
}

/** How many places each kind of cause has, which share its prior. */
function placesByCode(suppositions: readonly Supposition[]): Map<string, number> {
  const places = new Map<string, number>();
  for (const { cause } of suppositions) places.set(cause.code, (places.get(cause.code) ?? 0) + 1);
  return places;
}

function drinkersToTry({ line }: Bench, signs: readonly Sign[]): Set<number> {
  const { count, id } = line.drinkers;
  const looked = new Set(signs.flatMap((sign) => (sign.at === "drinker" ? [sign.id] : [])));
  const chosen = new Set<number>();
  for (let d = 0; d < count && chosen.size < MOST_DRINKERS; d += 1) if (looked.has(id[d])) chosen.add(d);
  const evenly = Math.min(count, MOST_DRINKERS);
  for (let k = 0; k < evenly; k += 1) chosen.add(Math.floor(((k + 0.5) * count) / evenly));
  return chosen;
}

const isTried = (mishap: Mishap, drinkers: ReadonlySet<number>) =>
  !("drinker" in mishap) || drinkers.has(mishap.drinker);

/** The line as the plan has it, at other levels and with more drinkers at work: what the design itself does. */
function asDesigned(bench: Bench): Supposition {
  const { line, levels, asked, atWork } = bench;
  const { fullBusiest, lowestBusiest } = asked.judged.moments.named;
  const state = (weight: number, change: Partial<Trial>): Trial => ({
    weight,
    severity: {},
    line,
    isAlike: true,
    ...change,
  });
  const full = line.sources.map((source) => source.levels.full);
  const lowest = line.sources.map((source, i) => Math.min(levels[i], source.levels.lowest));
  return {
    cause: { code: "asDesigned", at: "line", id: "", index: 0 },
    trials: [
      state(0.5, { atWork }),
      state(0.2, { atWork: fullBusiest.atWork }),
      state(0.15, { atWork: lowestBusiest.atWork, levels: lowest }),
      state(0.15, { atWork, levels: full }),
    ],
  };
}

/** Less water than was thought; of those that are filled by a round or a hose, that is told as not filled. */
function waterLow(bench: Bench): Supposition[] {
  return bench.line.sources.flatMap((source, i) => {
    if (bench.asked.refills[i].kind !== "none" || source.feed !== undefined) return [];
    return [
      { cause: { code: "waterLow" as const, ...sourceAt(bench.line, i) }, trials: waterTrials(bench, i) },
    ];
  });
}
