import type { BirdFinding, PenReport } from "../../judge/birds/flock-report.js";
import type { WeekReport } from "../../judge/birds/week-report.js";
import { writeDay } from "../../units/day.js";
import { type UnitSystem, writeQuantity, writeRange } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import { writeJudgement } from "../sentences.js";
import { type Table, writeTable } from "../text-table.js";
import { writeHead, writeVolume } from "../words.js";
import { writeAge, writeBirdFinding } from "./bird-sentences.js";

/** The coming weeks as text for a terminal: a line a week, then what to know of each. */
export function writeWeeksText(
  title: string,
  judged: { readonly weeks: readonly WeekReport[]; readonly hotWeeks: readonly WeekReport[] },
  system: UnitSystem,
  paint: Paint,
): string {
  const sections = [
    `${paint(title === "" ? "This plan, week by week" : `${title}, week by week`, "title")}\n${weekTable(judged.weeks, system, paint)}`,
    hungLines(judged.weeks, system, paint),
    ...(judged.hotWeeks.length === 0
      ? []
      : [
          `${paint("The same on days of the hot spell", "title")}\n${weekTable(judged.hotWeeks, system, paint)}`,
        ]),
    notes("Worst drinker", worstLines([...judged.weeks, ...judged.hotWeeks], system), paint),
    notes("Birds", [...nobodyDrinks(judged.weeks), ...findingLines(judged.weeks, system)], paint),
    notes("Cautions", ["Look at the birds every day: no computed figure replaces that."], paint),
  ];
  return `${sections.filter((text) => text !== "").join("\n\n")}\n`;
}

function weekTable(weeks: readonly WeekReport[], system: UnitSystem, paint: Paint): string {
  const table: Table = {
    columns: [
      "week",
      "day",
      "age",
      "a day, to size on",
      "a day, to expect",
      "at once",
      "at work",
      "idle head, full",
      "flowing head, lowest",
      "verdict",
    ],
    alignRight: [true, false, false, true, true, true, true, true, true, false],
    rows: weeks.map((week) => [
      String(week.week),
      week.day === undefined ? "" : writeDay(week.day),
      week.pens.map(agesOf).join("; "),
      writeVolume(week.intakeSize, system),
      writeVolume(week.intakeExpect, system),
      week.pens.map(({ atOnce }) => String(atOnce)).join(" + "),
      week.pens.map(({ busiest }) => String(busiest)).join(" + "),
      headRange(week.idleHead, system),
      headRange(week.flowingHead, system),
      paint(countWords(week), week.verdict),
    ]),
  };
  return writeTable(table);
}

const agesOf = ({ batches }: PenReport): string =>
  batches
    .filter(({ count }) => count > 0)
    .map(({ ageDays }) => (ageDays < 0 ? "not yet" : writeAge(ageDays)))
    .filter((age, k, all) => all.indexOf(age) === k)
    .join(", ");

function headRange({ least, most }: WeekReport["idleHead"], system: UnitSystem): string {
  const [low, high] = [writeHead(least, system), writeHead(most, system)];
  return low === high ? low : `${low} to ${high}`;
}

function countWords({ counts }: WeekReport): string {
  const parts = (["dry", "starves", "drips"] as const)
    .filter((name) => counts[name] > 0)
    .map((name) => `${counts[name]} ${name}`);
  return parts.length === 0 ? "all good" : parts.join(", ");
}

/** Where each hung run should hang, and how far it goes up from where the plan has it. */
function hungLines(weeks: readonly WeekReport[], system: UnitSystem, paint: Paint): string {
  const rows = weeks.flatMap(({ week, raised }) =>
    raised.map((run) => [
      String(week),
      run.run,
      writeRange(run.low, run.high, "length", system, 2),
      run.height === undefined ? "" : length(run.height, system),
      run.raise === 0
        ? "as it is"
        : `${run.raise > 0 ? "up" : "down"} ${length(Math.abs(run.raise), system)}`,
    ]),
  );
  if (rows.length === 0) return "";
  const table = writeTable({
    columns: ["week", "hung run", "drinkers, above the ground", "hung at", "from the plan"],
    alignRight: [true, false, true, true, true],
    rows,
  });
  return `${paint("Lines to raise", "title")}\n${table}`;
}

const length = (metres: number, system: UnitSystem) => writeQuantity(metres, "length", system, 2);

/** For each week that is not all good, its worst drinker and why; weeks that read alike are told together. */
function worstLines(weeks: readonly WeekReport[], system: UnitSystem): string[] {
  const told = new Map<string, number[]>();
  for (const { week, hot, worst } of weeks) {
    if (worst === undefined || worst.verdict === "good") continue;
    const words = `${hot ? ", hot" : ""}: ${worst.drinker} ${writeJudgement(worst, system)}`;
    told.set(words, [...(told.get(words) ?? []), week]);
  }
  return [...told].map(([words, these]) => `Week ${these.join(", ")}${words}`);
}

const nobodyDrinks = ([first]: readonly WeekReport[]): string[] =>
  first === undefined || first.pens.length > 0
    ? []
    : ["The plan has no pens, so every week is alike: add `pens` to say who drinks."];

/** Each finding once, with the weeks it holds in; ages and figures as in the first of them. */
function findingLines(weeks: readonly WeekReport[], system: UnitSystem): string[] {
  const found = new Map<string, { finding: BirdFinding; weeks: number[] }>();
  for (const { week, findings } of weeks) {
    for (const finding of findings) {
      const group = "group" in finding ? finding.group : "kind" in finding ? finding.kind : "";
      const key = `${finding.code} ${finding.pen} ${group}`;
      const known = found.get(key);
      if (known === undefined) found.set(key, { finding, weeks: [week] });
      else if (!known.weeks.includes(week)) known.weeks.push(week);
    }
  }
  return [...found.values()].map(
    (one) =>
      `${one.weeks.length === weeks.length ? "Every week" : `Week ${one.weeks.join(", ")}`}: ${writeBirdFinding(one.finding, system)}`,
  );
}

function notes(title: string, lines: readonly string[], paint: Paint): string {
  return lines.length === 0 ? "" : `${paint(title, "title")}\n${lines.map((line) => `  ${line}`).join("\n")}`;
}
