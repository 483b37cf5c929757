import type { Sheet } from "../../../../packages/ui/src/kernels/sheet/lay-sheet.js";
import { laySheet } from "../../../../packages/ui/src/kernels/sheet/lay-sheet.js";
import type { Shape, TextShape } from "../../../../packages/ui/src/kernels/sheet/shapes.js";
import type { SheetPage } from "../../../../packages/ui/src/kernels/sheet/sheet-page.js";
import type { SheetRequest } from "../../../../packages/ui/src/kernels/sheet/sheet-request.js";
import { checkedOf, planOf } from "../../fixtures/placed-plan.js";

/** A plan with one run of 6 m drawn to scale, an elbow of a second of 4 m, and one drawn shorter than it is. */
export const ELBOW = {
  headfall: 1,
  name: "Alder Bank, elbow",
  sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "60 cm", place: { x: "0 m", y: "0 m" } }],
  points: [
    { id: "corner", ground: "-10 cm", above: "30 cm", place: { x: "6 m", y: "0 m" } },
    { id: "pen", ground: "-15 cm", above: "30 cm", place: { x: "6 m", y: "-4 m" } },
    { id: "coop", ground: "-20 cm", above: "25 cm", place: { x: "9 m", y: "0 m" } },
  ],
  runs: [
    {
      id: "feed",
      from: "barrel",
      to: "corner",
      length: "6 m",
      drinkers: { kind: "nipple-bucket", count: 6 },
    },
    {
      id: "down",
      from: "corner",
      to: "pen",
      length: "4 m",
      drinkers: { id: "pen cups", kind: "nipple-bucket", count: 4 },
    },
    {
      id: "slack",
      from: "corner",
      to: "coop",
      length: "8 m",
      drinkers: { id: "coop cup", kind: "nipple-bucket", count: 1 },
    },
  ],
} as const;

export { checkedOf, planOf };

/** A request for the elbow from above on upright A4, with what a test wants otherwise. */
export function requestFor(more: Partial<SheetRequest> = {}, data: object = ELBOW): SheetRequest {
  const plan = planOf(data);
  return {
    ...{ plan, checked: checkedOf(plan), system: "metric", drawing: "above", paper: "a4", isLying: false },
    ...{ scale: undefined, heightScale: undefined, run: undefined, date: "2026-11-25" },
    ...more,
  };
}

export function sheetFor(more: Partial<SheetRequest> = {}, data: object = ELBOW): Sheet {
  const sheet = laySheet(requestFor(more, data));
  if (sheet === undefined) throw new Error("nothing to draw");
  return sheet;
}

/** All shapes of a page where they stand on the paper; those of the drawing may reach beyond their window. */
export function shapesOn({ shapes, window }: SheetPage): Shape[] {
  const moved = (window?.shapes ?? []).map((shape): Shape => {
    const { x, y } = window!.shift;
    if (shape.kind !== "path") return { ...shape, x: shape.x + x, y: shape.y + y };
    return { ...shape, spots: shape.spots.map((spot) => ({ x: spot.x + x, y: spot.y + y })) };
  });
  return [...shapes, ...moved];
}

export const isText = (shape: Shape): shape is TextShape => shape.kind === "text";

/** All words of a sheet, in one text without line breaks. */
export const wordsOf = (sheet: Sheet): string =>
  sheet.pages
    .flatMap((page) => shapesOn(page).filter(isText))
    .map(({ text }) => text)
    .join(" ");
