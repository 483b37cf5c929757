import * as z from "zod/mini";
import { count, describe, name, optional } from "./schema-parts.js";

/** The part of the plan file that says which waterers and drinkers are on hand, to be given out to the pens. */

const PIECES = 10_000;

export const kitEntry = z.strictObject({
  kind: name("A kind of waterer or drinker from the tables (`fount-1gal`), by its id or in plain words."),
  count: count(0, PIECES, "How many there are."),
  spare: optional(
    describe(
      count(0, PIECES, "How many of them are kept back, for a sick bird or a broody hen."),
      "How many of them are kept back, for a sick bird or a broody hen.",
      { rule: "none" },
    ),
  ),
  price: optional(
    describe(z.number().check(z.minimum(0), z.maximum(1e7)), "What one more costs, in the plan's money.", {
      rule: "not known: what is least to buy is counted in pieces",
    }),
  ),
});
