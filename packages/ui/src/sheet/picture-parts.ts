/** Elements that are nothing but their outline and what fills it. */
export const PICTURE_SHAPES: ReadonlySet<string> = new Set([
  ...["path", "rect", "circle", "ellipse", "line", "polyline", "polygon"],
]);

/** Elements that draw or are used to draw. Everything else (scripts, embedded pages, images, links) stays behind. */
export const PICTURE_ELEMENTS: ReadonlySet<string> = new Set([
  ...PICTURE_SHAPES,
  ...["svg", "g", "defs", "symbol", "use", "title", "desc", "text", "tspan", "textPath"],
  ...["clipPath", "mask", "marker", "pattern", "linearGradient", "radialGradient", "stop"],
]);

/** Attributes that say where and how large; how it looks is taken from the computed style. */
export const PICTURE_ATTRIBUTES: ReadonlySet<string> = new Set([
  ...["viewBox", "preserveAspectRatio", "transform", "d", "points", "pathLength"],
  ...["x", "y", "width", "height", "rx", "ry", "cx", "cy", "r", "fx", "fy", "fr", "x1", "y1", "x2", "y2"],
  ...["dx", "dy", "rotate", "textLength", "lengthAdjust", "startOffset"],
  ...["offset", "gradientUnits", "gradientTransform", "spreadMethod", "patternUnits", "patternContentUnits"],
  ...["patternTransform", "clipPathUnits", "maskUnits", "maskContentUnits"],
  ...["markerWidth", "markerHeight", "markerUnits", "refX", "refY", "orient"],
]);

interface StyleProperty {
  /** As browsers write it where nothing was said. */
  readonly initial: string;
  readonly isInherited: boolean;
}

const inherited = (initial: string): StyleProperty => ({ initial, isInherited: true });
const own = (initial: string): StyleProperty => ({ initial, isInherited: false });

/** Style properties that are also attributes of SVG, with what they are when nothing sets them. */
export const STYLE_PROPERTIES: Readonly<Record<string, StyleProperty>> = {
  fill: inherited("rgb(0, 0, 0)"),
  "fill-opacity": inherited("1"),
  "fill-rule": inherited("nonzero"),
  stroke: inherited("none"),
  "stroke-width": inherited("1px"),
  "stroke-opacity": inherited("1"),
  "stroke-dasharray": inherited("none"),
  "stroke-dashoffset": inherited("0px"),
  "stroke-linecap": inherited("butt"),
  "stroke-linejoin": inherited("miter"),
  "stroke-miterlimit": inherited("4"),
  "paint-order": inherited("normal"),
  "vector-effect": own("none"),
  opacity: own("1"),
  visibility: inherited("visible"),
  "font-family": inherited(""),
  "font-size": inherited(""),
  "font-weight": inherited("400"),
  "font-style": inherited("normal"),
  "font-variant-numeric": inherited("normal"),
  "letter-spacing": inherited("normal"),
  "text-anchor": inherited("start"),
  "text-decoration-line": own("none"),
  "dominant-baseline": inherited("auto"),
  direction: inherited("ltr"),
  "clip-path": own("none"),
  "clip-rule": inherited("nonzero"),
  mask: own("none"),
  "marker-start": inherited("none"),
  "marker-mid": inherited("none"),
  "marker-end": inherited("none"),
  "stop-color": own("rgb(0, 0, 0)"),
  "stop-opacity": own("1"),
};
