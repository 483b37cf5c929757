/**
 * All of the line that may follow the first verdict: the drawings to be sketched on, the panel of the chosen part,
 * the tables. `HeadfallLine` loads it once the first verdict is shown.
 */
import type { Plan } from "@headfall/hydraulics";
import "../define-rest.js";
import { PlanStore } from "../store/plan-store.js";
import { tableStyles } from "../tables/table.styles.js";

export { barView, toolsBelow } from "./bar-view.js";

import { boardStyles } from "./board.styles.js";

export { deepView } from "./deep-view.js";
export { drawingsView } from "./drawings-view.js";
export { sideView } from "./side-view.js";

/** The store of a line that was given a plan alone. */
export const storeOf = (plan: Plan): PlanStore => new PlanStore(plan);

/** The styles of all this, for the element to add to its own. */
export const restStyles = [tableStyles, boardStyles].map(({ styleSheet }) => styleSheet!);
