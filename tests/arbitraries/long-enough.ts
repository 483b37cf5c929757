import type { Plan } from "../../packages/hydraulics/src/document/plan-schema.js";
import type { Problem } from "../../packages/hydraulics/src/document/problem.js";
import { checkDocument } from "../../packages/hydraulics/src/document/read-plan.js";
import { buildLine } from "../../packages/hydraulics/src/model/build-line.js";
import type { Line } from "../../packages/hydraulics/src/model/line.js";
import type { PlanData } from "./plans.js";

/** Lengthening a run may bring another end down, so that its run is too short in turn; this often at most. */
const ROUNDS = 8;

/** A plan whose runs are as long as their ends are apart, read and built; or what is wrong with it otherwise. */
export type Ready =
  | { readonly ok: true; readonly data: PlanData; readonly plan: Plan; readonly line: Line }
  | { readonly ok: false; readonly data: PlanData; readonly problems: readonly Problem[] };

/** Reads and builds a plan, lengthening runs that are told to be too short until none is. */
export function madeReady(drawn: PlanData): Ready {
  let data = drawn;
  for (let round = 0; ; round += 1) {
    const reading = checkDocument(data);
    if (!reading.ok) return { ok: false, data, problems: reading.problems };
    const building = buildLine(reading.plan);
    if (building.ok) return { ok: true, data, plan: reading.plan, line: building.line };
    const longer = round < ROUNDS ? lengthened(data, building.problems) : undefined;
    if (longer === undefined) return { ok: false, data, problems: building.problems };
    data = longer;
  }
}

/** The plan with the runs lengthened that are told to be too short; nothing where none is. */
function lengthened(plan: PlanData, problems: readonly Problem[]): PlanData | undefined {
  const apart = new Map<number, number>();
  for (const { path, allowed } of problems) {
    const [run, metres] = [/^runs\[(\d+)\]\.length$/.exec(path), /are ([\d.]+) cm apart/.exec(allowed)];
    if (run !== null && metres !== null) apart.set(Number(run[1]), Number(metres[1]) / 100);
  }
  if (apart.size === 0) return undefined;
  const runs = (plan["runs"] as PlanData[]).map((run, i) => {
    const least = apart.get(i);
    return least === undefined ? run : { ...run, length: `${(least + 0.01).toFixed(3)} m` };
  });
  return { ...plan, runs };
}
