import * as z from "zod/mini";
import { MONTHS } from "../units/day.js";
import {
  atLeast,
  atMost,
  clock,
  count,
  date,
  describe,
  name,
  optional,
  quantity,
  type Range,
  share,
} from "./schema-parts.js";
import { slope, waterer } from "./waterer-schema.js";

/** The part of the plan file that says who drinks, in what weather, and how the water is brought. */

const AIR: Range = { min: -40, max: 55, words: "from -40 to 55 °C" };

export const birds = z.strictObject({
  kind: name("A kind of bird from the table (`hen`), by its id or in plain words."),
  count: count(1, 100_000, "How many."),
  age: optional(
    quantity(
      "time",
      { min: 0, max: 10 * 31_557_600, words: "from 0 days to 10 years" },
      "Their age on the plan's day, or where they arrive later, on the day they arrive.",
      { rule: "grown, unless `hatched` says otherwise" },
    ),
  ),
  hatched: optional(date("The day they hatched, in place of an age.")),
  lay: optional(share("Eggs a day from a hundred of them; of birds that lay only.", "lay")),
  arrives: optional(
    date("The first day they are there.", { rule: "they are there from the first, or from when they hatch" }),
  ),
  leaves: optional(date("The first day they are no longer there.", { rule: "they stay" })),
  moves: optional(
    describe(
      z
        .array(
          z.strictObject({
            on: date("The first day they are in the other pen."),
            to: name("Which pen, by its name."),
          }),
        )
        .check(atLeast(1), atMost(50)),
      "Moves to other pens, the earliest first.",
      { rule: "they stay in this pen" },
    ),
  ),
});

export const pen = z.strictObject({
  id: optional(name("Name of the pen; `pen 1`, `pen 2` ... if left out.")),
  birds: describe(
    z.union([birds, z.array(birds).check(atLeast(1), atMost(200))]),
    "The birds of the pen: one batch, or a list of batches.",
  ),
  drinkers: optional(
    describe(
      z.array(name("A group of drinkers, or a run with all of its drinkers.")).check(atMost(200)),
      "What the birds of this pen can reach of the line; none if the list is empty.",
      { rule: "every drinker that no other pen names" },
    ),
  ),
  waterers: optional(
    describe(
      z.array(waterer).check(atMost(200)),
      "Loose waterers in the pen: founts, pans, troughs, nipple buckets, bells under buckets.",
    ),
  ),
  slope: slope("Slope of the pen's ground, for its waterers.", "level"),
});

/** Wind where the birds and the line are. */
const WIND: Range = { min: 0, max: 40, words: "from 0 to 40 m/s" };
/** The air of a night of frost. */
export const FROST: Range = { min: -40, max: 0, words: "from -40 to 0 °C" };
export const NIGHT: Range = { min: 3600, max: 96 * 3600, words: "from 1 to 96 hours" };
/** Of the clear sun at noon on level ground. */
const SUN: Range = { min: 0, max: 1200, words: "from 0 to 1200 W/m²" };

const frost = z.strictObject({
  low: quantity("temperature", FROST, "The night's lowest, taken for the whole of it."),
  high: optional(
    quantity("temperature", AIR, "The highest of the day after.", { rule: "as cold as the night" }),
  ),
  hours: optional(quantity("time", NIGHT, "How long it freezes, from dusk.", "frostHours")),
  wind: optional(quantity("speed", WIND, "The wind of that night.", "frostWind")),
});

const month = z.strictObject({
  month: describe(z.enum(MONTHS), "Which month of the year."),
  high: quantity("temperature", AIR, "The usual highest of its days."),
  low: optional(
    quantity("temperature", AIR, "The usual lowest of its nights.", { rule: "as warm as the day" }),
  ),
  hot: optional(
    quantity("temperature", AIR, "Highest air temperature of its hottest days.", {
      rule: "that of the hot spell in the three warmest months given, else none",
    }),
  ),
});

export const weather = z.strictObject({
  high: quantity(
    "temperature",
    AIR,
    "The day's highest air temperature where the birds are, or its only one.",
  ),
  low: optional(quantity("temperature", AIR, "The night's lowest.", { rule: "as warm as the day" })),
  light: optional(
    quantity(
      "time",
      { min: 4 * 3600, max: 86_400, words: "from 4 to 24 hours" },
      "Hours of light, daylight or lamp.",
      "light",
    ),
  ),
  dawn: optional(clock("When the light begins.", "dawn")),
  hotSpell: optional(
    describe(
      z.strictObject({
        high: quantity("temperature", AIR, "Highest air temperature of such a day."),
        low: optional(
          quantity("temperature", AIR, "Lowest of its night.", {
            rule: "as far below the high as on other days",
          }),
        ),
        days: optional(
          describe(
            z.int().check(z.minimum(1), z.maximum(60)),
            "How many such days follow each other.",
            "hotDays",
          ),
        ),
      }),
      "The hottest days to be ready for.",
    ),
  ),
  months: optional(
    describe(
      z.array(month).check(atLeast(1), atMost(12)),
      "The usual air of each month, for a look at the year; between two middles of months it goes straight from one to the other.",
      { rule: "the same air all year" },
    ),
  ),
  sun: optional(quantity("sunshine", SUN, "The sun of a clear day at its highest, on level ground.", "sun")),
  wind: optional(quantity("speed", WIND, "The wind on a hot day.", "wind")),
  frost: optional(describe(frost, "The hardest night of frost to be ready for.")),
});

/** How a vessel is filled again; what the birds drink is made up by it. */
export const refill = z.union([
  z.literal("none"),
  z.strictObject({
    every: quantity(
      "time",
      { min: 3600, max: 90 * 86_400, words: "from 1 hour to 90 days" },
      "Filled up by hand this often.",
    ),
    at: optional(clock("At what time of day.", "refillAt")),
  }),
  z.strictObject({
    hose: quantity(
      "flow",
      { min: 1e-9, max: 0.1, words: "up to 100 L/s" },
      "A hose with a float valve keeps it full, and gives at most this.",
    ),
  }),
]);

/** A roof whose rain runs into the vessel. */
export const roof = z.strictObject({
  area: quantity(
    "area",
    { min: 0.01, max: 1e5, words: "up to 100000 m²" },
    "Roof seen from above (its footprint, not along the slope).",
  ),
  kind: optional(
    name("What it is covered with, from the roof table (`metal`), by its id or in plain words."),
  ),
  runoff: optional(share("Share of the rain that runs off.", { rule: "that of its kind, else 80 %" })),
  wetting: optional(
    quantity(
      "length",
      { min: 0, max: 0.05, words: "from 0 to 5 cm" },
      "Rain a wet day that only wets the roof.",
      {
        rule: "that of its kind, else 0.5 mm",
      },
    ),
  ),
  firstFlush: optional(
    quantity(
      "volume",
      { min: 0, max: 10, words: "from 0 to 10 m³" },
      "What a diverter keeps back of each wet spell.",
      "firstFlush",
    ),
  ),
  overflow: optional(
    quantity(
      "length",
      { min: 0.005, max: 1, words: "from 5 mm to 1 m" },
      "Inside diameter of the overflow pipe.",
      "overflow",
    ),
  ),
});

export const carry = z.strictObject({
  each: optional(
    quantity(
      "volume",
      { min: 0.0001, max: 1, words: "from 0.1 L to 1 m³" },
      "Water carried in one trip.",
      "carryEach",
    ),
  ),
  climb: optional(
    quantity(
      "length",
      { min: -200, max: 200, words: "from -200 m to 200 m" },
      "How far up each trip goes, from tap to vessel.",
      "carryClimb",
    ),
  ),
  most: optional(
    describe(
      z.number().check(z.minimum(1), z.maximum(200)),
      "The most one trip should weigh, in kilograms.",
      { rule: "no limit" },
    ),
  ),
});
