import type { Checked, VerdictName } from "@headfall/hydraulics";
import { type AboveLayout, type AboveRun, layAbove, lengthOf, spotAt } from "../above/lay-above.js";
import type { Ground } from "../above/spot.js";
import type { Spot } from "../profile-request.js";
import { notesAbove } from "./above-notes.js";
import type { AboveRequest, Drawing } from "./drawing.js";
import { gatherMarks, MARK_RADIUS } from "./gather-marks.js";
import { leaderEnd, NOTE_LEADING, NOTE_SIZE, placeNotes } from "./place-notes.js";
import { onPaper, type SheetScale } from "./scales.js";
import { boxOfSpots, line, type Shape } from "./shapes.js";

/** Room for words around what is drawn [mm]. */
const PAD_ACROSS = 13;
const PAD_DOWN = 15;
/** Half the side of the square that stands for a source [mm]. */
const SOURCE = 3;
/** How far beside the pipe a drinker's mark stands [mm]. */
const BESIDE = 3.2;

/** How large the plan is from above, words included [mm]. */
export function sizeAbove(layout: AboveLayout, scale: SheetScale): { width: number; height: number } {
  const extent = extentOf(layout);
  return {
    width: onPaper(extent.right - extent.left, scale) + 2 * PAD_ACROSS,
    height: onPaper(extent.bottom - extent.top, scale) + 2 * PAD_DOWN,
  };
}

/** Draws the plan from above, to scale, in the middle of `room`: a page that is larger has more room for words. */
export function drawAbove(
  request: AboveRequest,
  scale: SheetScale,
  room: { readonly width: number; readonly height: number },
  layout = layAbove(request.plan),
): Drawing {
  const least = sizeAbove(layout, scale);
  const size = { width: Math.max(least.width, room.width), height: Math.max(least.height, room.height) };
  const { left, bottom } = extentOf(layout);
  const toPaper = ({ x, y }: Ground): Spot => ({
    x: PAD_ACROSS + (size.width - least.width) / 2 + onPaper(x - left, scale),
    y: PAD_DOWN + (size.height - least.height) / 2 + onPaper(bottom - y, scale),
  });
  const runs = layout.runs.map((run) => run.spots.map(toPaper));
  const parts = partShapes(request, layout, runs, toPaper);
  const notes = notesAbove(request, layout, toPaper);
  const bounds = { left: 0, top: 0, right: size.width, bottom: size.height };
  const { words, unplaced } = noteShapes(notes, placeNotes(notes, obstaclesOf(runs, parts), bounds));
  return { ...size, shapes: [...parts, ...words], notes: unplaced, strips: [] };
}

/** Pipes, drinkers and joints; `runs` are the spots of each run on the paper. */
function partShapes(
  request: AboveRequest,
  layout: AboveLayout,
  runs: readonly (readonly Spot[])[],
  toPaper: (place: Ground) => Spot,
): readonly Shape[] {
  const hanging = drinkersByRun(request.checked);
  return [
    ...layout.runs.map(
      ({ isToScale }, i): Shape => ({
        kind: "path",
        pen: isToScale ? "pipe" : "unscaled",
        spots: runs[i]!,
      }),
    ),
    ...layout.runs.flatMap((run, i) => drinkerShapes(hanging.get(run.name) ?? [], run, runs[i]!)),
    ...layout.joints.flatMap((joint) => jointShapes(toPaper(joint), joint.source >= 0)),
  ];
}

/** Words beside what they tell of, each with its leader; what has no room gets a number, and stands with it elsewhere. */
function noteShapes(notes: ReturnType<typeof notesAbove>, boxes: ReturnType<typeof placeNotes>) {
  const words: Shape[] = [];
  const unplaced: string[] = [];
  notes.forEach(({ at, lines }, i) => {
    const box = boxes[i];
    if (box === undefined) {
      unplaced.push(`${unplaced.length + 1}: ${lines.join(" · ")}`);
      words.push(...numberAt(at, unplaced.length));
      return;
    }
    words.push({ kind: "path", pen: "leader", spots: [at, leaderEnd(at, box)] });
    lines.forEach((text, row) => {
      const y = box.top + (row + 0.85) * NOTE_LEADING;
      words.push({ kind: "text", x: box.left + 0.6, y, text, size: NOTE_SIZE, isBold: row === 0 });
    });
  });
  return { words, unplaced };
}

/** Ends of the plan in metres; y is up, so `bottom` is the largest y. */
function extentOf({ joints, runs }: AboveLayout) {
  const box = boxOfSpots([...joints, ...runs.flatMap(({ spots }) => spots)]);
  return Number.isFinite(box.left) ? box : { left: 0, top: 0, right: 0, bottom: 0 };
}

function jointShapes({ x, y }: Spot, isSource: boolean): Shape[] {
  if (!isSource) return [{ kind: "ring", pen: "joint", x, y, radius: 0.9 }];
  const corners = [
    { x: x - SOURCE, y: y - SOURCE },
    { x: x + SOURCE, y: y - SOURCE },
    { x: x + SOURCE, y: y + SOURCE },
    { x: x - SOURCE, y: y + SOURCE },
  ];
  return [
    { kind: "path", pen: "vessel", spots: corners, isClosed: true },
    { kind: "ring", pen: "water", x, y, radius: SOURCE - 0.8 },
  ];
}

interface Hanging {
  /** From the start of the run [m]. */
  readonly along: number;
  readonly verdict: VerdictName;
}

/** The drinkers of each run, by its name, from its start on. */
function drinkersByRun(checked: Checked | undefined): ReadonlyMap<string, Hanging[]> {
  const byRun = new Map<string, Hanging[]>();
  for (const { index, verdict } of checked?.drinkers ?? []) {
    const { drinkers, runs } = checked!.line;
    const { id } = runs[drinkers.run[index]!]!;
    const hanging = byRun.get(id) ?? [];
    hanging.push({ along: drinkers.along[index]!, verdict });
    byRun.set(id, hanging);
  }
  for (const hanging of byRun.values()) hanging.sort((a, b) => a.along - b.along);
  return byRun;
}

/** Stems and marks of the drinkers of one run, beside its pipe. */
function drinkerShapes(hanging: readonly Hanging[], { length }: AboveRun, spots: readonly Spot[]): Shape[] {
  const drawn = lengthOf(spots);
  const shares = hanging.map(({ along, verdict }) => ({
    at: length > 0 ? Math.min(1, along / length) * drawn : 0,
    verdict,
  }));
  const beside = (at: number, distance: number): [number, number] => {
    const here = spotAt(spots, drawn > 0 ? at / drawn : 0);
    const [before, after] = [spotAt(spots, (at - 0.5) / drawn), spotAt(spots, (at + 0.5) / drawn)];
    const long = Math.hypot(after.x - before.x, after.y - before.y) || 1;
    return [
      here.x - (distance * (after.y - before.y)) / long,
      here.y + (distance * (after.x - before.x)) / long,
    ];
  };
  return [
    ...shares.map(({ at }) => line("stem", beside(at, 0), beside(at, BESIDE - MARK_RADIUS))),
    ...gatherMarks(shares).map(({ at, verdict }): Shape => {
      const [x, y] = beside(at, BESIDE);
      return { kind: "mark", verdict, x, y, radius: MARK_RADIUS };
    }),
  ];
}

/** Spots that words had better not cover: the pipes, every 2 mm, and the marks. */
function obstaclesOf(runs: readonly (readonly Spot[])[], shapes: readonly Shape[]): Spot[] {
  const spots: Spot[] = [];
  for (const run of runs) {
    const long = lengthOf(run);
    const steps = Math.max(1, Math.ceil(long / 2));
    for (let i = 0; i <= steps; i += 1) spots.push(spotAt(run, i / steps));
  }
  for (const shape of shapes) {
    if (shape.kind === "mark") spots.push(...squareAround(shape, MARK_RADIUS));
    if (shape.kind === "ring" && shape.pen === "water") spots.push(...squareAround(shape, SOURCE));
  }
  return spots;
}

/** Corners, middles of the sides, and the middle. */
function squareAround({ x, y }: Spot, reach: number): Spot[] {
  return [-1, 0, 1].flatMap((across) =>
    [-1, 0, 1].map((down) => ({ x: x + across * reach, y: y + down * reach })),
  );
}

/** A number in a ring, where words had no room; the words stand on a page of notes under that number. */
function numberAt({ x, y }: Spot, number: number): Shape[] {
  return [
    { kind: "ring", pen: "joint", x, y, radius: 1.7 },
    { kind: "text", x, y: y + 0.7, text: String(number), size: 2, anchor: "middle" },
  ];
}
