import { writeCaution } from "@headfall/hydraulics";
import { overlapMarks, type Tile, tilesOf } from "./cut-pages.js";
import type { Drawing } from "./drawing.js";
import { layNotePages } from "./note-pages.js";
import { MARGIN, type Paper, paperOf } from "./paper.js";
import { largestThatFits, type SheetScale, scalesOf } from "./scales.js";
import { isSeenThrough } from "./shapes.js";
import { type Sketch, sketchOf } from "./sheet-drawing.js";
import type { SheetPage } from "./sheet-page.js";
import type { SheetRequest } from "./sheet-request.js";
import { BLOCK_HEIGHT, type Columns, drawBlock, inColumns } from "./title-block.js";

/** A drawing laid out on pages. */
export interface Sheet {
  readonly paper: Paper;
  readonly view: string;
  readonly scale: SheetScale;
  readonly heightScale: SheetScale | undefined;
  /** The largest scale at which nothing is cut; undefined when the smallest step is too large still. */
  readonly fits: SheetScale | undefined;
  readonly pages: readonly SheetPage[];
  /** More pages than are laid out; 0 when all are. */
  readonly tooMany: number;
}

/** More pages than this are a mistake, not a wish. */
export const MOST_PAGES = 60;
/** Between drawing and title block [mm]. */
const GAP = 3;
/** Cautions higher than this share of the paper go onto a page of notes. */
const MOST_FOR_CAUTIONS = 0.25;

interface Setting {
  readonly request: SheetRequest;
  readonly paper: Paper;
  readonly sketch: Sketch;
  readonly cautions: readonly string[];
  readonly columns: Columns;
  readonly scale: SheetScale;
}

/**
 * Lays a plan out on paper, to scale.
 *
 * @returns pages of shapes in mm; undefined when there is nothing to draw yet
 */
export function laySheet(request: SheetRequest): Sheet | undefined {
  const sketch = sketchOf(request);
  if (sketch === undefined) return undefined;
  const paper = paperOf(request.paper, request.isLying);
  const cautions = (request.checked?.cautions ?? []).map((each) => writeCaution(each, request.system));
  const columns = inColumns(cautions, paper.width - 2 * MARGIN - 6);
  const whole = roomOf(paper, blockWithCautions(paper, columns));
  const scales = scalesOf(request.system);
  const fits = largestThatFits(scales, (scale) => sketch.fits(scale, whole));
  const scale = chosen(request.scale, scales) ?? fits ?? scales[scales.length - 1]!;
  const setting = { request, paper, sketch, cautions, columns, scale };
  return { paper, view: sketch.view, scale, fits, ...layPages(setting) };
}

/** One page with its cautions if the drawing fits it, else as many as it takes, the cautions behind them. */
function layPages(setting: Setting): Pick<Sheet, "pages" | "heightScale" | "tooMany"> {
  const { request, paper, sketch, columns, scale } = setting;
  const scales = scalesOf(request.system);
  const cut = (block: number) => {
    const room = roomOf(paper, block);
    const heightScale =
      sketch.heightScaleFor(room) && (chosen(request.heightScale, scales) ?? sketch.heightScaleFor(room));
    return { block, heightScale, tiles: tilesOf(sketch.size(scale, heightScale), room) };
  };
  const whole = cut(blockWithCautions(paper, columns));
  const { block, heightScale, tiles } = whole.tiles.length === 1 ? whole : cut(BLOCK_HEIGHT);
  if (tiles.length > MOST_PAGES) return { heightScale, pages: [], tooMany: tiles.length };
  const room = tiles.length === 1 ? roomOf(paper, block) : NO_ROOM;
  const drawing = sketch.draw(scale, heightScale, room);
  const laid = tiles.length === 1 ? tilesOf(drawing, room) : tiles;
  const seen = laid.filter(({ part }) => drawing.shapes.some((shape) => isSeenThrough(shape, part)));
  const drawn = seen.map((tile) => drawTile(tile, seen, drawing));
  const hasCautions = block > BLOCK_HEIGHT || setting.cautions.length === 0;
  const notes = [...(hasCautions ? [] : ["Cautions", ...setting.cautions]), ...leftOver(drawing)];
  const pages = [...drawn, ...layNotePages(notes, roomOf(paper, BLOCK_HEIGHT))];
  return {
    heightScale,
    tooMany: 0,
    pages: pages.map((page, i) => withBlock(page, i, pages.length, { ...setting, heightScale, block })),
  };
}

const NO_ROOM = { width: 0, height: 0 };

const leftOver = ({ notes }: Drawing): string[] =>
  notes.length === 0 ? [] : ["Words that had no room on the drawing", ...notes];

function chosen(times: number | undefined, scales: readonly SheetScale[]): SheetScale | undefined {
  if (times === undefined) return undefined;
  const step = scales.find((scale) => Math.abs(scale.times - times) < 1e-6 * times);
  return step ?? { times, words: `1:${Number(times.toPrecision(4))}` };
}

const blockWithCautions = (paper: Paper, { height }: Columns): number =>
  height <= MOST_FOR_CAUTIONS * paper.height ? BLOCK_HEIGHT + height + 1 : BLOCK_HEIGHT;

const roomOf = ({ width, height }: Paper, block: number) => ({
  width: width - 2 * MARGIN,
  height: height - 2 * MARGIN - block - GAP,
});

function drawTile(tile: Tile, tiles: readonly Tile[], drawing: Drawing): SheetPage {
  const { part } = tile;
  const isAlone = tiles.length === 1;
  const [width, height] = [part.right - part.left, part.bottom - part.top];
  const box = { left: MARGIN, top: MARGIN, right: MARGIN + width, bottom: MARGIN + height };
  return {
    name: tile.name,
    shapes: isAlone ? [] : overlapMarks(tile, tiles, box),
    window: {
      box,
      shift: { x: MARGIN - part.left, y: MARGIN - part.top },
      shapes: drawing.shapes.filter((shape) => isSeenThrough(shape, part)),
    },
  };
}

function withBlock(
  page: SheetPage,
  index: number,
  count: number,
  {
    request,
    paper,
    sketch,
    columns,
    scale,
    heightScale,
    block,
  }: Setting & Pick<Sheet, "heightScale"> & { block: number },
): SheetPage {
  const bottom = paper.height - MARGIN;
  const hasCautions = page.window !== undefined && block > BLOCK_HEIGHT;
  const top = bottom - (hasCautions ? block : BLOCK_HEIGHT);
  const box = { left: MARGIN, right: paper.width - MARGIN, top, bottom };
  const shapes = drawBlock(
    {
      name: request.plan.name ?? "A line without a name",
      view: sketch.view,
      scale,
      heightScale,
      paper: paper.words,
      date: request.date,
      page: count === 1 ? page.name : `${page.name} (${index + 1} of ${count})`,
      system: request.system,
      hasVerdicts: request.checked !== undefined,
    },
    box,
  );
  const cautions = hasCautions ? columns.draw(box.left + 3, top + BLOCK_HEIGHT) : [];
  return { ...page, shapes: [...page.shapes, ...shapes, ...cautions] };
}
