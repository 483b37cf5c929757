import type { Checked } from "@headfall/hydraulics";
import { drawStrip, fixedHeightOf, heightsOfWay, widthOfStrip } from "./draw-strip.js";
import type { Drawing, SideRequest } from "./drawing.js";
import { largestThatFits, onPaper, type SheetScale, scalesOf } from "./scales.js";
import type { Shape } from "./shapes.js";
import type { Ways } from "./side-ways.js";

/** Between one strip and the next [mm]. */
const GAP = 6;

/** How wide the ways are from the side, words included [mm]. */
export const widthFromSide = ({ drawn }: Ways, scale: SheetScale): number =>
  Math.max(0, ...drawn.map((way) => widthOfStrip(way, scale)));

/** The largest step at which every way is no higher than a page has room, its words included. */
export function heightScaleFor({ checked, ways, system }: SideRequest, room: number): SheetScale {
  const tallest = Math.max(0, ...ways.drawn.map((way) => spanOf(checked, way)));
  const scales = scalesOf(system);
  const fixed = Math.max(0, ...ways.drawn.map((way) => fixedHeightOf(checked, way, system)));
  const wanted = Math.max(20, Math.min(MOST_DRAWN_HEIGHT, room - fixed));
  return largestThatFits(scales, (scale) => onPaper(tallest, scale) <= wanted) ?? scales[scales.length - 1]!;
}

/** Higher than this a strip need not be, even where the page has room [mm]. */
const MOST_DRAWN_HEIGHT = 110;

function spanOf(checked: Checked, way: Ways["drawn"][number]): number {
  const { low, high } = heightsOfWay(checked, way);
  return high - low;
}

/** How large the drawing from the side is, and where its strips are, without drawing it. */
export function sizeFromSide(
  { checked, ways, system }: SideRequest,
  scale: SheetScale,
  heightScale: SheetScale,
): Omit<Drawing, "shapes" | "notes"> {
  let top = 0;
  const strips = ways.drawn.map((way) => {
    const strip = {
      top,
      bottom: top + fixedHeightOf(checked, way, system) + onPaper(spanOf(checked, way), heightScale),
    };
    top = strip.bottom + GAP;
    return strip;
  });
  return { width: widthFromSide(ways, scale), height: Math.max(0, top - GAP), strips };
}

/** Draws every way from the side, one strip below the other. */
export function drawSide(request: SideRequest, scale: SheetScale, heightScale: SheetScale): Drawing {
  const { checked, ways, system } = request;
  const size = sizeFromSide(request, scale, heightScale);
  const shapes: Shape[] = [];
  const notes: string[] = [];
  ways.drawn.forEach((way, i) => {
    const strip = drawStrip({ checked, way, system, scale, heightScale });
    shapes.push(...strip.shapes.map((shape) => movedDown(shape, size.strips[i]!.top)));
    if (strip.leftOut > 0) notes.push(leftOutNote(checked.line.runs[way.run]!.id, strip.leftOut));
  });
  if (ways.leftOut > 0)
    notes.push(`${ways.leftOut} more runs with drinkers are not drawn: choose them one by one.`);
  return { ...size, shapes, notes };
}

const leftOutNote = (run: string, count: number): string =>
  `${run}: ${count} ${count === 1 ? "place has" : "places have"} no room for words at this scale; the table of heights has ${count === 1 ? "it" : "them"}.`;

function movedDown(shape: Shape, by: number): Shape {
  if (shape.kind === "path") return { ...shape, spots: shape.spots.map(({ x, y }) => ({ x, y: y + by })) };
  return { ...shape, y: shape.y + by };
}
