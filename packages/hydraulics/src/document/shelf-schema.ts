import * as z from "zod/mini";
import { partPrices, pieces, sold } from "./build-schema.js";
import { atLeast, atMost, describe, name, optional, quantity } from "./schema-parts.js";

/** The part of the plan file that says what the keeper has or can buy, what it costs, and how sure the figures are. */

export const ownDrinker = z.strictObject({
  readings: describe(
    z
      .array(
        z.strictObject({
          head: quantity(
            "head",
            { min: 0.001, max: 100, words: "from 1 mm to 100 m" },
            "Head at the drinker while measured: height of the water above it.",
          ),
          flow: quantity(
            "flow",
            { min: 1e-9, max: 0.01, words: "up to 10 L/s" },
            "What it gave while held open: jug and watch.",
          ),
        }),
      )
      .check(atLeast(2), atMost(100)),
    "Two or more readings with a jug and a watch, at different heads.",
  ),
  workedBy: optional(
    describe(z.enum(["trigger", "float"]), "Whether birds work it, or a float.", { rule: "trigger" }),
  ),
  opensAt: optional(
    quantity("head", { min: 0, max: 10, words: "from 0 to 10 m" }, "Head below which nothing comes.", {
      rule: "none",
    }),
  ),
  sealsFrom: optional(
    quantity("head", { min: 0, max: 100, words: "from 0 to 100 m" }, "Least head at which it seals.", {
      rule: "none",
    }),
  ),
  holdsUpTo: quantity(
    "head",
    { min: 0.001, max: 1000, words: "from 1 mm to 1 km" },
    "Head above which it drips.",
  ),
  need: quantity("flow", { min: 0, max: 0.01, words: "from 0 to 10 L/s" }, "Flow it must give while worked."),
});

export const shelfEntry = z.strictObject({
  pipe: name("A pipe from the table, by its id or in plain words."),
  price: optional(
    describe(
      z.number().check(z.minimum(0), z.maximum(1e6)),
      "Price of one piece of the length `per`, in the plan's own money.",
    ),
  ),
  per: optional(
    quantity("length", { min: 0.001, max: 10000, words: "from 1 mm to 10 km" }, "Length that price buys.", {
      rule: "1 m",
    }),
  ),
  sold: optional(sold),
  pieces: optional(pieces),
  onHand: optional(
    quantity(
      "length",
      { min: 0, max: 10000, words: "from 0 to 10 km" },
      "How much of it lies there already, all pieces together: used before any is bought.",
      { rule: "its `pieces` together, else none" },
    ),
  ),
});

const price = (description: string) =>
  optional(
    describe(z.number().check(z.minimum(0), z.maximum(1e6)), `${description} In the plan's own money.`),
  );

export const prices = z.strictObject({
  stand: price("Price of 10 cm of stand more."),
  drinker: price("Price of one drinker of another kind."),
  regulator: price("Price of a low-pressure regulator."),
  headerTank: price("Price of a header tank with its float valve and stand."),
  joint: price("Price of a tee, with what joins it to the pipe."),
  bleed: price("Price of a bleed or riser vent with its fitting."),
  plug: price("Price of a plug in place of a drinker."),
  outlet: price("Price of a wider outlet for a vessel: bulkhead and tap."),
  parts: optional(partPrices),
});

export const doubts = z.strictObject({
  heights: optional(
    quantity("length", { min: 0, max: 5, words: "from 0 to 5 m" }, "Of each surveyed height.", "heightDoubt"),
  ),
  level: optional(
    quantity("length", { min: 0, max: 5, words: "from 0 to 5 m" }, "Of the water levels.", "levelDoubt"),
  ),
});
