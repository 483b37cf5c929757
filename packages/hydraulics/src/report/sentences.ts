import type { DrinkerVerdict, FillingFinding, Judgement, Reason } from "../judge/check-result.js";
import type { Line } from "../model/line.js";
import { type UnitSystem, writeQuantity } from "../units/quantity.js";
import { writeCertainty } from "./certainty-words.js";
import { LAW_WORDS, MOMENT_WORDS, writeFlow, writeHead, writeQuantityOfLitres } from "./words.js";

/**
 * A drinker's verdict as plain sentences with the numbers in them: what, why, how sure.
 *
 * @param verdict  from `checkPlan`
 * @param system   whose units to write in
 */
export function writeVerdict(verdict: DrinkerVerdict, line: Line, system: UnitSystem): string {
  const parts = [`${verdict.drinker}${placeOf(verdict, line, system)} ${writeJudgement(verdict, system)}`];
  for (const other of verdict.also) parts.push(`It also ${writeJudgement(other, system)}`);
  if (!verdict.lawsAgree)
    parts.push(`The two friction laws differ here; ${LAW_WORDS[verdict.friction]} is the cautious one.`);
  const sureness = writeCertainty(verdict.certainty);
  if (sureness !== "") parts.push(sureness);
  return parts.join(" ");
}

/** Where on its run a drinker hangs, for those that are one of many. */
function placeOf(verdict: DrinkerVerdict, line: Line, system: UnitSystem): string {
  const { group, groups, along } = line.drinkers;
  if (groups[group[verdict.index]].count === 1) return "";
  return ` (${writeQuantity(along[verdict.index], "length", system)} along)`;
}

const VERB = { good: "does well", starves: "starves", dry: "is dry", drips: "drips" } as const;

/** One judgement, from its verb on: "starves: ...". */
export function writeJudgement(judgement: Judgement, system: UnitSystem): string {
  return `${VERB[judgement.verdict]}: ${writeReason(judgement.because, system)} (${MOMENT_WORDS[judgement.moment]}).`;
}

/** Why, with the numbers. */
export function writeReason(reason: Reason, system: UnitSystem): string {
  const head = (h: number) => writeHead(h, system);
  const flow = (q: number) => writeFlow(q, system);
  switch (reason.code) {
    case "flowsEnough":
      return `it gives ${flow(reason.flow)} where ${flow(reason.need)} is needed, and holds its ${head(reason.idleHead)} when idle (up to ${head(reason.holdsUpTo)})`;
    case "flowTooLow":
      return `it gives ${flow(reason.flow)} where ${flow(reason.need)} is needed; ${head(reason.headNeeded)} of head would do it, ${head(reason.head)} is left of ${head(reason.staticHead)}${lossWords(reason, head)}`;
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
    case "idleHeadTooHigh":
      return `${head(reason.head)} stands on it with nobody drinking, and it holds up to ${head(reason.holdsUpTo)}`;
    case "idleHeadTooLow":
      return `only ${head(reason.head)} stands on it when the water is low, and it needs ${head(reason.sealsFrom)} to press its seal shut`;
    case "notSolved":
      return `the line could not be solved (${reason.outcome}), so nothing good can be promised`;
  }
}

function lossWords(reason: Extract<Reason, { code: "flowTooLow" }>, head: (h: number) => string): string {
  const parts = [];
  if (reason.lostOnTheWay > 0) parts.push(`${head(reason.lostOnTheWay)} lost on the way`);
  if (reason.airHead > 0) parts.push(`${head(reason.airHead)} taken by air in the pipe`);
  return parts.length === 0 ? "" : ` (${parts.join(", ")})`;
}

/** A finding on filling, air or suction as a sentence. */
export function writeFinding(finding: FillingFinding, system: UnitSystem): string {
  const head = (h: number) => writeHead(h, system);
  const flow = (q: number) => writeFlow(q, system);
  switch (finding.code) {
    case "humpTrapsAir":
      return `Filled from empty, the pipe keeps air beyond ${finding.point}, a column ${head(finding.airHead)} high that takes as much from the head behind it${finding.locks ? " and stops the line" : ""}. Flow does not clear it: that takes ${flow(finding.flowToClear)} and the line never draws more than ${flow(finding.flowThere)}. Put a bleed or riser vent there.`;
    case "humpAboveWater":
      return `At ${finding.point} the pipe stands ${head(finding.above)} above the lowest usable water: the line will not start by itself. Lower the pipe there, or raise the source.`;
    case "endHoldsAir":
      return `${finding.point} is a high dead end, ${head(finding.rise)} above the sag before it: air gathers there. Put a bleed at that end and open it when filling.`;
    case "suction":
      return `At ${finding.point} the running line is under suction (${head(-finding.head)} below the air's pressure, ${MOMENT_WORDS[finding.moment]}): a leak there draws air in${finding.breaks ? ", and the column of water breaks" : ""}.`;
  }
}
