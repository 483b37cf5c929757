/** Registers the elements of Headfall; the only file of this package with a side effect. */
import { HeadfallLine, HeadfallProfile, HeadfallQuantity } from "./index.js";

const elements = {
  "headfall-line": HeadfallLine,
  "headfall-profile": HeadfallProfile,
  "headfall-quantity": HeadfallQuantity,
} as const;

for (const [name, element] of Object.entries(elements)) {
  if (customElements.get(name) === undefined) customElements.define(name, element);
}

declare global {
  interface HTMLElementTagNameMap {
    "headfall-line": HeadfallLine;
    "headfall-profile": HeadfallProfile;
    "headfall-quantity": HeadfallQuantity;
  }
}
