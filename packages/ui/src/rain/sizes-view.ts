import { writeQuantity } from "@headfall/hydraulics";
import { html, nothing, svg } from "lit";
import type { RainFigure } from "../kernels/how-got/subject.js";
import { laySizeChart, type SizeChart, type SizeMark } from "../kernels/rain/size-chart.js";
import { showVolume } from "../kernels/shown.js";
import { US_GALLON } from "../kernels/us-units.js";
import { numberButton } from "../verdicts/number-button.js";
import type { RainRoom } from "./room.js";

const asked = (what: RainFigure) => ({ of: "rain", what }) as const;

/** Sizes that never fail, of vessel and roof, and days short with others. */
export function sizesView({ supply, system, isWide }: RainRoom) {
  const { neverFails, neverFailsDrawnFirst, roofNeeded, usable, sizes } = supply;
  const marks: SizeMark[] = [
    { letter: "T", usable },
    ...(neverFailsDrawnFirst === undefined ? [] : [{ letter: "N", usable: neverFailsDrawnFirst }]),
  ];
  const isUs = system === "us";
  const chart = laySizeChart({
    ...{ sizes, marks, width: isWide ? 660 : 330, height: 240 },
    unit: isUs ? US_GALLON : 1e-3,
  });
  const volume = (value: number | undefined) => (value === undefined ? "none" : showVolume(value, system));
  return html`<section aria-labelledby="sizes">
    <h3 id="sizes">What would never fail</h3>
    <ul>
      <li>Vessel, rain of the day counted: ${numberButton(volume(neverFails), asked("neverFails"))} usable${neverFails === undefined ? ": more is drunk than this roof brings" : " (sequent peak)"}.</li>
      <li>Vessel, drawn before the day's rain: ${numberButton(volume(neverFailsDrawnFirst), asked("neverFailsDrawnFirst"))} usable.</li>
      <li>${
        roofNeeded === undefined
          ? html`With this vessel ${numberButton("no roof", asked("roofNeeded"))} is large enough: a dry spell is longer than it lasts.`
          : html`With this vessel the roof would have to be ${numberButton(writeQuantity(roofNeeded, "area", system, 3), asked("roofNeeded"))}.`
      }</li>
    </ul>
    <h4>Days short by size of the vessel</h4>
    ${chartView(chart, isUs ? "gal" : "L")}
    <ul class="key"><li><strong>T</strong> this vessel, ${showVolume(usable, system)} usable</li>
      ${neverFailsDrawnFirst === undefined ? nothing : html`<li><strong>N</strong> never fails, ${showVolume(neverFailsDrawnFirst, system)}</li>`}
      <li>Drawn before the day's rain, begun full.</li></ul>
    <details><summary>The sizes as a table</summary>
      <div class="scroller tall" role="region" aria-label="Days short by size" tabindex="0"><table>
        <thead><tr><th scope="col" class="words">Usable</th><th scope="col">Days short</th></tr></thead>
        <tbody>${sizes.map((size) => html`<tr><th scope="row">${showVolume(size.usable, system)}</th><td>${size.shortDays}</td></tr>`)}</tbody></table></div>
    </details>
  </section>`;
}

function chartView({ width, height, plot, path, points, sizes, days, marks }: SizeChart, unit: string) {
  return svg`<svg class="chart" viewBox="0 0 ${width} ${height}" role="img" aria-label="Days short fall as the vessel grows; the figures stand in the table below.">
    ${days.map(
      ({ at, value }) => svg`<line class="grid" x1=${plot.left} x2=${plot.right} y1=${at} y2=${at}></line>
      <text class="tick" x=${plot.left - 6} y=${at + 4} text-anchor="end">${value}</text>`,
    )}
    ${sizes.map(
      ({
        at,
        value,
      }) => svg`<line class="grid" x1=${at} x2=${at} y1=${plot.bottom} y2=${plot.bottom + 5}></line>
      <text class="tick" x=${at} y=${plot.bottom + 18} text-anchor="middle">${value}</text>`,
    )}
    <text class="tick" x=${plot.left} y=${height - 4}>usable, ${unit}; upwards: days short</text>
    <path class="size-line" d=${path}></path>
    ${points.map(({ x, y }) => svg`<circle class="dot" cx=${x} cy=${y} r="2.5"></circle>`)}
    ${marks.map(
      ({ letter, x }) => svg`<line class="mark" x1=${x} x2=${x} y1=${plot.top} y2=${plot.bottom}></line>
      <text class="letter" x=${x} y=${plot.top - 6} text-anchor="middle">${letter}</text>`,
    )}
  </svg>`;
}
