import type { Caution, FillingFinding, Reason } from "../../../packages/hydraulics/src/judge/check-result.js";

/** One of each code, with figures whose words are easily seen: metric words, then US words. */
type Cases<Item extends { code: string }> = {
  readonly [Code in Item["code"]]: readonly [item: Extract<Item, { code: Code }>, metric: string, us: string];
};

const ML = 1e-6 / 60;

export const REASON_CASES: Cases<Reason> = {
  flowsEnough: [
    { code: "flowsEnough", flow: 76 * ML, need: 50 * ML, head: 0.313, idleHead: 0.95, holdsUpTo: 1 },
    "it gives 76 mL/min where 50 mL/min is needed, and holds its 95 cm when idle (up to 1 m)",
    "it gives 2.6 fl oz/min where 1.7 fl oz/min is needed, and holds its 3 ft 1 in when idle (up to 3 ft 3 in)",
  ],
  flowTooLow: [
    {
      code: "flowTooLow",
      flow: 20 * ML,
      need: 50 * ML,
      head: 0.1,
      headNeeded: 0.25,
      lostOnTheWay: 0.05,
      airHead: 0.3,
      staticHead: 0.45,
    },
    "it gives 20 mL/min where 50 mL/min is needed; 25 cm of head would do it, 10 cm is left of 45 cm (50 mm lost on the way, 30 cm taken by air in the pipe)",
    "it gives 0.68 fl oz/min where 1.7 fl oz/min is needed; 9.84 in of head would do it, 3.94 in is left of 1 ft 6 in (1.97 in lost on the way, 11.8 in taken by air in the pipe)",
  ],
  tooHigh: [
    { code: "tooHigh", staticHead: 0.02, openingHead: 0.04 },
    "the water stands only 20 mm above it, and it opens at 40 mm",
    "the water stands only 0.787 in above it, and it opens at 1.57 in",
  ],
  frictionTakesAll: [
    { code: "frictionTakesAll", staticHead: 0.5, head: 0.03, openingHead: 0.04 },
    "the pipe takes 47 cm of its 50 cm, and what is left does not open it (40 mm)",
    "the pipe takes 1 ft 7 in of its 1 ft 8 in, and what is left does not open it (1.57 in)",
  ],
  humpAboveWater: [
    { code: "humpAboveWater", hump: "wall", above: 0.12 },
    "the pipe on its way rises 12 cm above the water, at wall; only a primed siphon would pass that, and none is counted on",
    "the pipe on its way rises 4.72 in above the water, at wall; only a primed siphon would pass that, and none is counted on",
  ],
  airLocked: [
    { code: "airLocked", hump: "wall", airHead: 0.4, staticHead: 0.5 },
    "air caught at wall takes 40 cm of its 50 cm; a bleed there lets the water through",
    "air caught at wall takes 1 ft 4 in of its 1 ft 8 in; a bleed there lets the water through",
  ],
  sourceStalls: [
    { code: "sourceStalls", source: "barrel", litres: 1.1 },
    "the sealed barrel stops giving after 1.1 L: no air can come in",
    "the sealed barrel stops giving after 0.291 gal: no air can come in",
  ],
  blocked: [
    { code: "blocked" },
    "it is stuck shut: it lets nothing through, whatever stands on it",
    "it is stuck shut: it lets nothing through, whatever stands on it",
  ],
  shutOff: [
    { code: "shutOff", at: "feed" },
    "no open pipe leads to it; see the taps before feed",
    "no open pipe leads to it; see the taps before feed",
  ],
  idleHeadTooHigh: [
    { code: "idleHeadTooHigh", head: 1.5, holdsUpTo: 1 },
    "1.5 m stands on it, and it holds up to 1 m",
    "4 ft 11 in stands on it, and it holds up to 3 ft 3 in",
  ],
  idleHeadTooLow: [
    { code: "idleHeadTooLow", head: 0.05, sealsFrom: 0.075 },
    "only 50 mm stands on it when the water is low, and it needs 75 mm to press its seal shut",
    "only 1.97 in stands on it when the water is low, and it needs 2.95 in to press its seal shut",
  ],
  notSolved: [
    { code: "notSolved", outcome: "stalled" },
    "the line could not be solved (stalled), so nothing good can be promised",
    "the line could not be solved (stalled), so nothing good can be promised",
  ],
};

export const FINDING_CASES: Cases<FillingFinding> = {
  humpTrapsAir: [
    {
      code: "humpTrapsAir",
      point: "wall",
      pointIndex: 1,
      airHead: 0.3,
      flowToClear: 4e-5,
      flowThere: 1e-5,
      locks: true,
    },
    "Filled from empty, the pipe keeps air beyond wall, a column 30 cm high that takes as much from the head behind it and stops the line. Flow does not clear it: that takes 2.4 L/min and the line never draws more than 600 mL/min. Put a bleed or riser vent there.",
    "Filled from empty, the pipe keeps air beyond wall, a column 11.8 in high that takes as much from the head behind it and stops the line. Flow does not clear it: that takes 0.63 gal/min and the line never draws more than 0.16 gal/min. Put a bleed or riser vent there.",
  ],
  humpAboveWater: [
    { code: "humpAboveWater", point: "wall", pointIndex: 1, above: 0.12 },
    "At wall the pipe stands 12 cm above the lowest usable water: the line will not start by itself. Lower the pipe there, or raise the source.",
    "At wall the pipe stands 4.72 in above the lowest usable water: the line will not start by itself. Lower the pipe there, or raise the source.",
  ],
  endHoldsAir: [
    { code: "endHoldsAir", point: "hen line end", pointIndex: 1, rise: 0.5 },
    "hen line end is a high dead end, 50 cm above the sag before it: air gathers there. Put a bleed at that end and open it when filling.",
    "hen line end is a high dead end, 1 ft 8 in above the sag before it: air gathers there. Put a bleed at that end and open it when filling.",
  ],
  suction: [
    { code: "suction", point: "wall", pointIndex: 1, head: -0.25, moment: "lowestBusiest", breaks: true },
    "At wall the running line is under suction (25 cm below the air's pressure, lowest usable and busiest): a leak there draws air in, and the column of water breaks.",
    "At wall the running line is under suction (9.84 in below the air's pressure, lowest usable and busiest): a leak there draws air in, and the column of water breaks.",
  ],
};

export const CAUTION_CASES: Cases<Caution> = {
  weightOnStand: [
    { code: "weightOnStand", source: "barrel", mass: 182, height: 0.45 },
    "Full, barrel weighs 182 kg and stands 45 cm up. Nobody and no bird stays under or beside an unproven stand; an empty vessel blows over, so tie it. Local codes and licensed practice decide.",
    "Full, barrel weighs 401 lb and stands 1 ft 6 in up. Nobody and no bird stays under or beside an unproven stand; an empty vessel blows over, so tie it. Local codes and licensed practice decide.",
  ],
  foodGrade: [
    { code: "foodGrade", source: "barrel" },
    "barrel: use only a food-grade vessel whose past contents are known, and lead-free fittings. Roof water is not for people.",
    "barrel: use only a food-grade vessel whose past contents are known, and lead-free fittings. Roof water is not for people.",
  ],
  backflow: [
    { code: "backflow", source: "barrel" },
    "If barrel is filled from a hose or a drinking supply, keep an air gap or a vacuum breaker, and never leave the hose under water. Local codes and licensed practice decide.",
    "If barrel is filled from a hose or a drinking supply, keep an air gap or a vacuum breaker, and never leave the hose under water. Local codes and licensed practice decide.",
  ],
  sealedVessel: [
    { code: "sealedVessel", source: "barrel" },
    "barrel is sealed: as water leaves, the air above it thins until nothing flows. Give it a vent with a fine screen.",
    "barrel is sealed: as water leaves, the air above it thins until nothing flows. Give it a vent with a fine screen.",
  ],
  ventTooSmall: [
    { code: "ventTooSmall", source: "barrel", diameter: 0.001, needed: 0.003 },
    "The vent of barrel (1 mm) holds back the busiest draw; 3 mm costs no more than a hundredth of the head. A screen needs more.",
    "The vent of barrel (0.0394 in) holds back the busiest draw; 0.118 in costs no more than a hundredth of the head. A screen needs more.",
  ],
  feedFallsBehind: [
    { code: "feedFallsBehind", source: "tank", feedFlow: 1e-5, draw: 2e-5 },
    "The float valve of tank lets in 600 mL/min at most, and the birds draw 1.2 L/min at the busiest: the tank falls meanwhile.",
    "The float valve of tank lets in 0.16 gal/min at most, and the birds draw 0.32 gal/min at the busiest: the tank falls meanwhile.",
  ],
  openWater: [
    { code: "openWater", group: "yard" },
    "yard is open water: chicks and quail drown in a few centimetres. Use it for grown birds, or make it too shallow to drown in.",
    "yard is open water: chicks and quail drown in an inch or two. Use it for grown birds, or make it too shallow to drown in.",
  ],
  criticalZone: [
    { code: "criticalZone", run: "feed", reynolds: 3120.4 },
    "feed runs between laminar and turbulent at the busiest (Reynolds number 3120): its loss there is uncertain by a factor of two, and is counted so.",
    "feed runs between laminar and turbulent at the busiest (Reynolds number 3120): its loss there is uncertain by a factor of two, and is counted so.",
  ],
  outsideHazenWilliams: [
    { code: "outsideHazenWilliams", runs: 3 },
    "3 runs are outside the published range of the Hazen-Williams formula, as small lines nearly always are; every verdict is taken with Darcy-Weisbach too.",
    "3 runs are outside the published range of the Hazen-Williams formula, as small lines nearly always are; every verdict is taken with Darcy-Weisbach too.",
  ],
  lookAtTheBirds: [
    { code: "lookAtTheBirds" },
    "Look at the birds every day: no computed figure replaces that.",
    "Look at the birds every day: no computed figure replaces that.",
  ],
};
