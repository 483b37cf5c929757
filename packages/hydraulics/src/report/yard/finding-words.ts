import type { YardFinding } from "../../judge/yard/yard-finding.js";

const BRIEFLY: Readonly<Record<YardFinding["code"], string>> = {
  drains: "runs out on its slope",
  nearlyDrains: "nearly runs out on its slope",
  holdsLess: "holds less on its slope",
  dryUphill: "dry on its upper side",
  noWater: "nothing to drink from",
  tooFewPlaces: "too few places to drink",
  noRule: "no rule says how many",
  emptyBetween: "empty before it is filled",
  oftenEmpty: "filled often",
  tooYoung: "some are too young for it",
  tooOld: "some have outgrown it",
  notForThem: "not for these birds",
  mayDrown: "young birds may drown",
  hangsHigh: "hangs too high",
  hangsLow: "hangs low",
  standsHigh: "stands too high",
  standsLow: "stands low",
  warmthSpills: "spills as it warms",
  tooHeavy: "heavy to turn over",
};

/**
 * What is amiss with a loose waterer or a pen, in a few words and without its name: for a list in which the name stands
 * beside. What to do about it: `writeYardFinding`.
 *
 * @example writeYardFindingBriefly({ code: "noWater", pen: "hens", birds: 12 })   // "nothing to drink from"
 */
export const writeYardFindingBriefly = ({ code }: YardFinding): string => BRIEFLY[code];
