import type { LooseWaterer, Yard } from "./yard.js";

/** Every kind of thing that goes wrong with a loose waterer, in the order in which they are told. */
export const WATERER_MISHAP_KINDS = [
  /** What it stands on gives way under its lower edge: scratched hollow, soaked bedding, a foot of its block. */
  "offLevel",
  /** A fount is put back with its air hole uphill. */
  "holeUphill",
  /** Air gets in above the water that it should hold up: at its cap, its lid, a crack. */
  "capOff",
  "lidLoose",
  "jarCracked",
  /** The lid of a bucket that has to let air in is airtight. */
  "ventShut",
  /** A pan or a trough is tipped over, and all of it is gone. */
  "kickedOver",
  /** A hung bell is held aside: litter heaped against it, its cord caught. */
  "heldAside",
  /** Nobody came at the hour at which it is filled. */
  "refillMissed",
] as const;

/** A mishap of a loose waterer, told apart. */
export type WatererMishapKind = (typeof WATERER_MISHAP_KINDS)[number];

/** One thing that goes wrong with one loose waterer: places are those of the yard. Of several that stand alike, it is one. */
export interface WatererMishap {
  readonly kind: WatererMishapKind;
  readonly pen: number;
  readonly waterer: number;
}

/**
 * How far the lower edge of a waterer sinks when it comes off level [m].
 *
 * @source common-practice, two fingers of litter scratched away, from memory
 */
export const EDGE_SINKS = 0.02;

/**
 * How far aside a hung bell is held [m].
 *
 * @source common-practice, a hand's breadth, from memory
 */
export const HELD_ASIDE = 0.1;

/**
 * Every single thing that can go wrong with the loose waterers of a plan, in the order of the plan.
 *
 * @example watererMishapsOf(buildYard(examplePlan("yard")).yard)[0].kind   // "offLevel"
 */
export function watererMishapsOf({ pens }: Yard): WatererMishap[] {
  return pens.flatMap((pen) =>
    pen.waterers.flatMap((waterer) =>
      kindsOf(waterer).map((kind): WatererMishap => ({ kind, pen: pen.index, waterer: waterer.index })),
    ),
  );
}

function kindsOf({ kind, hole }: LooseWaterer): WatererMishapKind[] {
  const standing: WatererMishapKind[] = kind.hangs ? [] : ["offLevel"];
  switch (kind.works) {
    case "vacuum":
      return [
        ...standing,
        ...(hole === "uphill" ? [] : (["holeUphill"] as const)),
        kind.seal === "cap" ? "capOff" : kind.seal === "lid" ? "lidLoose" : "jarCracked",
        "refillMissed",
      ];
    case "bell":
      return [...standing, ...(kind.hangs ? (["heldAside"] as const) : []), "ventShut", "refillMissed"];
    case "nipples":
      return ["ventShut", "refillMissed"];
    case "pan":
    case "trough":
      return [...standing, "kickedOver", "refillMissed"];
  }
}

/** The waterer as it then stands or leans; what only changes its water leaves it as it is. */
export function watererWithMishap(
  waterer: LooseWaterer,
  { kind }: Pick<WatererMishap, "kind">,
): LooseWaterer {
  switch (kind) {
    case "offLevel":
      return { ...waterer, slope: waterer.slope + EDGE_SINKS / waterer.kind.base };
    case "holeUphill":
      return { ...waterer, hole: "uphill" };
    case "heldAside":
      return { ...waterer, slope: leaning(waterer.cord) };
    default:
      return waterer;
  }
}

/** tan of the lean of a bell that hangs by a cord and is held aside; by a cord hardly longer, it is all but turned over. */
function leaning(cord: number): number {
  const upright = Math.sqrt(Math.max(0, cord ** 2 - HELD_ASIDE ** 2));
  return HELD_ASIDE / Math.max(upright, HELD_ASIDE / 10);
}
