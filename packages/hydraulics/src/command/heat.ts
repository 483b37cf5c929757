import { heatOfPlan } from "../judge/weather/heat.js";
import { heatOfRecord } from "../judge/weather/heat-record.js";
import { writeHeatRecordText } from "../report/weather/heat-record-text.js";
import { writeHeatText } from "../report/weather/heat-text.js";
import { writeHeatDocument, writeHeatRecordDocument } from "../report/weather/weather-documents.js";
import { AIR_OPTIONS, airRecordOf, asksRecord } from "./air-record.js";
import type { Answer, Asked, Question } from "./answer-plan.js";
import { type Asking, readAsked } from "./asked-quantity.js";

const ASKED = {
  high: { option: "high", kind: "temperature", least: -40, most: 55, words: "from -40 to 55 °C" },
  sun: { option: "sun", kind: "sunshine", least: 0, most: 1200, words: "from 0 to 1200 W/m²" },
} as const satisfies Record<string, Asking>;

/**
 * `headfall heat PLAN --high "36 degC"`, or `--record FILE`: exit status 1 when water that birds drink from comes above
 * 30 °C.
 */
export const HEAT: Question = {
  options: ["high", "sun", ...AIR_OPTIONS],
  answer: (asked) => (asksRecord(asked.own) ? answerRecord(asked) : answerDay(asked)),
};

function answerDay({ plan, name, day, system, paint, own }: Asked): Answer {
  const asked = readAsked(own, ASKED);
  if ("fault" in asked) return { fault: asked.fault };
  const answer = heatOfPlan(plan, { ...asked.values, day });
  if (!answer.ok) return answer;
  const { heat } = answer;
  return {
    text: () => writeHeatText(name, heat, system, paint),
    document: () => writeHeatDocument(name, heat, system),
    status: heat.parts.some(({ drinkers, hottest }) => drinkers > 0 && hottest.less > 0) ? 1 : 0,
  };
}

async function answerRecord({ plan, name, day, system, paint, own }: Asked): Promise<Answer> {
  if (own["high"] !== undefined || own["sun"] !== undefined)
    return { fault: "--high and --sun are one day's; a record has its own, and the plan its sun." };
  const air = await airRecordOf(own);
  if ("fault" in air) return air;
  const answer = heatOfRecord(plan, air.record, { day });
  if (!answer.ok) return answer;
  const { record } = answer;
  return {
    text: () => writeHeatRecordText(name, record, system, paint),
    document: () => writeHeatRecordDocument(name, record, system),
    status: record.often.some(({ atWorst }) => atWorst > 0) ? 1 : 0,
  };
}
