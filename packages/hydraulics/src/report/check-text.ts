import { type Checked, type DrinkerVerdict, VERDICTS, type VerdictName } from "../judge/check-result.js";
import type { Measuring } from "../judge/sureness/measuring.js";
import { MOMENTS, type MomentName } from "../model/moment.js";
import { FRICTION_LAWS, type FrictionLaw } from "../solve/solution.js";
import type { UnitSystem } from "../units/quantity.js";
import { writeBirdFinding, writeGroupCrowd, writePen } from "./birds/bird-sentences.js";
import { writeCaution } from "./caution-sentences.js";
import { writeFinding } from "./finding-sentences.js";
import { writeMeasuring } from "./sureness/measure-words.js";
import { type Table, writeTable } from "./text-table.js";
import { writeVerdict } from "./verdict-sentences.js";
import {
  LAW_WORDS,
  writeFlow,
  writeHead,
  writeMargin,
  writeMass,
  writeVelocity,
  writeVolume,
} from "./words.js";

/** Paints a piece of text; the terminal colours it, a file leaves it plain. */
export type Paint = (text: string, verdict: VerdictName | "quiet" | "title") => string;

const MARKS: Readonly<Record<VerdictName, string>> = { good: "+", drips: "~", starves: "-", dry: "x" };
const FEW_MOMENT_WORDS: Readonly<Record<MomentName, string>> = {
  fullIdle: "full, idle",
  fullBusiest: "full, busiest",
  lowestBusiest: "lowest, busiest",
  ordinary: "ordinary",
};

/** A whole check as text for a terminal: verdict first, then the table, then what to know. */
export function writeCheckText(
  checked: Checked,
  system: UnitSystem,
  paint: Paint,
  measuring?: Measuring,
): string {
  const sections = [
    headline(checked, paint),
    drinkerTable(checked, system, paint),
    whys(checked, system, paint),
    section("What to measure again", measuring === undefined ? [] : writeMeasuring(measuring, system), paint),
    section("Birds", birdLines(checked, system), paint),
    section("Runs, full and busiest", runTable(checked, system), paint),
    section("Sources", sourceLines(checked, system), paint),
    section(
      "Filling and air",
      checked.filling.map((finding) => writeFinding(finding, system)),
      paint,
    ),
    section(
      "Cautions",
      checked.cautions.map((caution) => writeCaution(caution, system)),
      paint,
    ),
    section(
      "Taken as understood",
      checked.defaults.map(({ path, value, because }) => `${path}: ${value} (${because})`),
      paint,
    ),
  ];
  return `${sections.filter((text) => text !== "").join("\n\n")}\n`;
}

function headline(checked: Checked, paint: Paint): string {
  const counts = VERDICTS.filter((name) => checked.counts[name] > 0).map((name) =>
    paint(`${checked.counts[name]} ${name}`, name),
  );
  const close = checked.drinkers.filter(({ certainty }) => certainty.kind === "closeCall").length;
  const title = checked.line.name === "" ? "This plan" : checked.line.name;
  const tail = close > 0 ? `; ${close} of them a close call` : "";
  return `${paint(title, "title")}: ${counts.length === 0 ? "no drinkers" : counts.join(", ")}${tail}.`;
}

function drinkerTable(checked: Checked, system: UnitSystem, paint: Paint): string {
  const law = checked.friction;
  const rows = rowsToShow(checked);
  if (rows.length === 0) return "";
  const worked = MOMENTS.filter((name) => name !== "fullIdle");
  const table: Table = {
    columns: ["", "drinker", "static, full", ...worked.flatMap(columnsOf), "margin", "verdict"],
    alignRight: [false, false, true, ...worked.flatMap(columnsOf).map(() => true), true, false],
    rows: rows.map((verdict) => [
      MARKS[verdict.verdict],
      verdict.drinker,
      writeHead(verdict.moments.fullIdle[law].staticHead, system),
      ...worked.flatMap((name) => {
        const { staticHead, flowingHead, flow } = verdict.moments[name][law];
        const heads = name === "fullBusiest" ? [flowingHead] : [staticHead, flowingHead];
        return [...heads.map((head) => writeHead(head, system)), writeFlow(flow, system)];
      }),
      writeMargin(verdict.margin, system),
      paint(verdict.verdict, verdict.verdict),
    ]),
  };
  const left = checked.drinkers.length - rows.length;
  const notes = [
    `Head and flow of each drinker while it is worked, by ${LAW_WORDS[law]}; full and idle, its head is the static one and nothing flows. Margin and verdict by the more cautious of ${LAW_WORDS[law]} and ${LAW_WORDS[other(law)]}.`,
    ...(left > 0
      ? [`The ${rows.length} with the least margin are shown, ${left} more are not; --json has all.`]
      : []),
  ];
  return `${writeTable(table)}\n${notes.map((note) => paint(note, "quiet")).join("\n")}`;
}

/** Titles of one moment; its static head is that of "full" where the level is. */
function columnsOf(name: MomentName): string[] {
  const title = FEW_MOMENT_WORDS[name];
  const [level] = title.split(", ");
  return [...(name === "fullBusiest" ? [] : [`static, ${level}`]), `head, ${title}`, `flow, ${title}`];
}

const other = (law: FrictionLaw) => FRICTION_LAWS.find((one) => one !== law) as FrictionLaw;

/** All drinkers up to this many; in longer lines the worst of each group and every one that is not good. */
const MOST_ROWS = 200;

function rowsToShow(checked: Checked): readonly DrinkerVerdict[] {
  if (checked.drinkers.length <= MOST_ROWS) return checked.drinkers;
  return [...checked.drinkers].sort((a, b) => a.margin - b.margin).slice(0, MOST_ROWS);
}

/** What several drinkers of one verdict do. */
const VERBS = { good: "do well", starves: "starve", dry: "are dry", drips: "drip" } as const;

/** One sentence for each verdict of each group: the drinker with the least margin speaks for the others. */
function whys(checked: Checked, system: UnitSystem, paint: Paint): string {
  const { line } = checked;
  const speakers = new Map<string, { verdict: DrinkerVerdict; count: number }>();
  for (const verdict of checked.drinkers) {
    const key = `${line.drinkers.group[verdict.index]} ${verdict.verdict}`;
    const known = speakers.get(key);
    if (known === undefined) speakers.set(key, { verdict, count: 1 });
    else
      speakers.set(key, {
        verdict: verdict.margin < known.verdict.margin ? verdict : known.verdict,
        count: known.count + 1,
      });
  }
  const ordered = [...speakers.values()].sort(
    (a, b) => VERDICTS.indexOf(b.verdict.verdict) - VERDICTS.indexOf(a.verdict.verdict),
  );
  return section(
    "Why",
    ordered.map(({ verdict, count }) => {
      const others =
        count === 1
          ? ""
          : ` (worst of ${count}${count === checked.drinkers.length ? "; all" : " that"} ${VERBS[verdict.verdict]})`;
      return `${MARKS[verdict.verdict]} ${writeVerdict(verdict, line, system)}${others}`;
    }),
    paint,
  );
}

function birdLines({ flock }: Checked, system: UnitSystem): string[] {
  if (flock === undefined) return [];
  return [
    ...flock.pens.map((pen) => writePen(pen, system)),
    ...flock.groups.map((group) => writeGroupCrowd(group, system)),
    ...flock.findings.map((finding) => writeBirdFinding(finding, system)),
  ];
}

function runTable(checked: Checked, system: UnitSystem): string[] {
  if (checked.runs.length === 0) return [];
  return writeTable({
    columns: ["run", "pipe", "flow", "velocity", "regime", "loss HW", "loss DW", "stands in it"],
    alignRight: [false, false, true, true, false, true, true, true],
    rows: checked.runs.map(({ run, pipe, volume, busiest }) => [
      run,
      pipe,
      writeFlow(Math.abs(busiest.flow), system),
      writeVelocity(busiest.velocity, system),
      busiest.regime,
      writeHead(busiest.loss.hazenWilliams, system),
      writeHead(busiest.loss.darcyWeisbach, system),
      writeVolume(volume, system),
    ]),
  }).split("\n");
}

function sourceLines(checked: Checked, system: UnitSystem): string[] {
  return checked.sources.map((source) => {
    const volume = (v: number) => writeVolume(v, system);
    const parts = [
      `${source.source}: ${volume(source.volumeUsable)} usable, ${volume(source.volumeDead)} below its lowest level; ${writeMass(source.massFull, system)} when full; draws ${writeFlow(source.drawBusiest, system)} at the busiest`,
    ];
    if (source.volumeBeforeStall !== undefined)
      parts.push(`sealed: gives ${volume(source.volumeBeforeStall)} before it stalls`);
    if (source.feedFlow !== undefined)
      parts.push(
        `its float valve lets in up to ${writeFlow(source.feedFlow, system)} (${source.feedKeepsUp ? "keeps up" : "falls behind"})`,
      );
    return `${parts.join("; ")}.`;
  });
}

function section(title: string, lines: readonly string[], paint: Paint): string {
  return lines.length === 0 ? "" : `${paint(title, "title")}\n${lines.map((line) => `  ${line}`).join("\n")}`;
}
