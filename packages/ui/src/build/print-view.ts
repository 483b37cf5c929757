import {
  BUILD_ROUNDS,
  gatherMarks,
  HOLES_NOTE,
  JUG_NOTE,
  writeBar,
  writeBasis,
  writeBuildCautions,
  writeContact,
  writeCutLength,
  writeCutting,
  writeHole,
  writeJug,
  writeLoadLines,
  writeMarkLines,
  writePart,
  writePriceLine,
  writeStep,
} from "@headfall/hydraulics";
import { html, nothing, type TemplateResult } from "lit";
import { upperFirst } from "../kernels/upper-first.js";
import { wholeDates } from "../styles/whole-dates.js";
import type { BuildRoom } from "./room.js";

const BOX = html`<span class="box"></span>`;

const listed = (title: string, lines: readonly (string | TemplateResult)[]) =>
  lines.length === 0
    ? nothing
    : html`<section><h2>${title}</h2>${lines.map((line) => html`<p class="line">${BOX}<span>${line}</span></p>`)}</section>`;

/** The sheet for the work, then, on a page of its own, the one for the coop. */
export function printView(room: BuildRoom): TemplateResult {
  return html`<main class="work">${workView(room)}</main><main class="coop">${coopPage(room)}</main>`;
}

function workView({ sheet, system, name }: BuildRoom) {
  return html`<h1>${name}: to build it</h1>
    ${sheet.loads.map(
      (load) =>
        html`<section class="hurts"><h2>What can hurt: ${load.source}</h2><ul>${writeLoadLines(load, system).map((line) => html`<li>${line}</li>`)}</ul></section>`,
    )}
    ${listed(
      "Parts",
      sheet.parts.map(
        (part) =>
          html`<b>${part.count}</b> ${upperFirst(writePart(part))}, for ${part.where.join(", ")}${part.basis === "typed" ? "" : ` (${writeBasis(part)})`}`,
      ),
    )}
    ${writePriceLine(sheet).map((line) => html`<p>${line}</p>`)}
    ${sheet.pipes.map(
      (pipe) =>
        html`${listed(
          `Cut: ${pipe.name}`,
          pipe.bars.map((bar) => writeBar(bar, pipe, system)),
        )}<p>${writeCutting(pipe, system).slice(0, 2).join(" ")}</p>`,
    )}
    ${listed(
      "Holes and threads",
      sheet.holes.map((hole) => writeHole(hole, system)),
    )}
    ${sheet.holes.length === 0 ? nothing : html`<p>${HOLES_NOTE}</p>`}
    <section><h2>Heights to mark</h2><table><thead><tr><th>mark</th><th>above the ground there</th><th>above the ground at the first source</th></tr></thead><tbody>
      ${gatherMarks(sheet.heights).map(({ words, mark }) => html`<tr><td>${words}</td><td>${writeCutLength(mark.aboveGround, system)}</td><td>${writeCutLength(mark.height, system)}</td></tr>`)}
    </tbody></table></section>
    ${listed(
      "In this order",
      sheet.steps.map((step, k) => `${k + 1}. ${writeStep(step, system)}`),
    )}
    ${listed(
      "Jug and watch",
      sheet.jugs.map((jug) => writeJug(jug, system)),
    )}
    ${sheet.jugs.length === 0 ? nothing : html`<p>${JUG_NOTE}</p>`}
    <section><h2>Cautions</h2><ul>${writeBuildCautions(sheet, system).map((line) => html`<li>${line}</li>`)}</ul></section>`;
}

/** Large letters, few words: it is read with wet glasses. */
function coopPage({ sheet, system, name }: BuildRoom) {
  const { marks, heights, contacts } = sheet.coop;
  return html`<h1>${name}</h1>
    ${marks.map((mark) => html`<section><h2>Daily mark of ${mark.source}</h2>${writeMarkLines(mark, system).map((line) => html`<p>${wholeDates(line)}</p>`)}</section>`)}
    <section><h2>Whom to call</h2>${
      contacts.length === 0
        ? html`<p class="blank"></p><p class="blank"></p>`
        : contacts.map((contact) => html`<p class="call">${writeContact(contact)}</p>`)
    }</section>
    ${heights.map(
      ({ run, weeks }) =>
        html`<section><h2>Height of ${run}</h2><table><thead><tr><th>week</th><th>drinkers at</th><th>suits from</th><th>to</th></tr></thead><tbody>${weeks.map(
          ({ week, height, raise, low, high }) =>
            html`<tr><td>${week}</td><td><b>${height === undefined ? `${writeCutLength(raise, system)} up` : writeCutLength(height, system)}</b></td><td>${writeCutLength(low, system)}</td><td>${writeCutLength(high, system)}</td></tr>`,
        )}</tbody></table></section>`,
    )}
    <section><h2>Rounds</h2>${BUILD_ROUNDS.map(([often, what]) => html`<p><b>${upperFirst(often)}.</b> ${what.join(" ")}</p>`)}</section>`;
}
