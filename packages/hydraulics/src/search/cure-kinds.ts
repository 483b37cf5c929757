/** Kinds of remedy; of each kind the cheapest is told. */
export const CURE_KINDS = [
  "stand",
  "pipe",
  "standAndPipe",
  "tap",
  "vent",
  "bleed",
  "drinkers",
  "fewerDrinkers",
  "outlet",
  "secondFeed",
  "feedMiddle",
  "split",
  "regulator",
  "headerTank",
  "moveSource",
] as const;
export type CureKind = (typeof CURE_KINDS)[number];
