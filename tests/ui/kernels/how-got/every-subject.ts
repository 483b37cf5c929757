import {
  type Checked,
  type FlockReport,
  FRICTION_LAWS,
  MOMENTS,
} from "../../../../packages/hydraulics/src/index.js";
import type { HowSubject } from "../../../../packages/ui/src/kernels/how-got/subject.js";

/** Every number of a checked plan that can be asked how it was got; of many drinkers and points those at `every` steps. */
export function* everySubject(checked: Checked, every = 1): Generator<HowSubject> {
  for (let drinker = 0; drinker < checked.drinkers.length; drinker += every) {
    yield { of: "verdict", drinker };
    yield { of: "drinkerNeed", drinker };
    yield { of: "drinkerMargin", drinker };
    yield { of: "drinkerCertainty", drinker };
    yield { of: "drinkerHeight", drinker };
    for (const moment of MOMENTS) {
      yield { of: "drinkerStaticHead", drinker, moment };
      yield { of: "drinkerHead", drinker, moment };
      yield { of: "drinkerFlow", drinker, moment };
    }
  }
  for (let run = 0; run < checked.runs.length; run++) {
    for (const of of ["runLength", "runFall", "runBore", "runVolume"] as const) yield { of, run };
    for (const of of ["runFlow", "runVelocity", "runReynolds"] as const) {
      yield { of, run };
      for (const moment of MOMENTS) yield { of, run, moment };
    }
    for (const law of FRICTION_LAWS) {
      yield { of: "runLoss", run, law };
      for (const moment of MOMENTS) yield { of: "runLoss", run, law, moment };
    }
  }
  for (let source = 0; source < checked.sources.length; source++) {
    for (const which of ["full", "usable", "dead"] as const) yield { of: "sourceVolume", source, which };
    for (const of of ["sourceMass", "sourceVent", "sourceStall", "sourceFeed"] as const) yield { of, source };
    for (const moment of MOMENTS) {
      yield { of: "sourceDraw", source, moment };
      yield { of: "sourceSurface", source, moment };
    }
  }
  for (let point = 0; point < checked.line.points.count; point += every) {
    yield { of: "pointHeight", point };
    for (const moment of MOMENTS) yield { of: "pointHead", point, moment };
  }
  if (checked.flock !== undefined) {
    yield* flockSubjects(checked.flock.pens);
    yield* roomSubjects();
    for (const { index: pen, devices } of checked.flock.needed)
      for (let device = 0; device < devices.length; device++) yield { of: "drinkersNeeded", pen, device };
  }
  // Days are reckoned anew for each of these: of short lines they tell as much.
  if (checked.flock !== undefined && checked.drinkers.length <= 12) yield* timeSubjects();
  for (let finding = 0; finding < checked.filling.length; finding++) yield { of: "filling", finding };
  for (let used = 0; used < checked.defaults.length; used++) yield { of: "default", used };
}

/** Of what a room had reckoned; without it they say that it is gone. */
export function* roomSubjects(): Generator<HowSubject> {
  yield { of: "weekHang", week: 1, group: 0 };
  yield { of: "weekRaise", week: 1, raised: 0 };
  yield { of: "weekHead", week: 1, which: "idle" };
  yield { of: "weekHead", week: 1, which: "flowing" };
  yield { of: "weekVerdict", week: 1 };
  yield { of: "weekVerdict", week: 0, hot: true };
  for (const what of ["meanWait", "wait95", "longestWait", "allTaken", "mostAtOnce"] as const)
    yield { of: "dayPen", inPen: 0, what };
  for (const what of ["gaveUp", "foundDry"] as const) yield { of: "dayPen", inPen: 0, what };
  yield { of: "dayShort", inPen: 0, inBatch: 0 };
  for (const what of ["harm", "lost", "empty", "pours", "night"] as const)
    yield { of: "mishap", row: 0, what };
  yield { of: "mishapGuard", row: 0, guard: 0 };
  yield { of: "mishapWaterer", row: 0 };
  yield { of: "troubleShare", cause: 0 };
  for (const what of ["cold", "blocked", "solid"] as const) yield { of: "frostTime", part: 0, what };
  for (const what of [
    "holds",
    "gives",
    "drainsAt",
    "share",
    "atOnce",
    "refills",
    "hotRefills",
    "weight",
  ] as const)
    yield { of: "waterer", pen: 0, waterer: 0, what };
  for (const of of ["yearDraw", "yearMet"] as const) yield { of, pen: 0, period: 1 };
  yield { of: "yearNeeded", pen: 0, period: 1, device: 0 };
  for (const side of ["hottest", "expected"] as const) yield { of: "heatPeak", part: 0, side };
  for (const which of ["size", "expect"] as const) yield { of: "flockIntake", which, heat: true };
  for (const what of ["bouts", "drawn", "busy", "leastFlow"] as const)
    yield { of: "dayDrinker", at: 0, what };
}

function* timeSubjects(): Generator<HowSubject> {
  for (const what of ["firstWithout", "firstDry", "halfDry", "empty", "firstDay"] as const)
    yield { of: "lasts", what, which: "size" };
  for (const which of ["low", "hot", "high"] as const) yield { of: "lasts", what: "firstWithout", which };
  for (const what of ["needed", "usable"] as const) yield { of: "away", what, days: 5 };
  yield { of: "dailyFall", source: 0 };
  // Without a record it tells that there is none; with one, in rain.test.ts.
  yield { of: "rain", what: "shortDays" };
}

function* flockSubjects(pens: FlockReport["pens"]): Generator<HowSubject> {
  for (const which of ["size", "expect"] as const) {
    for (const day of [{}, { hot: true }, { week: 3 }]) {
      yield { of: "flockIntake", which, ...day };
      for (const { index: pen, batches } of pens)
        for (const { index: batch } of batches) yield { of: "batchIntake", pen, batch, which, ...day };
    }
  }
  for (const { index: pen } of pens)
    for (const of of [
      "penBout",
      "penBoutSeconds",
      "penLoad",
      "penBusiest",
      "penAllTaken",
      "penWait",
    ] as const)
      yield { of, pen };
}

/** The figure that the check itself came to; undefined for what is no figure of its own. */
export function figureOf(subject: HowSubject, checked: Checked): number | undefined {
  const { line, friction, solutions } = checked;
  switch (subject.of) {
    case "drinkerStaticHead":
      return checked.drinkers[subject.drinker]!.moments[subject.moment][friction].staticHead;
    case "drinkerHead":
      return checked.drinkers[subject.drinker]!.moments[subject.moment][friction].flowingHead;
    case "drinkerFlow":
      return checked.drinkers[subject.drinker]!.moments[subject.moment][friction].flow;
    case "verdict":
    case "drinkerMargin":
      return checked.drinkers[subject.drinker]!.margin;
    case "drinkerHeight":
      return line.drinkers.height[subject.drinker]!;
    case "drinkerCertainty": {
      const { certainty } = checked.drinkers[subject.drinker]!;
      return certainty.kind === "notSampled" ? undefined : certainty.share;
    }
    case "pointHeight":
      return line.points.height[subject.point]!;
    case "pointHead":
      return solutions[subject.moment][friction].head[subject.point]! - line.points.height[subject.point]!;
    case "runVolume":
      return checked.runs[subject.run]!.volume;
    case "runBore":
      return checked.runs[subject.run]!.bore;
    case "runFlow":
    case "runVelocity":
    case "runReynolds":
    case "runLoss":
      return subject.moment === undefined ? figureOfRun(subject, checked) : undefined;
    case "runFall": {
      const { points } = line.runs[subject.run]!;
      return line.points.height[points[0]!]! - line.points.height[points[points.length - 1]!]!;
    }
    case "sourceVolume": {
      const { volumeFull, volumeUsable, volumeDead } = checked.sources[subject.source]!;
      return { full: volumeFull, usable: volumeUsable, dead: volumeDead }[subject.which];
    }
    case "sourceSurface":
      return checked.sources[subject.source]!.surface[subject.moment];
    case "sourceDraw":
      return subject.moment === "fullBusiest" ? checked.sources[subject.source]!.drawBusiest : undefined;
    case "sourceMass":
      return checked.sources[subject.source]!.massFull;
    case "sourceVent":
      return checked.sources[subject.source]!.ventDiameterNeeded;
    case "sourceStall":
      return checked.sources[subject.source]!.volumeBeforeStall;
    case "sourceFeed":
      return checked.sources[subject.source]!.feedFlow;
    case "flockIntake": {
      const { intakeSize, intakeExpect } = checked.flock!;
      if (subject.hot === true || subject.week !== undefined) return undefined;
      return subject.which === "size" ? intakeSize : intakeExpect;
    }
    case "batchIntake":
      return batchFigure(subject, checked);
    case "drinkersNeeded":
      return checked.flock!.needed[subject.pen]!.devices[subject.device]!.needed;
    case "penBout":
      return checked.flock!.pens[subject.pen]!.boutVolume;
    case "penBoutSeconds":
      return checked.flock!.pens[subject.pen]!.boutSeconds;
    case "penLoad":
      return checked.flock!.pens[subject.pen]!.load;
    case "penBusiest":
      return checked.flock!.pens[subject.pen]!.busiest;
    case "penWait":
      return checked.flock!.pens[subject.pen]!.meanWait;
    default:
      return undefined;
  }
}

function figureOfRun(
  subject: Extract<HowSubject, { of: "runFlow" | "runVelocity" | "runReynolds" | "runLoss" }>,
  checked: Checked,
): number {
  const { busiest } = checked.runs[subject.run]!;
  switch (subject.of) {
    case "runFlow":
      return Math.abs(busiest.flow);
    case "runVelocity":
      return Math.abs(busiest.velocity);
    case "runReynolds":
      return busiest.reynolds;
    case "runLoss":
      return busiest.loss[subject.law];
  }
}

/** With what is spilled at the pen, which the report tells for the pen as a whole. */
function batchFigure(
  { pen: p, batch: k, which, week, hot }: Extract<HowSubject, { of: "batchIntake" }>,
  { flock }: Checked,
): number | undefined {
  const pen = flock!.pens[p]!;
  const drunk = pen.batches.reduce((sum, { count, intakeSize }) => sum + count * intakeSize, 0);
  if (hot === true || week !== undefined || drunk === 0) return undefined;
  const { count, intakeSize, intakeExpect } = pen.batches[k]!;
  return (count * (which === "size" ? intakeSize : intakeExpect) * pen.intakeSize) / drunk;
}
