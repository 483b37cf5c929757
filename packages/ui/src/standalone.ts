/**
 * Everything in one file for a page of one's own: the library's functions and the elements, registered. Built into
 * `dist/headfall.js`; a page that has a bundler imports `@headfall/ui/define` and `@headfall/hydraulics` instead.
 */
import "./define.js";

export * from "@headfall/hydraulics";
export {
  DrinkerChosenEvent,
  EditWantedEvent,
  GestureGivenUpEvent,
  HeadfallLine,
  HeadfallProfile,
  HeadfallQuantity,
  LineCheckedEvent,
  PartChosenEvent,
  PlanChangedEvent,
  PlanStore,
  QuantityChangedEvent,
} from "./index.js";
