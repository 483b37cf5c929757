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
  const edited = made(plan, change, system);
  return settleEdit(plan, edited.ok ? { ...edited, plan: withoutLostNames(plan, edited.plan) } : edited);
}

function made(plan: Plan, change: PlanChange, system: UnitSystem): Edited {
  switch (change.kind) {
    case "set":
      return editKeys(plan, [change], change.what);
    case "setAll":
      return editKeys(plan, change.entries, change.what);
    case "addSource":
      return addSource(plan, change.vessel, change.place, system);
    case "drawRun":
      return drawRun(plan, change, system);
    case "addDrinkers":
      return addDrinkers(plan, change.run, change.drinkers, system);
    case "moveJoint":
      return moveJoint(plan, change.joint, change.place, system);
    case "moveCorner":
      return moveCorner(plan, change.run, change.corner, change.place, system);
    case "addCorner":
      return addCorner(plan, change.run, change.before, change.place, system);
    case "deleteCorner":
      return deleteCorner(plan, change.run, change.corner, system);
    case "moveDrinkers":
      return moveDrinkers(plan, change.run, change.group, change.first, system);
    case "setHeight":
      return setHeight(plan, change.joint, change.height, system);
    case "moveReading":
      return moveReading(plan, change.run, change.reading, change.fall, system);
    case "addReading":
      return addReading(plan, change.run, change.along, change.fall, system);
    case "deleteReading":
      return deleteReading(plan, change.run, change.reading);
    case "splitRun":
      return splitRun(plan, change.run, change.along, system);
    case "joinRuns":
      return joinRuns(plan, change.joint, system);
    case "mergeJoints":
      return mergeJoints(plan, change.joint, change.into, system);
    case "landJoint":
      return landJoint(plan, change, system);
    case "duplicate":
      return duplicatePart(plan, change.part, system);
    case "delete":
      return deletePart(plan, change.part, system);
    case "addPen":
      return addPen(plan);
    case "deletePen":
      return deletePen(plan, change.pen);
    case "addBirds":
      return addBirds(plan, change.pen);
    case "deleteBirds":
      return deleteBirds(plan, change.pen, change.batch);
    case "reachDrinkers":
      return reachDrinkers(plan, change);
    case "bringIn":
      return bringIn(plan, change.diff, change.what);
    case "rename":
      return renamePart(plan, change.part, change.name);
  }
}
