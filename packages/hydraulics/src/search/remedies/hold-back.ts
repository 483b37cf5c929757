import { runEnds, runNames } from "../../document/run-ends.js";
import { buildLine } from "../../model/build-line.js";
import type { Line } from "../../model/line.js";
import { typedLength } from "../cure-space.js";
import { type Ailing, bought, freshName, type Remedy, waysToRuns, withJointAt, withRun } from "./remedy.js";

/** Below this a regulator is not set [m]. */
const LEAST_SETTING = 0.02;

/**
 * A regulator at the start of a run, so that what hangs on it and beyond does not drip whatever stands above: set as
 * high as these drinkers hold.
 */
export function holdBack(ailing: Ailing): Remedy[] {
  const { plan, line, margin, system } = ailing;
  const names = runNames(plan);
  return branches(ailing).flatMap(({ run, drinkers }): Remedy[] => {
    if (plan.runs[run].regulator !== undefined) return [];
    const start = line.points.height[line.runs[run].points[0]];
    const sets = Math.floor((leastCeiling(line, drinkers) - margin - start) * 100) / 100;
    if (sets < LEAST_SETTING) return [];
    return [
      {
        kind: "regulator",
        plan: withRun(plan, run, { regulator: { sets: typedLength(sets, system) } }),
        changes: [{ code: "regulator", run: names[run], sets }],
        spent: bought(1, plan.prices?.regulator),
      },
    ];
  });
}

/** Lowest surface that makes one of these drip [m above datum]. */
const leastCeiling = ({ drinkers }: Line, which: readonly number[]): number =>
  which.reduce(
    (least, d) => Math.min(least, drinkers.height[d] + drinkers.groups[drinkers.group[d]].holdsUpTo),
    Number.POSITIVE_INFINITY,
  );

/** Inside of the tank, and how full it stands [m]: a small box with a float valve; invented sizes a trade shop has. */
const TANK = { length: 0.4, width: 0.3, height: 0.25, outlet: 0.03, full: 0.18 } as const;
/** Above the joint that feeds it, it stands this high until the search moves it [m]. */
const FIRST_STAND = 0;

/**
 * A header tank at the start of a run: the line above fills it through a float valve, what hangs beyond sees only its
 * level. How high it stands is left to the search.
 */
export function putHeaderTank(ailing: Ailing): Remedy[] {
  const { plan, line, system } = ailing;
  const ends = runEnds(plan);
  const names = runNames(plan);
  return branches(ailing).flatMap(({ run }): Remedy[] => {
    const { survey, oneWay, regulator } = plan.runs[run];
    if (survey !== undefined || oneWay !== undefined || regulator !== undefined) return [];
    const { from, to } = ends[run];
    const points = line.runs[run].points;
    const [start, end] = [points[0], points[points.length - 1]];
    if (line.sources.some(({ point }) => point === start)) return [];
    const id = freshName(plan, "header tank");
    const tank: (typeof plan.sources)[number] = {
      id,
      vessel: {
        shape: "box",
        length: typedLength(TANK.length, system),
        width: typedLength(TANK.width, system),
        height: typedLength(TANK.height, system),
      },
      ground: typedLength(line.points.ground[start], system),
      stand: typedLength(FIRST_STAND, system),
      outlet: typedLength(TANK.outlet, system),
      level: { full: typedLength(TANK.full, system) },
      feed: { from },
    };
    const [startAt, endAt] = [from, to].map((name, k) => {
      const p = k === 0 ? start : end;
      return { name, height: line.points.height[p], ground: line.points.ground[p] };
    });
    const { fall: _, ...rest } = plan.runs[run];
    const moved = { ...rest, from: id, to };
    const fed = { ...plan, runs: plan.runs.map((one, r) => (r === run ? moved : { ...one, ...ends[r] })) };
    const told = withJointAt(withJointAt(fed, startAt, system), endAt, system);
    const changed = { ...told, sources: [...told.sources, tank] };
    if (!buildLine(changed).ok) return [];
    return [
      {
        kind: "headerTank",
        plan: changed,
        changes: [{ code: "headerTank", tank: id, run: names[run], at: from, stand: FIRST_STAND }],
        spent: bought(1, plan.prices?.headerTank),
      },
    ];
  });
}

interface Branch {
  readonly run: number;
  /** Drinkers on it and beyond. */
  readonly drinkers: readonly number[];
}

/** At most so many places are tried. */
const MOST_BRANCHES = 4;

/** Runs before drinkers that would drip first as the water stands higher, the nearest to these first. */
function branches({ plan, line }: Ailing): Branch[] {
  const { drinkers } = line;
  if (drinkers.count === 0) return [];
  const ceiling = (d: number) => drinkers.height[d] + drinkers.groups[drinkers.group[d]].holdsUpTo;
  const ways = waysToRuns(plan);
  const order = Array.from(drinkers.run.keys()).sort((a, b) => ceiling(a) - ceiling(b));
  const first = [...new Set(order.map((d) => drinkers.run[d]))].slice(0, 2);
  const runs = [...new Set(first.flatMap((run) => [...ways[run]].reverse()))].slice(0, MOST_BRANCHES);
  return runs.map((run) => ({
    run,
    drinkers: Array.from(drinkers.run.keys()).filter((d) => ways[drinkers.run[d]].includes(run)),
  }));
}
