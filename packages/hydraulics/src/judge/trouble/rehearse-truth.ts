import type { Line } from "../../model/line.js";
import { mishapsOf } from "../../model/mishaps-of.js";
import type { Random } from "../../numerics/random.js";
import { findLowestWays } from "../lowest-ways.js";
import { pointsBeyond, supposeAirAtHumps } from "./air-causes.js";
import { type Bench, benchOf } from "./bench.js";
import { supposeLessDrunk, supposeMoreDrunk } from "./bird-causes.js";
import type { Cause } from "./cause.js";
import { supposeWeakKinds, supposeWornSeals } from "./kind-causes.js";
import { runAt, sourceAt, supposeMishap } from "./mishap-causes.js";
import { withNarrow, withShutAt } from "./pipe-causes.js";
import type { Trial } from "./trial.js";
import { withEmptySource } from "./water-causes.js";

/** Something that is really wrong, for a rehearsal. */
export interface Truth {
  readonly cause: Cause;
  readonly trial: Trial;
  /** The plan's bench, with the line as it was really built. */
  readonly bench: Bench;
}

/** How far a line as built is off from its plan, standard deviations: heights and levels [m], flows as logarithms. */
const BUILT_OFF = { height: 0.01, level: 0.015, kindFlow: 0.12, drinkerFlow: 0.08 };

/** The line as someone may really have built it from the plan: heights, flows and levels a little off. */
export function asBuilt(bench: Bench, random: Random): Bench {
  const { line, asked } = bench;
  const { drinkers } = line;
  const kindOff = drinkers.groups.map(() => Math.exp(BUILT_OFF.kindFlow * random.normal()));
  const built: Line = {
    ...line,
    drinkers: {
      ...drinkers,
      height: drinkers.height.map((h) => h + BUILT_OFF.height * random.normal()),
      coefficient: drinkers.coefficient.map(
        (k, d) => k * kindOff[drinkers.group[d]] * Math.exp(BUILT_OFF.drinkerFlow * random.normal()),
      ),
    },
  };
  const levels = bench.levels.map((level, i) => {
    const { outlet, levels: known } = line.sources[i];
    return Math.min(known.full, Math.max(outlet + 1e-3, level + BUILT_OFF.level * random.normal()));
  });
  return benchOf({ ...asked, judged: { ...asked.judged, line: built } }, levels);
}

/** Makes one cause happen in a line as built. */
export type Maker = (built: Bench, random: Random) => Truth;

/** Causes that can be made to happen; stoppages, slime, sags and low water at a severity drawn for the occasion. */
export const mayHappen = (bench: Bench): readonly Maker[] => [
  ...mishapMakers(bench),
  ...pipeMakers(bench),
  ...supposedMakers(bench),
  ...kindMakers(bench),
  ...waterMakers(bench),
];

function mishapMakers(bench: Bench): Maker[] {
  const { line, asked } = bench;
  const mishaps = mishapsOf(asked.plan, line, asked.flock);
  return mishaps
    .filter((mishap) => supposeMishap(bench, mishap) !== undefined)
    .map((mishap) => (built, random) => {
      const supposed = supposeMishap(built, mishap);
      if (supposed === undefined) throw new RangeError("mishapMakers: a mishap without a cause");
      const isSlime = "drinker" in mishap && supposed.trials.length > 1;
      const slime = isSlime ? slimed(built, mishap.drinker, random) : undefined;
      return { bench: built, cause: supposed.cause, trial: slime ?? drawTrial(supposed.trials, random) };
    });
}

/** A shorter run does not sag [m]. */
const LEAST_SAGGING = 2;

const pipeMakers = ({ line }: Bench): Maker[] =>
  line.runs.flatMap(({ length }, r): Maker[] => [
    (built, random) => stoppage(built, r, random),
    ...(length < LEAST_SAGGING ? [] : [(built: Bench, random: Random) => sag(built, r, random)]),
  ]);

/** Birds that drink more or less, and air at humps: nothing in the line itself is changed. */
function supposedMakers(bench: Bench): Maker[] {
  const { plan, flock } = bench.asked;
  const all = [
    supposeMoreDrunk(bench, mishapsOf(plan, bench.line, flock)),
    supposeLessDrunk(bench),
    supposeAirAtHumps(bench),
  ];
  return all
    .filter((supposed) => supposed !== undefined)
    .map(({ cause, trials }) => (built, random) => ({
      bench: built,
      cause,
      trial: { ...drawTrial(trials, random), line: built.line },
    }));
}

const kindMakers = ({ line }: Bench): Maker[] =>
  [supposeWeakKinds, supposeWornSeals].flatMap((suppose) =>
    line.drinkers.groups.map(
      (_, g): Maker =>
        (built, random) => {
          const { cause, trials } = suppose(built)[g];
          return { bench: built, cause, trial: drawTrial(trials, random) };
        },
    ),
  );

const waterMakers = ({ line, asked }: Bench): Maker[] =>
  line.sources.flatMap((source, i): Maker[] =>
    asked.refills[i].kind !== "none" || source.feed !== undefined
      ? []
      : [(built, random) => lowWater(built, i, random)],
  );

function drawTrial(trials: readonly Trial[], random: Random): Trial {
  let left = random.uniform() * trials.reduce((sum, { weight }) => sum + weight, 0);
  for (const trial of trials) {
    left -= trial.weight;
    if (left <= 0) return trial;
  }
  return trials[trials.length - 1];
}

const spread = (random: Random, low: number, high: number) => low * (high / low) ** random.uniform();

/** A drinker that slime or grit stops, wholly in half of all cases (then undefined). */
function slimed({ line }: Bench, drinker: number, random: Random): Trial | undefined {
  if (random.uniform() < 0.5) return undefined;
  const openShare = spread(random, 0.02, 0.4);
  const coefficient = line.drinkers.coefficient.slice();
  coefficient[drinker] *= openShare;
  const changed = { ...line, drinkers: { ...line.drinkers, coefficient } };
  return { weight: 1, severity: { openShare }, line: changed, isAlike: true };
}

function stoppage(built: Bench, r: number, random: Random): Truth {
  const { line } = built;
  const { firstSegment, segmentCount } = line.runs[r];
  const atStart = random.uniform() < 0.4;
  const segment = firstSegment + (atStart ? 0 : random.integerBelow(segmentCount));
  const isShut = random.uniform() < 0.55;
  const openShare = isShut ? 0 : spread(random, 0.002, 0.03);
  const changed = isShut ? withShutAt(line, segment) : withNarrow(line, segment, openShare);
  const trial = { weight: 1, severity: { openShare }, line: changed, isAlike: !isShut };
  return { bench: built, cause: { code: "runBlocked", ...runAt(line, r) }, trial };
}

function sag(built: Bench, r: number, random: Random): Truth {
  const { line } = built;
  const { points } = line.runs[r];
  const airHead = spread(random, 0.04, 0.3);
  const point = points[1 + random.integerBelow(points.length - 1)];
  const beyond = pointsBeyond(line, findLowestWays(line), point);
  const trial = {
    weight: 1,
    severity: { airHead },
    line,
    isAlike: true,
    airHead: Float64Array.from(beyond, (is) => is * airHead),
  };
  return { bench: built, cause: { code: "sagHoldsAir", ...runAt(line, r) }, trial };
}

function lowWater(built: Bench, i: number, random: Random): Truth {
  const { line, levels } = built;
  const { outlet } = line.sources[i];
  const isEmpty = random.uniform() < 0.4;
  const level = isEmpty ? outlet : outlet + (1 - spread(random, 0.35, 0.98)) * (levels[i] - outlet);
  const trial = {
    weight: 1,
    severity: { below: levels[i] - level },
    line: isEmpty ? withEmptySource(line, i) : line,
    isAlike: !isEmpty,
    levels: levels.map((one, k) => (k === i ? level : one)),
  };
  return { bench: built, cause: { code: "waterLow", ...sourceAt(line, i) }, trial };
}
