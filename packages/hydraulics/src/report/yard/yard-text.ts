import type { PenYard, WatererReport, YardOfPlan } from "../../judge/yard/yard-result.js";
import { writeDay } from "../../units/day.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import { writeAge } from "../birds/bird-sentences.js";
import type { Paint } from "../check-text.js";
import { writeTable } from "../text-table.js";
import { writeMass, writeVolume } from "../words.js";
import {
  writeChangeOver,
  writeOpenings,
  writeShareOfLoose,
  writeTilt,
  writeYardFinding,
  YARD_CAUTIONS,
} from "./yard-sentences.js";
import { writeMarks, writeRefills, writeSlope } from "./yard-words.js";

/** The loose waterers of a plan, as text for a terminal. */
export function writeYardText(title: string, yard: YardOfPlan, system: UnitSystem, paint: Paint): string {
  const on = yard.day === undefined ? "" : `, ${writeDay(yard.day)}`;
  const head = paint(`${title === "" ? "This plan" : title}: its loose waterers${on}`, "title");
  const pens = yard.pens.filter(({ waterers }) => waterers.length > 0);
  if (pens.length === 0)
    return `${head}\nNo pen has one yet. Say which stand or hang in a pen with its \`waterers\`.\n`;
  const section = (name: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : [`${paint(name, "title")}\n${lines.join("\n")}`];
  const of = (lines: (report: WatererReport) => readonly string[]) =>
    pens.flatMap(({ waterers }) => waterers.flatMap(lines));
  const sections = [
    `${head}\n${pens.map((pen) => penBlock(pen, system)).join("\n\n")}\n${airLine(yard, system)}`,
    ...section(
      "What to do",
      yard.pens.flatMap(({ findings }) =>
        findings.map((finding) => `- ${writeYardFinding(finding, system)}`),
      ),
    ),
    ...section(
      "On its slope",
      of((report) => [writeTilt(report, system)]),
    ),
    ...section(
      "Each coming week",
      pens.map((pen, p) => `${p === 0 ? "" : "\n"}${weekTable(pen, yard, system)}`),
    ),
    ...section(
      "Changing over",
      pens.flatMap(({ changeOvers }) => changeOvers.map(writeChangeOver)),
    ),
    ...section(
      "If it is opened, shut or warmed",
      of((report) => writeOpenings(report, system)),
    ),
    ...section(
      "Cautions",
      YARD_CAUTIONS.map((line) => `- ${line}`),
    ),
  ];
  return `${sections.join("\n\n")}\n`;
}

function penBlock(pen: PenYard, system: UnitSystem): string {
  const birds = pen.batches
    .map(
      ({ count, kindName, ageDays }) =>
        `${count}: ${kindName}, ${ageDays < 0 ? `come in ${writeAge(-ageDays)}` : writeAge(ageDays)}`,
    )
    .join("; ");
  const share = writeShareOfLoose(pen);
  return [
    `${pen.pen}: ${birds}; ground ${writeSlope(pen.slope)}`,
    writeTable({
      columns: [
        "waterer",
        "kind",
        "of them",
        "each, holds",
        "each, gives",
        "at once, birds",
        "fill",
        "fill, hot day",
        "weight, full",
        "to carry, a fill",
      ],
      alignRight: [false, false, true, true, true, true, false, false, true, false],
      rows: pen.waterers.map((report) => rowOf(report, system)),
    }),
    ...(share === undefined ? [] : [share]),
  ].join("\n");
}

function rowOf(report: WatererReport, system: UnitSystem): string[] {
  const { id, waterer, holds, gives, reach, weeks, fullMass, fill } = report;
  return [
    id,
    waterer.kind.name,
    String(waterer.count),
    writeVolume(holds, system),
    writeVolume(gives, system),
    String(reach.atOnce * waterer.count),
    writeRefills(weeks[0].refills),
    writeRefills(weeks[0].hotRefills),
    writeMass(fullMass, system),
    `${fill.trips === 1 ? "1 trip" : `${fill.trips} trips`} of ${writeMass(fill.massPerTrip, system)}`,
  ];
}

function airLine({ weather, hotDay }: YardOfPlan, system: UnitSystem): string {
  const degrees = (celsius: number) => writeQuantity(celsius, "temperature", system, 3);
  const because = hotDay.isTaken ? "the plan names no hot spell" : "the plan's hot spell";
  return `Each as it stands, on the figure to size on, with what is spilled and what the air takes. Air ${degrees(weather.high)}; hot day ${degrees(hotDay.high)} (${because}).`;
}

function weekTable(pen: PenYard, { day }: YardOfPlan, system: UnitSystem): string {
  const dated = day === undefined ? [] : [false];
  const height = ({ hang }: WatererReport["weeks"][number]) =>
    hang === undefined ? "no table says" : writeMarks(hang.low, hang.high, system);
  return writeTable({
    columns: [
      "week",
      ...dated.map(() => "day"),
      ...pen.waterers.flatMap(({ id }) => [`${id}, fill`, "lip or pins, at"]),
    ],
    alignRight: [true, ...dated, ...pen.waterers.flatMap(() => [false, false])],
    rows: pen.waterers[0].weeks.map(({ week }) => [
      String(week),
      ...(day === undefined ? [] : [writeDay(day + 7 * week)]),
      ...pen.waterers.flatMap(({ weeks }) => [writeRefills(weeks[week].refills), height(weeks[week])]),
    ]),
  });
}
