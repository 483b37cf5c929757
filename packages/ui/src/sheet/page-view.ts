import { svg } from "lit";
import { pathOf } from "../kernels/path-of.js";
import type { Paper } from "../kernels/sheet/paper.js";
import type { Shape, TextShape } from "../kernels/sheet/shapes.js";
import type { SheetPage } from "../kernels/sheet/sheet-page.js";
import { verdictMarkAt } from "../verdicts/verdict-mark.js";

/** One page as an SVG whose user unit is a millimetre, on the screen as on paper. */
export function pageView(page: SheetPage, paper: Paper, isColour: boolean, label: string) {
  const { width, height } = paper;
  return svg`<svg class="page ${isColour ? "colour" : "mono"}" role="img" aria-label=${label}
      width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">
    <rect class="paper" width=${width} height=${height}></rect>
    ${windowView(page)}
    ${page.shapes.map(shapeView)}
  </svg>`;
}

/** The page's part of the drawing; whatever lies beyond its edges is cut off. */
function windowView({ window }: SheetPage) {
  if (window === undefined) return undefined;
  const { box, shift, shapes } = window;
  const [width, height] = [box.right - box.left, box.bottom - box.top];
  return svg`<svg class="window" x=${box.left} y=${box.top} width=${width} height=${height}
      viewBox="${box.left - shift.x} ${box.top - shift.y} ${width} ${height}">${shapes.map(shapeView)}</svg>`;
}

function shapeView(shape: Shape) {
  switch (shape.kind) {
    case "path":
      return svg`<path class=${shape.pen} d="${pathOf(shape.spots)}${shape.isClosed ? "Z" : ""}"></path>`;
    case "ring":
      return svg`<circle class=${shape.pen} cx=${shape.x} cy=${shape.y} r=${shape.radius}></circle>`;
    case "mark":
      return verdictMarkAt(shape.verdict, shape.x, shape.y, shape.radius);
    case "text":
      return textView(shape);
  }
}

function textView({ x, y, text, size, anchor, isBold, isTurned }: TextShape) {
  return svg`<text x=${x} y=${y} font-size=${size} text-anchor=${anchor ?? "start"}
    font-weight=${isBold ? 700 : 400} transform=${isTurned ? `rotate(-90 ${x} ${y})` : ""}>${text}</text>`;
}
