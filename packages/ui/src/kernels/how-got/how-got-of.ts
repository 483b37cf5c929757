import type { Checked, Plan } from "@headfall/hydraulics";
import type { UnitSystem } from "../typed-quantity.js";
import { howBatchIntake, howFlockIntake } from "./birds.js";
import { howPenAtOnce, howPenBout, howPenBoutSeconds, howPenLoad, howPenWaits } from "./crowd.js";
import { howDay } from "./day.js";
import { howFlow, howNeed } from "./drinker-flow.js";
import { howHead, howStaticHead } from "./drinker-head.js";
import { howCertainty, howMargin, howVerdict } from "./drinker-verdict.js";
import { howDefault, howFilling } from "./findings.js";
import { howDrinkerHeight, howPointHead, howPointHeight } from "./heights.js";
import type { HowGot } from "./how-got.js";
import { howMishap } from "./mishaps.js";
import { howDrinkersNeeded } from "./needed.js";
import { howRain } from "./rain.js";
import type { RoomTold } from "./request.js";
import { type HowRequest, requestOf } from "./request.js";
import { howRunFlow, howRunReynolds, howRunVelocity } from "./run-flow.js";
import { howRunLoss } from "./run-loss.js";
import { howRunBore, howRunFall, howRunLength, howRunVolume } from "./run-shape.js";
import { howSourceFeed, howSourceStall, howSourceVent } from "./source-air.js";
import { howSourceSurface } from "./source-surface.js";
import { howSourceDraw, howSourceMass, howSourceVolume } from "./sources.js";
import type { HowSubject } from "./subject.js";
import { howDailyFall, howLasts } from "./time.js";
import { howTroubleShare } from "./trouble.js";
import { howWatererMishap } from "./waterer-mishaps.js";
import { howFrost, howHeat } from "./weather.js";
import { howWeek } from "./weeks.js";
import { howWaterer } from "./yard.js";
import { howYearDraw, howYearMet } from "./year.js";

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
  if (subject.of === "lasts" || subject.of === "rain") return true;
  // What a room had reckoned says so itself where it is gone.
  if (isOfRoom(subject)) return true;
  if (subject.of === "drinkersNeeded")
    return flock?.needed[subject.pen]?.devices[subject.device] !== undefined;
  if ("batch" in subject) return flock?.pens[subject.pen]?.batches[subject.batch] !== undefined;
  if ("pen" in subject) return flock?.pens[subject.pen] !== undefined;
  return subject.of === "filling" ? subject.finding in filling : subject.used in defaults;
}

type RoomSubject = Extract<
  HowSubject,
  {
    of:
      | `week${string}`
      | `day${string}`
      | `mishap${string}`
      | `frost${string}`
      | `heat${string}`
      | "troubleShare"
      | "waterer";
  }
>;
const isOfRoom = (subject: HowSubject): subject is RoomSubject =>
  /^(week|day|mishap|frost|heat|trouble|waterer)/.test(subject.of);

function explain(subject: HowSubject, request: HowRequest): HowGot {
  switch (subject.of) {
    case "verdict":
      return howVerdict(request, subject.drinker);
    case "drinkerStaticHead":
      return howStaticHead(request, subject.drinker, subject.moment);
    case "drinkerHead":
      return howHead(request, subject.drinker, subject.moment);
    case "drinkerFlow":
      return howFlow(request, subject.drinker, subject.moment);
    case "drinkerNeed":
      return howNeed(request, subject.drinker);
    case "drinkerMargin":
      return howMargin(request, subject.drinker);
    case "drinkerCertainty":
      return howCertainty(request, subject.drinker);
    case "drinkerHeight":
      return howDrinkerHeight(request, subject.drinker);
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
    case "weekHang":
    case "weekRaise":
    case "weekHead":
    case "weekVerdict":
      return howWeek(request, subject);
    case "dayPen":
    case "dayShort":
    case "dayDrinker":
      return howDay(request, subject);
    case "lasts":
      return howLasts(request, subject);
    case "mishap":
    case "mishapGuard":
      return howMishap(request, subject);
    case "mishapWaterer":
      return howWatererMishap(request, subject.row);
    case "troubleShare":
      return howTroubleShare(request, subject.cause);
    case "frostTime":
      return howFrost(request, subject);
    case "heatPeak":
      return howHeat(request, subject);
    case "yearDraw":
      return howYearDraw(request, subject);
    case "waterer":
      return howWaterer(request, subject);
    case "yearMet":
      return howYearMet(request, subject);
    case "rain":
      return howRain(request, subject.what, subject.way ?? 0);
    default:
      if ("pen" in subject) return explainPen(subject, request);
      return "run" in subject ? explainRun(subject, request) : explainSource(subject, request);
  }
}

type PenSubject = Exclude<Extract<HowSubject, { pen: number }>, { of: `year${string}` | "waterer" }>;

function explainPen(subject: PenSubject, request: HowRequest): HowGot {
  const pen = request.checked.flock!.pens[subject.pen]!;
  switch (subject.of) {
    case "batchIntake":
      return howBatchIntake(request, subject);
    case "drinkersNeeded":
      return howDrinkersNeeded(request, subject);
    case "penBout":
      return howPenBout(request, pen);
    case "penBoutSeconds":
      return howPenBoutSeconds(request, pen);
    case "penLoad":
      return howPenLoad(request, pen);
    case "penBusiest":
      return howPenAtOnce(request, pen);
    case "penAllTaken":
    case "penWait":
      return howPenWaits(request, pen, subject.of);
  }
}

function explainRun(subject: Extract<HowSubject, { run: number }>, request: HowRequest): HowGot {
  const { run } = subject;
  switch (subject.of) {
    case "runLength":
      return howRunLength(request, run);
    case "runFall":
      return howRunFall(request, run);
    case "runBore":
      return howRunBore(request, run);
    case "runVolume":
      return howRunVolume(request, run);
    case "runFlow":
      return howRunFlow(request, run, subject.moment ?? "fullBusiest");
    case "runVelocity":
      return howRunVelocity(request, run, subject.moment ?? "fullBusiest");
    case "runReynolds":
      return howRunReynolds(request, run, subject.moment ?? "fullBusiest");
    case "runLoss":
      return howRunLoss(request, run, subject.law, subject.moment ?? "fullBusiest");
  }
}

function explainSource(subject: Extract<HowSubject, { source: number }>, request: HowRequest): HowGot {
  const { source } = subject;
  switch (subject.of) {
    case "sourceVolume":
      return howSourceVolume(request, source, subject.which);
    case "sourceDraw":
      return howSourceDraw(request, source, subject.moment);
    case "sourceSurface":
      return howSourceSurface(request, source, subject.moment);
    case "sourceMass":
      return howSourceMass(request, source);
    case "sourceVent":
      return howSourceVent(request, source);
    case "sourceStall":
      return howSourceStall(request, source);
    case "sourceFeed":
      return howSourceFeed(request, source);
    case "dailyFall":
      return howDailyFall(request, source);
  }
}
