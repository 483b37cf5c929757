/** Registers the elements that follow the first verdict. */
import { HeadfallAbove } from "./above/above-element.js";
import { HeadfallQuantity } from "./fields/quantity-field.js";
import { HeadfallProfileHands } from "./profile/hands/hands-element.js";

const elements = {
  "headfall-above": HeadfallAbove,
  "headfall-profile-hands": HeadfallProfileHands,
  "headfall-quantity": HeadfallQuantity,
} as const;

for (const [name, element] of Object.entries(elements)) {
  if (customElements.get(name) === undefined)
    customElements.define(name, element as CustomElementConstructor);
}

declare global {
  interface HTMLElementTagNameMap {
    "headfall-above": HeadfallAbove;
    "headfall-profile-hands": HeadfallProfileHands;
    "headfall-quantity": HeadfallQuantity;
  }
}
