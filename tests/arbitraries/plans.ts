import fc from "fast-check";
import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import { allDrinkers } from "../../packages/hydraulics/src/tables/drinkers.js";
import { allFittings } from "../../packages/hydraulics/src/tables/fittings.js";
import { allPipes } from "../../packages/hydraulics/src/tables/pipes.js";
import { madeReady } from "./long-enough.js";
import { withRandomFlock } from "./plan-flock.js";
import { randomSource } from "./plan-sources.js";
import { withRandomWaterers } from "./plan-waterers.js";
import { type Chooser, chooserOf } from "./typed.js";

/** A plan as data, before anything has read it. */
export type PlanData = Record<string, unknown>;

/** How large a random plan is at most: runs of its tree, drinkers of a group. */
export interface PlanSize {
  readonly fewestRuns: number;
  readonly mostRuns: number;
  readonly mostDrinkers: number;
}

/** What a keeper of a small flock may have: some thirty drinkers, and at most some hundreds. */
export const USUAL_SIZE: PlanSize = { fewestRuns: 1, mostRuns: 12, mostDrinkers: 40 };

/**
 * A random valid plan by number: trees and rings, header tanks, devices, surveys with humps, own drinkers, vessels of
 * every shape, birds and weather, refills and roofs, quantities of both systems. Same number, same plan.
 */
export function randomPlan(seed: number): PlanData {
  return withAllElse(madeReady(lineWithoutBirds(seed, USUAL_SIZE)).data, seed);
}

/** The same of any size, before a run is made as long as its ends are apart: `madeReady` does. */
export function drawnPlan(seed: number, size: PlanSize): PlanData {
  return withAllElse(lineWithoutBirds(seed, size), seed);
}

/** The line with doubts and birds, drawn from numbers of their own, so that they change nothing in it. */
function withAllElse(line: PlanData, seed: number): PlanData {
  const flocked = withRandomFlock(
    withRandomDoubts(line, (seed * 17 + 3) % 0x7fffffff),
    (seed * 31 + 7) % 0x7fffffff,
  );
  return seed % 4 === 0 ? withRandomWaterers(flocked, seed) : flocked;
}

/** Some heights and levels measured better or worse than the others. */
function withRandomDoubts(plan: PlanData, seed: number): PlanData {
  const choose = chooserOf(randomFrom(seed));
  const doubted = (part: PlanData): PlanData =>
    choose.chance(0.15) ? { ...part, doubt: choose.length(choose.uniform(0, 0.05)) } : part;
  const runs = (plan["runs"] as PlanData[]).map((run) => {
    const survey = run["survey"] as PlanData[] | undefined;
    return doubted(survey === undefined ? run : { ...run, survey: survey.map(doubted) });
  });
  const sources = (plan["sources"] as PlanData[]).map((source) => {
    const level = source["level"] as PlanData | undefined;
    return doubted(level === undefined ? source : { ...source, level: doubted(level) });
  });
  return { ...plan, sources, runs };
}

/** Its line, and nobody who drinks. */
function lineWithoutBirds(seed: number, size: PlanSize): PlanData {
  const choose = chooserOf(randomFrom(seed));
  const hasRings = choose.chance(0.25);
  // A ring's heights must be told, all but one, or all be level; a tree may leave any of them out.
  const falls: Falls = hasRings ? choose.oneOf(["stated", "stated", "level"]) : "free";
  const own = choose.chance(0.4) ? { [OWN_NAME]: ownDrinker(choose) } : undefined;
  const wants: Wants = { hasRings, falls, hasOwn: own !== undefined, size };
  const runs = growTree(choose, wants);
  const sources = [randomSource(choose, { id: "barrel", stand: choose.uniform(0, 3) })];
  if (choose.chance(0.2)) addHeaderTank(choose, sources, runs, size);
  else if (falls === "stated" && choose.chance(0.4)) addSecondBarrel(choose, sources, runs);
  if (hasRings) addRings(choose, runs);
  return {
    headfall: 1,
    name: `random plan ${seed}`,
    ...(choose.chance(0.6) ? { water: choose.temperature(choose.uniform(0.5, 49.5)) } : {}),
    ...(choose.chance(0.3) ? { friction: choose.oneOf(["hazen-williams", "darcy-weisbach"]) } : {}),
    ...(choose.chance(0.3) ? { doubts: { heights: choose.length(choose.uniform(0, 0.1)) } } : {}),
    sources,
    runs,
    ...(own === undefined ? {} : { ownDrinkers: own }),
  };
}

/** Random valid plans for properties; a failure prints the number of its plan. */
export const plans = () => fc.integer({ min: 0, max: 0x7fffffff }).map((seed) => randomPlan(seed));

const OWN_NAME = "jar cap valve";

/** Readings off a law with a little of the error of jug and watch. */
function ownDrinker(choose: Chooser): PlanData {
  const [k, exponent] = [choose.spread(3e-7, 3e-5), choose.uniform(0.3, 1.2)];
  const opensAt = choose.chance(0.5) ? choose.uniform(0, 0.1) : 0;
  const heads = [0.15, 0.4, 1, 2.5].slice(0, choose.whole(2, 4));
  return {
    readings: heads.map((head) => ({
      head: choose.length(head + opensAt),
      flow: choose.flow(k * head ** exponent * choose.uniform(0.97, 1.03)),
    })),
    ...(opensAt > 0 || choose.chance(0.2) ? { opensAt: choose.head(opensAt) } : {}),
    ...(choose.chance(0.5) ? { workedBy: choose.oneOf(["trigger", "float"]) } : {}),
    ...(choose.chance(0.3) ? { sealsFrom: choose.head(choose.uniform(0, 0.2)) } : {}),
    holdsUpTo: choose.head(choose.uniform(0.5, 10)),
    need: choose.flow(choose.chance(0.1) ? 0 : choose.spread(2e-7, 1e-5)),
  };
}

/** Runs that each start at the barrel or at the end of an earlier run. */
function growTree(choose: Chooser, wants: Wants): PlanData[] {
  const count = Math.floor(choose.spread(wants.size.fewestRuns, wants.size.mostRuns));
  return Array.from({ length: count }, (_, i) => {
    const from =
      i === 0 || (choose.chance(0.15) && wants.falls !== "level")
        ? "barrel"
        : `end ${choose.chance(0.6) ? i - 1 : choose.whole(0, i - 1)}`;
    const length = choose.chance(0.03) ? 0 : choose.spread(0.05, 80);
    return {
      id: `run ${i}`,
      from,
      to: `end ${i}`,
      length: choose.length(length),
      ...shapeOfRun(choose, length, wants.falls),
      ...pipeOfRun(choose),
      ...devices(choose, wants.hasRings),
      ...(choose.chance(0.6) ? { drinkers: drinkersOfRun(choose, length, wants) } : {}),
    };
  });
}

type Falls = "stated" | "level" | "free";

interface Wants {
  readonly hasRings: boolean;
  readonly falls: Falls;
  readonly hasOwn: boolean;
  readonly size: PlanSize;
}

function shapeOfRun(choose: Chooser, length: number, falls: Falls): PlanData {
  const states = falls === "stated" || (falls === "free" && choose.chance(0.6));
  const fall = choose.uniform(-0.5, 1) * Math.min(1, length);
  return {
    ...(states ? { fall: choose.length(fall) } : {}),
    ...(length > 0 && choose.chance(0.3) ? { survey: surveyOf(choose, length) } : {}),
  };
}

/** Humps and sags between the ends, told in order. */
function surveyOf(choose: Chooser, length: number): PlanData[] {
  const places = Array.from({ length: choose.whole(1, 4) }, () => choose.uniform(0.02, 0.98)).sort(
    (a, b) => a - b,
  );
  const apart = places.filter((place, i) => i === 0 || (place - (places[i - 1] ?? 0)) * length > 0.01);
  return apart.map((place) => ({
    along: `${(place * length).toFixed(4)} m`,
    fall: choose.length(choose.uniform(-0.6, 0.8) * Math.min(1, length)),
    ...(choose.chance(0.3) ? { bleed: choose.chance(0.5) } : {}),
  }));
}

function pipeOfRun(choose: Chooser): PlanData {
  const fittings = Array.from({ length: choose.whole(0, 3) }, () =>
    choose.chance(0.8)
      ? `${choose.oneOf(allFittings).id}${choose.chance(0.5) ? ` x ${choose.whole(1, 6)}` : ""}`
      : {
          name: "old valve",
          k: choose.uniform(0, 30),
          ...(choose.chance(0.5) ? { count: choose.whole(1, 5) } : {}),
        },
  );
  const ownPipe = {
    bore: choose.length(choose.spread(0.003, 0.1)),
    ...(choose.chance(0.5) ? { hazenWilliams: choose.uniform(80, 155) } : {}),
    ...(choose.chance(0.5) ? { roughness: choose.length(choose.spread(1e-4, 1e-3)) } : {}),
  };
  return {
    ...(choose.chance(0.15) ? {} : { pipe: choose.chance(0.8) ? choose.oneOf(allPipes).id : ownPipe }),
    ...(fittings.length > 0 ? { fittings } : {}),
  };
}

function devices(choose: Chooser, hasRings: boolean): PlanData {
  return {
    ...(choose.chance(0.15) ? { tap: choose.oneOf(["open", "half", "half", "shut"]) } : {}),
    ...(choose.chance(0.1)
      ? { oneWay: choose.chance(0.5) ? choose.chance(0.7) : { opensAt: choose.head(choose.uniform(0, 0.2)) } }
      : {}),
    ...(!hasRings && choose.chance(0.1)
      ? {
          regulator: {
            sets: choose.head(choose.uniform(0.01, 1.5)),
            ...(choose.chance(0.3) ? { k: choose.uniform(0, 100) } : {}),
          },
        }
      : {}),
  };
}

function drinkersOfRun(choose: Chooser, length: number, wants: Wants): unknown {
  if (choose.chance(0.75)) return group(choose, length, wants);
  return Array.from({ length: choose.whole(0, 3) }, () => group(choose, length, wants));
}

function group(choose: Chooser, length: number, { hasOwn, size }: Pick<Wants, "hasOwn" | "size">): PlanData {
  const count = Math.floor(choose.spread(1, size.mostDrinkers));
  const share = choose.uniform(0, 0.999);
  const every = Math.max(0, length * share) / (count + 1);
  const atWork = () => (choose.chance(0.5) ? choose.whole(0, count) : `${choose.whole(0, 100)} %`);
  return {
    kind: hasOwn && choose.chance(0.5) ? OWN_NAME : choose.oneOf(allDrinkers).id,
    ...(count > 1 || choose.chance(0.3) ? { count } : {}),
    ...(choose.chance(0.6) ? { every: `${(Math.floor(every * 1e4) / 10).toFixed(1)} mm` } : {}),
    ...(choose.chance(0.3) ? { first: `${(Math.floor(every * 1e4) / 10).toFixed(1)} mm` } : {}),
    ...(choose.chance(0.3) ? { drop: choose.length(choose.uniform(-0.2, 0.5)) } : {}),
    ...(choose.chance(0.2) ? { need: choose.flow(choose.chance(0.1) ? 0 : choose.spread(1e-7, 1e-5)) } : {}),
    ...(choose.chance(0.6) ? { busiest: atWork() } : {}),
    ...(choose.chance(0.6) ? { ordinary: atWork() } : {}),
  };
}

/** A tank at some height of its own, filled from an end of the line, that feeds runs of its own. */
function addHeaderTank(choose: Chooser, sources: PlanData[], runs: PlanData[], size: PlanSize): void {
  const from = `end ${choose.whole(0, runs.length - 1)}`;
  sources.push(
    randomSource(choose, {
      id: "header tank",
      stand: choose.uniform(0, 1.5),
      feed: {
        from,
        ...(choose.chance(0.5) ? { valve: "float-valve" } : {}),
        ...(choose.chance(0.5) ? { opening: choose.length(choose.spread(0.002, 0.02)) } : {}),
      },
    }),
  );
  const length = choose.spread(0.5, 20);
  runs.push({
    id: "tank run",
    from: "header tank",
    length: choose.length(length),
    drinkers: group(choose, length, { hasOwn: false, size }),
  });
}

/** A second barrel joined to the end of a run whose height the falls already give. */
function addSecondBarrel(choose: Chooser, sources: PlanData[], runs: PlanData[]): void {
  sources.push(randomSource(choose, { id: "barrel 2", stand: choose.uniform(0, 3) }));
  runs.push({
    id: "from barrel 2",
    from: "barrel 2",
    to: `end ${choose.whole(0, runs.length - 1)}`,
    length: choose.length(choose.spread(3, 50)),
    ...pipeOfRun(choose),
  });
}

function addRings(choose: Chooser, runs: PlanData[]): void {
  const ends = runs.filter(({ id }) => String(id).startsWith("run ")).length;
  for (let k = choose.whole(1, 3); k > 0 && ends > 1; k -= 1) {
    const [a, b] = [choose.whole(0, ends - 1), choose.whole(0, ends - 1)];
    if (a === b) continue;
    runs.push({
      id: `ring ${k}`,
      from: `end ${a}`,
      to: `end ${b}`,
      length: choose.length(choose.spread(0.2, 60)),
      ...pipeOfRun(choose),
      ...devices(choose, true),
    });
  }
}
