/** Registers the elements the first verdict needs; `define-rest.ts`, loaded after it, registers the others. */
import { HeadfallLine } from "./line/line-element.js";
import { HeadfallProfile } from "./profile/profile-element.js";

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
