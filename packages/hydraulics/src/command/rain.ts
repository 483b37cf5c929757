import { RAIN_UNITS, type RainReadingOptions, type RainUnit } from "../document/rain-record.js";
import { readRainRecord } from "../document/read-rain-record.js";
import { writeProblem } from "../document/write-problem.js";
import { rainSupply } from "../judge/rain/rain-supply.js";
import { writeRainDocument } from "../report/time/day-documents.js";
import { writeRainQuestion, writeRainText } from "../report/time/rain-text.js";
import type { Answer, Asked, Question } from "./answer-plan.js";
import { EXAMPLES, recordText } from "./record-text.js";

/** `headfall rain PLAN --record FILE` or `--example seattle`: exit status 1 when some day is short. */
export const RAIN: Question = {
  options: ["record", "example", "rain-units", "dates", "place", "figure"],
  ofLine: true,
  answer,
};

async function answer({ plan, name, day, system, paint, own }: Asked): Promise<Answer> {
  const figure = own["figure"] ?? "size";
  if (figure !== "expect" && figure !== "size") return { fault: "--figure is expect or size." };
  const options = readingOptions(own);
  if ("fault" in options) return options;
  const text = await recordText(own);
  if (typeof text !== "string") return text;
  const example =
    own["example"] === undefined
      ? {}
      : ({ unit: "mm", place: EXAMPLES[own["example"] as keyof typeof EXAMPLES] } as const);
  const reading = readRainRecord(text, { ...options, ...example });
  if (!reading.ok) {
    if ("question" in reading) {
      const option = { unit: "--rain-units", dates: "--dates", place: "--place" }[reading.question.ask];
      return { fault: `${writeRainQuestion(reading.question)} Say it with ${option}.` };
    }
    return { fault: `${own["record"] ?? "the record"}: ${reading.problems.map(writeProblem).join(" ")}` };
  }
  const supplied = rainSupply(plan, reading.record, { figure, day });
  if (!supplied.ok) return supplied;
  const { supply } = supplied;
  return {
    text: () => writeRainText(name, reading.record, supply, system, paint),
    document: () => writeRainDocument(name, supply, system),
    status: supply.runs.some(({ balance }) => balance.shortDays > 0) ? 1 : 0,
  };
}

function readingOptions(own: Asked["own"]): RainReadingOptions | { readonly fault: string } {
  const unit = own["rain-units"];
  if (unit !== undefined && !Object.hasOwn(RAIN_UNITS, unit))
    return {
      fault: `--rain-units is one of ${Object.keys(RAIN_UNITS).join(", ")}, not ${JSON.stringify(unit)}.`,
    };
  const dates = own["dates"];
  if (dates !== undefined && dates !== "day first" && dates !== "month first")
    return { fault: '--dates is "day first" or "month first".' };
  return {
    ...(unit === undefined ? {} : { unit: unit as RainUnit }),
    ...(dates === undefined ? {} : { dates }),
    ...(own["place"] === undefined ? {} : { place: own["place"] }),
  };
}
