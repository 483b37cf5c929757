import { recordOfDays } from "./rain-days.js";
import type { RainDay, RainReading } from "./rain-record.js";
import { readStationFile } from "./station-file.js";

/** Reads the rain of a station file that has no headings; air that was flagged is left out, rain too, and counted. */
export function readStationLines(lines: readonly string[], form: "fixed columns" | "lines"): RainReading {
  const days = new Map<
    number,
    { rain: number | undefined; high: number | undefined; low: number | undefined; hasRain: boolean }
  >();
  let flagged = 0;
  const read = readStationFile(lines, form, ({ day, element, value, isFlagged }) => {
    const one = days.get(day) ?? { rain: undefined, high: undefined, low: undefined, hasRain: false };
    days.set(day, one);
    if (element === "PRCP") {
      one.hasRain = true;
      if (isFlagged) flagged += 1;
      else if (value !== undefined) one.rain = value;
    } else if (value !== undefined && !isFlagged) {
      if (element === "TMAX") one.high = value / 10;
      if (element === "TMIN") one.low = value / 10;
    }
  });
  if (!read.ok) return read;
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
