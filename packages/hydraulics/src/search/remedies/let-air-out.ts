import type { Plan } from "../../document/plan-schema.js";
import { runNames } from "../../document/run-ends.js";
import { readQuantity } from "../../units/quantity.js";
import { addCosts, NO_COST } from "../cost.js";
import type { Change } from "../cure-answer.js";
import { type Ailing, bought, type Remedy, withRun } from "./remedy.js";

/** A bleed at each hump that keeps its air when the line is filled: at all of them, and at each alone. */
export function letAirOut(ailing: Ailing): Remedy[] {
  const { judged, plan } = ailing;
  const humps = judged.filling.findings.flatMap((finding) =>
    finding.code === "humpTrapsAir" ? [finding.pointIndex] : [],
  );
  const sets = humps.length > 1 ? [humps, ...humps.slice(0, 4).map((one) => [one])] : [humps];
  return sets.flatMap((set): Remedy[] => {
    let bled: { plan: Plan; changes: Change[] } = { plan, changes: [] };
    for (const hump of set) bled = bleedAt(ailing, hump, bled);
    if (bled.changes.length === 0) return [];
    const spent = bled.changes.reduce((sum) => addCosts(sum, bought(1, plan.prices?.bleed)), NO_COST);
    return [{ kind: "bleed", ...bled, spent }];
  });
}

/** Joints are bled as points of the plan, places surveyed along a run in its survey. */
function bleedAt(
  { line }: Ailing,
  hump: number,
  { plan, changes }: { readonly plan: Plan; readonly changes: Change[] },
): { plan: Plan; changes: Change[] } {
  const name = line.points.id[hump];
  const run = line.runs.find(({ points }) => points.subarray(1, points.length - 1).includes(hump));
  if (run !== undefined) {
    const along = run.along[run.points.indexOf(hump)];
    const survey = (plan.runs[run.index].survey ?? []).map((reading) =>
      Math.abs(metres(reading.along) - along) < 1e-6 ? { ...reading, bleed: true } : reading,
    );
    const id = runNames(plan)[run.index];
    return {
      plan: withRun(plan, run.index, { survey }),
      changes: [...changes, { code: "bleed", run: id, point: name, along }],
    };
  }
  const points = plan.points ?? [];
  const isKnown = points.some(({ id }) => id === name);
  return {
    plan: {
      ...plan,
      points: isKnown
        ? points.map((point) => (point.id === name ? { ...point, bleed: true } : point))
        : [...points, { id: name, bleed: true }],
    },
    changes: [...changes, { code: "bleed", run: undefined, point: name, along: undefined }],
  };
}

function metres(typed: string): number {
  const read = readQuantity(typed, "length");
  return read.ok ? read.quantity.si : 0;
}
