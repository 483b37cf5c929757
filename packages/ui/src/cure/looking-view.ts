import { html } from "lit";

/** What is being tried, and the button that ends it. How much there is to try shows only at the end. */
export function lookingView(name: string, trying: string, cancel: () => void) {
  return html`<div class="ask"><progress aria-label=${name}></progress>
    <span>${trying === "" ? "Looking ..." : `Looking at ${trying}`}</span>
    <button type="button" @click=${cancel}>Cancel</button></div>`;
}

/** Said of what was found for the plan as it was. */
export const CHANGED = html`<p class="quiet">The plan has changed since this was found. Look again to have it of the plan as it is now.</p>`;
