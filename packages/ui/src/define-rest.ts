/** Registers the elements that follow the first verdict. */
import { HeadfallQuantity } from "./fields/quantity-field.js";

const elements = {
  "headfall-quantity": HeadfallQuantity,
} as const;

for (const [name, element] of Object.entries(elements)) {
  if (customElements.get(name) === undefined) customElements.define(name, element);
}

declare global {
  interface HTMLElementTagNameMap {
    "headfall-quantity": HeadfallQuantity;
  }
}
