import { html, nothing } from "lit";
import type { DayActs } from "./room.js";

export interface DayChoice {
  readonly seed: number;
  readonly figure: "expect" | "size";
  readonly hot: boolean;
  /** Whether the plan has a hot spell to choose. */
  readonly hasHotSpell: boolean;
  readonly acts: DayActs;
}

/** Which day it is: its chance, how much is drunk, how hot it is. */
export function choiceView({ seed, figure, hot, hasHotSpell, acts }: DayChoice) {
  return html`<div class="bar choices">
    <button type="button" @click=${acts.another}>Another day</button>
    ${seed > 1 ? html`<button type="button" @click=${acts.firstDay}>Back to day 1</button>` : nothing}
    <label class="choice">Birds drink
      <select @change=${(event: Event) => acts.drink((event.target as HTMLSelectElement).value as "expect" | "size")}>
        <option value="expect" ?selected=${figure === "expect"}>what is to be expected</option>
        <option value="size" ?selected=${figure === "size"}>what to size on</option>
      </select></label>
    ${
      hasHotSpell
        ? html`<label class="choice">Weather
            <select @change=${(event: Event) => acts.heat((event.target as HTMLSelectElement).value === "hot")}>
              <option value="usual" ?selected=${!hot}>as the plan says</option>
              <option value="hot" ?selected=${hot}>hot spell</option>
            </select></label>`
        : nothing
    }
  </div>`;
}
