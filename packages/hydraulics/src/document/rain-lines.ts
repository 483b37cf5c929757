import { writeDay } from "../units/day.js";
import { recordOfDays } from "./rain-days.js";
import { type RainDay, type RainReading, refuseRecord } from "./rain-record.js";
import { readStationFile } from "./station-file.js";

/** Reads the rain of a station file that has no headings; air that was flagged is left out, rain too, and counted. */
export function readStationLines(lines: readonly string[], form: "fixed columns" | "lines"): RainReading {
  const days = new Map<
    number,
    { rain: number | undefined; high: number | undefined; low: number | undefined; hasRain: boolean }
  >();
  let flagged = 0;
  let below: { readonly day: number; readonly value: number } | undefined;
  const read = readStationFile(lines, form, ({ day, element, value, isFlagged }) => {
    const one = days.get(day) ?? { rain: undefined, high: undefined, low: undefined, hasRain: false };
    days.set(day, one);
    if (element === "PRCP") {
      one.hasRain = true;
      if (isFlagged) flagged += 1;
      else if (value !== undefined) one.rain = value;
      if (value !== undefined && value < 0 && !isFlagged) below ??= { day, value };
    } else if (value !== undefined && !isFlagged) {
      if (element === "TMAX") one.high = value / 10;
      if (element === "TMIN") one.low = value / 10;
    }
  });
  if (!read.ok) return read;
  if (below !== undefined) return belowNought(below);
  const withRain: RainDay[] = [...days.entries()]
    .filter(([, one]) => one.hasRain)
    .map(([day, { rain, high, low }]) => ({ day, rain, high, low }));
  return recordOfDays(withRain, {
    name: read.station,
    format: `station, ${form}`,
    unit: "tenths of mm",
    flagged,
  });
}

const belowNought = ({ day, value }: { readonly day: number; readonly value: number }) =>
  refuseRecord({
    code: "outOfRange",
    found: `rain of ${value / 10} mm on ${writeDay(day)}`,
    allowed: "Rain is 0 or more; -9999 stands where it is not known.",
    mend: "Take the file anew; it may have been changed by a spreadsheet.",
  });
