import { writeFileSync } from "node:fs";
import { writePlan } from "../document/write-plan.js";
import { writeCureDocument, writeFrontDocument } from "../report/cure/cure-document.js";
import { writeCureText } from "../report/cure/cure-text.js";
import { writeFrontText } from "../report/cure/front-text.js";
import { COST_MEASURES, type CostMeasure } from "../search/cost.js";
import type { CureOptions } from "../search/cure-options.js";
import { findCures } from "../search/find-cures.js";
import { findFront } from "../search/find-front.js";
import { readQuantity } from "../units/quantity.js";
import type { Answer, Asked, Question } from "./answer-plan.js";
import { readCount } from "./arguments.js";
import { fileFault } from "./file-fault.js";

const OWN = ["by", "stand-most", "stand-step", "margin", "weeks", "most", "front", "apply", "out"];

/** `headfall cure PLAN`: exit status 0 when the plan works or can be made to, 1 when nothing was found. */
export const CURE: Question = { options: OWN, ofLine: true, answer };

function answer({ plan, name, day, system, paint, own }: Asked): Answer {
  const options = readOptions(own);
  if ("fault" in options) return options;
  const apply = readApply(own);
  if ("fault" in apply) return apply;
  const { front } = own;
  if (front !== undefined)
    return answerFront(front, { plan, name, system, paint }, { ...options, day, system });
  const finding = findCures(plan, { ...options, day, system });
  if (!finding.ok) return finding;
  const { cures, before } = finding.answer;
  const fault = writeApplied(
    apply,
    cures.map((cure) => writePlan(cure.plan)),
  );
  if (fault !== undefined) return { fault };
  return {
    text: () => writeCureText(name, finding.answer, system, paint),
    document: () => writeCureDocument(name, finding.answer, system),
    status: before.meets || cures.length > 0 ? 0 : 1,
  };
}

/** `--front margin` or `--front height`: what more money, or a higher stand, buys. */
function answerFront(
  front: string,
  { plan, name, system, paint }: Pick<Asked, "plan" | "name" | "system" | "paint">,
  options: CureOptions,
): Answer {
  if (front !== "margin" && front !== "height")
    return { fault: `--front is margin or height, not ${JSON.stringify(front)}.` };
  const finding = findFront(plan, options);
  if (!finding.ok) return finding;
  const points = front === "margin" ? finding.front.costAgainstMargin : finding.front.heightAgainstSize;
  return {
    text: () => writeFrontText(name, finding.front, front, system, paint),
    document: () => writeFrontDocument(name, finding.front, system),
    status: points.length > 0 ? 0 : 1,
  };
}

type Read<Value> = Value | { readonly fault: string };

function readOptions(own: Asked["own"]): Read<CureOptions> {
  const by = own["by"];
  if (by !== undefined && !COST_MEASURES.includes(by as CostMeasure))
    return { fault: `--by is ${COST_MEASURES.join(", ")}, not ${JSON.stringify(by)}.` };
  const lengths = { standMost: "stand-most", standStep: "stand-step", margin: "margin" } as const;
  const read: Record<string, number> = {};
  for (const [key, name] of Object.entries(lengths)) {
    const typed = own[name];
    if (typed === undefined) continue;
    const quantity = readQuantity(typed, "length");
    const [least, most] = RANGE[key as keyof typeof lengths];
    if (!quantity.ok || quantity.quantity.si < least || quantity.quantity.si > most)
      return {
        fault: `--${name} is a length from ${least} m to ${most} m, for instance "${EXAMPLE[key as keyof typeof lengths]}", not ${JSON.stringify(typed)}.`,
      };
    read[key] = quantity.quantity.si;
  }
  const counts = { weeks: 104, most: 1_000_000 } as const;
  for (const [name, most] of Object.entries(counts)) {
    if (own[name] === undefined) continue;
    const count = readCount(name, own[name], 0, most);
    if (typeof count !== "number") return count;
    read[name === "most" ? "mostJudged" : name] = count;
  }
  return { ...read, ...(by === undefined ? {} : { by: by as CostMeasure }) };
}

const RANGE = { standMost: [0, 10], standStep: [0.01, 1], margin: [0, 1] } as const;
const EXAMPLE = { standMost: "1.2 m", standStep: "10 cm", margin: "5 cm" } as const;

/** Which cure is to be written where; nothing where none is asked for. */
type Apply = { readonly cure: number; readonly out: string } | { readonly cure: undefined };

function readApply(own: Asked["own"]): Read<Apply> {
  const { apply, out } = own;
  if (apply === undefined && out === undefined) return { cure: undefined };
  if (apply === undefined || out === undefined)
    return { fault: "--apply and --out belong together: which cure, and into which file." };
  const cure = readCount("apply", apply, 0, 99);
  return typeof cure === "number" ? { cure, out } : cure;
}

function writeApplied(apply: Apply, plans: readonly string[]): string | undefined {
  if (apply.cure === undefined) return undefined;
  const text = plans[apply.cure - 1];
  if (text === undefined)
    return `--apply ${apply.cure}: there ${plans.length === 1 ? "is one cure" : `are ${plans.length} cures`}.`;
  try {
    writeFileSync(apply.out, text, { flag: "wx" });
  } catch (error) {
    return `cannot write ${apply.out}: ${fileFault(error)}`;
  }
  return undefined;
}
