import type { Plan } from "../../document/plan-schema.js";
import { buildFlock } from "../../model/build-flock.js";
import { buildLine } from "../../model/build-line.js";
import { buildYard } from "../../model/build-yard.js";
import { type ExposedRun, exposedRuns, exposedVessels } from "../../model/exposed.js";
import { type HeatAsked, type HotDay, hotDayOf } from "../../model/extremes.js";
import type { Flock } from "../../model/flock.js";
import { intakeOfFlock } from "../../model/flock-intake.js";
import { flockInAir } from "../../model/flock-on.js";
import type { Line } from "../../model/line.js";
import { createTypedValues } from "../../model/typed-values.js";
import { STILL_AIR_FILM } from "../../physics/cooling.js";
import { takenByFlock } from "../birds/taken-by-flock.js";
import {
  airThroughDay,
  DRUNK_LESS_ABOVE,
  HEAT_STEP,
  heatOfRun,
  heatOfVessel,
  lateness,
  towardsOfRun,
} from "./heat-bodies.js";
import type { HeatAnswer, HeatFlush, HeatIntake, HeatPart } from "./heat-result.js";
import { heatOfWaterer, watererDayOf } from "./heat-waterers.js";
import { waysToRuns } from "./ways-to-runs.js";

/**
 * What a hot, clear day does to a plan's still water: its temperature by the hour in each run, vessel and loose waterer,
 * what to let run away, and what white pipe, shade, lagging or burial would change.
 *
 * @param plan   from `readPlan` or `checkDocument`
 * @param asked  the day, where it is not the plan's; `day` for the ages of its birds, "2026-07-04"
 * @example heatOfPlan(plan, { high: 36 }).heat.day.high   // 36
 */
export function heatOfPlan(
  plan: Plan,
  asked: HeatAsked & { readonly day?: string | undefined } = {},
): HeatAnswer {
  const built = buildLine(plan);
  if (!built.ok) return built;
  const yarding = buildYard(plan);
  if (!yarding.ok) return yarding;
  const { line } = built;
  const flocking = buildFlock(plan, line, asked.day);
  if (!flocking.ok) return flocking;
  const values = createTypedValues();
  const { flock } = flocking;
  const day = hotDayOf(plan, flock.weather, asked, values);
  const runs = exposedRuns(plan, line, values);
  const drinkers = new Int32Array(line.runs.length);
  for (const run of line.drinkers.run) drinkers[run] += 1;
  const pipes = runs.map((run) => heatOfRun(run, day, drinkers[run.run]));
  const vessels = exposedVessels(plan, line).map((vessel) => heatOfVessel(vessel, day));
  // Water as cool as the night's air where the plan does not say: its stand-in for pipes is colder than any on a hot day.
  const watererDay = watererDayOf(day, plan.water === undefined ? day.low : line.water.temperatureC);
  const loose = yarding.yard.pens.flatMap(({ index, waterers }) =>
    waterers.map((waterer) =>
      heatOfWaterer(waterer, `pens[${index}].waterers[${waterer.index}]`, watererDay),
    ),
  );
  const flushes = flushesOf({ line, runs, pipes, vessels, day });
  const draw = intakeOfFlock(flockInAir(flock, day)).expect / day.light;
  const hot = pipes.filter(({ hottest }) => hottest.less > 0).reduce((sum, { volume }) => sum + volume, 0);
  return {
    ok: true,
    heat: {
      day,
      step: HEAT_STEP,
      air: airThroughDay(day),
      parts: [...pipes, ...vessels, ...loose],
      flushes,
      intake: plan.pens === undefined ? undefined : intakeOn(day, line, flock),
      draw,
      renewedEvery: draw > 0 && hot > 0 ? hot / draw : undefined,
      defaults: values.used,
    },
  };
}

/** What all birds take, in a night as the plan has it: as warm as the day where it names none, the cautious side. */
function intakeOn({ high }: HotDay, line: Line, flock: Flock): HeatIntake {
  const { hotSpell, ...weather } = flock.weather;
  const said = hotSpell ?? weather;
  const night = high - (said.high - said.low);
  return { ...takenByFlock(line, flockInAir(flock, { high, low: night })), night };
}

interface Flushing {
  readonly line: Line;
  readonly runs: readonly ExposedRun[];
  /** By run, and by source. */
  readonly pipes: readonly HeatPart[];
  readonly vessels: readonly HeatPart[];
  readonly day: HotDay;
}

/** Hot runs that birds drink from, with all hot pipe before them. */
function flushesOf({ line, runs, pipes, vessels, day }: Flushing): HeatFlush[] {
  const hotBefore = new Float64Array(line.runs.length);
  return waysToRuns(line).flatMap(({ run, source, before }): HeatFlush[] => {
    const pipe = pipes[run];
    const isHot = pipe.hottest.less > 0;
    hotBefore[run] = (before < 0 ? 0 : hotBefore[before]) + (isHot ? pipe.volume : 0);
    if (pipe.drinkers === 0 || !isHot) return [];
    const hot = pipe.hottest.water;
    return [
      {
        run: pipe.id,
        path: pipe.path,
        volume: hotBefore[run],
        from: hot.findIndex((one) => one > DRUNK_LESS_ABOVE) * HEAT_STEP,
        to: (hot.findLastIndex((one) => one > DRUNK_LESS_ABOVE) + 1) * HEAT_STEP,
        ...timesToFlush(runs[run], day, vessels[source].hottest.water),
      },
    ];
  });
}

/** Flushes through the hot hours, minute by minute, each bringing the vessel's water of that hour. */
function timesToFlush(
  run: ExposedRun,
  day: HotDay,
  vessel: readonly number[],
): Pick<HeatFlush, "times" | "againAfter"> {
  const towards = towardsOfRun(run, day, "hottest");
  const hottest = towards.indexOf(Math.max(...towards));
  const late = lateness(run, STILL_AIR_FILM);
  if (late === 0 || vessel.some((one, k) => one >= DRUNK_LESS_ABOVE && towards[k] > DRUNK_LESS_ABOVE))
    return { times: undefined, againAfter: undefined };
  const kept = Math.exp(-60 / late);
  let [water, times] = [vessel[0], 0];
  for (let minute = 0; minute < 1440; minute += 1) {
    const step = Math.floor((minute * 60) / HEAT_STEP);
    water = towards[step] + (water - towards[step]) * kept;
    if (water <= DRUNK_LESS_ABOVE) continue;
    times += 1;
    water = vessel[step];
  }
  const span = (towards[hottest] - vessel[hottest]) / (towards[hottest] - DRUNK_LESS_ABOVE);
  return { times, againAfter: late * Math.log(span) };
}
