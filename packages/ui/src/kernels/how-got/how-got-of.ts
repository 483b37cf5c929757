import type { Checked, Plan } from "@headfall/hydraulics";
import type { UnitSystem } from "../typed-quantity.js";
import { howAway } from "./away.js";
import { howFlockIntake } from "./birds.js";
import { explainDrinker, explainRun, explainSource } from "./explain-line.js";
import { explainPen, explainRoom, isOfRoom } from "./explain-rooms.js";
import { howDefault, howFilling } from "./findings.js";
import { howPointHead, howPointHeight } from "./heights.js";
import type { HowGot } from "./how-got.js";
import { howRain } from "./rain.js";
import type { RoomTold } from "./request.js";
import { type HowRequest, requestOf } from "./request.js";
import type { HowSubject } from "./subject.js";
import { howLasts } from "./time.js";

/**
 * How a number or mark of the page was got.
 *
 * @param subject  which number
 * @param checked  what the page shows
 * @param plan     the plan as typed, for what only it knows (single fittings, words as typed); may be left out
 * @param system   whose units to write in
 * @param room     what the room it is shown in had reckoned; may be left out
 * @returns undefined when the part is no longer there
 */
export function howGotOf(
  subject: HowSubject,
  checked: Checked,
  plan: Plan | undefined,
  system: UnitSystem,
  room: RoomTold = {},
): HowGot | undefined {
  if (!isThere(subject, checked)) return undefined;
  return explain(subject, requestOf(checked, plan, system, room));
}

/** A plan may have changed since a number was pressed: its part may be gone. */
function isThere(
  subject: HowSubject,
  { line, drinkers, runs, sources, filling, defaults, flock }: Checked,
): boolean {
  if ("drinker" in subject) return subject.drinker in drinkers;
  if ("run" in subject) return subject.run in runs && subject.run in line.runs;
  if ("source" in subject) return subject.source in sources;
  if ("point" in subject) return subject.point in line.points.id;
  if (subject.of === "flockIntake") return flock !== undefined;
  if (subject.of === "lasts" || subject.of === "away" || subject.of === "rain") return true;
  // What a room had reckoned says so itself where it is gone.
  if (isOfRoom(subject)) return true;
  if (subject.of === "drinkersNeeded")
    return flock?.needed[subject.pen]?.devices[subject.device] !== undefined;
  if ("batch" in subject) return flock?.pens[subject.pen]?.batches[subject.batch] !== undefined;
  if ("pen" in subject) return flock?.pens[subject.pen] !== undefined;
  return subject.of === "filling" ? subject.finding in filling : subject.used in defaults;
}

function explain(subject: HowSubject, request: HowRequest): HowGot {
  if (isOfRoom(subject)) return explainRoom(subject, request);
  if ("drinker" in subject) return explainDrinker(subject, request);
  if ("run" in subject) return explainRun(subject, request);
  if ("source" in subject) return explainSource(subject, request);
  if ("pen" in subject) return explainPen(subject, request);
  switch (subject.of) {
    case "pointHeight":
      return howPointHeight(request, subject.point);
    case "pointHead":
      return howPointHead(request, subject.point, subject.moment);
    case "filling":
      return howFilling(request, subject.finding);
    case "default":
      return howDefault(request, subject.used);
    case "flockIntake":
      return howFlockIntake(request, subject);
    case "away":
      return howAway(request, subject);
    case "lasts":
      return howLasts(request, subject);
    case "rain":
      return howRain(request, subject.what, subject.way ?? 0);
  }
}
