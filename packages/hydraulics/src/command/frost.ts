import { AIR_UNITS, type AirReadingOptions } from "../document/air-record.js";
import { readAirRecord } from "../document/read-air-record.js";
import { writeProblem } from "../document/write-problem.js";
import { frostOfPlan } from "../judge/weather/frost.js";
import { frostOfRecord } from "../judge/weather/frost-record.js";
import { writeAirQuestion, writeFrostRecordText } from "../report/weather/frost-record-text.js";
import { writeFrostText } from "../report/weather/frost-text.js";
import { writeFrostDocument, writeFrostRecordDocument } from "../report/weather/weather-documents.js";
import type { Answer, Asked, Question } from "./answer-plan.js";
import { type Asking, readAsked } from "./asked-quantity.js";
import { EXAMPLES, recordText } from "./record-text.js";

const ASKED = {
  low: { option: "low", kind: "temperature", least: -40, most: 0, words: "from -40 to 0 degC" },
  hours: {
    option: "hours",
    kind: "time",
    least: 3600,
    most: 96 * 3600,
    words: "from 1 to 96 hours",
    bare: "h",
  },
  wind: { option: "wind", kind: "speed", least: 0, most: 40, words: "from 0 to 40 m/s" },
} as const satisfies Record<string, Asking>;

/**
 * `headfall frost PLAN --low "-8 degC"`, or `--record FILE`: exit status 1 when something that birds drink from surely
 * stops.
 */
export const FROST: Question = {
  options: ["low", "hours", "wind", "record", "example", "degrees", "dates", "place"],
  answer: (asked) =>
    asked.own["record"] === undefined && asked.own["example"] === undefined
      ? answerNight(asked)
      : answerRecord(asked),
};

function answerNight({ plan, name, system, paint, own }: Asked): Answer {
  const asked = readAsked(own, ASKED);
  if ("fault" in asked) return { fault: asked.fault };
  const answer = frostOfPlan(plan, asked.values);
  if (!answer.ok) return answer;
  const { frost } = answer;
  return {
    text: () => writeFrostText(name, frost, system, paint),
    document: () => writeFrostDocument(name, frost, system),
    status: frost.parts.some(({ blocked, lasts }) => blocked !== undefined && lasts === "no") ? 1 : 0,
  };
}

async function answerRecord({ plan, name, system, paint, own }: Asked): Promise<Answer> {
  const { hours, wind } = ASKED;
  const asked = readAsked(own, { hours, wind });
  if ("fault" in asked) return { fault: asked.fault };
  if (own["low"] !== undefined) return { fault: "--low is one night's; a record has its own." };
  const options = readingOptions(own);
  if ("fault" in options) return options;
  const text = await recordText(own);
  if (typeof text !== "string") return text;
  const reading = readAirRecord(text, options);
  if (!reading.ok) {
    if ("problems" in reading)
      return { fault: `${own["record"] ?? "the record"}: ${reading.problems.map(writeProblem).join(" ")}` };
    return { fault: `${writeAirQuestion(reading.question)} Say it with --${reading.question.ask}.` };
  }
  const answer = frostOfRecord(plan, reading.record, asked.values);
  if (!answer.ok) return answer;
  const { record } = answer;
  return {
    text: () => writeFrostRecordText(name, record, system, paint),
    document: () => writeFrostRecordDocument(name, record, system),
    status: record.stops.some(({ surely }) => surely > 0) ? 1 : 0,
  };
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
