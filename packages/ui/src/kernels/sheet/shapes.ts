import type { VerdictName } from "@headfall/hydraulics";
import type { Spot } from "../profile-request.js";
import { lengthOfText } from "./printed-text.js";

/** What a line on the paper means; the view gives each its width, colour and dashes. */
export type Pen =
  | "pipe"
  | "unscaled"
  | "stem"
  | "ground"
  | "vessel"
  | "water"
  | "level"
  | "leader"
  | "rule"
  | "frame"
  | "check"
  | "filled"
  | "joint";

/** What stands on the paper, in millimetres: x to the right, y down. */
export type Shape =
  | { readonly kind: "path"; readonly pen: Pen; readonly spots: readonly Spot[]; readonly isClosed?: boolean }
  | {
      readonly kind: "ring";
      readonly pen: Pen;
      readonly x: number;
      readonly y: number;
      readonly radius: number;
    }
  | {
      readonly kind: "mark";
      readonly verdict: VerdictName;
      readonly x: number;
      readonly y: number;
      readonly radius: number;
    }
  | TextShape;

export interface TextShape {
  readonly kind: "text";
  readonly x: number;
  /** Base line. */
  readonly y: number;
  readonly text: string;
  readonly size: number;
  readonly anchor?: "middle" | "end";
  readonly isBold?: boolean;
  /** Turned to be read from the right: a quarter turn about (x, y). */
  readonly isTurned?: boolean;
}

/** A box on the paper [mm]. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export const line = (pen: Pen, ...spots: readonly (readonly [number, number])[]): Shape => ({
  kind: "path",
  pen,
  spots: spots.map(([x, y]) => ({ x, y })),
});

export const rectangle = (pen: Pen, { left, top, right, bottom }: Box): Shape => ({
  kind: "path",
  pen,
  isClosed: true,
  spots: [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ],
});

/** Whether any of a shape may be seen through a box: sure for lines, on the wide side for the rest. */
export function isSeenThrough(shape: Shape, box: Box): boolean {
  if (shape.kind !== "path" || shape.isClosed) return doMeet(boxOf(shape), box);
  return shape.spots.some((spot, i) => i > 0 && doesCross(shape.spots[i - 1]!, spot, box));
}

function boxOf(shape: Shape): Box {
  if (shape.kind === "path") return boxOfSpots(shape.spots);
  const { x, y } = shape;
  if (shape.kind !== "text") return around(x, y, shape.radius + 1, shape.radius + 1);
  const long = lengthOfText(shape.text, shape.size, shape.isBold) + 1;
  return shape.isTurned ? around(x, y, shape.size, long) : around(x, y, long, shape.size);
}

const around = (x: number, y: number, across: number, down: number): Box => ({
  left: x - across,
  right: x + across,
  top: y - down,
  bottom: y + down,
});

/** Whether a straight from spot to spot runs through a box: it is cut at each edge in turn. */
function doesCross(from: Spot, to: Spot, box: Box): boolean {
  let [enters, leaves] = [0, 1];
  const cuts = [
    [from.x - to.x, from.x - box.left],
    [to.x - from.x, box.right - from.x],
    [from.y - to.y, from.y - box.top],
    [to.y - from.y, box.bottom - from.y],
  ] as const;
  for (const [run, reach] of cuts) {
    if (run === 0) {
      if (reach < 0) return false;
    } else if (run < 0) enters = Math.max(enters, reach / run);
    else leaves = Math.min(leaves, reach / run);
  }
  return enters <= leaves;
}

export function boxOfSpots(spots: readonly Spot[]): Box {
  let box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  for (const { x, y } of spots) {
    box = {
      left: Math.min(box.left, x),
      top: Math.min(box.top, y),
      right: Math.max(box.right, x),
      bottom: Math.max(box.bottom, y),
    };
  }
  return box;
}

export const doMeet = (one: Box, other: Box): boolean =>
  one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
