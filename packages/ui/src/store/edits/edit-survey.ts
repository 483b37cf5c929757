import { type Plan, type PlanRun, runNames } from "@headfall/hydraulics";
import { metresOf } from "../../kernels/typed-metres.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import type { Edited } from "../plan-change.js";
import { AT_END, endReading } from "../plan-heights.js";
import { roundHeight } from "../typed-length.js";
import { typedWithin } from "./edit-drinkers.js";
import { tidyRun } from "./part-keys.js";
import { GONE, refuse, withRun } from "./plan-parts.js";

type Survey = NonNullable<PlanRun["survey"]>;
/** A place this near a reading is that reading's [m]. */
const SAME_READING = 0.001;

/** Says anew how much lower the pipe is at one surveyed place. */
export function moveReading(
  plan: Plan,
  index: number,
  reading: number,
  fall: number,
  system: UnitSystem,
): Edited {
  const survey = plan.runs[index]?.survey ?? [];
  if (survey[reading] === undefined) return refuse(GONE);
  const typed = roundHeight(fall, system);
  const moved = survey.map((each, i) => (i === reading ? { ...each, fall: typed } : each));
  return withSurvey(plan, index, moved, `falls ${typed} at ${survey[reading].along}`);
}

/** Puts a surveyed place on a run. Where one is already, its fall is said anew. */
export function addReading(
  plan: Plan,
  index: number,
  along: number,
  fall: number,
  system: UnitSystem,
): Edited {
  const run = plan.runs[index];
  if (run === undefined) return refuse(GONE);
  const survey = run.survey ?? [];
  const length = metresOf(run.length);
  const typed = length - along < SAME_READING ? run.length : typedWithin(along, length, system);
  const at = metresOf(typed);
  const here = survey.findIndex((each) => Math.abs(metresOf(each.along) - at) < SAME_READING);
  if (here >= 0) return moveReading(plan, index, here, fall, system);
  const before = survey.filter((each) => metresOf(each.along) < at);
  const added = { along: typed, fall: roundHeight(fall, system) };
  const longer = [...before, added, ...survey.slice(before.length)];
  return withSurvey(plan, index, longer, `falls ${added.fall} at ${typed}`);
}

/** Takes a surveyed place off a run. What it told of the run's end stays told. */
export function deleteReading(plan: Plan, index: number, reading: number): Edited {
  const run = plan.runs[index];
  const gone = run?.survey?.[reading];
  if (run === undefined || gone === undefined) return refuse(GONE);
  const left = run.survey!.filter((_, i) => i !== reading);
  const toldEnd = reading === endReading(run) && run.fall === undefined;
  const kept = toldEnd ? withRun(plan, index, tidyRun({ ...run, fall: gone.fall })) : plan;
  return withSurvey(kept, index, left, `reading at ${gone.along} taken out`);
}

/** The run with other readings; a fall typed beside a reading at the end follows it. */
function withSurvey(plan: Plan, index: number, survey: Survey, words: string): Edited {
  const run = plan.runs[index]!;
  const last = survey.at(-1);
  const reachesEnd = last !== undefined && Math.abs(metresOf(last.along) - metresOf(run.length)) < AT_END;
  const fall = reachesEnd && run.fall !== undefined ? last.fall : run.fall;
  const changed = tidyRun({ ...run, fall, survey: survey.length === 0 ? undefined : survey });
  return {
    ok: true,
    plan: withRun(plan, index, changed),
    words: `${runNames(plan)[index]} ${words}`,
    selected: { kind: "run", run: index },
  };
}
