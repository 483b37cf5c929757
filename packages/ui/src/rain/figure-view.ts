import { html } from "lit";
import type { RainSaid } from "./room.js";

/** Which figure of what birds drink is drawn. */
export function figureView({ figure, acts }: RainSaid) {
  return html`<fieldset><legend tabindex="-1">What is drunk</legend>
    <div class="field"><label for="rain-figure">Birds drink</label>
      <select id="rain-figure" @change=${(event: Event) => acts.drink((event.target as HTMLSelectElement).value as "expect" | "size")}>
        <option value="size" ?selected=${figure === "size"}>what to size on</option>
        <option value="expect" ?selected=${figure === "expect"}>what is to be expected</option>
      </select></div>
  </fieldset>`;
}
