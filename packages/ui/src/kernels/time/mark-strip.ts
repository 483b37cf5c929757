import { type Mark, writeVolume } from "@headfall/hydraulics";
import { MARGIN, type Paper } from "../sheet/paper.js";
import { brokenWhere } from "../sheet/printed-text.js";
import { line, rectangle, type Shape, type TextShape } from "../sheet/shapes.js";
import type { SheetPage } from "../sheet/sheet-page.js";
import type { UnitSystem } from "../typed-quantity.js";

/** A dip-stick strip in true size, and the words beside it. */
export interface MarkStrip {
  readonly pages: readonly SheetPage[];
  /** Length of the strip [mm]. */
  readonly length: number;
}

export interface MarkStripRequest {
  readonly mark: Mark;
  readonly paper: Paper;
  readonly system: UnitSystem;
  /** Sentences printed beside the strip, in full. */
  readonly words: readonly string[];
  readonly title: string;
}

const STRIP = { left: 20, width: 42 } as const;
/** What two pages of a long strip share, to be glued one on the other [mm]. */
const OVERLAP = 12;
const HEAD = 18;
const FOOT = 14;
const LETTER = 3.4;

/**
 * The strip is cut out and fixed to a stick, its foot on the vessel's bottom. Marks: today's level and where it should
 * stand each day on; a box from the least to the most for tomorrow; litres on the other edge.
 */
export function layMarkStrip(request: MarkStripRequest): MarkStrip {
  const { mark, paper } = request;
  const length = mark.full * 1000 + 10;
  const room = paper.height - HEAD - FOOT - 2 * MARGIN;
  const count = Math.max(1, Math.ceil((length - OVERLAP) / (room - OVERLAP)));
  const pages = Array.from({ length: count }, (_, k): SheetPage => {
    const from = k * (room - OVERLAP);
    return pageOf(request, { from, to: Math.min(length, from + room), number: k + 1, count });
  });
  return { pages, length };
}

interface Piece {
  /** Levels at the lower and upper end of the piece [mm above the vessel's bottom]. */
  readonly from: number;
  readonly to: number;
  readonly number: number;
  readonly count: number;
}

function pageOf(request: MarkStripRequest, piece: Piece): SheetPage {
  const { paper, title, words } = request;
  const bottom = paper.height - MARGIN - FOOT;
  const y = (levelMm: number) => bottom - (levelMm - piece.from);
  const top = y(piece.to);
  const box = { left: STRIP.left, right: STRIP.left + STRIP.width, top, bottom };
  const inside = (levelMm: number) => levelMm >= piece.from - 1e-9 && levelMm <= piece.to + 1e-9;
  const shapes: Shape[] = [
    text(MARGIN + 4, MARGIN + 6, title, 5, { isBold: true }),
    text(MARGIN + 4, MARGIN + 12, pieceWords(piece), LETTER),
    rectangle("frame", box),
    ...scaleShapes(request, inside, y),
    ...dayShapes(request, inside, y),
    ...(piece.number === 1 ? wordShapes(words, box.right + 10, Math.max(top, MARGIN + 24), paper) : []),
    ...checkShapes(paper),
  ];
  return { name: String(piece.number), shapes, window: undefined };
}

const pieceWords = ({ number, count }: Piece): string =>
  count === 1
    ? "Cut out and fix to a stick: its lower edge on the inside bottom of the vessel."
    : `Piece ${number} of ${count}: glue each over the last ${OVERLAP} mm of the one below. The lower edge of piece 1 is the inside bottom.`;

/** Litres along the left edge. */
function scaleShapes(
  { mark, system }: MarkStripRequest,
  inside: (mm: number) => boolean,
  y: (mm: number) => number,
): Shape[] {
  return mark.scale
    .filter(({ level }) => inside(level * 1000))
    .flatMap(({ level, volume }) => [
      line("check", [STRIP.left, y(level * 1000)], [STRIP.left + 5, y(level * 1000)]),
      text(STRIP.left + 6, y(level * 1000) + 1.1, writeVolume(volume, system), 2.6),
    ]);
}

/** Where it begins, and each day on, along the right edge; a box for tomorrow. */
function dayShapes(
  { mark }: MarkStripRequest,
  inside: (mm: number) => boolean,
  y: (mm: number) => number,
): Shape[] {
  const right = STRIP.left + STRIP.width;
  const shapes: Shape[] = [];
  const at = (level: number, words: string, isBold: boolean) => {
    if (!inside(level * 1000)) return;
    shapes.push(line(isBold ? "frame" : "check", [right - 16, y(level * 1000)], [right, y(level * 1000)]));
    shapes.push(text(right - 0.8, y(level * 1000) - 0.8, words, 2.8, { anchor: "end", isBold }));
  };
  at(mark.from, "today", true);
  const [tomorrow] = mark.marks;
  if (tomorrow !== undefined && inside(tomorrow.low * 1000) && inside(tomorrow.high * 1000))
    shapes.push(
      rectangle("filled", {
        left: right - 3,
        right: right - 1.5,
        top: y(tomorrow.high * 1000),
        bottom: y(tomorrow.low * 1000),
      }),
    );
  let lastY = Number.NEGATIVE_INFINITY;
  for (const { day, level } of mark.marks) {
    // Marks closer than a line of print are left out, but for tomorrow's.
    if (day > 1 && y(level * 1000) - lastY < 3.2) continue;
    at(level, day === 1 ? "tomorrow" : `day ${day}`, day === 1);
    lastY = y(level * 1000);
  }
  at(mark.outlet, "outlet", false);
  return shapes;
}

/** Sentences broken to the room beside the strip. */
function wordShapes(words: readonly string[], left: number, top: number, paper: Paper): Shape[] {
  const perLine = Math.floor((paper.width - MARGIN - left) / (LETTER * 0.5));
  const lines = words.flatMap((sentence) => [...brokenWhere(sentence, (line) => line.length <= perLine), ""]);
  return lines.flatMap((words_, k) => (words_ === "" ? [] : [text(left, top + 5 * (k + 1), words_, LETTER)]));
}

/** A line of known length, to be held against a ruler. */
function checkShapes(paper: Paper): Shape[] {
  const y = paper.height - MARGIN - 4;
  const left = MARGIN + 4;
  return [
    line("check", [left, y], [left + 100, y]),
    line("check", [left, y - 2], [left, y + 2]),
    line("check", [left + 100, y - 2], [left + 100, y + 2]),
    text(left + 104, y + 1.2, "This line is 100 mm long; if it is not, print at 100 %.", 3),
  ];
}

const text = (
  x: number,
  y: number,
  words: string,
  size: number,
  more: Partial<Pick<TextShape, "anchor" | "isBold">> = {},
): Shape => ({ kind: "text", x, y, text: words, size, ...more });
