import { PICTURE_ATTRIBUTES, PICTURE_ELEMENTS, PICTURE_SHAPES, STYLE_PROPERTIES } from "./picture-parts.js";

/** How a drawing on the screen becomes a picture of its own. */
export interface PictureRequest {
  /** Said by screen readers and shown as the picture's name. */
  readonly title: string;
  readonly description?: string;
  /** Light colours, for paper, whatever the screen shows; otherwise as on the screen. */
  readonly paper?: boolean;
  /** Whether the drawing's own ground (its elements of class "back") is left out, so that what is behind shows. */
  readonly transparent?: boolean;
}

const SVG = "http://www.w3.org/2000/svg";
const NOT_SHOWN = "The drawing is not on the screen, so it has no look to copy.";

/**
 * A drawing as the text of an SVG file that needs nothing else: what style sheets say is written onto each element,
 * only elements and attributes that draw are taken over, ids are made its own, and nothing refers outside.
 *
 * @param drawing  an SVG element in a document, also one inside a shadow root with adopted style sheets
 * @throws Error when the drawing is not shown
 */
export function pictureOf(drawing: SVGSVGElement, request: PictureRequest): string {
  if (drawing.getClientRects().length === 0) throw new Error(NOT_SHOWN);
  const ids = new Map<string, string>();
  const clone = inPaperColours(drawing, request.paper === true, () =>
    copyOf(drawing, undefined, {
      ids,
      prefix: prefixOf(request.title),
      skipGround: request.transparent === true,
    }),
  );
  if (clone === undefined) throw new Error(NOT_SHOWN);
  frame(clone, drawing);
  nameIt(clone, request, prefixOf(request.title));
  return `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(clone)}\n`;
}

/** Colours follow the scheme of the drawing itself; it is set for the moment of copying only, before any repaint. */
function inPaperColours<T>(drawing: SVGSVGElement, paper: boolean, copy: () => T): T {
  const before = drawing.style.colorScheme;
  if (paper) drawing.style.colorScheme = "light";
  try {
    return copy();
  } finally {
    drawing.style.colorScheme = before;
    if (drawing.getAttribute("style") === "") drawing.removeAttribute("style");
  }
}

interface Copying {
  /** New name of each id met so far. */
  readonly ids: Map<string, string>;
  readonly prefix: string;
  readonly skipGround: boolean;
}

function copyOf(
  original: Element,
  outer: CSSStyleDeclaration | undefined,
  copying: Copying,
): SVGElement | undefined {
  if (original.namespaceURI !== SVG || !PICTURE_ELEMENTS.has(original.localName)) return undefined;
  if (copying.skipGround && original.classList.contains("back")) return undefined;
  const style = getComputedStyle(original);
  const isDrawn = !NEVER_DRAWN.has(original.localName);
  if (isDrawn && style.display === "none") return undefined;
  if (PICTURE_SHAPES.has(original.localName) && drawsNothing(original, style)) return undefined;
  const copy = document.createElementNS(SVG, original.localName) as SVGElement;
  copyAttributes(original, copy, copying);
  if (!WORDS_ABOUT.has(original.localName)) writeLook(copy, style, outer, copying);
  for (const child of original.childNodes) {
    if (child instanceof Text) {
      // Blanks between elements come from templates and draw nothing.
      if (HOLDS_TEXT.has(original.localName)) copy.append(printable(child.data));
    } else if (child instanceof Element) {
      const inner = copyOf(child, style, copying);
      if (inner !== undefined) copy.append(inner);
    }
  }
  return copy;
}

const WORDS_ABOUT: ReadonlySet<string> = new Set(["title", "desc"]);
const HOLDS_TEXT: ReadonlySet<string> = new Set([...WORDS_ABOUT, "text", "tspan", "textPath"]);

/** Whether a shape leaves nothing to see, as those only made to be pressed; a clip cuts by its outline all the same. */
const drawsNothing = (shape: Element, { fill, stroke }: CSSStyleDeclaration): boolean =>
  isClear(fill) && isClear(stroke) && shape.closest("clipPath") === null;

const isClear = (paint: string): boolean => paint === "none" || /^rgba\(.*, 0\)$/.test(paint);

/** Elements that are only used by others; browsers say they are not displayed. */
const NEVER_DRAWN: ReadonlySet<string> = new Set([
  ...["title", "desc", "defs", "clipPath", "mask", "marker", "pattern", "symbol"],
  ...["linearGradient", "radialGradient", "stop"],
]);

function copyAttributes(original: Element, copy: SVGElement, copying: Copying): void {
  for (const { localName, value } of original.attributes) {
    if (localName === "id") copy.setAttribute("id", ownId(value, copying));
    else if (localName === "href") {
      if (value.startsWith("#")) copy.setAttribute("href", `#${ownId(value.slice(1), copying)}`);
    } else if (PICTURE_ATTRIBUTES.has(localName)) copy.setAttribute(localName, value);
  }
}

/** Writes what the style sheets made of an element, as far as it would not have it by itself or from around it. */
function writeLook(
  copy: SVGElement,
  style: CSSStyleDeclaration,
  outer: CSSStyleDeclaration | undefined,
  copying: Copying,
): void {
  for (const [name, { initial, isInherited }] of Object.entries(STYLE_PROPERTIES)) {
    const value = style.getPropertyValue(name);
    const unstyled = isInherited && outer !== undefined ? outer.getPropertyValue(name) : initial;
    if (value === "" || value === unstyled) continue;
    const own = withOwnReference(value, copying);
    if (own !== undefined) copy.setAttribute(name, own);
  }
}

/** `url("#inside")` with the id's new name; undefined for a reference to anything outside the drawing. */
function withOwnReference(value: string, copying: Copying): string | undefined {
  const reference = /^url\(["']?([^"')]*)["']?\)/.exec(value);
  if (reference === null) return /url\(|image\(/i.test(value) ? undefined : value;
  const address = reference[1]!;
  const hash = address.indexOf("#");
  const isOwn = hash === 0 || address.slice(0, Math.max(0, hash)) === document.URL.split("#")[0];
  return isOwn ? `url(#${ownId(address.slice(hash + 1), copying)})` : undefined;
}

function ownId(id: string, { ids, prefix }: Copying): string {
  const known = ids.get(id);
  if (known !== undefined) return known;
  const own = `${prefix}-${ids.size + 1}`;
  ids.set(id, own);
  return own;
}

/** Pictures that stand on one page together do not mix up their ids: each has its title in them. */
const prefixOf = (title: string): string =>
  `picture-${title
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "")}`.replace(/-$/, "");

/** Without signs that no XML file may hold. */
const printable = (text: string): string => text.replace(/(?![\t\n\r])\p{Cc}|[\ufffe\uffff]/gu, "");

function frame(clone: SVGElement, drawing: SVGSVGElement): void {
  const box = drawing.getBoundingClientRect();
  const view = drawing.viewBox.baseVal;
  const hasView = drawing.hasAttribute("viewBox") && view.width > 0;
  if (!hasView) clone.setAttribute("viewBox", `0 0 ${rounded(box.width)} ${rounded(box.height)}`);
  clone.setAttribute("width", rounded(box.width));
  clone.setAttribute("height", rounded(box.height));
}

const rounded = (pixels: number): string => String(Math.round(pixels * 100) / 100);

function nameIt(clone: SVGElement, { title, description = "" }: PictureRequest, prefix: string): void {
  const named = (kind: "title" | "desc", text: string) => {
    const element = document.createElementNS(SVG, kind);
    element.id = `${prefix}-${kind}`;
    element.textContent = printable(text);
    return element;
  };
  const parts = [named("title", title), ...(description === "" ? [] : [named("desc", description)])];
  for (const old of clone.querySelectorAll(":scope > title, :scope > desc")) old.remove();
  clone.prepend(...parts);
  clone.setAttribute("role", "img");
  clone.setAttribute("aria-labelledby", parts.map(({ id }) => id).join(" "));
}
