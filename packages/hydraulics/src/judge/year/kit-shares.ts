import { findDrinkerByName, findWatererId } from "../../document/find-names.js";
import type { Plan } from "../../document/plan-schema.js";
import { isThere, type Pen } from "../../model/flock.js";
import { intakeOfPen } from "../../model/flock-intake.js";
import { holdsOf } from "../../model/waterer-sizes.js";
import type { LooseWaterer } from "../../model/yard.js";
import { PLACES } from "../../simulate/crowd-want.js";
import { allWaterers, type WatererKind, watererById } from "../../tables/waterers.js";
import { type Device, drinkersNeeded, IN_REACH } from "../drinkers-needed.js";
import type { MannedLine } from "../man-line.js";
import { reachOf } from "../yard/waterer-reach.js";
import { suitOf } from "../yard/waterer-suits.js";
import { staysIn, tiltOf, waterLeft } from "../yard/waterer-tilt.js";
import { atOnceIn, countOf, type JudgedPeriod } from "./pen-periods.js";
import type { Serving } from "./year-result.js";

/** One kind of thing that can be given out to the pens. */
export interface GivenKind {
  readonly id: string;
  readonly name: string;
  readonly count: number;
  readonly spare: number;
  readonly price: number | undefined;
  readonly is:
    | { readonly what: "waterer"; readonly waterer: LooseWaterer; readonly gives: number }
    | { readonly what: "drinker"; readonly device: Device; readonly places: number };
}

/**
 * Fillings a day that a keeper is taken to be ready for: in the morning and in the evening.
 *
 * @source common-practice, twice a day, from memory
 */
export const FILLINGS = 2;

/** The kit of a plan; entries of one kind are one. */
export function kitOf(plan: Plan): GivenKind[] {
  const kinds = new Map<string, GivenKind>();
  for (const { kind, count, spare = 0, price } of plan.kit ?? []) {
    const made = kindNamed(kind, { count, spare, price });
    const known = kinds.get(made.id);
    kinds.set(
      made.id,
      known === undefined
        ? made
        : { ...made, count: known.count + count, spare: known.spare + spare, price: price ?? known.price },
    );
  }
  return [...kinds.values()];
}

type OfKit = Pick<GivenKind, "count" | "spare" | "price">;

function kindNamed(words: string, of: OfKit): GivenKind {
  const waterer = watererById(findWatererId(words) ?? "");
  if (waterer !== undefined) return givenWaterer(waterer, of);
  const drinker = findDrinkerByName(words);
  if (drinker === undefined)
    throw new TypeError(
      `kitOf: nothing is called ${JSON.stringify(words)}; only plans that were read have a kit`,
    );
  const device = drinker.kind;
  return {
    id: drinker.id,
    name: drinker.name,
    ...of,
    is: { what: "drinker", device, places: PLACES[device] },
  };
}

/** Every kind of waterer of the tables, as none of it is there yet. */
export const kindsToBuy = (): GivenKind[] =>
  allWaterers.map((kind) => givenWaterer(kind, { count: 0, spare: 0, price: undefined }));

/** Stood level: what is carried about is put where it stands well. */
function givenWaterer(kind: WatererKind, of: OfKit): GivenKind {
  const holds = holdsOf(kind);
  const waterer: LooseWaterer = {
    id: kind.id,
    index: 0,
    kind,
    count: 1,
    slope: 0,
    hole: "uphill",
    holds,
    hang: undefined,
    cord: 1,
    refillEvery: undefined,
    isShaded: kind.hasShade,
  };
  const tilt = tiltOf(waterer);
  const gives = Math.max(0, staysIn(waterer, tilt) - waterLeft(waterer, tilt));
  return { id: kind.id, name: kind.name, ...of, is: { what: "waterer", waterer, gives } };
}

/** Whether pieces of a kind suit all birds of a pen, from the first to the last day. */
function suits({ is }: GivenKind, first: Pen, last: Pen): boolean {
  const there = [...first.batches, ...last.batches].filter(isThere);
  if (is.what === "waterer")
    return there.every((batch) => suitOf(is.waterer.kind, batch).verdict === "suits");
  const isOpen = is.device === "bell" || is.device === "trough";
  return (
    last.drinkers.length > 0 && !(isOpen && there.some(({ kind, ageDays }) => ageDays < kind.drownsUntilDays))
  );
}

/** What one piece of a kind meets of a pen's need. */
export type Served = Pick<Serving, "share" | "because">;

/**
 * Share of a pen's need that one piece meets: the least of what rules and advice, the crowd at the busiest minutes, a
 * day's water in two fillings, and two in reach of each bird leave it. Undefined where it does not suit; a drinker only
 * serves where there is a line.
 */
export function servedBy(kind: GivenKind, { first, manned }: JudgedPeriod, p: number): Served | undefined {
  const pen = manned.flock.pens[p];
  const birds = countOf(pen);
  if (birds === 0 || !suits(kind, first.pens[p], pen)) return undefined;
  const atOnce = atOnceIn(manned, p);
  const inReach = 1 / Math.min(birds, IN_REACH);
  const { is } = kind;
  if (is.what === "drinker") return servedByDrinker(is, { manned, pen, atOnce });
  const reach = reachOf(is.waterer, tiltOf(is.waterer), pen, manned.region);
  if (reach.atOnce === 0) return undefined;
  const drunk = intakeOfPen(pen, manned.flock.weather).size;
  return leastOf([
    { because: "inReach", share: inReach },
    { because: "rules", share: reach.covers ?? 1 },
    { because: "crowd", share: atOnce > 0 ? reach.atOnce / atOnce : 1 },
    { because: "water", share: drunk > 0 ? (FILLINGS * is.gives) / drunk : 1 },
  ]);
}

const leastOf = (all: readonly Served[]): Served =>
  all.reduce((least, one) => (one.share < least.share ? one : least));

function servedByDrinker(
  { device, places }: Extract<GivenKind["is"], { what: "drinker" }>,
  { manned, pen, atOnce }: { readonly manned: MannedLine; readonly pen: Pen; readonly atOnce: number },
): Served | undefined {
  const { needed, because } = drinkersNeeded(pen, device, {
    region: manned.region,
    atOnce: { birds: atOnce, places },
    kept: manned.flock.pens.flatMap(({ batches }) => batches),
  });
  if (needed === 0) return undefined;
  return {
    share: 1 / needed,
    because: because === "inReach" || because === "crowd" ? because : "rules",
  };
}

/** The same as a bare share: 0 where it does not suit. */
export const shareOf = (kind: GivenKind, judged: JudgedPeriod, p: number): number =>
  servedBy(kind, judged, p)?.share ?? 0;
