import { heatOfPlan } from "../judge/weather/heat.js";
import { writeHeatText } from "../report/weather/heat-text.js";
import { writeHeatDocument } from "../report/weather/weather-documents.js";
import type { Question } from "./answer-plan.js";
import { type Asking, readAsked } from "./asked-quantity.js";

const ASKED = {
  high: { option: "high", kind: "temperature", least: -40, most: 55, words: "from -40 to 55 degC" },
  sun: { option: "sun", kind: "sunshine", least: 0, most: 1200, words: "from 0 to 1200 W/m2" },
} as const satisfies Record<string, Asking>;

/** `headfall heat PLAN --high "36 degC"`: exit status 1 when water that birds drink from comes above 30 °C. */
export const HEAT: Question = {
  options: ["high", "sun"],
  answer: ({ plan, name, day, system, paint, own }) => {
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
  },
};
