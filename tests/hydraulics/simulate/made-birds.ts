import type { Batch, Flock, Pen, Weather } from "../../../packages/hydraulics/src/model/flock.js";
import type { Line } from "../../../packages/hydraulics/src/model/line.js";
import type { BirdKind, IntakePoint } from "../../../packages/hydraulics/src/tables/bird-types.js";

const ML = 1e-6;
const citation = {
  source: "made-up",
  where: "for tests",
  seen: "made up",
} as unknown as IntakePoint["citation"];
const point = (intake: number): IntakePoint => ({
  ageDays: 0,
  lay: undefined,
  intake: intake * ML,
  confidence: "high",
  citation,
});
/** A bird of plain figures, so that the sums can be done by hand: 270 mL a day at any age, 40 bouts, no faster than 60 mL/min. */
export const PLAIN_BIRD: BirdKind = {
  id: "plain-bird",
  name: "Plain bird",
  many: "Plain bird",
  species: "chicken",
  also: [],
  grownDays: 140,
  lays: false,
  size: [point(270)],
  expect: [point(200)],
  referenceTemperature: 21,
  boutsClosed: 40,
  boutsOpen: 20,
  fastest: (60 * ML) / 60,
  dayShape: "evening",
  flowNeed: { atHatching: (20 * ML) / 60, perWeek: (7 * ML) / 60, most: (50 * ML) / 60 },
  drownsUntilDays: 14,
};

export const MILD: Weather = { high: 21, low: 21, light: 12 * 3600, dawn: 6.5 * 3600, hotSpell: undefined };

export const batch = (count: number, more: Partial<Batch> = {}): Batch => ({
  kind: PLAIN_BIRD,
  index: 0,
  count,
  ageDays: 140,
  lay: 0,
  ...more,
});

/** A flock in pens, each of its batches and the drinkers it reaches; the first pen reaches all where none are told. */
export function flockOf(
  line: Line,
  pens: readonly { readonly batches: readonly Batch[]; readonly drinkers?: readonly number[] }[],
  weather: Partial<Weather> = {},
): Flock {
  const all = Array.from({ length: line.drinkers.count }, (_, d) => d);
  return {
    day: undefined,
    weather: { ...MILD, ...weather },
    pens: pens.map(
      ({ batches, drinkers }, index): Pen => ({
        id: `pen ${index + 1}`,
        index,
        batches: batches.map((one, k) => ({ ...one, index: k })),
        drinkers: drinkers ?? all,
      }),
    ),
  };
}
