import { frostOfPlan } from "../judge/frost.js";
import { writeFrostText } from "../report/frost-text.js";
import { writeFrostDocument } from "../report/weather-documents.js";
import { answerPlan } from "./answer-plan.js";
import { type Asking, readAsked } from "./asked-quantity.js";

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

/** `headfall frost PLAN --low "-8 degC"`: exit status 1 when something that birds drink from surely stops. */
export function runFrost(args: readonly string[]): Promise<number> {
  return answerPlan(args, ["low", "hours", "wind"], ({ plan, name, system, paint, own }) => {
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
  });
}
