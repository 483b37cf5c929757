import { frostOfPlan } from "../judge/weather/frost.js";
import { frostOfRecord } from "../judge/weather/frost-record.js";
import { writeFrostRecordText } from "../report/weather/frost-record-text.js";
import { writeFrostText } from "../report/weather/frost-text.js";
import { writeFrostDocument, writeFrostRecordDocument } from "../report/weather/weather-documents.js";
import { AIR_OPTIONS, airRecordOf, asksRecord } from "./air-record.js";
import type { Answer, Asked, Question } from "./answer-plan.js";
import { type Asking, readAsked } from "./asked-quantity.js";

const ASKED = {
  low: { option: "low", kind: "temperature", least: -40, most: 0, words: "from -40 to 0 °C" },
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
  options: ["low", "hours", "wind", ...AIR_OPTIONS],
  answer: (asked) => (asksRecord(asked.own) ? answerRecord(asked) : answerNight(asked)),
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
  const air = await airRecordOf(own);
  if ("fault" in air) return air;
  const answer = frostOfRecord(plan, air.record, asked.values);
  if (!answer.ok) return answer;
  const { record } = answer;
  return {
    text: () => writeFrostRecordText(name, record, system, paint),
    document: () => writeFrostRecordDocument(name, record, system),
    status: record.stops.some(({ surely }) => surely > 0) ? 1 : 0,
  };
}
