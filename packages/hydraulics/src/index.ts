// Reading and writing plans.
export { checkDocument, type PlanReading, readPlan, writePlan } from "./document/read-plan.js";
export { LIMITS, type Plan, type PlanDrinkerGroup, type PlanFitting, type PlanPipe, type PlanPoint, type PlanRun, type PlanSource, PLAN_VERSION, drinkerGroupsOf } from "./document/plan-schema.js";
export { PROBLEM_CODES, type Problem, type ProblemCode } from "./document/problem.js";
export { writeProblem } from "./document/write-problem.js";
export { DEFAULTS } from "./document/defaults.js";

// From a plan to a verdict.
export { type Checking, type CheckOptions, checkPlan } from "./judge/check-plan.js";
export * from "./judge/check-result.js";

// The line itself, for those who solve it by hand.
export { buildLine, type LineBuilding } from "./model/build-line.js";
export * from "./model/line.js";
export { buildMoments, MOMENTS, type Moment, type MomentName, type Moments } from "./model/moment.js";
export type { DefaultUsed } from "./model/typed-values.js";
export { type PreparedLine, prepareLine } from "./solve/prepare-line.js";
export { FRICTION_LAWS, type FrictionLaw, type LineSolution } from "./solve/solution.js";
export { solveLine } from "./solve/solve-line.js";

// Tables.
export { allDrinkers, drinkerById, type DrinkerKind } from "./tables/drinkers.js";
export { allFittings, fittingById, type FittingKind } from "./tables/fittings.js";
export { allPipes, pipeById, pipesOfFamily, type PipeSize } from "./tables/pipes.js";
export { allVessels, type VesselKind } from "./tables/vessels.js";
export { findDrinker, findFitting, findPipe, findVessel } from "./tables/by-name.js";
export { sourceByKey } from "./tables/sources.js";

// Quantities as people type them.
export { type Quantity, type QuantityKind, readQuantity, type UnitSystem, writeQuantity } from "./units/quantity.js";

export { VERSION } from "./version.js";
