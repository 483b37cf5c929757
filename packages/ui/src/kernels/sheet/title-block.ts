import { VERDICTS } from "@headfall/hydraulics";
import type { UnitSystem } from "../typed-quantity.js";
import { VERDICT_MARKS } from "../verdict-marks.js";
import { cropped, lengthOfText, wrapped } from "./printed-text.js";
import { rulerCheck, scaleBar } from "./scale-bar.js";
import type { SheetScale } from "./scales.js";
import { type Box, line, rectangle, type Shape } from "./shapes.js";

/** Height of the block at the foot of each page, without cautions [mm]. */
export const BLOCK_HEIGHT = 36;
const CAUTION_SIZE = 2.4;
const CAUTION_LEADING = 3.1;
const COLUMN_GAP = 6;
const INSIDE = 3;

export interface BlockRequest {
  readonly name: string;
  /** "From above", "From the side". */
  readonly view: string;
  readonly scale: SheetScale;
  /** Only where heights are drawn. */
  readonly heightScale: SheetScale | undefined;
  readonly paper: string;
  readonly date: string;
  readonly page: string;
  readonly system: UnitSystem;
  readonly hasVerdicts: boolean;
}

/** The scales in words: "Lengths 1:50, heights 1:10". */
export function writeScales({ scale, heightScale }: Pick<BlockRequest, "scale" | "heightScale">): string {
  if (heightScale === undefined) return `Scale ${inFull(scale)}`;
  if (heightScale.times === scale.times) return `Lengths and heights ${inFull(scale)}`;
  return `Lengths ${inFull(scale)}, heights ${inFull(heightScale)}`;
}

/** A scale in inches to the foot is also said as a plain ratio. */
export function inFull({ words, times }: SheetScale): string {
  return words.startsWith("1:") ? words : `${words} (1:${Number(times.toFixed(2))})`;
}

/** The block at the foot of a page: what this is, to which scale, when, and how to check the printer. */
export function drawBlock(request: BlockRequest, box: Box): Shape[] {
  const { left, right, top } = box;
  const inside = left + INSIDE;
  const end = right - INSIDE;
  const { scale, heightScale, system } = request;
  const hasTwo = heightScale !== undefined && heightScale.times !== scale.times;
  const place = lengthOfText(request.page, 4.4, true) + 6;
  const said = `${request.view} · ${writeScales(request)} · ${request.paper} · ${request.date === "" ? "Date ____________" : request.date}`;
  return [
    rectangle("frame", box),
    {
      ...{ kind: "text", x: inside, y: top + 6, size: 4.4, isBold: true },
      text: cropped(request.name, 4.4, end - inside - place, true),
    },
    { kind: "text", x: end, y: top + 6, text: request.page, size: 4.4, isBold: true, anchor: "end" },
    { kind: "text", x: inside, y: top + 11, text: cropped(said, 2.8, end - inside), size: 2.8 },
    ...scaleBar(scale, system, { x: inside, y: top + (hasTwo ? 14 : 15.5) }, hasTwo ? ", lengths" : ""),
    ...(hasTwo ? scaleBar(heightScale, system, { x: inside, y: top + 18.5 }, ", heights") : []),
    ...rulerCheck(system, end, top + 16),
    ...(request.hasVerdicts ? verdictKey(inside, top + 27, end) : []),
    ...(heightScale === undefined ? pipeKey(inside, top + 32.5) : vesselNote(inside, top + 33.2)),
  ];
}

const MEANINGS = {
  good: "gets what it needs",
  drips: "drips when idle",
  starves: "gets too little",
  dry: "gets nothing",
} as const;

/** The four verdicts by shape and word. */
function verdictKey(left: number, y: number, right: number): Shape[] {
  const step = (right - left) / VERDICTS.length;
  return VERDICTS.flatMap((verdict, i): Shape[] => [
    { kind: "mark", verdict, x: left + 1.6 + i * step, y: y - 0.9, radius: 1.5 },
    {
      ...{ kind: "text", x: left + 4.6 + i * step, y, size: 2.5 },
      text: cropped(`${VERDICT_MARKS[verdict].word}: ${MEANINGS[verdict]}`, 2.5, step - 5),
    },
  ]);
}

function pipeKey(x: number, y: number): Shape[] {
  return [
    line("pipe", [x, y], [x + 9, y]),
    { kind: "text", x: x + 11, y: y + 0.9, text: "pipe, to scale", size: 2.5 },
    line("unscaled", [x + 46, y], [x + 55, y]),
    { kind: "text", x: x + 57, y: y + 0.9, text: "pipe, its length as written", size: 2.5 },
  ];
}

function vesselNote(x: number, y: number): Shape[] {
  const text = "Heights at the left are above the plan's datum. A vessel is not to scale across.";
  return [{ kind: "text", x, y, text, size: 2.5 }];
}

/** Texts in two columns, broken into lines; a text is not split between columns. */
export interface Columns {
  readonly height: number;
  draw(left: number, top: number): Shape[];
}

/** Lays texts out in two columns of about the same height. */
export function inColumns(texts: readonly string[], width: number): Columns {
  const room = (width - COLUMN_GAP) / 2;
  const broken = texts.map((text) => wrapped(text, CAUTION_SIZE, room));
  const total = broken.reduce((sum, { length }) => sum + length, 0);
  const columns: string[][][] = [[], []];
  let lines = 0;
  for (const text of broken) {
    columns[lines + text.length / 2 <= total / 2 ? 0 : 1]!.push(text);
    lines += text.length;
  }
  const heights = columns.map((column) =>
    column.reduce((sum, { length }) => sum + length * CAUTION_LEADING + 0.9, 0),
  );
  return {
    height: Math.max(...heights),
    draw: (left, top) =>
      columns.flatMap((column, i) => {
        let y = top;
        return column.flatMap((text) => {
          const shapes = text.map(
            (each, row): Shape => ({
              ...{ kind: "text", x: left + i * (room + COLUMN_GAP), size: CAUTION_SIZE, text: each },
              y: y + (row + 0.8) * CAUTION_LEADING,
            }),
          );
          y += text.length * CAUTION_LEADING + 0.9;
          return shapes;
        });
      }),
  };
}
