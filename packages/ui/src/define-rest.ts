/** Registers the elements that follow the first verdict. */
import { HeadfallAbove } from "./above/above-element.js";
import { HeadfallQuantity } from "./fields/quantity-field.js";
import { HeadfallMeasure } from "./measure/measure-element.js";
import { HeadfallPart } from "./parts/part-element.js";
import { HeadfallProfileHands } from "./profile/hands/hands-element.js";
import { HeadfallSave } from "./sheet/save-element.js";
import { HeadfallSheet } from "./sheet/sheet-element.js";
import { HeadfallPlanTable } from "./tables/plan-table-element.js";
import { HeadfallHow } from "./verdicts/how-element.js";

const elements: Readonly<Record<string, CustomElementConstructor>> = {
  "headfall-above": HeadfallAbove,
  "headfall-how": HeadfallHow,
  "headfall-measure": HeadfallMeasure,
  "headfall-part": HeadfallPart,
  "headfall-plan-table": HeadfallPlanTable,
  "headfall-profile-hands": HeadfallProfileHands,
  "headfall-quantity": HeadfallQuantity,
  "headfall-save": HeadfallSave,
  "headfall-sheet": HeadfallSheet,
};

for (const [name, element] of Object.entries(elements)) {
  if (customElements.get(name) === undefined) customElements.define(name, element);
}

declare global {
  interface HTMLElementTagNameMap {
    "headfall-above": HeadfallAbove;
    "headfall-how": HeadfallHow;
    "headfall-measure": HeadfallMeasure;
    "headfall-part": HeadfallPart;
    "headfall-plan-table": HeadfallPlanTable;
    "headfall-profile-hands": HeadfallProfileHands;
    "headfall-quantity": HeadfallQuantity;
    "headfall-save": HeadfallSave;
    "headfall-sheet": HeadfallSheet;
  }
}
