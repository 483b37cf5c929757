/** Kinds of remedy; of each kind the cheapest is told. */
export const CURE_KINDS = [
  "stand",
  "pipe",
  "standAndPipe",
  "tap",
  "vent",
  "bleed",
  "drinkers",
  "outlet",
  "secondFeed",
  "feedMiddle",
  "split",
  "regulator",
  "headerTank",
  "moveSource",
  "fewerDrinkers",
  "two",
] as const;
/** A sort of remedy, told apart. */
export type CureKind = (typeof CURE_KINDS)[number];
