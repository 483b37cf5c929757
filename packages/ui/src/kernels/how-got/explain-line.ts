import { howFlow, howNeed } from "./drinker-flow.js";
import { howHead, howStaticHead } from "./drinker-head.js";
import { howCertainty, howMargin, howVerdict } from "./drinker-verdict.js";
import { howDrinkerHeight } from "./heights.js";
import type { HowGot } from "./how-got.js";
import type { HowRequest } from "./request.js";
import { howRunFlow, howRunReynolds, howRunVelocity } from "./run-flow.js";
import { howRunLoss } from "./run-loss.js";
import { howRunBore, howRunFall, howRunLength, howRunVolume } from "./run-shape.js";
import { howSourceFeed } from "./source-feed.js";
import { howSourceStall } from "./source-stall.js";
import { howSourceSurface } from "./source-surface.js";
import { howSourceVent } from "./source-vent.js";
import { howSourceDraw, howSourceMass, howSourceVolume } from "./sources.js";
import type { HowSubject } from "./subject.js";
import { howDailyFall } from "./time.js";

/** How a figure of one drinker was got. */
export function explainDrinker(
  subject: Extract<HowSubject, { drinker: number }>,
  request: HowRequest,
): HowGot {
  const { drinker } = subject;
  switch (subject.of) {
    case "verdict":
      return howVerdict(request, drinker);
    case "drinkerStaticHead":
      return howStaticHead(request, drinker, subject.moment);
    case "drinkerHead":
      return howHead(request, drinker, subject.moment);
    case "drinkerFlow":
      return howFlow(request, drinker, subject.moment);
    case "drinkerNeed":
      return howNeed(request, drinker);
    case "drinkerMargin":
      return howMargin(request, drinker);
    case "drinkerCertainty":
      return howCertainty(request, drinker);
    case "drinkerHeight":
      return howDrinkerHeight(request, drinker);
  }
}

/** The same of one run. */
export function explainRun(subject: Extract<HowSubject, { run: number }>, request: HowRequest): HowGot {
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

/** The same of one source. */
export function explainSource(subject: Extract<HowSubject, { source: number }>, request: HowRequest): HowGot {
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
