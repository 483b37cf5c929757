import type { BuildSheet } from "../../judge/build/build-sheet.js";
import type { UnitSystem } from "../../units/quantity.js";
import { writeMarkLines } from "../time/mark-text.js";
import { writeContact } from "./build-text.js";
import {
  gatherMarks,
  HOLES_NOTE,
  JUG_NOTE,
  writeBasis,
  writeHole,
  writeJug,
  writePart,
  writePriceLine,
  writeStep,
} from "./build-words.js";
import { writeBar, writeCutLength, writeCutting } from "./cut-words.js";
import { BUILD_ROUNDS, writeBuildCautions, writeLoadLines } from "./load-words.js";

/** Sizes of paper a sheet can be printed on, as style sheets have them. */
export const PAPERS = { a4: "210mm 297mm", letter: "8.5in 11in" } as const;
/** A size of paper. */
export type PaperSize = keyof typeof PAPERS;

/** What a plan calls its parts may hold anything: it is written as text, never as marks of the page. */
const plain = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");

const part = (title: string, inside: string): string =>
  inside === "" ? "" : `<section><h2>${plain(title)}</h2>${inside}</section>`;
const lines = (texts: readonly string[]): string => texts.map((text) => `<p>${plain(text)}</p>`).join("");
const boxes = (texts: readonly string[]): string =>
  texts.map((text) => `<p class="box">${plain(text)}</p>`).join("");

function table(titles: readonly string[], rows: readonly (readonly string[])[]): string {
  if (rows.length === 0) return "";
  const cells = (row: readonly string[], tag: string) =>
    row.map((cell) => `<${tag}>${plain(cell)}</${tag}>`).join("");
  return `<table><thead><tr>${cells(titles, "th")}</tr></thead><tbody>${rows.map((row) => `<tr>${cells(row, "td")}</tr>`).join("")}</tbody></table>`;
}

/**
 * The sheet for the work and the one for the coop as a page to be printed from a browser: black on white, nothing to
 * fetch, nothing that runs.
 *
 * @param title   of the plan
 * @param sheet   from `buildSheetOf`
 * @param paper   "a4" or "letter"
 * @example writeBuildPage("A bucket", sheet, "metric", "a4").slice(0, 15)   // "<!doctype html>"
 */
export function writeBuildPage(
  title: string,
  sheet: BuildSheet,
  system: UnitSystem,
  paper: PaperSize,
): string {
  const name = title === "" ? "This plan" : title;
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>${plain(name)}: to build it</title>
<style>${styleFor(paper)}</style></head>
<body><main><h1>${plain(name)}: to build it</h1>${workParts(sheet, system)}</main>
<main class="coop"><h1>${plain(name)}</h1>${coopParts(sheet, system)}</main></body></html>
`;
}

function workParts(sheet: BuildSheet, system: UnitSystem): string {
  const cut = (metres: number) => writeCutLength(metres, system);
  const listed = sheet.parts.map(
    (each) =>
      `${each.count} ${writePart(each)}, for ${each.where.join(", ")}${each.basis === "typed" ? "" : ` (${writeBasis(each)})`}`,
  );
  const marks = gatherMarks(sheet.heights).map(({ words, mark }) => [
    words,
    cut(mark.aboveGround),
    cut(mark.height),
  ]);
  return [
    ...sheet.loads.map((load) => part(`What can hurt: ${load.source}`, lines(writeLoadLines(load, system)))),
    part("Parts", boxes(listed) + lines(writePriceLine(sheet))),
    ...sheet.pipes.map((pipe) =>
      part(
        `Cut: ${pipe.name}`,
        boxes(pipe.bars.map((bar) => writeBar(bar, pipe, system))) +
          lines(writeCutting(pipe, system).slice(0, 2)),
      ),
    ),
    part(
      "Holes and threads",
      sheet.holes.length === 0
        ? ""
        : boxes(sheet.holes.map((hole) => writeHole(hole, system))) + lines([HOLES_NOTE]),
    ),
    part(
      "Heights to mark",
      table(["mark", "above the ground there", "above the ground at the first source"], marks),
    ),
    part("In this order", boxes(sheet.steps.map((step, k) => `${k + 1}. ${writeStep(step, system)}`))),
    part(
      "Jug and watch",
      sheet.jugs.length === 0
        ? ""
        : boxes(sheet.jugs.map((jug) => writeJug(jug, system))) + lines([JUG_NOTE]),
    ),
    part("Cautions", lines(writeBuildCautions(sheet, system))),
  ].join("");
}

function coopParts({ coop }: BuildSheet, system: UnitSystem): string {
  const cut = (metres: number) => writeCutLength(metres, system);
  const calls = coop.contacts
    .map((contact) => `<p class="call">${plain(writeContact(contact))}</p>`)
    .join("");
  return [
    ...coop.marks.map((mark) => part(`Daily mark of ${mark.source}`, lines(writeMarkLines(mark, system)))),
    part("Whom to call", calls === "" ? '<p class="blank"></p><p class="blank"></p>' : calls),
    ...coop.heights.map(({ run, weeks }) =>
      part(
        `Height of ${run}`,
        table(
          ["week", "drinkers at", "suits from", "to"],
          weeks.map(({ week, height, raise, low, high }) => [
            String(week),
            height === undefined ? `${cut(raise)} up` : cut(height),
            cut(low),
            cut(high),
          ]),
        ),
      ),
    ),
    part("Rounds", lines(BUILD_ROUNDS.map(([often, what]) => `${often}. ${what.join(" ")}`))),
  ].join("");
}

const styleFor = (paper: PaperSize): string => `
@page { size: ${PAPERS[paper]}; margin: 14mm }
body { margin: 0; color: #000; background: #fff; font: 11pt/1.3 Arial, Helvetica, "Liberation Sans", sans-serif }
main { max-width: 190mm; margin: 0 auto }
.coop { break-before: page; font-size: 13.5pt }
h1 { font-size: 18pt; margin: 0 0 2mm } h2 { font-size: 13pt; margin: 4mm 0 1mm; border-bottom: .5mm solid; break-after: avoid }
.coop h2 { font-size: 15pt } p { margin: 0 0 1.5mm; break-inside: avoid }
.box { padding-left: 7mm; text-indent: -7mm } .box::before { content: ""; display: inline-block; width: 3.4mm; height: 3.4mm; margin-right: 3mm; border: .4mm solid }
table { border-collapse: collapse; width: 100% } th, td { text-align: right; padding: .4mm 2mm; border-bottom: .2mm solid }
th:first-child, td:first-child { text-align: left; padding-left: 0 } tr { break-inside: avoid }
.call { font-size: 16pt; font-weight: 700 } .blank { height: 9mm; border-bottom: .3mm solid }
`;
