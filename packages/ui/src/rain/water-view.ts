import { writeRain, writeRainCautions, writeRainRun } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import type { RainFigure } from "../kernels/how-got/subject.js";
import { exactVolume } from "../kernels/rain/exact-volume.js";
import { showFlow, showLength, showVolume } from "../kernels/shown.js";
import { numberButton } from "../verdicts/number-button.js";
import type { RainRoom } from "./room.js";

const asked = (what: RainFigure, way = 0) => ({ of: "rain", what, way }) as const;

/** Where all the water went, to the millilitre. */
export function balanceView({ run, runIndex, system }: RainRoom) {
  const { start, in: cameIn, given, over, end } = run.balance.sums;
  const rows = [
    { words: "There at the start", value: start },
    { words: "Came in off the roof", value: cameIn, what: "cameIn" as const },
    { words: "Drunk", value: given },
    { words: "Ran over", value: over },
    { words: "Left at the end", value: end },
  ];
  const off = start + cameIn - given - over - end;
  return html`<section aria-labelledby="litres">
    <h3 id="litres">Where the water went</h3>
    <div class="scroller" role="region" aria-label="Balance of water" tabindex="0"><table>
      <caption>${writeRainRun(run)}</caption>
      <tbody>${rows.map(({ words, value, what }) => {
        const text = exactVolume(value, system);
        return html`<tr><th scope="row">${words}</th><td>${what === undefined ? text : numberButton(text, asked(what, runIndex))}</td></tr>`;
      })}
        <tr><th scope="row">Unaccounted for</th><td>${numberButton(exactVolume(Math.abs(off), system), asked("balance", runIndex))}</td></tr></tbody></table></div>
  </section>`;
}

/** A downpour, the wettest day, and what can go wrong with roof water. */
export function overflowView({ supply, system }: RainRoom) {
  const { downpour, diameter, passes, isEnough, needed, wettest, wettestOver } = supply.overflow;
  return html`<section aria-labelledby="overflow">
    <h3 id="overflow">Overflow</h3>
    <p class=${isEnough ? "good" : "dry"}><strong>${isEnough ? "The overflow is wide enough for a downpour." : "The overflow is too narrow for a downpour: fit a wider one, and lead it away from the stand's feet."}</strong></p>
    <ul>
      <li>In ${writeRain(0.1, system)} an hour the roof sheds ${numberButton(showFlow(downpour, system), asked("downpour"))}; the overflow (${showLength(diameter, system)}) passes ${numberButton(showFlow(passes, system), asked("passes"))}.</li>
      <li>Least that would do: ${numberButton(showLength(needed, system), asked("overflowNeeded"))} inside.</li>
      <li>On the wettest day of the record (${writeRain(wettest, system)}) up to ${numberButton(showVolume(wettestOver, system), asked("wettestOver"))} run through or over.</li>
    </ul>
  </section>`;
}

/** What the library says of overflow stands above with its figures. */
const OVERFLOW_SENTENCES = 2;

export function cautionsView({
  supply,
  system,
}: Partial<Pick<RainRoom, "supply">> & Pick<RainRoom, "system">) {
  return html`<section class="cautions" aria-label="Cautions">
    <p><strong>Rain from a roof is not drinking water for people.</strong></p>
    ${
      supply === undefined
        ? nothing
        : writeRainCautions(supply, system)
            .slice(OVERFLOW_SENTENCES)
            .map((sentence) => html`<p>${sentence}</p>`)
    }
    <p>Look at the water daily: a lid on the vessel, a screen over its mouth, no mosquitoes, no green.</p>
  </section>`;
}
