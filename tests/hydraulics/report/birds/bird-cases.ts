import type { BirdFinding } from "../../../../packages/hydraulics/src/judge/birds/flock-report.js";

type Cases = {
  readonly [Code in BirdFinding["code"]]: readonly [
    item: Extract<BirdFinding, { code: Code }>,
    metric: string,
    us: string,
  ];
};

const ML = 1e-6 / 60;

export const BIRD_FINDING_CASES: Cases = {
  noDrinkers: [
    { code: "noDrinkers", pen: "hens", birds: 12 },
    "hens: its 12 birds reach no drinker of this line.",
    "hens: its 12 birds reach no drinker of this line.",
  ],
  notYetCome: [
    { code: "notYetCome", pen: "hens", kind: "laying hens", days: 16 },
    "hens: the laying hens come in 2 weeks; until then they count for nothing.",
    "hens: the laying hens come in 2 weeks; until then they count for nothing.",
  ],
  tooFewDrinkers: [
    {
      code: "tooFewDrinkers",
      pen: "hens",
      birds: 40,
      drinkers: 3,
      needed: 4,
      device: "nipple",
      rule: "eu-chicken-laying-hen-non-cage-nipple-or-cup-birds-per-device-eu-1999-74",
      counts: "birds",
      figure: 10,
      source: "eu-1999-74",
      binding: true,
    },
    "hens: 3 nipples for 40 birds; 4 are required by law (one nipple for 10 birds).",
    "hens: 3 nipples for 40 birds; 4 are required by law (one nipple for 10 birds).",
  ],
  oneInReach: [
    { code: "oneInReach", pen: "hens", birds: 6 },
    "hens: 6 birds have one drinker in reach. One bird can guard it, and when it fails they are dry: give them a second.",
    "hens: 6 birds have one drinker in reach. One bird can guard it, and when it fails they are dry: give them a second.",
  ],
  crowdSaturates: [
    { code: "crowdSaturates", pen: "hens", demand: 400 * ML, capacity: 300 * ML, short: 0.25 },
    "hens: in its busiest hour the birds want 400 mL/min and can take in 300 mL/min at most with every place taken; 25 % of it is left wanting then. More drinkers, more head, or wider pipe.",
    "hens: in its busiest hour the birds want 0.11 gal/min and can take in 10 fl oz/min at most with every place taken; 25 % of it is left wanting then. More drinkers, more head, or wider pipe.",
  ],
  hangsTooHigh: [
    {
      code: "hangsTooHigh",
      pen: "chicks",
      group: "line",
      height: 0.4,
      low: 0.08,
      high: 0.12,
      ageDays: 3,
    },
    "chicks: line hangs 40 cm above the ground, too high for birds of 3 days: 8 cm to 12 cm lets them drink without straining.",
    "chicks: line hangs 1 ft 4 in above the ground, too high for birds of 3 days: 3.1 in to 4.7 in lets them drink without straining.",
  ],
  hangsTooLow: [
    {
      code: "hangsTooLow",
      pen: "hens",
      group: "line",
      height: 0.1,
      low: 0.35,
      high: 0.5,
      ageDays: 364,
    },
    "hens: line hangs 10 cm above the ground, low for birds of 52 weeks: 35 cm to 50 cm spills less and keeps it cleaner.",
    "hens: line hangs 3.9 in above the ground, low for birds of 52 weeks: 1 ft 2 in to 1 ft 8 in spills less and keeps it cleaner.",
  ],
  flowUnderNeed: [
    {
      code: "flowUnderNeed",
      pen: "hens",
      group: "line",
      drinker: "line 4",
      flow: 30 * ML,
      need: 50 * ML,
      ageDays: 800,
    },
    "hens: line 4 gives 30 mL/min, and birds of 2.2 years should have 50 mL/min; the plan asks for less.",
    "hens: line 4 gives 1 fl oz/min, and birds of 2.2 years should have 1.7 fl oz/min; the plan asks for less.",
  ],
  flowAboveBenefit: [
    {
      code: "flowAboveBenefit",
      pen: "hens",
      group: "line",
      drinker: "line 4",
      flow: 150 * ML,
      most: 120 * ML,
    },
    "hens: line 4 gives 150 mL/min when full. Beyond 120 mL/min no trial found birds better off, and litter gets wetter.",
    "hens: line 4 gives 5.1 fl oz/min when full. Beyond 4.1 fl oz/min no trial found birds better off, and litter gets wetter.",
  ],
  lowFlowInHeat: [
    {
      code: "lowFlowInHeat",
      pen: "hens",
      group: "line",
      drinker: "line 4",
      flow: 40 * ML,
      high: 35,
      triedLow: 24 * ML,
      triedHigh: 138 * ML,
    },
    "hens: line 4 gives 40 mL/min on days of 35 °C. In a summer trial with meat chickens nearly twice as many died at 24 mL/min as at 140 mL/min: give them more flow, shade and cool water, and look often; a vet decides on birds that pant.",
    "hens: line 4 gives 1.4 fl oz/min on days of 95 °F. In a summer trial with meat chickens nearly twice as many died at 0.81 fl oz/min as at 4.7 fl oz/min: give them more flow, shade and cool water, and look often; a vet decides on birds that pant.",
  ],
  mayDrown: [
    {
      code: "mayDrown",
      pen: "chicks",
      group: "bell",
      kind: "chicks",
      ageDays: 1,
      untilDays: 10,
    },
    "chicks: bell is open water, and chicks of 1 day drown in it (until 10 days). Give them nipples or cups, or fill it with pebbles so that only a few millimetres stand open.",
    "chicks: bell is open water, and chicks of 1 day drown in it (until 10 days). Give them nipples or cups, or fill it with pebbles so that only a few millimetres stand open.",
  ],
};
