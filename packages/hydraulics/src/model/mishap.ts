/**
 * One thing that goes wrong with a line, and where. Indices are those of the `Line` (sources, runs, drinkers, points)
 * and of the `Flock` (pens, batches).
 */
export type Mishap =
  /** No air gets in any more: a screen clogged, a bag drawn over the lid. */
  | { readonly kind: "ventBlocked"; readonly source: number }
  /** The lid of a vessel that has to be airtight is off: the water presses from its own surface. */
  | { readonly kind: "lidOff"; readonly source: number }
  /** A drinker that birds work passes water without being worked. */
  | { readonly kind: "drinkerStuckOpen"; readonly drinker: number }
  /** Nothing comes from a drinker that birds work: grit, slime, a bent pin. */
  | { readonly kind: "drinkerBlocked"; readonly drinker: number }
  /** A drinker's float hangs low: its valve stands wide open, and the water runs over. */
  | { readonly kind: "floatStuckDown"; readonly drinker: number }
  /** A drinker's float hangs high: nothing comes. */
  | { readonly kind: "floatStuckUp"; readonly drinker: number }
  /** A cup or bell hangs askew and runs out, its valve wide open. */
  | { readonly kind: "cupTipped"; readonly drinker: number }
  /** Pipes that meet at a point come apart there, or its end cap is off: each pours out of its full bore. */
  | { readonly kind: "jointApart"; readonly point: number }
  /** Nothing passes a run: a kink, ice, a plug at its start. */
  | { readonly kind: "runBlocked"; readonly run: number }
  /** A tap that should stand open was left shut, or the other way. */
  | { readonly kind: "tapLeftShut"; readonly run: number }
  | { readonly kind: "tapLeftOpen"; readonly run: number }
  /** A regulator lets everything through, or nothing. */
  | { readonly kind: "regulatorGone"; readonly run: number }
  | { readonly kind: "regulatorShut"; readonly run: number }
  /** A one-way valve lets water back, or nothing through. */
  | { readonly kind: "oneWayOpen"; readonly run: number }
  | { readonly kind: "oneWayShut"; readonly run: number }
  /** The float valve that fills a header tank stands open, and the tank runs over; or shut, and it is not filled. */
  | { readonly kind: "feedStuckDown"; readonly source: number }
  | { readonly kind: "feedStuckUp"; readonly source: number }
  /** Nobody came at the hour at which a source is filled by hand. */
  | { readonly kind: "refillMissed"; readonly source: number }
  /** The hose that keeps a source full is shut off. */
  | { readonly kind: "hoseOff"; readonly source: number }
  /** As many birds of a batch again as the plan says. */
  | { readonly kind: "moreBirds"; readonly pen: number; readonly batch: number }
  /** Hotter than the plan's day: its hot spell, or a hot day. */
  | { readonly kind: "hottestWeek" };

/** A mishap, told apart. */
export type MishapKind = Mishap["kind"];

/** Every kind, in the order in which they are told. */
export const MISHAP_KINDS = [
  "ventBlocked",
  "lidOff",
  "drinkerStuckOpen",
  "drinkerBlocked",
  "floatStuckDown",
  "floatStuckUp",
  "cupTipped",
  "jointApart",
  "runBlocked",
  "tapLeftShut",
  "tapLeftOpen",
  "regulatorGone",
  "regulatorShut",
  "oneWayOpen",
  "oneWayShut",
  "feedStuckDown",
  "feedStuckUp",
  "refillMissed",
  "hoseOff",
  "moreBirds",
  "hottestWeek",
] as const satisfies readonly MishapKind[];
