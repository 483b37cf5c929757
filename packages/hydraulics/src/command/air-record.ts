import { AIR_UNITS, type AirReadingOptions, type AirRecord } from "../document/air-record.js";
import { readAirRecord } from "../document/read-air-record.js";
import { writeProblem } from "../document/write-problem.js";
import { writeAirQuestion } from "../report/weather/frost-record-text.js";
import type { Asked } from "./answer-plan.js";
import { EXAMPLES, recordText } from "./record-text.js";

/** Options of a command that can be asked about a daily record of the air. */
export const AIR_OPTIONS = ["record", "example", "degrees", "dates", "place"] as const;

/** Whether a record is asked about. */
export const asksRecord = (own: Asked["own"]): boolean =>
  own["record"] !== undefined || own["example"] !== undefined;

/** The record that is named, or what is wrong with it or left open by it, in one sentence. */
export async function airRecordOf(
  own: Asked["own"],
): Promise<{ readonly record: AirRecord } | { readonly fault: string }> {
  const options = readingOptions(own);
  if ("fault" in options) return options;
  const text = await recordText(own);
  if (typeof text !== "string") return text;
  const reading = readAirRecord(text, options);
  if (reading.ok) return reading;
  if ("problems" in reading)
    return { fault: `${own["record"] ?? "the record"}: ${reading.problems.map(writeProblem).join(" ")}` };
  return { fault: `${writeAirQuestion(reading.question)} Say it with --${reading.question.ask}.` };
}

function readingOptions(own: Asked["own"]): AirReadingOptions | { readonly fault: string } {
  const { example, degrees, dates, place } = own;
  if (example !== undefined)
    return { degrees: "C", place: EXAMPLES[example as keyof typeof EXAMPLES] ?? example };
  const unit = AIR_UNITS.find((one) => one === degrees);
  if (degrees !== undefined && unit === undefined)
    return { fault: `--degrees is one of ${AIR_UNITS.join(", ")}, not ${JSON.stringify(degrees)}.` };
  if (dates !== undefined && dates !== "day first" && dates !== "month first")
    return { fault: '--dates is "day first" or "month first".' };
  return {
    ...(unit === undefined ? {} : { degrees: unit }),
    ...(dates === undefined ? {} : { dates }),
    ...(place === undefined ? {} : { place }),
  };
}
