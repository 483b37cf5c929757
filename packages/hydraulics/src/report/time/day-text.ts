import type { DayResult, PenDay } from "../../simulate/day-result.js";
import type { DaysSummary, OverDays } from "../../simulate/day-summary.js";
import { writeClock, writeDay } from "../../units/day.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import { writeTable } from "../text-table.js";
import { writeFlow, writeVolume } from "../words.js";

/**
 * A wait in seconds, or minutes.
 *
 * @example writeWait(75)   // "75 s"
 */
export const writeWait = (seconds: number): string =>
  seconds < 0.5
    ? "0 s"
    : seconds < 120
      ? `${Math.round(seconds)} s`
      : `${Number((seconds / 60).toPrecision(2))} min`;

/**
 * A share as a percentage, small ones as "under 0.1 %".
 *
 * @example writeShare(0.128)   // "13 %"
 */
export function writeShare(share: number): string {
  if (share <= 0) return "0 %";
  return share < 0.001 ? "under 0.1 %" : `${Number((share * 100).toPrecision(2))} %`;
}

/**
 * What a pen's day was like, in sentences.
 *
 * @example writePenDay(day.pens[0], "metric")   // "hens: 40 birds came 1584 times and drank 8.87 L; every bird ..."
 */
export function writePenDay(pen: PenDay, system: UnitSystem): string {
  if (pen.birds === 0) return `${pen.pen}: no bird drinks at the line.`;
  const short =
    pen.short === 0 ? "every bird got its water" : `${pen.short} of them came short of it by a fifth or more`;
  const gaveUp = pen.gaveUp === 0 ? "" : `; ${pen.gaveUp} times a bird gave up and came back`;
  return `${pen.pen}: ${pen.birds} birds came ${pen.comers} times and drank ${writeVolume(pen.drunk, system)}; ${short}. At most ${pen.mostAtOnce} drank at once (${writeClock(pen.mostAt)}); every place was taken ${writeShare(pen.allTaken)} of the light; ${writeWaits(pen)}${gaveUp}.${writeDry(pen)}`;
}

function writeWaits({ foundDry, longestWait, meanWait, wait95 }: PenDay): string {
  if (foundDry === 0 && longestWait === 0) return "nobody waited";
  return `${foundDry === 0 ? "they" : "those who found water"} waited ${writeWait(meanWait)} on average, 95 in 100 no more than ${writeWait(wait95)}, at worst ${writeWait(longestWait)}`;
}

/**
 * What the waits leave out: comers who found no drinker giving water.
 *
 * @example writeDry({ foundDry: 3, dry: 0.1, dryFrom: 43200 })   // " None of their drinkers gave water 10 % of the light, first ..."
 */
export function writeDry({ foundDry, dry, dryFrom }: PenDay): string {
  if (foundDry === 0) return "";
  const when =
    dryFrom === undefined
      ? ""
      : ` None of their drinkers gave water ${writeShare(dry)} of the light, first at ${writeClock(dryFrom)}.`;
  return `${when} ${foundDry} times a bird found no water and went without; that counts as no wait.`;
}

/** One simulated day, as text for a terminal. */
export function writeDayText(title: string, result: DayResult, system: UnitSystem, paint: Paint): string {
  const on = result.day === undefined ? "" : ` on ${writeDay(result.day)}`;
  const head = `${title === "" ? "This plan" : title}: a simulated day${on} (seed ${result.seed})`;
  const { balance } = result;
  const sections = [
    `${paint(head, "title")}\n${result.pens.map((pen) => writePenDay(pen, system)).join("\n")}`,
    drinkersTable(result, system),
    `${paint("Water", "title")}\n- drunk ${writeVolume(balance.drunk, system)}, spilled ${writeVolume(balance.spilled, system)}, drawn ${writeVolume(balance.drawn, system)}\n${levelLines(result, system)}`,
    `${paint("How it was got", "title")}\n- The line was solved for ${result.solver.solves} sets of drinkers at work and asked ${result.solver.asked} times${result.solver.unsolved > 0 ? `; ${result.solver.unsolved} sets could not be solved and gave nothing` : ""}. The same seed gives the same day.`,
    `${paint("Cautions", "title")}\n- A simulated day is no promise: look at the birds every day.`,
  ];
  return `${sections.join("\n\n")}\n`;
}

function drinkersTable({ drinkers }: DayResult, system: UnitSystem): string {
  return writeTable({
    columns: ["drinker", "bouts", "drawn", "busy", "least flow"],
    alignRight: [false, true, true, true, true],
    rows: drinkers.map((one) => [
      one.drinker,
      String(one.bouts),
      writeVolume(one.drawn, system),
      writeWait(one.busy),
      one.bouts === 0 ? "" : writeFlow(one.leastFlow, system),
    ]),
  });
}

function levelLines({ sources, levels }: DayResult, system: UnitSystem): string {
  return sources
    .map(({ source, poured }, i) => {
      const level = levels.level[i];
      const length = (metres: number) => writeQuantity(metres, "length", system, 3);
      const filled = poured > 0 ? `, ${writeVolume(poured, system)} poured in` : "";
      return `- ${source}: from ${length(level[0])} to ${length(level[level.length - 1])}${filled}`;
    })
    .join("\n");
}

/** Many simulated days, as text for a terminal. */
export function writeDaysText(title: string, summary: DaysSummary, system: UnitSystem, paint: Paint): string {
  const head = `${title === "" ? "This plan" : title}: ${summary.days} simulated days (seeds ${summary.seeds.from} to ${summary.seeds.to})`;
  const row = (words: string, over: OverDays, write: (value: number) => string) => [
    words,
    write(over.low),
    write(over.middle),
    write(over.high),
    write(over.most),
  ];
  const whole = (value: number) => String(Math.round(value));
  const tables = summary.pens.map((pen) =>
    writeTable({
      columns: [
        `${pen.pen} (${pen.birds} birds)`,
        "one day in ten, below",
        "middle day",
        "one day in ten, above",
        "most",
      ],
      alignRight: [false, true, true, true, true],
      rows: [
        row("most at once", pen.mostAtOnce, whole),
        row("every place taken, of the light", pen.allTaken, writeShare),
        row("mean wait", pen.meanWait, writeWait),
        row("wait of 95 in 100", pen.wait95, writeWait),
        row("longest wait", pen.longestWait, writeWait),
        row("gave up", pen.gaveUp, whole),
        row("found no water", pen.foundDry, whole),
        row("no water at all, of the light", pen.dry, writeShare),
        row("birds short", pen.short, whole),
      ],
    }),
  );
  const short = summary.pens.map(
    ({ pen, daysShort }) => `- ${pen}: some bird came short on ${writeShare(daysShort)} of the days`,
  );
  return `${[paint(head, "title"), ...tables, [`Drawn a day: ${writeVolume(summary.drawn.low, system)} to ${writeVolume(summary.drawn.high, system)}`, ...short].join("\n")].join("\n\n")}\n`;
}
