import {
  type DeviceNeeded,
  type DrinkersAsked,
  type FlockReport,
  writeAsks,
  writeForce,
  writeNeedReason,
  writeSilences,
} from "@headfall/hydraulics";
import { forceMark } from "../birds/force-marks.js";
import { applied, term } from "./expression.js";
import { type HowGot, type Parts, type Step, soundSteps, stepOf } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import type { HowSubject } from "./subject.js";

/** How many drinkers of one device a pen needs: the most that rules, advice, reach and crowd ask. */
export function howDrinkersNeeded(
  request: HowRequest,
  { pen: p, device: k }: Extract<HowSubject, { of: "drinkersNeeded" }>,
): HowGot {
  const { needed, region } = request.checked.flock!;
  const pen = needed[p]!;
  return howNeeded(request, { need: pen.devices[k]!, pen: pen.pen, region });
}

/** The same of one device in a pen, whenever that is. */
export function howNeeded(request: HowRequest, { need, pen, region }: PenNeed): HowGot {
  return {
    title: `${need.device}s needed, ${quoted(pen)}`.replace(/^./, (letter) => letter.toUpperCase()),
    result: `${need.needed}, ${writeNeedReason(need)}`,
    steps: soundSteps(neededStep(need)),
    ...(need.asked.length === 0 ? {} : { listed: listOf(need, region, request) }),
    valid: [],
    notes: [
      `For ${need.birds} birds, counted as if the pen had no other kind of drinker.`,
      ...regionNote(request, region),
      `In reach: ${need.inReach}, so that none can guard the only one, and one may fail. Crowd: the birds that only one moment in a hundred of the busiest exceeds, over the birds that drink from one.`,
      ...writeSilences(need, region).map((words) => `${words[0]?.toUpperCase()}${words.slice(1)}.`),
    ],
    sources: [
      ...new Set([
        ...need.asked.map(({ rule }) => rule.citation.source),
        "common-practice",
        "cautious-defaults",
      ]),
    ],
  };
}

interface PenNeed {
  readonly need: DeviceNeeded;
  readonly pen: string;
  readonly region: Region;
}

type Region = FlockReport["region"];

function neededStep({ byRule, byAdvice, inReach, byCrowd }: DeviceNeeded): Step {
  const count = (symbol: string, value: number) => term(symbol, value, String(value));
  const most = applied(
    "max",
    count("rules that bind", byRule),
    count("advice and rules", byAdvice),
    count("in reach", inReach),
    count("crowd", byCrowd),
  );
  return stepOf("needed", most, String);
}

/** Every rule and advice that speaks of these birds, what binds first. */
function listOf(need: DeviceNeeded, region: Region, { figures }: HowRequest): Parts {
  const rowOf = (asked: DrinkersAsked) => ({
    cells: [
      `${writeAsks(asked, need.device, figures.system)} (${quoted(asked.rule.of)}; ${quoted(asked.rule.citation.where)}, ${asked.rule.citation.seen})`,
      `${forceMark(asked.isBinding)} ${writeForce(asked)}`,
      String(asked.needed),
    ],
    value: asked.needed,
    source: asked.rule.citation.source,
  });
  return {
    caption: `Rules and advice that speak of these birds${region === "none" ? "" : ` in ${region}`}`,
    columns: ["Asks", "Force", "Drinkers"],
    rows: need.asked.map(rowOf),
  };
}

function regionNote({ plan }: HowRequest, region: Region): string[] {
  if (plan?.region !== undefined || region === "none") return [];
  return [`The plan does not say whose rules count: those of ${region} are taken.`];
}
