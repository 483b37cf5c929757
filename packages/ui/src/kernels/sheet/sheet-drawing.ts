import { layAbove } from "../above/lay-above.js";
import { drawAbove, sizeAbove } from "./draw-above.js";
import { drawSide, heightScaleFor, sizeFromSide, widthFromSide } from "./draw-side.js";
import type { Drawing } from "./drawing.js";
import type { SheetScale } from "./scales.js";
import type { SheetRequest } from "./sheet-request.js";
import { waysOf } from "./side-ways.js";

interface Room {
  readonly width: number;
  readonly height: number;
}

/** A drawing that can be made at any scale, and how large it would be. */
export interface Sketch {
  /** "From above". */
  readonly view: string;
  /** Whether a page holds it without cutting through it. */
  fits(scale: SheetScale, room: Room): boolean;
  /** The largest scale for heights that a page has room for; undefined where no heights are drawn. */
  heightScaleFor(room: Room): SheetScale | undefined;
  size(scale: SheetScale, heightScale: SheetScale | undefined): Omit<Drawing, "shapes" | "notes">;
  /** `room` is that of the page where one holds all, else nothing. */
  draw(scale: SheetScale, heightScale: SheetScale | undefined, room: Room): Drawing;
}

/** What is asked for as a sketch; undefined when there is nothing to be drawn yet. */
export function sketchOf(request: SheetRequest): Sketch | undefined {
  return request.drawing === "above" ? sketchAbove(request) : sketchSide(request);
}

function sketchAbove(request: SheetRequest): Sketch | undefined {
  const layout = layAbove(request.plan);
  if (layout.joints.length === 0) return undefined;
  return {
    view: "From above",
    fits(scale, room) {
      const { width, height } = sizeAbove(layout, scale);
      return width <= room.width && height <= room.height;
    },
    heightScaleFor: () => undefined,
    size: (scale) => ({ ...sizeAbove(layout, scale), strips: [] }),
    draw: (scale, _heightScale, room) => drawAbove(request, scale, room, layout),
  };
}

function sketchSide({ checked, system, run }: SheetRequest): Sketch | undefined {
  const ways = checked && waysOf(checked.line, run);
  if (checked === undefined || ways === undefined || ways.drawn.length === 0) return undefined;
  const request = { checked, ways, system };
  return {
    view: "From the side",
    fits: (scale, room) => widthFromSide(ways, scale) <= room.width,
    heightScaleFor: (room) => heightScaleFor(request, room.height),
    size: (scale, heightScale = scale) => sizeFromSide(request, scale, heightScale),
    draw: (scale, heightScale = scale) => drawSide(request, scale, heightScale),
  };
}
