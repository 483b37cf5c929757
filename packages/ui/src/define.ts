/** Registers the elements the first verdict needs; `define-rest.ts`, loaded after it, registers the others. */
import { HeadfallLine } from "./line/line-element.js";
import { HeadfallProfile } from "./profile/profile-element.js";

// So that whoever registers the elements has the types of their events.
export type { LineCheckedEvent } from "./line/line-checked-event.js";
export type { DrinkerChosenEvent } from "./profile/drinker-chosen-event.js";
export type { PlanChangedEvent } from "./store/plan-changed-event.js";

const elements = {
  "headfall-line": HeadfallLine,
  "headfall-profile": HeadfallProfile,
} as const;

for (const [name, element] of Object.entries(elements)) {
  if (customElements.get(name) === undefined) customElements.define(name, element);
}

declare global {
  interface HTMLElementTagNameMap {
    "headfall-line": HeadfallLine;
    "headfall-profile": HeadfallProfile;
  }
}
