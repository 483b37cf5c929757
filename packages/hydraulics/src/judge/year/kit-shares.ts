import { findDrinkerByName, findWatererId } from "../../document/find-names.js";
import type { Plan } from "../../document/plan-schema.js";
import { isThere, type Pen } from "../../model/flock.js";
import { holdsOf } from "../../model/waterer-sizes.js";
import type { LooseWaterer } from "../../model/yard.js";
import { PLACES } from "../../simulate/crowd-want.js";
import { allWaterers, type WatererKind, watererById } from "../../tables/waterers.js";
import { type Device, drinkersNeeded } from "../birds/drinkers-needed.js";
import type { MannedLine } from "../birds/man-line.js";
import { suitOf } from "../yard/waterer-suits.js";
import { countOf } from "./count-of.js";
import { atOnceIn, type JudgedPeriod } from "./pen-periods.js";
import { type Served, servedByWaterer } from "./waterer-serves.js";

/** One kind of thing that can be given out to the pens. */
export interface GivenKind {
  readonly id: string;
  readonly name: string;
  readonly count: number;
  readonly spare: number;
  readonly price: number | undefined;
  readonly is:
    | { readonly what: "waterer"; readonly waterer: LooseWaterer }
    | { readonly what: "drinker"; readonly device: Device; readonly places: number };
}

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
  return { id: kind.id, name: kind.name, ...of, is: { what: "waterer", waterer } };
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

/**
 * Share of a pen's need that one piece meets. Undefined where it does not suit; a drinker only serves where there is a
 * line.
 */
export function servedBy(kind: GivenKind, { first, manned }: JudgedPeriod, p: number): Served | undefined {
  const pen = manned.flock.pens[p];
  if (countOf(pen) === 0 || !suits(kind, first.pens[p], pen)) return undefined;
  const { is } = kind;
  const { region } = manned;
  const atOnce = atOnceIn(manned, p);
  return is.what === "drinker"
    ? servedByDrinker(is, { manned, pen, atOnce })
    : servedByWaterer(is.waterer, { pen, weather: manned.flock.weather, region, atOnce });
}

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
