import type { RainRecord } from "../../document/rain-record.js";
import { balanceRain, type RainBalance, type RainConvention } from "../../simulate/rain.js";
import { dateOf } from "../../units/day.js";
import type { RainPart, RainRun } from "./rain-answer.js";

/** The ways a record is reckoned through; the first is the cautious one. */
const RAIN_RUNS = [
  { convention: "drawnFirst", begins: "full" },
  { convention: "drawnFirst", begins: "empty" },
  { convention: "rainFirst", begins: "full" },
  { convention: "rainFirst", begins: "empty" },
] as const satisfies readonly { convention: RainConvention; begins: "full" | "empty" }[];

/** What the balance is reckoned from, whichever way it is done. */
interface RainDays {
  readonly inflow: Float64Array;
  readonly demand: Float64Array;
  readonly usable: number;
}

/** The record reckoned through in each way. */
export function runsOf(record: RainRecord, { inflow, demand, usable }: RainDays): RainRun[] {
  const parts = partsOf(record);
  return RAIN_RUNS.map(({ convention, begins }) => {
    const start = begins === "full" ? usable : 0;
    return runOf(record, parts, balanceRain({ inflow, demand, capacity: usable, start }, convention), begins);
  });
}

/** Year and season of each day; seasons from December on. */
function partsOf({ rain, firstDay }: RainRecord) {
  return Array.from(rain, (_, t) => {
    const { year, month } = dateOf(firstDay + t);
    return { year, season: Math.floor((month % 12) / 3) };
  });
}

function runOf(
  record: RainRecord,
  parts: readonly { readonly year: number; readonly season: number }[],
  balance: RainBalance,
  begins: "full" | "empty",
): RainRun {
  const { short, shortDays, sums, convention } = balance;
  const years = new Map<number, RainPart>();
  const seasons = new Map<number, RainPart>();
  let [longestShort, inRow] = [0, 0];
  parts.forEach(({ year, season }, t) => {
    inRow = short[t] === 1 ? inRow + 1 : 0;
    longestShort = Math.max(longestShort, inRow);
    for (const [tally, key] of [
      [years, year],
      [seasons, season],
    ] as const) {
      const before = tally.get(key) ?? { days: 0, shortDays: 0, missing: 0, rain: 0 };
      tally.set(key, {
        days: before.days + 1,
        shortDays: before.shortDays + short[t],
        missing: before.missing + record.missing[t],
        rain: before.rain + record.rain[t],
      });
    }
  });
  return {
    convention,
    begins,
    balance,
    inTime: 1 - shortDays / parts.length,
    inVolume: sums.wanted === 0 ? 1 : sums.given / sums.wanted,
    longestShort,
    years: [...years.entries()].map(([year, part]) => ({ year, ...part })),
    seasons: [0, 1, 2, 3].map(
      (season) => seasons.get(season) ?? { days: 0, shortDays: 0, missing: 0, rain: 0 },
    ),
  };
}
