import type { BatchDay, BirdsOfPlan, BirdsWeek, PenBirds } from "../../judge/birds/birds-for-plan.js";
import type { BatchIntake } from "../../model/flock-intake.js";
import type { Citation } from "../../tables/citation.js";
import { sourceByKey } from "../../tables/sources.js";
import { writeDay } from "../../units/day.js";
import { type UnitSystem, writeQuantity, writeRange } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import { writeTable } from "../text-table.js";
import { writeVolume } from "../words.js";
import { writeAge, writePercent } from "./bird-sentences.js";
import { birdsCalled } from "./birds-called.js";
import { writePenDrinkers } from "./drinkers-needed-text.js";

/** What the birds of a plan drink and need, as text for a terminal. */
export function writeBirdsText(title: string, birds: BirdsOfPlan, system: UnitSystem, paint: Paint): string {
  const on = birds.day === undefined ? "" : `, ${writeDay(birds.day)}`;
  const head = paint(`${title === "" ? "This plan" : title}: its birds${on}`, "title");
  if (birds.pens.length === 0)
    return `${head}\nThe plan has no pens, so nobody drinks: add \`pens\` to say who does.\n`;
  const section = (name: string, lines: readonly string[]) => `${paint(name, "title")}\n${lines.join("\n")}`;
  const sections = [
    `${head}\n${dayTable(birds, system)}\n${airLine(birds, system)}`,
    section("Each coming week", [weekTable(birds.weeks, system)]),
    section(
      "Where it comes from, and how sure",
      birds.pens.flatMap((pen) => originLines(pen, system)),
    ),
    section(
      "Drinkers",
      birds.pens.flatMap(({ drinkers }) => writePenDrinkers(drinkers, birds.region, system)),
    ),
    section("Height of the drinkers above what the birds stand on", [hangTable(birds, system)]),
    section(
      "Cautions",
      birdCautions(birds).map((line) => `- ${line}`),
    ),
  ];
  return `${sections.join("\n\n")}\n`;
}

function dayTable({ pens, weeks }: BirdsOfPlan, system: UnitSystem): string {
  const volumes = ({ now, hot }: Pick<PenBirds, "now" | "hot">) =>
    [now.size, now.expect, hot.size, hot.expect].map((volume) => writeVolume(volume, system));
  const rows = pens.map((pen) => [
    pen.pen,
    pen.batches.filter(isKept).map(batchWords).join("; "),
    ...volumes(pen),
  ]);
  return writeTable({
    columns: [
      "pen",
      "birds",
      "a day, to size on",
      "a day, to expect",
      "hot day, to size on",
      "hot day, to expect",
    ],
    alignRight: [false, false, true, true, true, true],
    rows: pens.length === 1 ? rows : [...rows, ["all", "", ...volumes(weeks[0])]],
  });
}

/** Birds that are there, or still to come: not those that have left or are in another pen. */
const isKept = ({ count }: BatchDay): boolean => count > 0;

const batchWords = ({ kindName, count, ageDays }: BatchDay): string =>
  `${count}: ${kindName}, ${ageDays < 0 ? `come in ${writeAge(-ageDays)}` : writeAge(ageDays)}`;

function airLine({ weather, hotDay }: BirdsOfPlan, system: UnitSystem): string {
  const air = ({ high, low }: { readonly high: number; readonly low: number }) =>
    high === low ? degrees(high, system) : `${degrees(low, system)} to ${degrees(high, system)}`;
  const because = hotDay.isTaken ? "the plan names no hot spell" : "the plan's hot spell";
  return `With what is spilled. Air ${air(weather)}; hot day ${air(hotDay)} (${because}).`;
}

const degrees = (celsius: number, system: UnitSystem) => writeQuantity(celsius, "temperature", system, 3);

function weekTable(weeks: readonly BirdsWeek[], system: UnitSystem): string {
  return writeTable({
    columns: [
      "week",
      "day",
      "age",
      "a day, to size on",
      "a day, to expect",
      "least, it may be",
      "most, it may be",
      "hot day, to size on",
    ],
    alignRight: [true, false, false, true, true, true, true, true],
    rows: weeks.map(({ week, day, ages, now, hot }) => [
      String(week),
      day === undefined ? "" : writeDay(day),
      [...new Set(ages.map(({ ageDays }) => (ageDays < 0 ? "not yet" : writeAge(ageDays))))].join(", "),
      ...[now.size, now.expect, now.low, now.high, hot.size].map((volume) => writeVolume(volume, system)),
    ]),
  });
}

function originLines(pen: PenBirds, system: UnitSystem): string[] {
  const spilled = `${pen.pen}: ${writePercent(pen.spilled)} more is spilled${pen.spilledFrom
    .map(
      ({ device, spilledLow, spilledHigh, citation }) =>
        ` (${device}: ${writePercent(spilledLow)} to ${writePercent(spilledHigh)}; ${writeCitation(citation)})`,
    )
    .join("")}`;
  return [
    ...pen.batches.filter(isKept).flatMap((batch) => writeBatchOrigin(pen.pen, batch, system)),
    `${spilled}.`,
  ];
}

/** Where the figures of a batch come from, how sure they are, and how far they may be off. */
function writeBatchOrigin(
  pen: string,
  { kindName, ageDays, intake, hot }: BatchDay,
  system: UnitSystem,
): string[] {
  if (ageDays < 0) return [];
  const each = (volume: number) => writeVolume(volume, system);
  const factor = (one: BatchIntake) => Number(one.heat.toPrecision(3));
  return [
    `${pen}, ${birdsCalled(kindName)} of ${writeAge(ageDays)}: one drinks ${each(intake.size)} to size on, ${each(intake.expect)} to expect, ${each(intake.low)} to ${each(intake.high)} at the ends of its doubt (how sure: ${intake.confidence}).`,
    `- to size on: ${intake.sizeFrom.map(writeCitation).join("; ")}`,
    `- to expect: ${intake.expectFrom.map(writeCitation).join("; ")}`,
    `- heat: ${factor(intake)} times a mild day; ${factor(hot)} times on the hot day`,
  ];
}

const writeCitation = ({ source, where, seen }: Citation): string =>
  `${sourceByKey(source)?.title ?? source}, ${where} [${seen}]`;

function hangTable({ pens, weeks }: BirdsOfPlan, system: UnitSystem): string {
  const hangs = pens.flatMap(({ pen, hangs: all }) => all.map((hang) => ({ pen, ...hang })));
  return writeTable({
    columns: ["week", ...hangs.map(({ pen, device }) => `${pen}, ${device}`)],
    alignRight: [true, ...hangs.map(() => true)],
    rows: weeks.map(({ week }) => [
      String(week),
      ...hangs.map(({ weeks: ranges }) => {
        const range = ranges[week];
        return range === undefined
          ? "no table has it"
          : writeRange(range.low, range.high, "length", system, 2);
      }),
    ]),
  });
}

/** What no figure takes care of. */
export function birdCautions({ pens }: BirdsOfPlan): string[] {
  const drowning = pens.flatMap(({ pen, batches }) =>
    batches
      .filter(({ drownsFor }) => drownsFor > 0)
      .map(
        ({ kindName, ageDays, drownsFor }) =>
          `${pen} (${birdsCalled(kindName)}): they drown in open water, even shallow, until they are ${writeAge(Math.max(0, ageDays) + drownsFor)} old. Give them nipples or cups, or pebbles in the water so that only a few millimetres stand open.`,
      ),
  );
  return [
    ...new Set(drowning),
    "Look at the birds and their water every day: no computed figure replaces that.",
    "Birds that drink much more or less than before, pant, or hang their heads are a matter for a vet. No figure here is about health.",
  ];
}
