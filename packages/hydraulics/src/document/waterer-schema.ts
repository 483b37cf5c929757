import * as z from "zod/mini";
import { describe, name, optional, quantity, type Range } from "./schema-parts.js";

/** The part of the plan file that says which loose waterers stand or hang in a pen: founts, pans, buckets. */

/** Of the ground under a waterer. */
const SLOPE: Range = { min: 0, max: 1, words: "from 0 to 100 % (45 degrees)" };
const ACROSS: Range = { min: 0.01, max: 5, words: "from 1 cm to 5 m" };
const FROM_MIDDLE: Range = { min: 0.005, max: 2.5, words: "from 5 mm to 2.5 m" };
const SHALLOW: Range = { min: 0.001, max: 1, words: "from 1 mm to 1 m" };

export const slope = (description: string, rule: string) =>
  optional(quantity("slope", SLOPE, description, { rule }));

const sizes = z.strictObject({
  rim: optional(quantity("length", ACROSS, "Across the lip of a round one.", { rule: "that of its kind" })),
  hole: optional(
    quantity("length", FROM_MIDDLE, "From the middle to the air hole of a fount.", {
      rule: "that of its kind",
    }),
  ),
  lip: optional(
    quantity(
      "length",
      SHALLOW,
      "Height of the lip above the top of the air hole, or above a float's level.",
      {
        rule: "that of its kind",
      },
    ),
  ),
  base: optional(quantity("length", ACROSS, "Across what it stands on.", { rule: "that of its kind" })),
  depth: optional(
    quantity("length", SHALLOW, "Inside depth of a pan or trough.", { rule: "that of its kind" }),
  ),
});

export const waterer = z.strictObject({
  id: optional(name("Name of the waterer; the pen's name and its place in the list if left out.")),
  kind: name("A kind of waterer from the table (`fount-1gal`), by its id or in plain words."),
  count: optional(
    describe(z.int().check(z.minimum(1), z.maximum(1000)), "How many of them stand alike.", "waterers"),
  ),
  holds: optional(
    quantity(
      "volume",
      { min: 1e-5, max: 2, words: "from 10 mL to 2 m³" },
      "Water it holds, measured by filling it.",
      { rule: "what its sizes give" },
    ),
  ),
  slope: slope("Slope of what it stands on.", "that of the pen; what hangs is plumb"),
  hole: optional(
    describe(
      z.enum(["uphill", "sideways", "downhill"]),
      "Which way the air hole of a fount looks; of several holes, the first.",
      { rule: "uphill, the worst" },
    ),
  ),
  sizes: optional(describe(sizes, "Its own sizes where they differ from the kind's.")),
  hang: optional(
    quantity(
      "length",
      { min: 0, max: 2, words: "from 0 to 2 m" },
      "Height of its lip, or of its pins, above what the birds stand on.",
      { rule: "it stands on the ground; what hangs is at the birds' height" },
    ),
  ),
  cord: optional(
    quantity(
      "length",
      { min: 0.05, max: 10, words: "from 5 cm to 10 m" },
      "Length of the cord it hangs by, from hook to water.",
      "cord",
    ),
  ),
  refill: optional(
    quantity(
      "time",
      { min: 3600, max: 30 * 86_400, words: "from 1 hour to 30 days" },
      "It is filled by hand this often.",
      { rule: "when it is empty, and once a day at least" },
    ),
  ),
  shade: optional(
    describe(z.boolean(), "Whether it stands in the shade.", { rule: "no, unless it carries a roof" }),
  ),
});
