import { fitDrinkers } from "../../kernels/above/fit-drinkers.js";
import { snapStep } from "../../kernels/above/snap.js";
import { type Pixel, panBy, zoomAbout } from "../../kernels/above/viewport.js";
import type { PlanChange } from "../../store/plan-change.js";
import type { Surroundings, Wish } from "./hand.js";
import { startOfRun } from "./run-start.js";

/** A key pressed while the drawing has the focus. */
export interface KeyPress {
  readonly key: string;
  readonly isShift: boolean;
  /** The middle of the drawing: what zooming by keys keeps in place. */
  readonly middle: Pixel;
  /** Names what one press does, for the history. */
  readonly gesture: string;
}

/** Length of a run drawn by a key [m]: 2 m, 6 ft. */
const NEW_RUN = { metric: 2, us: 1.8288 } as const;
const ZOOM = 1.25;
/** Arrows move the drawing by this much [px]. */
const PAN = 48;
const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** What a key asks for; nothing when it means nothing here, so that the page may have it. */
export function wishesOfKey(press: KeyPress, around: Surroundings): readonly Wish[] {
  const { key, middle } = press;
  const { selected, view } = around;
  const arrow = ARROWS[key];
  if (arrow !== undefined) return arrowWishes(arrow, press, around);
  switch (key) {
    case "+":
    case "=":
      return [{ kind: "view", view: zoomAbout(view, middle, ZOOM) }];
    case "-":
      return [{ kind: "view", view: zoomAbout(view, middle, 1 / ZOOM) }];
    case "0":
      return [{ kind: "fit" }];
    case "Delete":
    case "Backspace":
      return selected === undefined ? [] : [{ kind: "edit", change: { kind: "delete", part: selected } }];
    case "d":
      return selected === undefined ? [] : [{ kind: "edit", change: { kind: "duplicate", part: selected } }];
    case "r":
      return newRun(around);
    case "n":
      return newDrinkers(around);
    case "Escape":
      return selected === undefined ? [] : [{ kind: "choose", part: undefined }];
  }
  return [];
}

/** A run of a usual length from what is chosen, so that one can draw without a pointer; arrows then move its end. */
function newRun({ selected, layout, system }: Surroundings): readonly Wish[] {
  const start = startOfRun(selected, layout);
  if (start === undefined) return [];
  const { from, place, heading } = start;
  const length = NEW_RUN[system];
  const end = { x: place.x + heading.x * length, y: place.y + heading.y * length };
  const change = { kind: "drawRun", from, to: { kind: "place", place: end }, corners: [] } as const;
  return [{ kind: "edit", change }];
}

function newDrinkers({ selected, layout, system }: Surroundings): readonly Wish[] {
  const run = selected?.kind === "run" ? layout.runs[selected.run] : undefined;
  if (run === undefined) return [];
  const drinkers = fitDrinkers(run.length, run.length / 2, system);
  return [{ kind: "edit", change: { kind: "addDrinkers", run: run.index, drinkers } }];
}

function arrowWishes(
  [x, y]: readonly [number, number],
  press: KeyPress,
  around: Surroundings,
): readonly Wish[] {
  const { view, system, selected } = around;
  if (selected === undefined) return [{ kind: "view", view: panBy(view, -x * PAN, y * PAN) }];
  const step = snapStep(view.scale, system) * (press.isShift ? 10 : 1);
  const changes = moves(x * step, y * step, around);
  return changes.map((change) => ({ kind: "edit", change, gesture: press.gesture }));
}

/** The edits that move what is chosen. Drinkers go along their run: right and up is onward. */
function moves(x: number, y: number, { selected, layout, drinkers }: Surroundings): readonly PlanChange[] {
  switch (selected?.kind) {
    case "source":
      return moveJoints(layout, x, y, ({ source }) => source === selected.source);
    case "joint":
      return moveJoints(layout, x, y, ({ name }) => name === selected.joint);
    case "run": {
      const run = layout.runs[selected.run];
      if (run === undefined) return [];
      const corners = run.spots.slice(1, -1).map(
        (spot, corner): PlanChange => ({
          kind: "moveCorner",
          run: run.index,
          corner,
          place: { x: spot.x + x, y: spot.y + y },
        }),
      );
      return [...moveJoints(layout, x, y, ({ name }) => name === run.from || name === run.to), ...corners];
    }
    case "drinkers": {
      const first = drinkers.find(({ run, group }) => run === selected.run && group === selected.group);
      if (first === undefined) return [];
      const { run, group } = selected;
      return [{ kind: "moveDrinkers", run, group, first: Math.max(0, first.along + x + y) }];
    }
    case undefined:
      return [];
  }
}

function moveJoints(
  { joints }: Surroundings["layout"],
  x: number,
  y: number,
  isMeant: (joint: Surroundings["layout"]["joints"][number]) => boolean,
): PlanChange[] {
  return joints.filter(isMeant).map((joint) => ({
    kind: "moveJoint",
    joint: joint.name,
    place: { x: joint.x + x, y: joint.y + y },
  }));
}
