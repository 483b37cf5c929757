// Reading and writing plans.

export { DEFAULTS } from "./document/defaults.js";
export {
  drinkerGroupsOf,
  PLAN_VERSION,
  type Plan,
  type PlanDrinkerGroup,
  type PlanFitting,
  type PlanPipe,
  type PlanPlace,
  type PlanPoint,
  type PlanRun,
  type PlanSource,
} from "./document/plan-schema.js";
export { PROBLEM_CODES, type Problem, type ProblemCode } from "./document/problem.js";
export { checkDocument, type PlanReading, readPlan, writePlan } from "./document/read-plan.js";
export { type RunEnds, runEnds, runNames, sourceNames } from "./document/run-ends.js";
export { LIMITS } from "./document/schema-parts.js";
export { VERSION } from "./document/version.js";
export { writeProblem } from "./document/write-problem.js";
// From a plan to a verdict.
export { type Checking, type CheckOptions, checkPlan } from "./judge/check-plan.js";
export * from "./judge/check-result.js";
export * from "./judge/flock-report.js";
export * from "./judge/week-report.js";
export { judgeWeeks, type WeeksOptions } from "./judge/weeks.js";
// The line itself, for those who solve it by hand.
export { buildLine, type LineBuilding } from "./model/build-line.js";
export * from "./model/line.js";
export { buildMoments, MOMENTS, type Moment, type MomentName, type Moments } from "./model/moment.js";
export { type CountedFitting, listFittings } from "./model/pipe-kind.js";
export type { DefaultUsed } from "./model/typed-values.js";
// The formulas, each on its own.
export * from "./physics/air.js";
export { GRAVITY, STANDARD_ATMOSPHERE } from "./physics/constants.js";
export * from "./physics/darcy-weisbach.js";
export * from "./physics/draining.js";
export * from "./physics/fittings.js";
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
export * from "./physics/vent.js";
export * from "./physics/vessel.js";
export { WATER_RANGE, type Water, waterAt } from "./physics/water.js";
// Words and documents.
export {
  writeAge,
  writeBirdFinding,
  writeGroupCrowd,
  writePen,
  writeSeconds,
} from "./report/bird-sentences.js";
export { writeCaution } from "./report/caution-sentences.js";
export { CHECK_FORMAT, type CheckDocument, writeCheckDocument } from "./report/check-document.js";
export { type CsvCell, type CsvOptions, writeCsv } from "./report/csv.js";
export { writeDrinkersCsv } from "./report/csv-drinkers.js";
export { writeHeightsCsv, writeRunsCsv, writeSourcesCsv } from "./report/csv-line.js";
export type { CsvUnits } from "./report/csv-units.js";
export {
  writeCertainty,
  writeFinding,
  writeJudgement,
  writeReason,
  writeVerdict,
} from "./report/sentences.js";
export { WEEKS_FORMAT, writeWeeksDocument } from "./report/weeks-document.js";
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
// Choices compared.
export {
  type Comparing,
  compareSizes,
  type SizeComparison,
  type SizeRow,
  withPipe,
} from "./search/compare-sizes.js";
export { type PreparedLine, prepareLine } from "./solve/prepare-line.js";
export { FRICTION_LAWS, type FrictionLaw, type LineSolution } from "./solve/solution.js";
export { solveLine } from "./solve/solve-line.js";
export { findDrinker, findFitting, findPipe, findVessel } from "./tables/by-name.js";
// Tables.
export { allDrinkers, type DrinkerKind, drinkerById } from "./tables/drinkers.js";
export { allFittings, type FittingKind, fittingAtBore, fittingById } from "./tables/fittings.js";
export { allPipes, type PipeSize, pipeById, pipesOfFamily } from "./tables/pipes.js";
export { sourceByKey } from "./tables/sources.js";
export { allVessels, type VesselKind, vesselById } from "./tables/vessels.js";
// Quantities as people type them.
export {
  type Quantity,
  type QuantityKind,
  readQuantity,
  type UnitSystem,
  writeQuantity,
} from "./units/quantity.js";
