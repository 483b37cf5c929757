import type { KitGiven, PenPeriod, YearOfPlan, YearPeriod } from "../../judge/year/year-result.js";
import { writeDay } from "../../units/day.js";
import { type UnitSystem, writeQuantity, writeRange } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import { writeTable } from "../text-table.js";
import { writeVolume } from "../words.js";
import {
  writeHandedOut,
  writeKitProof,
  writeLeastToBuy,
  writePieces,
  writeShortage,
  writeYearEvent,
  writeYearWeather,
  YEAR_CAUTIONS,
} from "./year-sentences.js";

/** What a year is written with. */
export interface YearWriting {
  readonly title: string;
  readonly money: string | undefined;
  readonly system: UnitSystem;
  readonly paint: Paint;
}

/** A year of a plan as text for a terminal. */
export function writeYearText(year: YearOfPlan, { title, money, system, paint }: YearWriting): string {
  const head = paint(
    `${title === "" ? "This plan" : title}: ${writeDay(year.from)} to ${writeDay(year.to - 1)}`,
    "title",
  );
  if (year.pens.length === 0)
    return `${head}\nThe plan has no pens, so nobody drinks: add \`pens\` to say who does.\n`;
  const section = (name: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : [`${paint(name, "title")}\n${lines.join("\n")}`];
  const { kit } = year;
  return `${[
    `${head}\n${waterTable(year, system)}\n${writeYearWeather(year)}`,
    ...section(
      "What happens",
      year.events.map((event) => `${writeDay(event.day)}  ${writeYearEvent(event)}`),
    ),
    ...section(
      "Drinkers of the line",
      [drinkerTable(year)].filter((text) => text !== ""),
    ),
    ...section("Height of pins, and of lips, on the first day", [heightTable(year, system)]),
    ...(kit === undefined
      ? section("The kit", ["The plan tells of none: add `kit` to have it given out to the pens."])
      : kitSections(year, kit, { money, system }).flatMap(([name, lines]) => section(name, lines))),
    ...section(
      "Cautions",
      YEAR_CAUTIONS.map((line) => `- ${line}`),
    ),
  ].join("\n\n")}\n`;
}

/** Periods of one pen that are alike in what is told of them are one row: from the first of them. */
function rowsByChange<T>(
  periods: readonly YearPeriod[],
  told: (period: YearPeriod, t: number) => readonly T[],
): [YearPeriod, readonly T[]][] {
  const rows: [YearPeriod, readonly T[]][] = [];
  periods.forEach((period, t) => {
    const row = told(period, t);
    const last = rows[rows.length - 1]?.[1];
    if (last === undefined || last.some((cell, c) => cell !== row[c])) rows.push([period, row]);
  });
  return rows;
}

function waterTable({ periods, pens }: YearOfPlan, system: UnitSystem): string {
  const volume = (metres: number) => writeVolume(metres, system);
  const sum = (period: YearPeriod, pick: (pen: PenPeriod) => number) =>
    volume(period.pens.reduce((total, pen) => total + pick(pen), 0));
  const air = ({ air: { high }, hotAir }: YearPeriod) =>
    [high, hotAir?.high].map((degrees) =>
      degrees === undefined ? "" : writeQuantity(degrees, "temperature", system, 3),
    );
  return writeTable({
    columns: [
      "week",
      "from",
      "air",
      "air, hot day",
      ...pens.flatMap(({ pen }) => [`${pen}, birds`, "a day, to size on"]),
      "all, to size on",
      "all, to expect",
      "all, hot day",
    ],
    alignRight: [true, false, true, true, ...pens.flatMap(() => [true, true]), true, true, true],
    rows: periods.map((period) => [
      String(period.week),
      writeDay(period.from),
      ...air(period),
      ...period.pens.flatMap(({ birds, draw }) =>
        birds === 0 ? ["-", ""] : [String(birds), volume(draw.size)],
      ),
      sum(period, ({ draw }) => draw.size),
      sum(period, ({ draw }) => draw.expect),
      period.hotAir === undefined ? "" : sum(period, ({ hotDraw }) => hotDraw?.size ?? 0),
    ]),
  });
}

/** Of pens with drinkers of the line: what each needs, from when on, and has. */
function drinkerTable({ periods, pens }: YearOfPlan): string {
  const lined = pens.filter((_, p) => periods.some(({ pens: all }) => !all[p].drinkers.isSuggestion));
  if (lined.length === 0) return "";
  const cell = ({ birds, drinkers }: PenPeriod) =>
    birds === 0
      ? "-"
      : drinkers.devices
          .map(({ device, needed, has }) => `${device}: ${needed} needed, ${has} there`)
          .join("; ");
  return writeTable({
    columns: ["from", ...lined.map(({ pen }) => pen)],
    alignRight: [false, ...lined.map(() => false)],
    rows: rowsByChange(periods, ({ pens: all }) => lined.map(({ index }) => cell(all[index]))).map(
      ([period, cells]) => [writeDay(period.from), ...cells],
    ),
  });
}

function heightTable({ periods, pens }: YearOfPlan, system: UnitSystem): string {
  const cell = (range: PenPeriod["heights"]["nipple"]) =>
    range === undefined ? "-" : writeRange(range.low, range.high, "length", system, 2);
  return writeTable({
    columns: ["from", ...pens.flatMap(({ pen }) => [`${pen}, pins`, "lips"])],
    alignRight: [false, ...pens.flatMap(() => [false, false])],
    rows: rowsByChange(periods, ({ pens: all }) =>
      all.flatMap(({ heights }) => [cell(heights.nipple), cell(heights.cup)]),
    ).map(([period, cells]) => [writeDay(period.from), ...cells]),
  });
}

function kitSections(
  year: YearOfPlan,
  kit: KitGiven,
  { money, system }: Pick<YearWriting, "money" | "system">,
): [string, string[]][] {
  return [
    ["The kit, given out", [kitTable(year, kit), writeKitProof(kit, system)]],
    ["To put out", writeHandedOut(kit.handed).map(({ day, sentence }) => `${writeDay(day)}  ${sentence}`)],
    [
      "What is short",
      kit.shortages.length === 0
        ? ["Nothing: every pen has enough in every week."]
        : kit.shortages.map(writeShortage),
    ],
    ["The least to buy", kit.buy === undefined ? [] : writeLeastToBuy(kit.buy, money)],
    ["Kept back", keptBack(kit)],
  ];
}

function kitTable({ periods, pens }: YearOfPlan, { kinds, lent }: KitGiven): string {
  const cell = (pieces: readonly number[]) =>
    pieces.flatMap((count, k) => (count > 0 ? [writePieces(count, kinds[k].name)] : [])).join("; ") || "-";
  return writeTable({
    columns: ["from", ...pens.map(({ pen }) => pen)],
    alignRight: [false, ...pens.map(() => false)],
    rows: rowsByChange(periods, (period, t) =>
      pens.map((_, p) => (period.pens[p].birds === 0 ? "(no birds)" : cell(lent[t][p]))),
    ).map(([period, cells]) => [writeDay(period.from), ...cells]),
  });
}

function keptBack({ kinds }: KitGiven): string[] {
  const spares = kinds.filter(({ spare }) => spare > 0);
  if (spares.length > 0)
    return [
      `For a sick bird or a broody hen: ${spares.map(({ spare, name }) => writePieces(spare, name)).join(", ")}.`,
    ];
  const idle = kinds.filter(({ isWaterer, count, mostOut }) => isWaterer && count > mostOut);
  return idle.length > 0
    ? [
        `The plan keeps nothing back for a sick bird or a broody hen, but never all of these are out: ${idle.map(({ count, mostOut, name }) => writePieces(count - mostOut, name)).join(", ")}.`,
      ]
    : ["Nothing is left for a sick bird or a broody hen: keep a small fount back (`spare`)."];
}
