// Days and quantities as people type them.

export { dateOf, dayNumber, readClock, readDay, writeClock, writeDay } from "./units/day.js";
export { type Quantity, type QuantityRead, readQuantity } from "./units/quantity.js";
export type { QuantityKind } from "./units/unit-list.js";
export * from "./units/write-quantity.js";

// Plans: read, checked, written; what is wrong with one; what stands where it says nothing.

export * from "./document/check-document.js";
export { COLOURS } from "./document/colours.js";
export { DEFAULTS } from "./document/defaults.js";
export * from "./document/limits.js";
export * from "./document/plan-differences.js";
export * from "./document/plan-lists.js";
export {
  PLAN_VERSION,
  type Plan,
  type PlanBirds,
  type PlanDrinkerGroup,
  type PlanFitting,
  type PlanPen,
  type PlanPipe,
  type PlanPlace,
  type PlanPoint,
  type PlanRefill,
  type PlanRoof,
  type PlanRun,
  type PlanSource,
  type PlanWaterer,
} from "./document/plan-schema.js";
export { PROBLEM_CODES, type Problem, type ProblemCode } from "./document/problem.js";
export { readPlan } from "./document/read-plan.js";
export * from "./document/regions.js";
export * from "./document/run-ends.js";
export * from "./document/version.js";
export * from "./document/write-plan.js";
export * from "./document/write-problem.js";

// Records of rain and of air.

export * from "./document/air-record.js";
export {
  type DateOrder,
  RAIN_UNITS,
  type RainFinding,
  type RainQuestion,
  type RainReading,
  type RainReadingOptions,
  type RainRecord,
  type RainUnit,
} from "./document/rain-record.js";
export * from "./document/read-air-record.js";
export * from "./document/read-rain-record.js";

// Tables of what is sold and what is known, each row with its source.

export { allAllowances } from "./tables/allowances.js";
export { hangPointsOf } from "./tables/bird-heights.js";
export type { BirdKind, HangPoint, IntakePoint } from "./tables/bird-types.js";
export { allBirds, birdById } from "./tables/birds.js";
export {
  allHoles,
  allSoils,
  allThreads,
  holeById,
  soilById,
  stockOfFamily,
  threadById,
} from "./tables/building.js";
export * from "./tables/building-types.js";
export {
  findBird,
  findDrinker,
  findFitting,
  findRoof,
  findVessel,
  findWaterer,
  type NamedWaterer,
} from "./tables/by-name.js";
export * from "./tables/citation.js";
export { allColours, colourById } from "./tables/colours.js";
export { allDrinkers, drinkerById } from "./tables/drinkers.js";
export * from "./tables/find-pipe.js";
export { allFittings, fittingAtBore, fittingById } from "./tables/fittings.js";
export { type Found, kindFound } from "./tables/found.js";
export { allFrostMaterials } from "./tables/frost-materials.js";
export { allPipes, pipeById, pipesOfFamily } from "./tables/pipes.js";
export { allRoofs, roofById } from "./tables/roofs.js";
export type {
  Allowance,
  DrinkerKind,
  FittingKind,
  PipeSize,
  RoofKind,
  Source as TableSource,
  SpilledShare,
  VesselKind,
} from "./tables/row-types.js";
export { sourceByKey } from "./tables/sources.js";
export { spilledShareOf } from "./tables/spilled-share.js";
export { allVessels, vesselById } from "./tables/vessels.js";
export type {
  AnyWaterer,
  FedBowl,
  NippleBucket,
  OpenPan,
  OpenTrough,
  VacuumFount,
  WatererKind,
} from "./tables/waterer-types.js";
export { allWaterers, watererById } from "./tables/waterers.js";
export * from "./tables/weather-types.js";

// What birds drink, when, and how they wait for it; formulas each on its own.

export * from "./birds/air.js";
export * from "./birds/day-curve.js";
export * from "./birds/flow-need.js";
export * from "./birds/hang-height.js";
export * from "./birds/intake.js";
export * from "./birds/queue.js";

// The formulas of water, air, frost, sun and loads, each on its own.

export * from "./physics/air.js";
export * from "./physics/air-gap.js";
export { GRAVITY, STANDARD_ATMOSPHERE } from "./physics/constants.js";
export * from "./physics/cooling.js";
export {
  FRICTION_RANGE,
  frictionFactorChurchill,
  frictionFactorColebrook,
  frictionFactorLaminar,
  frictionFactorSwameeJain,
  headLossDarcyWeisbach,
  headLossLaminar,
  type LaminarRun,
  type Regime,
  type RoughRun,
  regimeAt,
  reynoldsNumber,
  velocityInBore,
} from "./physics/darcy-weisbach.js";
export * from "./physics/draining.js";
export * from "./physics/drips.js";
export * from "./physics/drying.js";
export * from "./physics/evaporation.js";
export * from "./physics/fittings.js";
export * from "./physics/freezing.js";
export * from "./physics/ground.js";
export * from "./physics/hazen-williams.js";
export * from "./physics/load.js";
export * from "./physics/measured-drinker.js";
export * from "./physics/multi-outlet.js";
export * from "./physics/orifice.js";
export * from "./physics/screen.js";
export { type SunnyDay, sunAt, sunRiseOfPipe, sunRiseOfVessel, throughDay } from "./physics/sun.js";
export * from "./physics/swung-bell.js";
export {
  type FountRing,
  shareOfRimWet,
  shimFor,
  slopeThatDrains,
  waterInTiltedRing,
} from "./physics/tilted-fount.js";
export * from "./physics/tilted-pan.js";
export * from "./physics/tipping.js";
export * from "./physics/trapped-air.js";
export * from "./physics/vent.js";
export * from "./physics/vessel.js";
export { WATER_RANGE, type Water, waterAt } from "./physics/water.js";
export { DRAG, windPressure, windThatTips } from "./physics/wind.js";

// Pipe cut from lengths, pieces lent over periods: for stock and kit of any kind.

export { cutStock } from "./numerics/cutting/cut-stock.js";
export type { CutBar, Cutting, CuttingAsked } from "./numerics/cutting/cutting.js";
export * from "./numerics/lending/least-to-add.js";
export { type LendingAnswer, type LendingOptions, lendPieces } from "./numerics/lending/lend-pieces.js";
export type { Ask, Lending, LendingCost, Lent } from "./numerics/lending/lending.js";

// A plan as a line, a flock, a yard, in SI, and what can go wrong with it.

export * from "./model/build-flock.js";
export * from "./model/build-line.js";
export * from "./model/build-yard.js";
export type { FrostAsked, FrostNight, HeatAsked, HotDay } from "./model/extremes.js";
export type { Batch, Flock, Pen, RosterEntry, Stay, Weather } from "./model/flock.js";
export { flockAtLine } from "./model/flock-at-line.js";
export { type BatchIntake, type FlockIntake, INTAKE_DOUBT, intakeOfBatch } from "./model/flock-intake.js";
export { flockInDays, flockInHeat } from "./model/flock-on.js";
export {
  type DrinkerGroup,
  type Drinkers,
  type Feed,
  type Leak,
  type Line,
  type Points,
  type Run,
  SEGMENT_KIND,
  type Segments,
  type Source,
  type Vent,
} from "./model/line.js";
export * from "./model/mishap.js";
export { mishapsOf } from "./model/mishaps-of.js";
export { buildMoments, MOMENTS, type Moment, type MomentName, type Moments } from "./model/moment.js";
export { type CountedFitting, type FittedRun, listFittings, type WayIn } from "./model/pipe-kind.js";
export type { DefaultUsed } from "./model/typed-values.js";
export {
  WATERER_MISHAP_KINDS,
  type WatererMishap,
  type WatererMishapKind,
  watererMishapsOf,
} from "./model/waterer-mishap.js";
export { withMishap } from "./model/with-mishap.js";
export * from "./model/yard.js";

// The line solved.

export { type PreparedLine, prepareLine } from "./solve/prepare-line.js";
export * from "./solve/solution.js";
export { solveLine } from "./solve/solve-line.js";

// Crowd, day, level and rain through time.

export { TOGETHER } from "./simulate/crowd-load.js";
export { deviceOf, TAKEN_IN } from "./simulate/crowd-want.js";
export * from "./simulate/day.js";
export * from "./simulate/day-result.js";
export type { DayOptions } from "./simulate/day-run.js";
export { BEHAVIOUR, type DayBatch, type DaySetting, type Habits } from "./simulate/day-setting.js";
export * from "./simulate/day-summary.js";
export { SHORT_BELOW } from "./simulate/day-told.js";
export type { Drawdown, LevelPoint } from "./simulate/drawdown.js";
export * from "./simulate/drawn-pool.js";
export type { Pool } from "./simulate/pool.js";
export * from "./simulate/rain.js";
export type { Store } from "./simulate/store.js";

// From a plan to verdicts, and how sure they are.

export {
  type CheckOptions,
  checkPlan,
  checkPlanInSteps,
  FIRST_SAMPLES,
  MOST_SAMPLES,
} from "./judge/check-plan.js";
export * from "./judge/check-result.js";
export { type Checking, type CheckSteps, type LookOptions, lookAtPlan } from "./judge/look-at-plan.js";
export { type DoubtedInput, type InputName, SAMPLED_DOUBTS } from "./judge/sureness/doubted-inputs.js";
export * from "./judge/sureness/measure-again.js";
export * from "./judge/sureness/measuring.js";

// What birds drink and need.

export * from "./judge/birds/birds-for-plan.js";
export { type DrinkersAnswer, drinkersForPlan, type PlanDrinkers } from "./judge/birds/drinkers-for-plan.js";
export {
  type Device,
  type DeviceNeeded,
  type DrinkersAsked,
  type DrinkersNeeded,
  type DrinkersQuestion,
  drinkersNeeded,
  type PenDrinkers,
  type Region,
} from "./judge/birds/drinkers-needed.js";
export * from "./judge/birds/flock-report.js";
export type { HangRange } from "./judge/birds/hang-range.js";
export { spilledAtPen } from "./judge/birds/report-flock.js";
export * from "./judge/birds/week-report.js";
export * from "./judge/birds/weeks.js";

// Time: how long the water lasts, going away, the daily mark, carrying, a day, rain.

export * from "./judge/rain/rain-answer.js";
export { DOWNPOUR } from "./judge/rain/rain-roof.js";
export * from "./judge/rain/rain-supply.js";
export * from "./judge/time/carrying.js";
export * from "./judge/time/daily-mark.js";
export * from "./judge/time/going-away.js";
export * from "./judge/time/lasting.js";
export * from "./judge/time/simulate-day.js";

// What any one mishap does, what guards against it; what is wrong, from what is seen.

export { GUARD_KINDS, type Guard, type GuardResult } from "./judge/mishaps/guard.js";
export * from "./judge/mishaps/mishap-result.js";
export {
  type GuardsAnswer,
  guardsForMishap,
  type Mishaps,
  type MishapsAnswer,
  type MishapsOptions,
  mishapsOfPlan,
} from "./judge/mishaps/mishaps-of-plan.js";
export {
  WATERER_GUARD_KINDS,
  type WatererGuard,
  type WatererGuardKind,
  type WatererGuardResult,
} from "./judge/mishaps/waterers/waterer-guard.js";
export * from "./judge/mishaps/waterers/waterer-mishap-result.js";
export { compareWaterers } from "./judge/mishaps/waterers/waterer-mishaps-of-plan.js";
export type { AskOptions } from "./judge/trouble/ask-about-trouble.js";
export { CAUSE_CODES, type Cause, type CauseCode, type CausePlace } from "./judge/trouble/cause.js";
export type { LookAnswer, UsefulLook } from "./judge/trouble/next-look.js";
export {
  type Rehearsal,
  type Rehearsed,
  type RehearseOptions,
  rehearseTrouble,
} from "./judge/trouble/rehearse.js";
export * from "./judge/trouble/rehearse-two.js";
export {
  ANSWERS,
  type Jug,
  keyOfLook,
  type Look,
  type Looked,
  type Place,
  type Sight,
  type Sign,
} from "./judge/trouble/signs.js";
export type { Severity } from "./judge/trouble/trial.js";
export * from "./judge/trouble/trouble-result.js";
export type { SignFit } from "./judge/trouble/weigh.js";
export * from "./judge/trouble/what-is-wrong.js";

// Frost and heat.

export * from "./judge/weather/frost.js";
export { STOPPING_ICE } from "./judge/weather/frost-bodies.js";
export * from "./judge/weather/frost-record.js";
export * from "./judge/weather/frost-result.js";
export * from "./judge/weather/heat.js";
export { DRUNK_LESS_ABOVE, REFUSED_ABOVE } from "./judge/weather/heat-bodies.js";
export * from "./judge/weather/heat-record.js";
export * from "./judge/weather/heat-result.js";

// The loose waterers of every pen, and a year with its kit.

export { isGrave, type YardFinding } from "./judge/yard/yard-finding.js";
export * from "./judge/yard/yard-for-plan.js";
export * from "./judge/yard/yard-result.js";
export * from "./judge/year/year-for-plan.js";
export * from "./judge/year/year-result.js";

// Building: parts, cuts, holes, heights, order, tests, loads.

export * from "./judge/build/build-of-plan.js";
export * from "./judge/build/build-sheet.js";
export * from "./judge/build/part-list.js";
export { GUST } from "./judge/build/stand-loads.js";

// Choices compared, and the smallest change that makes a plan work.

export { type Comparing, compareSizes, type SizeComparison, type SizeRow } from "./search/compare-sizes.js";
export * from "./search/compare-variants.js";
export { COST_MEASURES, type Cost, type CostMeasure } from "./search/cost.js";
export type {
  Change,
  Close,
  Cure,
  CureAnswer,
  DrinkerOutcome,
  Outcome,
  Relaxation,
  SearchReport,
} from "./search/cure-answer.js";
export * from "./search/cure-kinds.js";
export { type CureOptions, STAND_MOST } from "./search/cure-options.js";
export * from "./search/find-cures.js";
export * from "./search/find-front.js";
export type { SceneReport, Spare } from "./search/requirement.js";

// Words: results as documents, files and sentences.

export * from "./report/all-words.js";
