import type { Plan } from "../document/plan-schema.js";
import { sourceNames } from "../document/run-ends.js";
import { whatIsWrong } from "../judge/trouble/what-is-wrong.js";
import { buildLine } from "../model/build-line.js";
import { writeTroubleDocument } from "../report/trouble/trouble-document.js";
import { writeTroubleText } from "../report/trouble/trouble-text.js";
import { readQuantity } from "../units/quantity.js";
import type { Answer, Asked, Question } from "./answer-plan.js";
import { type LineNames, readSigns, SIGN_OPTIONS, whichSource } from "./trouble-signs.js";

/** `headfall trouble PLAN --dry "hen line 13-24" --level holds-overnight` */
export const TROUBLE: Question = { options: [...SIGN_OPTIONS, "stands", "seen"], ofLine: true, answer };

function answer({ plan, name, day, system, paint, own }: Asked): Answer {
  const built = buildLine(plan);
  if (!built.ok) return built;
  const { drinkers, runs, sources } = built.line;
  const names: LineNames = {
    drinker: drinkers.id,
    run: runs.map(({ id }) => id),
    source: sources.map(({ id }) => id),
  };
  const signs = readSigns(own, names);
  if ("fault" in signs) return signs;
  if (signs.length === 0)
    return {
      fault: `Tell at least one thing you see, for instance --dry "${names.drinker[0] ?? "a drinker"}" or --level falls-overnight.`,
    };
  const levels = readStands(own["stands"], plan);
  if ("fault" in levels) return levels;
  const lastSeen = readSeen(own["seen"]);
  if (typeof lastSeen === "object") return lastSeen;
  try {
    const answered = whatIsWrong(plan, signs, {
      day,
      levels,
      ...(lastSeen === undefined ? {} : { lastSeen }),
    });
    if (!answered.ok) return answered;
    return {
      text: () => writeTroubleText(name, answered.trouble, system, paint),
      document: () => writeTroubleDocument(name, answered.trouble, system),
      status: 0,
    };
  } catch (error) {
    if (error instanceof RangeError && own["stands"] !== undefined)
      return { fault: "--stands is a level from the bottom up to the full level." };
    throw error;
  }
}

/** Where the water stands, of one source or "barrel: 60 cm" of each. */
function readStands(
  typed: string | undefined,
  plan: Plan,
): (number | undefined)[] | { readonly fault: string } {
  const names = sourceNames(plan);
  const levels: (number | undefined)[] = names.map(() => undefined);
  if (typed === undefined) return levels;
  for (const piece of typed.split(";").map((one) => one.trim())) {
    const [, named, length] = /^(?:(.*?)\s*:\s*)?(.*)$/.exec(piece) ?? [];
    const source = whichSource("stands", named, names, "60 cm");
    if (typeof source !== "string") return source;
    const read = readQuantity(length, "length");
    if (!read.ok) return { fault: `--stands: found ${read.found}. ${read.allowed}` };
    levels[names.indexOf(source)] = read.quantity.si;
  }
  return levels;
}

function readSeen(typed: string | undefined): number | undefined | { readonly fault: string } {
  if (typed === undefined) return undefined;
  const read = readQuantity(typed, "time");
  if (read.ok && read.quantity.si > 0) return read.quantity.si;
  return {
    fault: `--seen is how long ago there was water in it, for instance "2 days"; not ${JSON.stringify(typed)}.`,
  };
}
