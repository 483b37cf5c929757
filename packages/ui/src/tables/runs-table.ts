import { type Checked, LAW_WORDS, writeVelocity } from "@headfall/hydraulics";
import { html } from "lit";
import { guard } from "lit/directives/guard.js";
import type { HowSubject } from "../kernels/how-got/subject.js";
import { showFlow, showHead, showLength, showVolume } from "../kernels/shown.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { askHow, roveNumbers } from "../verdicts/number-button.js";
import { type NumberColumn, numberCell, numberTable, rowHead } from "./number-rows.js";

const LAWS = ["hazenWilliams", "darcyWeisbach"] as const;

const table = "runs";
const NUMBERS: readonly Omit<NumberColumn, "table" | "column">[] = [
  { title: "Length", subject: (run) => ({ of: "runLength", run }) },
  { title: "Fall", subject: (run) => ({ of: "runFall", run }) },
  { title: "Bore", subject: (run) => ({ of: "runBore", run }) },
  { title: "Flow", subject: (run) => ({ of: "runFlow", run }) },
  { title: "Velocity", subject: (run) => ({ of: "runVelocity", run }) },
  { title: "Regime", isWords: true, subject: (run) => ({ of: "runReynolds", run }) },
  ...LAWS.map((law) => ({
    title: `Lost, ${LAW_WORDS[law]}`,
    subject: (run: number): HowSubject => ({ of: "runLoss", run, law }),
  })),
  { title: "Water in the pipe", subject: (run) => ({ of: "runVolume", run }) },
];
const COLUMNS = NUMBERS.map((column, at): NumberColumn => ({ ...column, table, column: at + 1 }));
const HEADS = [{ title: "Run", isWords: true }, ...NUMBERS, { title: "Pipe", isWords: true }];

/** What each run carries at the busiest minutes, and how much water stands in it; each number leads to how it was got. */
export function runsTable(checked: Checked, system: UnitSystem) {
  return html`<div class="scroller" role="region" aria-labelledby="runs-caption" tabindex="0" @click=${askHow} @keydown=${roveNumbers}>
    ${numberTable({
      name: table,
      caption:
        "At the busiest minutes with the source full. Velocity and regime are at the run's busiest end.",
      columns: HEADS,
      rows: checked.runs.map((_, row) =>
        guard(figuresOfRow(checked, system, row), () => runRow(checked, system, row)),
      ),
    })}
  </div>`;
}

/** Fall of the pipe from the run's start to its end [m]. */
function fallOf({ line }: Checked, run: number): number {
  const { points } = line.runs[run]!;
  return line.points.height[points[0]!]! - line.points.height[points[points.length - 1]!]!;
}

function figuresOfRow(checked: Checked, system: UnitSystem, row: number): unknown[] {
  const { run, pipe, length, bore, volume, busiest } = checked.runs[row]!;
  const { flow, velocity, reynolds, loss } = busiest;
  return [
    row,
    run,
    pipe,
    system,
    length,
    fallOf(checked, row),
    bore,
    flow,
    velocity,
    reynolds,
    ...LAWS.map((law) => loss[law]),
    volume,
  ];
}

function runRow(checked: Checked, system: UnitSystem, row: number) {
  const { run, pipe, length, bore, volume, busiest } = checked.runs[row]!;
  const { regime, reynolds } = busiest;
  const texts = [
    showLength(length, system),
    showLength(fallOf(checked, row), system),
    showLength(bore, system),
    showFlow(busiest.flow, system),
    writeVelocity(busiest.velocity, system),
    regime === "still" ? regime : `${regime} (Re ${Math.round(reynolds)})`,
    ...LAWS.map((law) => showHead(busiest.loss[law], system)),
    showVolume(volume, system),
  ];
  return html`<tr role="row">
    ${rowHead(table, row, run)} ${COLUMNS.map((column, at) => numberCell(column, row, texts[at]))}
    <td role="cell" class="words" data-head="Pipe">${pipe}</td>
  </tr>`;
}
