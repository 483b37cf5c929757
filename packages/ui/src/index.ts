/**
 * The elements of Headfall, as classes. Importing this registers nothing; `@headfall/ui/define` does.
 */
// The whole: a plan from the side, its verdicts, and what can be changed.

export { QuantityChangedEvent } from "./fields/quantity-changed-event.js";
// Its parts, for pages of one's own.
export { HeadfallQuantity } from "./fields/quantity-field.js";
// The way through the line that a profile draws.
export { type ProfilePath, pathToDrinker } from "./kernels/profile-path.js";
export type { UnitSystem } from "./kernels/typed-quantity.js";
export { LineCheckedEvent } from "./line/line-checked-event.js";
export { HeadfallLine } from "./line/line-element.js";
// Events, typed by name on every element.
export { DrinkerChosenEvent } from "./profile/drinker-chosen-event.js";
export { HeadfallProfile } from "./profile/profile-element.js";
// The plan as an immutable value, and its named edits.
export { EditWantedEvent, GestureGivenUpEvent } from "./store/edit-wanted-event.js";
export { PartChosenEvent } from "./store/part-chosen-event.js";
export type { Edited, LevelName, PlanChange, RunEndChoice } from "./store/plan-change.js";
export { PlanChangedEvent } from "./store/plan-changed-event.js";
export { type PlanCause, type PlanListener, PlanStore } from "./store/plan-store.js";
