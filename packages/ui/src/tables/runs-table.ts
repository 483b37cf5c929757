import { type Checked, LAW_WORDS, writeVelocity } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { howGotRun } from "../kernels/how-got-run.js";
import { showFlow, showHead, showLength, showVolume } from "../kernels/shown.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { howGotView } from "../verdicts/how-got-view.js";

/** What each run carries at the busiest minutes, and how much water stands in it. */
export function runsTable(checked: Checked, system: UnitSystem) {
  return html`<div class="scroller" role="region" aria-labelledby="runs-caption" tabindex="0">
    <table class="cards" role="table">
      <caption id="runs-caption">At the busiest minutes with the source full. Velocity and regime are at the run's busiest end.</caption>
      <thead role="rowgroup">
        <tr role="row">
          <th role="columnheader" scope="col" class="words">Run</th>
          <th role="columnheader" scope="col" class="words">Pipe</th>
          ${["Length", "Bore", "Flow", "Velocity"].map((title) => html`<th role="columnheader" scope="col">${title}</th>`)}
          <th role="columnheader" scope="col" class="words">Regime</th>
          ${[...LAWS.map((law) => `Lost, ${LAW_WORDS[law]}`), "Water in the pipe"].map(
            (title) => html`<th role="columnheader" scope="col">${title}</th>`,
          )}
        </tr>
      </thead>
      <tbody role="rowgroup">
        ${checked.runs.map((run) => runRow(run, system))}
      </tbody>
    </table>
  </div>`;
}

const LAWS = ["hazenWilliams", "darcyWeisbach"] as const;

function runRow(run: Checked["runs"][number], system: UnitSystem) {
  const { busiest } = run;
  const cell = (title: string, text: unknown) => html`<td role="cell" data-head=${title}>${text}</td>`;
  return html`<tr role="row">
    <th role="rowheader" scope="row" class="words">${run.run}</th>
    <td role="cell" class="words">${run.pipe}</td>
    ${cell("Length", showLength(run.length, system))}
    ${cell("Bore", showLength(run.bore, system))}
    ${cell("Flow", showFlow(busiest.flow, system))}
    ${cell("Velocity", writeVelocity(busiest.velocity, system))}
    <td role="cell" class="words" data-head="Regime">
      ${busiest.regime}${busiest.regime === "still" ? nothing : html` (Re ${Math.round(busiest.reynolds)})`}
    </td>
    ${LAWS.map((law) => cell(`Lost, ${LAW_WORDS[law]}`, showHead(busiest.loss[law], system)))}
    ${cell("Water in the pipe", showVolume(run.volume, system))}
  </tr>`;
}

/** Runs whose figures are unfolded one by one; of a larger yard the first ones stand for the rest. */
const MOST_UNFOLDED = 40;

/** How the figures of each run were got, folded away until asked for. */
export function runsHow(checked: Checked, system: UnitSystem) {
  return checked.runs.slice(0, MOST_UNFOLDED).map(
    ({ run }, index) => html`<details>
      <summary>How the figures of "${run}" were got</summary>
      <div>${howGotRun(checked, index, system).map(howGotView)}</div>
    </details>`,
  );
}
