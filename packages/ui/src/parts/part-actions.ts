import type { Selected } from "../kernels/selected.js";
import { spotStraightOn } from "../kernels/straight-on.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import type { PlanChange } from "../store/plan-change.js";
import type { PanelAction, PanelRequest } from "./panel-request.js";
import { layoutOf, type PlanContext, sourceNames } from "./plan-context.js";

/** Length of a run that is drawn by a button [m]: 5 m, or 15 ft. */
const NEW_RUN: Readonly<Record<UnitSystem, number>> = { metric: 5, us: 4.572 };

/** A run straight on from a joint, without a drawing by hand. */
export function drawRunFrom(
  { plan, system }: Pick<PlanContext, "plan" | "system">,
  joint: string,
): PlanChange {
  const length = NEW_RUN[system];
  const place = spotStraightOn(layoutOf(plan), joint, length);
  return {
    kind: "drawRun",
    from: { kind: "joint", joint },
    to: { kind: "place", place },
    corners: [],
    length,
  };
}

/** What can be done with any part: the key under which refusals are shown is "action". */
export function drawAction(request: PanelRequest, joint: string): PanelAction {
  return {
    words: "Draw a run from here",
    isChief: true,
    press: () => request.typing.want("action", drawRunFrom(request, joint)),
  };
}

export function duplicateAction({ typing }: PanelRequest, part: Selected): PanelAction {
  return { words: "Duplicate", press: () => typing.want("action", { kind: "duplicate", part }) };
}

export function deleteAction({ typing }: PanelRequest, part: Selected): PanelAction {
  return { words: "Delete", press: () => typing.want("action", { kind: "delete", part }) };
}

export function actionsOfSource(request: PanelRequest, source: number): PanelAction[] {
  const part: Selected = { kind: "source", source };
  const joint = sourceNames(request.plan)[source]!;
  return [drawAction(request, joint), duplicateAction(request, part), deleteAction(request, part)];
}
