import { sourceByKey, writeRain } from "@headfall/hydraulics";
import { html } from "lit";
import type { RainRoom } from "./room.js";

const SOURCES = ["enhealth-2011", "jenkins-1978", "rippl-1883"] as const;

/** The rules a record is gone through by, and who says so. */
export function howView({ supply, system }: RainRoom) {
  const { roof } = supply;
  return html`<section aria-labelledby="how-rain"><h3 id="how-rain">How it was got</h3>
    <details><summary>The rules, and who says so</summary>
      <ul>
        <li>Into the vessel: Q = c A max(0, P − w), less what the diverter keeps of each run of wet days. Here c is ${Number((100 * roof.runoff).toPrecision(3))} %, w ${writeRain(roof.wetting, system)}. P is the rain of the day.</li>
        <li>Drawn before the day's rain: Y = min(D, V), then V' = min(V + Q − Y, S − Y). This understates what is given.</li>
        <li>Rain of the day counted: Y = min(D, V + Q), then V' = min(V + Q − Y, S). This overstates it.</li>
        <li>Y is what birds get, D what they want that day, V what is in the vessel, S what it gives from full to its lowest level. A day is short when more than a millilitre is missing.</li>
        <li>The size that never fails: K' = max(0, K + D − Q), the greatest K of the record gone through twice (sequent peak).</li>
        <li>The flock stays as it is on the plan's day. Days whose rain is not known are taken as dry. A value that failed a check of those who keep the record is left out.</li>
        <li>Left out: snow that lies, evaporation, leaks, and what birds do when they come short. A past record is no promise.</li>
        <li>Sources: ${SOURCES.map((key) => nameOf(key)).join("; ")}.</li>
      </ul>
    </details></section>`;
}

function nameOf(key: string): string {
  const source = sourceByKey(key);
  if (source === undefined) return key;
  const { authors, title, year, opened } = source;
  return `${authors === undefined ? "" : `${authors}, `}${title}${year === undefined ? "" : ` (${year})`}${opened === "from memory" ? ", from memory" : ""} [${key}]`;
}
