/**
 * The elements of Headfall, as classes. Importing this registers nothing; `@headfall/ui/define` does.
 */

// Its parts, for pages of one's own.
export { HeadfallAbove } from "./above/above-element.js";
// The rooms beside the line.
export { HeadfallBirds } from "./birds/birds-element.js";
export { HeadfallBuild } from "./build/build-element.js";
export { HeadfallCure } from "./cure/cure-element.js";
export type { KeptPlan } from "./cure/room.js";
export { HeadfallDay } from "./day/day-element.js";
// Events, typed by name on every element.
export { QuantityChangedEvent } from "./fields/quantity-changed-event.js";
export { HeadfallQuantity } from "./fields/quantity-field.js";
// What they show: the chosen part, the way through the line, a number and how it was got.
export { howGotOf } from "./kernels/how-got/how-got-of.js";
export type { RoomTold } from "./kernels/how-got/request.js";
export type { HowSubject } from "./kernels/how-got/subject.js";
export { type ProfilePath, pathTo, pathToDrinker } from "./kernels/profile-path.js";
export type { Selected } from "./kernels/selected.js";
export type { UnitSystem } from "./kernels/typed-quantity.js";
// The whole: a plan to be sketched, its verdicts, and how each number was got.
export { LineCheckedEvent } from "./line/line-checked-event.js";
export { HeadfallLine } from "./line/line-element.js";
export { HeadfallMeasure } from "./measure/measure-element.js";
export { HeadfallMishaps } from "./mishaps/mishaps-element.js";
export { HeadfallPart } from "./parts/part-element.js";
export { DrinkerChosenEvent } from "./profile/drinker-chosen-event.js";
export { HeadfallProfileHands } from "./profile/hands/hands-element.js";
export { HeadfallProfile } from "./profile/profile-element.js";
export { HeadfallRain } from "./rain/rain-element.js";
export type { RainExample } from "./rain/rain-example.js";
export { HeadfallSave } from "./sheet/save-element.js";
export type { SavedDrawing } from "./sheet/saved-drawing.js";
export { HeadfallSheet } from "./sheet/sheet-element.js";
// The plan as an immutable value, its edits as data, and the difference of two plans.
export { editPlan } from "./store/edit-plan.js";
export { EditWantedEvent, GestureGivenUpEvent } from "./store/edit-wanted-event.js";
export { PartChosenEvent } from "./store/part-chosen-event.js";
export type { Edited, LevelName, PlanChange, RunEndChoice } from "./store/plan-change.js";
export { PlanChangedEvent } from "./store/plan-changed-event.js";
export { applyDiff, diffPlans, type PlanDiff, reverseDiff } from "./store/plan-diff.js";
export type { PlanStep } from "./store/plan-history.js";
export { type PlanCause, type PlanListener, PlanStore } from "./store/plan-store.js";
export { HeadfallPlanTable } from "./tables/plan-table-element.js";
export { HeadfallTime } from "./time/time-element.js";
export { HeadfallTrouble } from "./trouble/trouble-element.js";
export { HeadfallHow } from "./verdicts/how-element.js";
export { HowClosedEvent, HowWantedEvent } from "./verdicts/how-wanted-event.js";
export type { AirExample } from "./weather/air-example.js";
export { HeadfallWeather } from "./weather/weather-element.js";
export { HeadfallYard } from "./yard/yard-element.js";
export { HeadfallYear } from "./year/year-element.js";
