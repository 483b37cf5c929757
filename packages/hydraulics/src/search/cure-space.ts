import { findPipeByName } from "../document/find-names.js";
import type { Plan } from "../document/plan-schema.js";
import { runNames, sourceNames } from "../document/run-ends.js";
import { type PipeSize, pipeById, pipesOfFamily } from "../tables/pipes.js";
import { readQuantity } from "../units/quantity.js";
import { addCosts, type Cost, costOfPipe, NO_COST, type ShelfSize } from "./cost.js";
import { type CureOptions, STAND_MOST, STAND_STEP } from "./cure-options.js";

/** Pipe that may lie in a run: as it is, or another size. */
export interface PipeOption {
  /** Id in the table of pipes; undefined: the run as it is. */
  readonly pipe: string | undefined;
  /** Its cost if no other run took what is on hand. */
  readonly cost: Cost;
  /** What it is bought from; undefined for the run as it is. */
  readonly shelf: ShelfSize | undefined;
}

/** A height at which a source may stand. */
export interface StandOption {
  /** As it would be typed; undefined: as it is. */
  readonly typed: string | undefined;
  readonly height: number;
  readonly cost: Cost;
}

export interface RunChoice {
  /** Position in the plan's list of runs. */
  readonly run: number;
  readonly id: string;
  readonly length: number;
  readonly options: readonly PipeOption[];
}

export interface SourceChoice {
  readonly source: number;
  readonly id: string;
  readonly options: readonly StandOption[];
}

/** All plans that differ from one in the sizes of its runs and the heights of its stands. */
export interface CureSpace {
  readonly plan: Plan;
  readonly runs: readonly RunChoice[];
  readonly sources: readonly SourceChoice[];
  /** What the plan itself cost to come to, before any size or stand is changed. */
  readonly spent: Cost;
}

/** One plan of a space: the chosen option of each run, then of each source, by position. */
export type Picks = readonly number[];

/**
 * The sizes and stands a plan may have.
 *
 * @param plan     the plan, maybe changed already by another remedy
 * @param options  heights to think of, and whose units are typed
 * @param free     whether pipes may change (all, or those of some runs), and stands; `fresh` is a run that a remedy
 *                 lays: its pipe is bought whatever it is
 * @param spent    what the plan itself has cost, where a remedy has changed it
 */
export function buildCureSpace(
  plan: Plan,
  options: Pick<CureOptions, "standMost" | "standStep" | "system" | "never">,
  free: { readonly pipes: boolean | readonly number[]; readonly stands: boolean; readonly fresh?: number },
  spent: Cost = NO_COST,
): CureSpace {
  const [runIds, sourceIds] = [runNames(plan), sourceNames(plan)];
  const { never = [] } = options;
  const pipes = free.pipes === true && never.includes("pipe") ? false : free.pipes;
  const stands = free.stands && !never.includes("stand");
  return {
    plan,
    spent,
    runs: plan.runs.map((run, r) => {
      const length = siOf(run.length);
      return {
        run: r,
        id: runIds[r],
        length,
        options: optionsOf(plan, r, { length, isFree: isFree(pipes, r), isFresh: r === free.fresh }),
      };
    }),
    sources: plan.sources.map((_, s) => ({
      source: s,
      id: sourceIds[s],
      options: stands ? standOptions(plan, s, options) : [unmoved(plan, s)],
    })),
  };
}

const isFree = (pipes: boolean | readonly number[], run: number): boolean =>
  typeof pipes === "boolean" ? pipes : pipes.includes(run);

const AS_IT_IS: PipeOption = { pipe: undefined, cost: NO_COST, shelf: undefined };

function optionsOf(
  plan: Plan,
  r: number,
  {
    length,
    isFree,
    isFresh,
  }: { readonly length: number; readonly isFree: boolean; readonly isFresh: boolean },
): PipeOption[] {
  const [present, ...others] = isFree ? pipeOptions(plan, r, length) : [AS_IT_IS];
  if (!isFresh) return [present, ...others];
  const id = presentPipe(plan, r)?.id ?? "own";
  const shelf = shelfOf(plan)?.find(({ pipe }) => pipe === id) ?? bare(id);
  return [{ ...present, shelf, cost: costOfPipe(shelf, [length]) }, ...others];
}

/** A length that is typed [m]; 0 where none is. */
export const siOf = (typed: string | undefined): number => {
  const read = readQuantity(typed ?? "0 m", "length");
  return read.ok ? read.quantity.si : 0;
};

/** The plan's own shelf, or every size of the family of the run's pipe. */
function pipeOptions(plan: Plan, r: number, length: number): PipeOption[] {
  const present = presentPipe(plan, r);
  const shelf =
    shelfOf(plan) ?? (present === undefined ? [] : pipesOfFamily(present.family).map(({ id }) => bare(id)));
  const others = shelf.filter((size) => size.pipe !== present?.id);
  return [
    AS_IT_IS,
    ...others
      .sort((a, b) => boreOf(a) - boreOf(b))
      .map((size) => ({ pipe: size.pipe, cost: costOfPipe(size, [length]), shelf: size })),
  ];
}

/** The pipe of a run in the table; undefined for one of the user's own. */
function presentPipe(plan: Plan, r: number): PipeSize | undefined {
  const { pipe = PLAIN_PIPE } = plan.runs[r];
  return typeof pipe === "string" ? findPipeByName(pipe) : undefined;
}

/** What lies in a run that does not say. */
const PLAIN_PIPE = "pvc-sch40-1/2";
const bare = (pipe: string): ShelfSize => ({ pipe, price: undefined, onHand: 0 });
const boreOf = ({ pipe }: ShelfSize) => pipeById(pipe)?.bore ?? 0;

/** Sizes on the plan's shelf, each once; undefined where it has none. */
export function shelfOf(plan: Plan): ShelfSize[] | undefined {
  if (plan.shelf === undefined || plan.shelf.length === 0) return undefined;
  const sizes = new Map<string, ShelfSize>();
  for (const { pipe, price, per, onHand, pieces = [] } of plan.shelf) {
    const id = findPipeByName(pipe)?.id;
    if (id === undefined) continue;
    const before = sizes.get(id);
    sizes.set(id, {
      pipe: id,
      price: before?.price ?? (price === undefined ? undefined : price / siOf(per ?? "1 m")),
      onHand:
        (before?.onHand ?? 0) +
        (onHand === undefined ? pieces.reduce((sum, piece) => sum + siOf(piece), 0) : siOf(onHand)),
    });
  }
  return [...sizes.values()];
}

/** Whether a plan gives any price, so that its cures can be told apart by money. */
export const hasPrices = (plan: Plan): boolean =>
  plan.prices !== undefined || (plan.shelf ?? []).some(({ price }) => price !== undefined);

function unmoved(plan: Plan, s: number): StandOption {
  return { typed: undefined, height: siOf(plan.sources[s].stand), cost: NO_COST };
}

function standOptions(
  plan: Plan,
  s: number,
  {
    standMost = STAND_MOST,
    standStep,
    system = "metric",
  }: Pick<CureOptions, "standMost" | "standStep" | "system">,
): StandOption[] {
  const step = standStep ?? STAND_STEP[system];
  const present = unmoved(plan, s);
  const count = Math.floor(standMost / step + 1e-9);
  const others = Array.from({ length: count + 1 }, (_, k): StandOption => {
    const height = Number((k * step).toFixed(6));
    const up = height - present.height;
    return {
      typed: typedLength(height, system),
      height,
      cost: { ...NO_COST, stand: Math.abs(up), money: Math.max(0, up) * (plan.prices?.stand ?? 0) * 10 },
    };
  });
  return [present, ...others.filter(({ height }) => Math.abs(height - present.height) > 1e-4)];
}

/** A length as it would be typed: to a tenth of a millimetre, or a hundredth of an inch. */
export function typedLength(metres: number, system: "metric" | "us"): string {
  const shown = (value: number, digits: number) => String(Number(value.toFixed(digits)));
  return system === "us" ? `${shown(metres / 0.0254, 2)} in` : `${shown(metres * 100, 2)} cm`;
}

/** The same, never more than it is. */
export function typedLengthWithin(metres: number, system: "metric" | "us"): string {
  const hundredth = (system === "us" ? 0.0254 : 0.01) / 100;
  return typedLength(Math.floor(metres / hundredth + 1e-6) * hundredth, system);
}

/** The plan that picks stand for. */
export function planOf({ plan, runs, sources }: CureSpace, picks: Picks): Plan {
  const typedStand = sources.map(({ options }, s) => options[picks[runs.length + s]].typed);
  return {
    ...plan,
    runs: plan.runs.map((run, r) => {
      const { pipe } = runs[r].options[picks[r]];
      return pipe === undefined ? run : { ...run, pipe };
    }),
    sources: plan.sources.map((source, s) =>
      typedStand[s] === undefined ? source : { ...source, stand: typedStand[s] },
    ),
  };
}

/** What picks cost in truth: what is on hand counts once for all runs. */
export function costOf({ runs, sources, spent }: CureSpace, picks: Picks): Cost {
  const laid = new Map<ShelfSize["pipe"], { size: ShelfSize; lengths: number[] }>();
  runs.forEach(({ options, length }, r) => {
    const { shelf } = options[picks[r]];
    if (shelf === undefined) return;
    const known = laid.get(shelf.pipe) ?? { size: shelf, lengths: [] };
    known.lengths.push(length);
    laid.set(shelf.pipe, known);
  });
  const pipes = [...laid.values()].map(({ size, lengths }) => costOfPipe(size, lengths));
  const stands = sources.map(({ options }, s) => options[picks[runs.length + s]].cost);
  return [...pipes, ...stands].reduce(addCosts, spent);
}
