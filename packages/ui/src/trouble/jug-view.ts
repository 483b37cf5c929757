import { html, nothing } from "lit";
import { readJug } from "../kernels/trouble/read-jug.js";
import type { TroubleRoom } from "./room.js";

/** A jug and a watch at one worked drinker: a number says more than a word. */
export function jugView({ line, jug, acts }: TroubleRoom) {
  const reading = readJug(jug);
  const wrong = jug.isTried && !reading.ok ? reading : undefined;
  const field = (name: "volume" | "time", label: string) => html`<label class="typed"><span>${label}</span>
    <input type="text" autocomplete="off" .value=${jug[name]} aria-invalid=${wrong?.wrong === name ? "true" : "false"}
      @input=${(event: Event) => acts.typeJug({ [name]: (event.target as HTMLInputElement).value })} />
    ${wrong?.wrong === name ? html`<span class="problem" role="alert">${wrong.because}</span>` : nothing}</label>`;
  return html`<details class="run"><summary><strong>A jug and a watch</strong></summary>
    <p>Hold a jug under one drinker, work it, and stop the time.</p>
    <div class="jug">
      <label class="typed"><span>Drinker</span>
        <select @change=${(event: Event) => acts.typeJug({ drinker: (event.target as HTMLSelectElement).value })}>
          ${line.drinkers.id.map((id) => html`<option value=${id} ?selected=${id === jug.drinker}>${id}</option>`)}
        </select></label>
      ${field("volume", "Caught")} ${field("time", "In")}
      <button type="button" @click=${acts.tellJug}>Tell it</button>
    </div>
  </details>`;
}
