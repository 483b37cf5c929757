import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { buildLine } from "../../../packages/hydraulics/src/model/build-line.js";
import { type Ailing, ailingIn } from "../../../packages/hydraulics/src/search/remedies/remedy.js";
import { buildRequirement } from "../../../packages/hydraulics/src/search/requirement.js";

/** A plan from what of it matters here. */
export function planOf(document: object) {
  const reading = checkDocument({ headfall: 1, ...document });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

/** What ails a plan that does not work. */
export function ailingOf(document: object): Ailing {
  const plan = planOf(document);
  const built = buildLine(plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  const building = buildRequirement(plan, built.line, {});
  if (!building.ok) throw new Error(JSON.stringify(building.problems));
  const ailing = ailingIn(building.requirement, built.line);
  if (ailing === undefined) throw new Error("nothing ails it");
  return ailing;
}

/** A barrel on a stand of 40 cm, full at 60 cm, and used down to 10 cm. */
export const barrel = (more: Record<string, unknown> = {}) => ({
  id: "barrel",
  vessel: "drum-55gal-plastic",
  stand: "40 cm",
  level: { full: "60 cm", lowest: "10 cm" },
  ...more,
});

export const nipples = (count: number, more: Record<string, unknown> = {}) => ({
  kind: "nipple-side-action",
  count,
  ...more,
});
