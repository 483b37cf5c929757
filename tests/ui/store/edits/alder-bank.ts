import type { Plan } from "@headfall/hydraulics";
import { editPlan } from "../../../../packages/ui/src/store/edit-plan.js";
import type { Edited, PlanChange } from "../../../../packages/ui/src/store/plan-change.js";
import { heightsOf } from "../../../../packages/ui/src/store/plan-heights.js";
import { frozen } from "../plan-cases.js";

/** The line of Alder Bank as it is typed in the first minutes: two runs, one after the other, no places yet. */
export const typed: Plan = frozen({
  headfall: 1,
  sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "60 cm" }],
  runs: [
    { length: "12 m", fall: "10 cm" },
    { length: "6 m", drinkers: { kind: "nipple-bucket", count: 20, every: "30 cm" } },
  ],
});
export const at = (x: number, y: number) => ({ x: `${x} m`, y: `${y} m` });
/** The same, drawn, with a branch to the brooder. */
export const drawn: Plan = frozen({
  headfall: 1,
  sources: [{ id: "barrel", vessel: "drum-55gal-plastic", place: at(0, 0), stand: "60 cm" }],
  points: [
    { id: "gate", place: at(12, 0) },
    { id: "coop", place: at(18, 0) },
    { id: "brooder", place: at(12, 4) },
  ],
  runs: [
    { id: "feed", from: "barrel", to: "gate", length: "12 m", fall: "10 cm" },
    {
      id: "house",
      from: "gate",
      to: "coop",
      length: "6 m",
      drinkers: { kind: "nipple-bucket", count: 20, every: "30 cm" },
    },
    { id: "chicks", from: "gate", to: "brooder", length: "4 m" },
  ],
});

/** The edit made; fails with its reason where it is refused. */
export function made(
  plan: Plan,
  change: PlanChange,
  system: "metric" | "us" = "metric",
): Extract<Edited, { ok: true }> {
  const edited = editPlan(plan, change, system);
  if (!edited.ok) throw new Error(edited.because);
  return edited;
}
/** Why an edit is refused; fails where it is made. */
export function refused(plan: Plan, change: PlanChange): string {
  const edited = editPlan(plan, change, "metric");
  if (edited.ok) throw new Error(`made: ${edited.words}`);
  return edited.because;
}
export const heightOf = (plan: Plan, joint: string) => heightsOf(plan).joints.get(joint)!.height;
