import type { Judgement, Reason } from "../judge/check-result.js";
import type { UnitSystem } from "../units/quantity.js";
import { WHEN_WORDS, writeApart, writeHead, writeQuantityOfLitres } from "./words.js";

const VERB = { good: "does well", starves: "starves", dry: "is dry", drips: "drips" } as const;

/**
 * One judgement, from its verb on: "starves in an ordinary hour: ...".
 *
 * @example writeJudgement(checked.drinkers[0], "metric")   // "does well with the water lowest and the birds busiest: it gives ..."
 */
export function writeJudgement(judgement: Judgement, system: UnitSystem): string {
  return `${VERB[judgement.verdict]} ${WHEN_WORDS[judgement.moment]}: ${writeReason(judgement.because, system)}.`;
}

/**
 * Why, with the numbers.
 *
 * @example writeReason({ code: "flowsEnough", flow: 1.2e-6, need: 8e-7, head: 0.3, idleHead: 0.9, holdsUpTo: 1 }, "metric")   // "it gives 72 mL/min where 48 mL/min is needed, and holds its ..."
 */
export function writeReason(reason: Reason, system: UnitSystem): string {
  const head = (h: number) => writeHead(h, system);
  switch (reason.code) {
    case "flowsEnough":
      return `${givesWords(reason, system)}, and holds its ${head(reason.idleHead)} when idle (up to ${head(reason.holdsUpTo)})`;
    case "flowTooLow":
      return `${givesWords(reason, system)}; ${head(reason.headNeeded)} of head would do it, ${head(reason.head)} is left of ${head(reason.staticHead)}${lossWords(reason, head)}`;
    case "tooHigh":
      return reason.staticHead < 0
        ? `it hangs ${head(-reason.staticHead)} above the water that should feed it`
        : `the water stands only ${head(reason.staticHead)} above it, and it opens at ${head(reason.openingHead)}`;
    case "frictionTakesAll":
      return `the pipe takes ${head(reason.staticHead - reason.head)} of its ${head(reason.staticHead)}, and what is left does not open it (${head(reason.openingHead)})`;
    case "humpAboveWater":
      return `the pipe on its way rises ${head(reason.above)} above the water, at ${reason.hump}; only a primed siphon would pass that, and none is counted on`;
    case "airLocked":
      return `air caught at ${reason.hump} takes ${head(reason.airHead)} of its ${head(reason.staticHead)}; a bleed there lets the water through`;
    case "sourceStalls":
      return `the sealed ${reason.source} stops giving after ${writeQuantityOfLitres(reason.litres, system)}: no air can come in`;
    case "shutOff":
      return `no open pipe leads to it; see the taps before ${reason.at}`;
    case "blocked":
      return "it is stuck shut: it lets nothing through, whatever stands on it";
    case "idleHeadTooHigh": {
      const [stands, holds] = writeApart([reason.head, reason.holdsUpTo], "head", system, 3);
      return `${stands} stands on it, and it holds up to ${holds}`;
    }
    case "idleHeadTooLow": {
      const [stands, needs] = writeApart([reason.head, reason.sealsFrom], "head", system, 3);
      return `only ${stands} stands on it when the water is low, and it needs ${needs} to press its seal shut`;
    }
    case "notSolved":
      return `the line could not be solved (${reason.outcome}), so nothing good can be promised`;
  }
}

function givesWords(
  { flow, need }: { readonly flow: number; readonly need: number },
  system: UnitSystem,
): string {
  const [given, needed] = writeApart([flow, need], "flow", system, 2);
  return `it gives ${given} where ${needed} is needed`;
}

function lossWords(reason: Extract<Reason, { code: "flowTooLow" }>, head: (h: number) => string): string {
  const parts = [];
  if (reason.lostOnTheWay > 0) parts.push(`${head(reason.lostOnTheWay)} lost on the way`);
  if (reason.airHead > 0) parts.push(`${head(reason.airHead)} taken by air in the pipe`);
  return parts.length === 0 ? "" : ` (${parts.join(", ")})`;
}
