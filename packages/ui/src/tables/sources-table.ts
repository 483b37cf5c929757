import { type Checked, type SourceReport, writeMass } from "@headfall/hydraulics";
import { html } from "lit";
import { guard } from "lit/directives/guard.js";
import { showFlow, showLength, showVolume } from "../kernels/shown.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { askHow, roveNumbers } from "../verdicts/number-button.js";
import { type NumberColumn, numberCell, numberTable, rowHead } from "./number-rows.js";

interface SourceColumn extends NumberColumn {
  readonly text: (report: SourceReport, system: UnitSystem) => string;
}

const orNone = (value: number | undefined, write: (value: number) => string, none: string): string =>
  value === undefined ? none : write(value);

const NUMBERS: readonly Omit<SourceColumn, "table" | "column">[] = [
  {
    title: "Full",
    text: ({ volumeFull }, system) => showVolume(volumeFull, system),
    subject: (source) => ({ of: "sourceVolume", source, which: "full" }),
  },
  {
    title: "Can be used",
    text: ({ volumeUsable }, system) => showVolume(volumeUsable, system),
    subject: (source) => ({ of: "sourceVolume", source, which: "usable" }),
  },
  {
    title: "Below the lowest level",
    text: ({ volumeDead }, system) => showVolume(volumeDead, system),
    subject: (source) => ({ of: "sourceVolume", source, which: "dead" }),
  },
  {
    title: "Drawn, full and busiest",
    text: ({ drawBusiest }, system) => showFlow(drawBusiest, system),
    subject: (source) => ({ of: "sourceDraw", source, moment: "fullBusiest" }),
  },
  {
    title: "Surface when full",
    text: ({ surface }, system) => showLength(surface.fullIdle, system),
    subject: (source) => ({ of: "sourceSurface", source, moment: "fullIdle" }),
  },
  {
    title: "Surface when lowest",
    text: ({ surface }, system) => showLength(surface.lowestBusiest, system),
    subject: (source) => ({ of: "sourceSurface", source, moment: "lowestBusiest" }),
  },
  {
    title: "On the stand when full",
    text: ({ massFull }, system) => writeMass(massFull, system),
    subject: (source) => ({ of: "sourceMass", source }),
  },
  {
    title: "Vent needed",
    text: ({ ventDiameterNeeded }, system) =>
      orNone(ventDiameterNeeded, (d) => showLength(d, system), "none"),
    subject: (source) => ({ of: "sourceVent", source }),
  },
  {
    title: "Given before it stalls",
    text: ({ volumeBeforeStall }, system) =>
      orNone(volumeBeforeStall, (volume) => showVolume(volume, system), "does not stall"),
    subject: (source) => ({ of: "sourceStall", source }),
  },
  {
    title: "Flow that fills it",
    text: ({ feedFlow }, system) => orNone(feedFlow, (flow) => showFlow(flow, system), "not filled"),
    subject: (source) => ({ of: "sourceFeed", source }),
  },
];

const table = "sources";
const COLUMNS = NUMBERS.map((column, at): SourceColumn => ({ ...column, table, column: at + 1 }));
const HEADS = [{ title: "Source", isWords: true }, ...NUMBERS];

/** How much water there is, how high it stands, and how fast it is drawn; each number leads to how it was got. */
export function sourcesTable({ sources }: Checked, system: UnitSystem) {
  return html`<div class="scroller" role="region" aria-labelledby="sources-caption" tabindex="0" @click=${askHow} @keydown=${roveNumbers}>
    ${numberTable({
      name: table,
      caption: "Heights are above the ground at the first source.",
      columns: HEADS,
      rows: sources.map((report, row) => {
        const texts = COLUMNS.map(({ text }) => text(report, system));
        return guard([row, report.source, ...texts], () => sourceRow(report, row, texts));
      }),
    })}
  </div>`;
}

function sourceRow({ source }: SourceReport, row: number, texts: readonly string[]) {
  return html`<tr role="row">
    ${rowHead(table, row, source)} ${COLUMNS.map((column, at) => numberCell(column, row, texts[at]))}
  </tr>`;
}
