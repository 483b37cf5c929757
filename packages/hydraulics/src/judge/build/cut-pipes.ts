import { findPipeByName } from "../../document/find-names.js";
import type { Plan } from "../../document/plan-schema.js";
import type { Line, Run } from "../../model/line.js";
import { createTypedValues } from "../../model/typed-values.js";
import { cutStock } from "../../numerics/cutting/cut-stock.js";
import { type Cutting, inGrains } from "../../numerics/cutting/cutting.js";
import { stockOfFamily } from "../../tables/building.js";
import { pipeById } from "../../tables/pipes.js";
import type { BarToCut, PipeToCut, RunPiece } from "./part-list.js";

/** A joint in a run keeps this far from a drinker [m]; common practice, no source. */
export const JOINT_CLEAR = 0.05;

/** What the shelf says of one pipe. */
interface Stock {
  readonly form: "stick" | "coil" | undefined;
  readonly sold: readonly number[];
  readonly soldFrom: "plan" | "usual" | undefined;
  readonly pieces: readonly number[];
  readonly untold: number;
  /** Of a metre. */
  readonly price: number | undefined;
}

/** All pipe of a line by kind, cut from what is on hand and what is sold. */
export function cutPipes(plan: Plan, line: Line, kerf: number): PipeToCut[] {
  const kinds = new Map<string, Run[]>();
  for (const run of line.runs) {
    if (run.length <= 0) continue;
    const key = run.pipeId === "own" ? `own ${run.pipeName}` : run.pipeId;
    kinds.set(key, [...(kinds.get(key) ?? []), run]);
  }
  return [...kinds.values()].map((runs) => cutKind(plan, line, runs, kerf));
}

function cutKind(plan: Plan, line: Line, runs: readonly Run[], kerf: number): PipeToCut {
  const { pipeId, pipeName } = runs[0];
  const stock = stockOf(plan, pipeId);
  const longest = Math.max(0, ...stock.sold);
  const pieces = runs.flatMap((run) => piecesOf(line, run, longest));
  const cutting = cutStock({
    pieces: pieces.map(({ length }) => ({ length, count: 1 })),
    sold: stock.sold,
    leftovers: stock.pieces,
    kerf,
  });
  const { bars, uncut } = named(cutting, pieces);
  const sum = (lengths: readonly number[]) => lengths.reduce((total, each) => total + each, 0);
  const needed = sum(pieces.map(({ length }) => length));
  const rests = sum(bars.map(({ rest }) => rest));
  const { bars: _bars, uncut: _uncut, ...proof } = cutting;
  const cut = needed - sum(uncut.map(({ length }) => length));
  return {
    pipe: pipeId,
    name: pipeName,
    form: stock.form,
    sold: stock.sold,
    soldFrom: stock.soldFrom,
    needed,
    bars,
    uncut,
    cutting: proof,
    chips: Math.max(0, cutting.bought + cutting.leftoverUsed - cut - rests),
    rests,
    untold: stock.untold,
    price: stock.price === undefined ? undefined : stock.price * cutting.bought,
  };
}

function stockOf(plan: Plan, pipeId: string): Stock {
  const values = createTypedValues();
  const length = (typed: string) => values.si(typed, "length");
  const entries = (plan.shelf ?? []).filter(({ pipe }) => findPipeByName(pipe)?.id === pipeId);
  const family = pipeById(pipeId)?.family;
  const usual = family === undefined ? undefined : stockOfFamily(family);
  const told = entries.flatMap(({ sold }) =>
    sold === undefined ? [] : typeof sold === "string" ? [sold] : sold,
  );
  const priced = entries.find(({ price }) => price !== undefined);
  const pieces = entries.flatMap((entry) => entry.pieces ?? []).map(length);
  const onHand = entries.reduce(
    (sum, entry) => sum + (entry.onHand === undefined ? 0 : length(entry.onHand)),
    0,
  );
  return {
    form: usual?.form === "stick" || usual?.form === "coil" ? usual.form : undefined,
    sold: told.length > 0 ? told.map(length) : usual === undefined ? [] : [usual.length],
    soldFrom: told.length > 0 ? "plan" : usual === undefined ? undefined : "usual",
    pieces,
    untold: Math.max(0, onHand - pieces.reduce((sum, each) => sum + each, 0)),
    price: priced?.price === undefined ? undefined : priced.price / length(priced.per ?? "1 m"),
  };
}

/** A joint keeps this far from the run's end, so that no piece is too short to be joined [m]; common practice, no source. */
export const LEAST_PIECE = 0.1;

/** A run as pieces no longer than what is sold; joints keep clear of drinkers where there is room. */
export function piecesOf(line: Line, run: Run, longest: number): RunPiece[] {
  const drinkers = drinkersAlong(line, run);
  const joints = [0];
  let at = 0;
  while (longest > 0 && run.length - at > longest + 1e-9) {
    const end = at + longest;
    // The last joint but one may leave a stump: then it goes back a little.
    const isStump = run.length - end < LEAST_PIECE && longest > 2 * LEAST_PIECE;
    at = clearOf(drinkers, at, isStump ? run.length - LEAST_PIECE : end);
    joints.push(at);
  }
  return joints.map((from, i) => ({
    run: run.id,
    part: i + 1,
    parts: joints.length,
    length: Number(((joints[i + 1] ?? run.length) - from).toFixed(6)),
  }));
}

const drinkersAlong = ({ drinkers }: Line, run: Run): number[] =>
  Array.from(drinkers.along).filter((_, d) => drinkers.run[d] === run.index);

/** The farthest place up to `end` that no drinker is near; `end` itself where they stand too close for that. */
function clearOf(drinkers: readonly number[], start: number, end: number): number {
  const near = (place: number) => drinkers.filter((each) => Math.abs(each - place) < JOINT_CLEAR - 1e-9);
  let place = end;
  for (let blocked = near(place); blocked.length > 0; blocked = near(place)) {
    place = Math.min(...blocked) - JOINT_CLEAR;
    if (place < start + (end - start) / 2) return end;
  }
  return place;
}

/** Each length cut is one of the pieces of that length, the first run's first. */
function named(cutting: Cutting, pieces: readonly RunPiece[]): { bars: BarToCut[]; uncut: RunPiece[] } {
  const waiting = new Map<number, RunPiece[]>();
  for (const piece of pieces) {
    const key = inGrains(piece.length);
    waiting.set(key, [...(waiting.get(key) ?? []), piece]);
  }
  const take = (length: number): RunPiece[] => {
    const piece = waiting.get(inGrains(length))?.shift();
    return piece === undefined ? [] : [piece];
  };
  const bars = cutting.bars.map(({ from, length, pieces: lengths, rest }) => ({
    from,
    length,
    pieces: lengths.flatMap(take),
    rest,
  }));
  return { bars, uncut: cutting.uncut.flatMap(take) };
}
