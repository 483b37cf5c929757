/**
 * What is taken where a plan is silent: as it would be typed, and why. The schema shows these, `buildLine` uses
 * them, and `check` lists back the ones it used.
 */
export const DEFAULTS = {
  waterTemperature: { typed: "10 °C", because: "cold water is thicker, so this is the cautious side" },
  friction: {
    typed: "hazen-williams",
    because: "the trade's usual formula; verdicts are taken with Darcy-Weisbach too",
  },
  ground: { typed: "0 cm", because: "level with the datum, the ground at the first source" },
  above: { typed: "0 cm", because: "the pipe lies on the ground" },
  stand: { typed: "0 cm", because: "the vessel stands on the ground" },
  outlet: {
    typed: "5 cm",
    because: "common practice, no source: a bulkhead or tap this far above the bottom",
  },
  outletCover: {
    typed: "2 cm",
    because: "water kept over the outlet so that it draws no air; common practice, no source",
  },
  feedTravel: {
    typed: "3 cm",
    because: "fall that opens a small float valve wide; common practice, no source",
  },
  fullShare: { typed: "95 %", because: "of the vessel's height; a vessel is seldom brim full" },
  vent: { typed: "open", because: "a vessel that gives water must take in air" },
  pipe: { typed: "pvc-sch40-1/2", because: "the commonest pipe of a small drinker line" },
  fall: {
    typed: "0 cm",
    because:
      "level with its start, or with the ground under a source (a run too short to come down stays level)",
  },
  tap: { typed: "open", because: "no tap is mentioned" },
  oneWayOpensAt: { typed: "2 cm", because: "a light swing or ball check; common practice, no source" },
  drop: { typed: "0 cm", because: "the drinker sits in the pipe" },
  drinkerCount: { typed: "1", because: "one drinker" },
  busiest: {
    typed: "50 %",
    because: "half of the drinkers, rounded up, the farthest ones; common practice, no source",
  },
  ordinary: { typed: "10 %", because: "one drinker in ten, rounded up; common practice, no source" },
  lay: { typed: "90 %", because: "hens in full lay drink most" },
  light: { typed: "12 h", because: "a short day crowds the drinking into fewer hours: the cautious side" },
  dawn: { typed: "06:00", because: "about when it gets light" },
  hotDays: { typed: "3", because: "a short hot spell" },
  air: { typed: "21 °C", because: "the mild day that most intake tables are for" },
  frostLow: { typed: "-5 °C", because: "a plain frost; common practice, no source" },
  frostHours: { typed: "12 h", because: "a winter night; common practice, no source" },
  frostWind: { typed: "5 m/s", because: "a breeze: water cools sooner than in still air" },
  sun: { typed: "900 W/m²", because: "a clear summer noon; from memory" },
  hotNight: {
    typed: "12 K below the day",
    because: "a clear day's night cools about so much; common practice, no source",
  },
  wind: { typed: "1.5 m/s", because: "light air; water warms more the less it blows" },
  refillAt: { typed: "07:00", because: "with the morning round" },
  waterers: { typed: "1", because: "one of them" },
  slope: { typed: "0 %", because: "level ground" },
  cord: { typed: "1 m", because: "from a hook overhead; common practice, no source" },
  firstFlush: { typed: "0 L", because: "no diverter is mentioned" },
  overflow: { typed: "50 mm", because: "a common overflow pipe; common practice, no source" },
  footSide: { typed: "9 cm", because: "the end of a 4 by 4 in post, the smallest common foot" },
  carryEach: { typed: "10 L", because: "a bucket that can be carried level; common practice, no source" },
  carryClimb: { typed: "0 m", because: "level with the tap" },
  heightDoubt: { typed: "1 cm", because: "string or hose level, read with care" },
  levelDoubt: { typed: "2 cm", because: "a level read from outside the vessel" },
  roughnessDoubt: { typed: "5 %", because: "one step of the usual C values" },
} as const satisfies Record<string, { typed: string; because: string }>;

export type DefaultName = keyof typeof DEFAULTS;
