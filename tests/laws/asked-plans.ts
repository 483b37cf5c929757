import { checkDocument } from "../../packages/hydraulics/src/document/read-plan.js";
import { type AskedPlan, askPlan, DRIP, MORNING } from "../../packages/hydraulics/src/judge/asked-plan.js";
import { poolsOf } from "../../packages/hydraulics/src/judge/time/give-out.js";
import {
  type Drawdown,
  type DrawnPool,
  drawDown,
  type Refill,
} from "../../packages/hydraulics/src/simulate/drawdown.js";
import { type PlanData, randomPlan } from "../arbitraries/plans.js";

const DAY = 86_400;
/** The day on which random plans are asked about. */
export const ASKED_ON = "2026-07-04";

/** The random plan of a number, or of the next number whose plan has pens. */
export function planWithPens(seed: number): PlanData {
  for (let number = seed; ; number += 1) {
    const plan = randomPlan(number);
    if (plan["pens"] !== undefined) return plan;
  }
}

export function asked(data: PlanData): AskedPlan {
  const reading = checkDocument(data);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const asking = askPlan(reading.plan, ASKED_ON);
  if (!asking.ok) throw new Error(JSON.stringify(asking.problems));
  return asking.asked;
}

/** The plan's water drawn down by its birds for some days, on the figure to size on; `isFilled`: as the plan says. */
export function drawnDown(
  data: PlanData,
  { days = 40, isFilled = false } = {},
): { readonly pools: readonly DrawnPool[]; readonly drawdown: Drawdown } {
  const { judged, flock, refills, fullVolumes: start } = asked(data);
  const none = refills.map((): Refill => ({ kind: "none" }));
  const supply = {
    refills: isFilled ? refills : none,
    start,
    failed: new Set<number>(),
    dripRate: DRIP.expect,
  };
  const pools = poolsOf(judged, flock, supply);
  const drawdown = drawDown(judged.line, flock, pools, { figure: "size", from: MORNING, lasts: days * DAY });
  return { pools, drawdown };
}

/** When it first comes to each end [s]; Infinity where it does not. */
export function endsOf({ events }: Drawdown) {
  const first = (kind: Drawdown["events"][number]["kind"]) =>
    events.find((event) => event.kind === kind)?.time ?? Number.POSITIVE_INFINITY;
  return { dry: first("drinkerDry"), without: first("penShort"), empty: first("empty") };
}
