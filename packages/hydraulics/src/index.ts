// Reading and writing plans.

// What birds drink, when, and how they wait for it; formulas each on its own.
export * from "./birds/air.js";
export * from "./birds/day-curve.js";
export * from "./birds/flow-need.js";
export * from "./birds/hang-height.js";
export * from "./birds/intake.js";
export * from "./birds/queue.js";
// Frost: a night, what it stops, what to drain.
export * from "./document/air-record.js";
export { checkDocument, type PlanReading } from "./document/check-document.js";
export { COLOURS, type Colour } from "./document/colours.js";
export { DEFAULTS } from "./document/defaults.js";
export { LIMITS } from "./document/limits.js";
export { type PlanDifference, planDifferences } from "./document/plan-differences.js";
export { batchesOf, drinkerGroupsOf } from "./document/plan-lists.js";
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
// Rain: records, and whether a roof and a vessel will do.
export * from "./document/rain-record.js";
export { readAirRecord } from "./document/read-air-record.js";
export { readPlan } from "./document/read-plan.js";
export { readRainRecord } from "./document/read-rain-record.js";
export { REGIONS } from "./document/regions.js";
export { type RunEnds, runEnds, runNames, sourceNames } from "./document/run-ends.js";
export { VERSION } from "./document/version.js";
export { writePlan } from "./document/write-plan.js";
export { writeProblem } from "./document/write-problem.js";
// What birds drink and need.
export * from "./judge/birds/birds-for-plan.js";
export * from "./judge/birds/drinkers-for-plan.js";
export * from "./judge/birds/drinkers-needed.js";
export * from "./judge/birds/flock-report.js";
export { spilledAtPen } from "./judge/birds/report-flock.js";
export * from "./judge/birds/week-report.js";
export { judgeWeeks, type WeeksOptions } from "./judge/birds/weeks.js";
// From a plan to a verdict.
export { type CheckOptions, checkPlan, FIRST_SAMPLES, MOST_SAMPLES } from "./judge/check-plan.js";
export * from "./judge/check-result.js";
export { type Checking, type LookOptions, lookAtPlan } from "./judge/look-at-plan.js";
// What any one mishap does, and what guards against it.
export * from "./judge/mishaps/guard.js";
export { findLimiter, type Limiter } from "./judge/mishaps/limiter.js";
export type { Balance, MishapEnd, MishapResult, MishapRow } from "./judge/mishaps/mishap-result.js";
export * from "./judge/mishaps/mishaps-of-plan.js";
export type { RainAnswer, RainOptions, RainPart, RainRun, RainSupply } from "./judge/rain/rain-answer.js";
export { DOWNPOUR } from "./judge/rain/rain-roof.js";
export { RAIN_RUNS } from "./judge/rain/rain-runs.js";
export { rainSupply } from "./judge/rain/rain-supply.js";
export {
  DOUBT_UNIT,
  type DoubtedInput,
  type InputKind,
  type InputName,
  SAMPLED_DOUBTS,
} from "./judge/sureness/doubted-inputs.js";
export { type MeasureAnswer, measureAgain } from "./judge/sureness/measure-again.js";
export * from "./judge/sureness/measuring.js";
// Time: how long the water lasts, going away, the daily mark, carrying.
export { type Carrying, type CarryingAnswer, type CarryingDay, carryingOf } from "./judge/time/carrying.js";
export { dailyMark, type Mark, type MarkAnswer, type StickMark } from "./judge/time/daily-mark.js";
export {
  type Away,
  type AwayAnswer,
  type AwaySource,
  goingAway,
  type StationFailure,
} from "./judge/time/going-away.js";
export * from "./judge/time/lasting.js";
// A simulated day of the birds at their drinkers.
export {
  type SettingDay,
  type SimulateOptions,
  type Simulating,
  settingOfPlan,
  simulateDay,
} from "./judge/time/simulate-day.js";
// What is wrong, from what is seen.
export type { AskOptions } from "./judge/trouble/ask-about-trouble.js";
export {
  CAUSE_CODES,
  type Cause,
  type CauseCode,
  type CausePlace,
} from "./judge/trouble/cause.js";
export type { LookAnswer, UsefulLook } from "./judge/trouble/next-look.js";
export {
  type Rehearsal,
  type Rehearsed,
  type RehearseOptions,
  rehearseTrouble,
} from "./judge/trouble/rehearse.js";
export { type RehearsalOfTwo, type RehearsedTwo, rehearseTwo } from "./judge/trouble/rehearse-two.js";
export {
  ANSWERS,
  type Jug,
  keyOfLook,
  type Look,
  type Looked,
  PLACES_OF,
  type Place,
  type Sight,
  type Sign,
} from "./judge/trouble/signs.js";
export type { Severity } from "./judge/trouble/trial.js";
export type {
  LikelyCause,
  NamedCause,
  Trouble,
  TroubleAnswer,
  TwoAtOnce,
} from "./judge/trouble/trouble-result.js";
export type { SignFit } from "./judge/trouble/weigh.js";
export { type TroubleOptions, whatIsWrong } from "./judge/trouble/what-is-wrong.js";
export { frostOfPlan } from "./judge/weather/frost.js";
export { STOPPING_ICE } from "./judge/weather/frost-bodies.js";
export * from "./judge/weather/frost-record.js";
export { REFILL_AIRS, refillsInFrost } from "./judge/weather/frost-refills.js";
export * from "./judge/weather/frost-result.js";
// Heat: a clear day, what still water comes to, what to flush.
export { heatOfPlan } from "./judge/weather/heat.js";
export { DRUNK_LESS_ABOVE, REFUSED_ABOVE } from "./judge/weather/heat-bodies.js";
export * from "./judge/weather/heat-result.js";
// The loose waterers of every pen.
export { slopeThatHalves, waterOn } from "./judge/yard/waterer-tilt.js";
export { isGrave, type YardFinding } from "./judge/yard/yard-finding.js";
export { yardForPlan } from "./judge/yard/yard-for-plan.js";
export * from "./judge/yard/yard-result.js";
// A year of a plan, and the kit given out to its pens.
export { type YearOptions, yearForPlan } from "./judge/year/year-for-plan.js";
export * from "./judge/year/year-result.js";
export { buildFlock, type FlockBuilding } from "./model/build-flock.js";
// The line itself, for those who solve it by hand.
export { buildLine, type LineBuilding } from "./model/build-line.js";
export { buildYard, type YardBuilding } from "./model/build-yard.js";
export { type Drain, drainOf, type Sag } from "./model/drain.js";
export type { FrostAsked, FrostNight, HeatAsked, HotDay } from "./model/extremes.js";
export * from "./model/flock.js";
export { flockAtLine } from "./model/flock-at-line.js";
export * from "./model/flock-intake.js";
export { flockInDays, flockInHeat, flockInHottest, HOT_DAY } from "./model/flock-on.js";
export * from "./model/line.js";
// What can go wrong, made from the plan.
export { MISHAP_KINDS, type Mishap, type MishapKind } from "./model/mishap.js";
export { mishapsOf } from "./model/mishaps-of.js";
export { buildMoments, MOMENTS, type Moment, type MomentName, type Moments } from "./model/moment.js";
export { type CountedFitting, listFittings } from "./model/pipe-kind.js";
export type { DefaultUsed } from "./model/typed-values.js";
export { flockWithMishap, withMishap } from "./model/with-mishap.js";
export { FACING, HOLE_WAYS, type HoleWay, type LooseWaterer, type Yard, type YardPen } from "./model/yard.js";
export { buildYearWeather, type YearWeather } from "./model/year-weather.js";
// Pieces lent over periods at least cost: for kits of any kind.
export { type LeastToAdd, leastToAdd } from "./numerics/lending/least-to-add.js";
export { type LendingAnswer, type LendingOptions, lendPieces } from "./numerics/lending/lend-pieces.js";
export {
  type Ask,
  compareLending,
  costOfLending,
  type Lending,
  type LendingCost,
  type Lent,
} from "./numerics/lending/lending.js";
// The formulas, each on its own.
export * from "./physics/air.js";
export { GRAVITY, STANDARD_ATMOSPHERE } from "./physics/constants.js";
export * from "./physics/cooling.js";
export * from "./physics/darcy-weisbach.js";
export * from "./physics/draining.js";
export * from "./physics/drips.js";
export * from "./physics/evaporation.js";
export * from "./physics/fittings.js";
export * from "./physics/freezing.js";
export * from "./physics/ground.js";
export * from "./physics/hazen-williams.js";
export {
  doubtOfFlow,
  fitDrinkerLaw,
  type MeasuredLaw,
  type MeasurementFinding,
  type MeasurementOptions,
} from "./physics/measured-drinker.js";
export * from "./physics/multi-outlet.js";
export * from "./physics/orifice.js";
export * from "./physics/sun.js";
export * from "./physics/swung-bell.js";
export * from "./physics/tilted-fount.js";
export * from "./physics/tilted-pan.js";
export * from "./physics/trapped-air.js";
export * from "./physics/vent.js";
export * from "./physics/vessel.js";
export { WATER_RANGE, type Water, waterAt } from "./physics/water.js";
export {
  writeAge,
  writeBirdFinding,
  writeGroupCrowd,
  writePen,
  writeSeconds,
} from "./report/birds/bird-sentences.js";
export {
  writeAsks,
  writeForce,
  writeNeedReason,
  writeSilences,
} from "./report/birds/drinkers-needed-text.js";
export { WEEKS_FORMAT, writeWeeksDocument } from "./report/birds/weeks-document.js";
// Building: parts, cuts, holes, heights, order, tests, loads; and their words.
export * from "./report/build/building.js";
export { writeCaution } from "./report/caution-sentences.js";
export { CHECK_FORMAT, type CheckDocument, writeCheckDocument } from "./report/check-document.js";
export { type CsvCell, type CsvOptions, writeCsv } from "./report/csv.js";
export { writeDrinkersCsv } from "./report/csv-drinkers.js";
export { writeHeightsCsv, writeRunsCsv, writeSourcesCsv } from "./report/csv-line.js";
export type { CsvUnits } from "./report/csv-units.js";
export { CURE_FORMAT, writeCureDocument, writeFrontDocument } from "./report/cure/cure-document.js";
export * from "./report/cure/cure-sentences.js";
export { writeVariantsDocument } from "./report/cure/variants-document.js";
export {
  bestOf,
  nameOf,
  VARIANT_ROWS,
  type VariantRow,
  writeConclusion,
  writeDifference,
} from "./report/cure/variants-text.js";
export { writeDuration } from "./report/durations.js";
export { writeFinding } from "./report/finding-sentences.js";
export {
  writeGuards,
  writeHarm,
  writeLoss,
  writeNothing,
  writeRowName,
} from "./report/mishaps/mishap-sentences.js";
export { type Named, writeGain, writeGuard, writeMishap } from "./report/mishaps/mishap-words.js";
export { writeMishapCautions } from "./report/mishaps/mishaps-text.js";
export { writeNames } from "./report/name-ranges.js";
export { writeJudgement, writeReason } from "./report/sentences.js";
export { writeCertainty, writeDoubt, writeInput } from "./report/sureness/certainty-words.js";
export { writeMeasureDocument } from "./report/sureness/measure-document.js";
export {
  MEASURED_AS_WRITTEN,
  writeBetter,
  writeMeasuring,
  writeRemedy,
  writeSways,
  writeWorthwhile,
} from "./report/sureness/measure-words.js";
// Words and documents.
export { writeAwayAnswer, writeFailure, writeLookEvery } from "./report/time/away-text.js";
export * from "./report/time/day-text.js";
export { LEFT_OUT, writeCarryingLines, writeRefill } from "./report/time/lasting-text.js";
export { writeMarkLines } from "./report/time/mark-text.js";
export {
  SEASON_WORDS,
  writeRain,
  writeRainAnswer,
  writeRainCautions,
  writeRainFinding,
  writeRainQuestion,
  writeRainRun,
} from "./report/time/rain-text.js";
export { writeCause } from "./report/trouble/trouble-causes.js";
export { writeTroubleDocument } from "./report/trouble/trouble-document.js";
export {
  percent as writeChance,
  writeAnswers,
  writeLook,
  writeLookAnswer,
  writeSight,
  writeSigns,
  writeUsefulLook,
} from "./report/trouble/trouble-looks.js";
export { TROUBLE_CAUTIONS, writeNextLook, writeTried, writeWhy } from "./report/trouble/trouble-text.js";
export { writeTodo } from "./report/trouble/trouble-todo.js";
export { writeBothCauses, writeTwoAtOnce } from "./report/trouble/trouble-two.js";
export { writeVerdict } from "./report/verdict-sentences.js";
export * from "./report/weather/frost-sentences.js";
export * from "./report/weather/heat-sentences.js";
export {
  LAW_WORDS,
  MOMENT_WORDS,
  writeFlow,
  writeHead,
  writeMargin,
  writeMass,
  writeVelocity,
  writeVolume,
} from "./report/words.js";
export * from "./report/yard/yard-sentences.js";
export * from "./report/yard/yard-words.js";
export { writeYearCsv } from "./report/year/csv-year.js";
export { writeYearCalendar } from "./report/year/year-calendar.js";
export * from "./report/year/year-sentences.js";
// Choices compared, and the smallest change that makes a plan work.
export {
  type Comparing,
  compareSizes,
  type SizeComparison,
  type SizeRow,
  withPipe,
} from "./search/compare-sizes.js";
export * from "./search/compare-variants.js";
export { COST_MEASURES, type Cost, type CostMeasure } from "./search/cost.js";
export * from "./search/cure-answer.js";
export { type CureOptions, STAND_MOST } from "./search/cure-options.js";
export { type FindingCures, findCures } from "./search/find-cures.js";
export * from "./search/find-front.js";
export type { SceneReport, Spare } from "./search/requirement.js";
export { TOGETHER } from "./simulate/crowd-load.js";
export { deviceOf, TAKEN_IN } from "./simulate/crowd-want.js";
export { type DayOptions, runDay } from "./simulate/day.js";
export { SHORT_BELOW } from "./simulate/day-log.js";
export * from "./simulate/day-result.js";
export { BEHAVIOUR, type DaySetting } from "./simulate/day-setting.js";
export * from "./simulate/day-summary.js";
export type { LevelPoint, Refill } from "./simulate/drawdown.js";
export * from "./simulate/rain.js";
export { type PreparedLine, prepareLine } from "./solve/prepare-line.js";
export { FRICTION_LAWS, type FrictionLaw, type LineSolution } from "./solve/solution.js";
export { solveLine } from "./solve/solve-line.js";
export { type Allowance, allAllowances } from "./tables/allowances.js";
export { type HangPoint, hangPointsOf } from "./tables/bird-heights.js";
export { allBirds, type BirdKind, birdById, type IntakePoint } from "./tables/birds.js";
// Tables.
export {
  findBird,
  findDrinker,
  findFitting,
  findPipe,
  findRoof,
  findVessel,
  findWaterer,
} from "./tables/by-name.js";
export { allColours, colourById, type SunColour } from "./tables/colours.js";
export { allDrinkers, type DrinkerKind, drinkerById } from "./tables/drinkers.js";
export { allFittings, type FittingKind, fittingAtBore, fittingById } from "./tables/fittings.js";
export { allFrostMaterials, type FrostMaterial } from "./tables/frost-materials.js";
export { allPipes, type PipeSize, pipeById, pipesOfFamily } from "./tables/pipes.js";
export { allRoofs, type RoofKind, roofById } from "./tables/roofs.js";
export { sourceByKey } from "./tables/sources.js";
export { type SpilledShare, spilledShareOf } from "./tables/spilled-share.js";
export { allVessels, type VesselKind, vesselById } from "./tables/vessels.js";
export { allWaterers, type VacuumFount, type WatererKind, watererById } from "./tables/waterers.js";
// Days and quantities as people type them.
export { dateOf, dayNumber, readClock, readDay, writeClock, writeDay } from "./units/day.js";
export {
  type Quantity,
  type QuantityKind,
  readQuantity,
  type UnitSystem,
  writeQuantity,
} from "./units/quantity.js";
