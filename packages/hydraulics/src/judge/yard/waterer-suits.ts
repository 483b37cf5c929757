import { type Batch, isThere, type Pen } from "../../model/flock.js";
import type { LooseWaterer, YardPen } from "../../model/yard.js";
import type { WatererKind } from "../../tables/waterer-types.js";
import type { ChangeOver, Suit, WaterDepth } from "./yard-result.js";

/**
 * Days for which the old waterer stays beside the new one.
 *
 * @source common-practice, a week of both, from memory
 */
export const BOTH_STAY = 7;

/**
 * Open water that young birds may stand in [m]: deeper, the youngest drown.
 *
 * @source common-practice, 3 to 6 mm for quail chicks, from memory
 */
const SAFE_DEPTH = 0.006;

/** Whether a kind of waterer suits birds of a kind and age. */
export function suitOf(kind: WatererKind, { kind: bird, ageDays }: Pick<Batch, "kind" | "ageDays">): Suit {
  const { fromDays, toDays, species } = kind;
  const verdict = !species.includes(bird.species)
    ? "notForThem"
    : ageDays < fromDays
      ? "tooYoung"
      : toDays !== undefined && ageDays > toDays
        ? "tooOld"
        : "suits";
  return { kind: bird.id, kindName: bird.name, ageDays, verdict, fromDays, toDays };
}

/** A waterer against each batch that is there. */
export function suitsOf({ kind }: LooseWaterer, pen: Pen): readonly Suit[] {
  return pen.batches.filter(isThere).map((batch) => suitOf(kind, batch));
}

/** Open water at a waterer, and the birds that may drown in it. */
export function depthOf({ kind }: LooseWaterer, pen: Pen): WaterDepth {
  const depth = depthOfKind(kind);
  if (depth <= SAFE_DEPTH) return { depth, mayDrown: [] };
  const young = pen.batches.filter((batch) => isThere(batch) && batch.ageDays < batch.kind.drownsUntilDays);
  return {
    depth,
    mayDrown: young.map(({ kind: bird, ageDays }) => ({
      kindName: bird.name,
      ageDays,
      untilDays: bird.drownsUntilDays,
    })),
  };
}

/** Depth of the water that stands open when it is full [m]. */
export function depthOfKind(kind: WatererKind): number {
  switch (kind.works) {
    case "vacuum":
    case "bell":
      return kind.pool;
    case "pan":
    case "trough":
      return kind.depth;
    case "nipples":
      return 0;
  }
}

/**
 * From each waterer that a batch grows out of to the one that comes after it: another of the pen that suits by then, the
 * one that suits longest. Both stay for a week before.
 */
export function changeOversOf({ waterers }: YardPen, pen: Pen, day: number | undefined): ChangeOver[] {
  return pen.batches.filter(isThere).flatMap((batch) =>
    waterers.flatMap((waterer): ChangeOver[] => {
      const now = suitOf(waterer.kind, batch);
      if (now.verdict !== "suits" || now.toDays === undefined) return [];
      const until = now.toDays;
      const next = waterers
        .map((other) => ({ other, later: suitOf(other.kind, { kind: batch.kind, ageDays: until + 1 }) }))
        .filter(({ later }) => later.verdict === "suits")
        .sort((a, b) => (b.later.toDays ?? 1e9) - (a.later.toDays ?? 1e9))[0];
      const both = Math.max(batch.ageDays, next?.later.fromDays ?? 0, until - BOTH_STAY);
      const dayAt = (age: number) => (day === undefined ? undefined : Math.round(day + age - batch.ageDays));
      return [
        {
          kind: batch.kind.id,
          kindName: batch.kind.name,
          from: waterer.id,
          to: next?.other.id,
          bothFromDays: both,
          untilDays: until,
          bothFromDay: dayAt(both),
          untilDay: dayAt(until),
        },
      ];
    }),
  );
}
