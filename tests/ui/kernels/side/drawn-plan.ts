import { readFileSync } from "node:fs";
import { type Checked, checkPlan, type MomentName, type Plan, readPlan } from "@headfall/hydraulics";
import { layProfile, type ProfileLayout } from "../../../../packages/ui/src/kernels/profile-layout.js";
import { type ProfilePath, pathToDrinker } from "../../../../packages/ui/src/kernels/profile-path.js";
import { handlesOf } from "../../../../packages/ui/src/kernels/side/handles-of.js";
import type { SideHandle } from "../../../../packages/ui/src/kernels/side/side-handle.js";

/** A plan with all that a drawing of it from the side is made from. */
export interface DrawnPlan {
  readonly plan: Plan;
  readonly checked: Checked;
  readonly path: ProfilePath;
  readonly moment: MomentName;
  readonly layout: ProfileLayout;
  readonly handles: readonly SideHandle[];
}

export interface DrawingOptions {
  readonly drinker?: number;
  readonly moment?: MomentName;
  readonly width?: number;
  readonly window?: readonly [number, number];
  readonly heldHeights?: readonly [number, number];
}

/** One of the examples that come with the project. */
export function examplePlan(name: string): Plan {
  return planOf(readFileSync(new URL(`../../../../docs/examples/${name}.json`, import.meta.url), "utf8"));
}

/** Reads a plan written in a test; the version is filled in. */
export function madePlan(plan: object): Plan {
  return planOf(JSON.stringify({ headfall: 1, ...plan }));
}

function planOf(text: string): Plan {
  const reading = readPlan(text);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

/** Checks a plan and lays it out, as the page does. */
export function drawPlan(
  plan: Plan,
  { drinker = 0, moment = "fullBusiest", width = 900, window, heldHeights }: DrawingOptions = {},
): DrawnPlan {
  const checking = checkPlan(plan, { samples: 0 });
  if (!checking.ok) throw new Error(JSON.stringify(checking.problems));
  const { checked } = checking;
  const path = pathToDrinker(checked.line, drinker);
  if (path === undefined) throw new Error("No pipe leads to that drinker.");
  const layout = layProfile({
    checked,
    path,
    moment,
    drinker,
    width,
    height: 420,
    tickUnit: 1,
    window,
    heldHeights,
  });
  const handles = handlesOf({ plan, checked, path, moment, reach: layout.heights });
  return { plan, checked, path, moment, layout, handles };
}

/** The handle with a key; its absence is a fault of the test. */
export function handleIn({ handles }: DrawnPlan, key: string): SideHandle {
  const handle = handles.find((candidate) => candidate.key === key);
  if (handle === undefined) throw new Error(`No ${key} among ${handles.map((one) => one.key).join(", ")}`);
  return handle;
}
