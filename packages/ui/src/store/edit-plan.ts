import type { Plan } from "@headfall/hydraulics";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { addSource } from "./edits/add-source.js";
import { bringIn } from "./edits/bring-in.js";
import { deletePart } from "./edits/delete-part.js";
import { drawRun } from "./edits/draw-run.js";
import { duplicatePart } from "./edits/duplicate-part.js";
import { addCorner, deleteCorner, moveCorner } from "./edits/edit-corners.js";
import { addDrinkers, moveDrinkers } from "./edits/edit-drinkers.js";
import { editKeys } from "./edits/edit-keys.js";
import { addBirds, addPen, deleteBirds, deletePen, reachDrinkers } from "./edits/edit-pens.js";
import { addReading, deleteReading, moveReading } from "./edits/edit-survey.js";
import { joinRuns } from "./edits/join-runs.js";
import { withoutLostNames } from "./edits/keep-pens.js";
import { landJoint } from "./edits/land-joint.js";
import { mergeJoints } from "./edits/merge-joints.js";
import { moveJoint } from "./edits/move-joint.js";
import { renamePart } from "./edits/rename-part.js";
import { setHeight } from "./edits/set-height.js";
import { settleEdit } from "./edits/settle-edit.js";
import { splitRun } from "./edits/split-run.js";
import type { Edited, PlanChange } from "./plan-change.js";

/**
 * Makes one edit: gives a new plan that shares with the old one all that the edit left alone, or says why it cannot
 * be done. What the edit writes is in the units of `system`. A plan that could be solved still can be.
 */
export function editPlan(plan: Plan, change: PlanChange, system: UnitSystem): Edited {
  const make = MAKERS[change.kind] as Maker<PlanChange["kind"]>;
  const edited = make(plan, change, system);
  return settleEdit(plan, edited.ok ? { ...edited, plan: withoutLostNames(plan, edited.plan) } : edited);
}

type Maker<Kind extends PlanChange["kind"]> = (
  plan: Plan,
  change: Extract<PlanChange, { kind: Kind }>,
  system: UnitSystem,
) => Edited;

/** How each kind of edit is made. */
const MAKERS: { readonly [Kind in PlanChange["kind"]]: Maker<Kind> } = {
  set: (plan, change) => editKeys(plan, [change], change.what),
  setAll: (plan, { entries, what }) => editKeys(plan, entries, what),
  addSource: (plan, { vessel, place }, system) => addSource(plan, vessel, place, system),
  drawRun,
  addDrinkers: (plan, { run, drinkers }, system) => addDrinkers(plan, run, drinkers, system),
  moveJoint: (plan, { joint, place }, system) => moveJoint(plan, joint, place, system),
  moveCorner: (plan, { run, corner, place }, system) => moveCorner(plan, run, corner, place, system),
  addCorner: (plan, { run, before, place }, system) => addCorner(plan, run, before, place, system),
  deleteCorner: (plan, { run, corner }, system) => deleteCorner(plan, run, corner, system),
  moveDrinkers: (plan, { run, group, first }, system) => moveDrinkers(plan, run, group, first, system),
  setHeight: (plan, { joint, height }, system) => setHeight(plan, joint, height, system),
  moveReading: (plan, { run, reading, fall }, system) => moveReading(plan, run, reading, fall, system),
  addReading: (plan, { run, along, fall }, system) => addReading(plan, run, along, fall, system),
  deleteReading: (plan, { run, reading }) => deleteReading(plan, run, reading),
  splitRun: (plan, { run, along }, system) => splitRun(plan, run, along, system),
  joinRuns: (plan, { joint }, system) => joinRuns(plan, joint, system),
  mergeJoints: (plan, { joint, into }, system) => mergeJoints(plan, joint, into, system),
  landJoint,
  duplicate: (plan, { part }, system) => duplicatePart(plan, part, system),
  delete: (plan, { part }, system) => deletePart(plan, part, system),
  addPen,
  deletePen: (plan, { pen }) => deletePen(plan, pen),
  addBirds: (plan, { pen }) => addBirds(plan, pen),
  deleteBirds: (plan, { pen, batch }) => deleteBirds(plan, pen, batch),
  reachDrinkers,
  bringIn: (plan, { diff, what }) => bringIn(plan, diff, what),
  rename: (plan, { part, name }) => renamePart(plan, part, name),
};
