import { html, nothing } from "lit";
import { readStand } from "../kernels/trouble/read-stand.js";
import type { TroubleRoom } from "./room.js";

/** Where the water stands now; left empty it is the level of an ordinary hour. */
export function standField({ stands, system, acts }: TroubleRoom, source: string, full: number) {
  const typed = stands[source] ?? "";
  const reading = readStand(typed, full, system);
  return html`<label class="typed"><span>Water stands above the bottom, if you know</span>
    <input type="text" autocomplete="off" placeholder=${system === "us" ? "16 in" : "40 cm"} .value=${typed} aria-invalid=${reading.ok ? "false" : "true"}
      aria-label=${`Water stands above the bottom of ${source}, if you know`}
      @change=${(event: Event) => acts.typeStand(source, (event.target as HTMLInputElement).value)} />
    ${reading.ok ? nothing : html`<span class="problem" role="alert">${reading.because}</span>`}</label>`;
}
