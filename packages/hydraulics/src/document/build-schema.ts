import * as z from "zod/mini";
import { atLeast, atMost, count, describe, name, optional, quantity, text } from "./schema-parts.js";
import { SOILS } from "./soil-names.js";

/** The part of the plan file that is for building: what vessels stand on, lengths of pipe, prices, whom to call. */

const SIDE = { min: 0.005, max: 20, words: "from 5 mm to 20 m" } as const;
const PIPE = { min: 0.01, max: 1000, words: "from 1 cm to 1 km" } as const;
const weight = (description: string, rule: string) =>
  optional(
    describe(z.number().check(z.minimum(0), z.maximum(1e5)), `${description} In kilograms.`, { rule }),
  );

export const footing = z.strictObject({
  feet: optional(
    describe(count(1, 100, "Feet that carry it."), "Feet that carry it.", {
      rule: "4 where there is a stand; none where the vessel stands on the ground",
    }),
  ),
  foot: optional(quantity("length", SIDE, "Side of each foot, taken as square.", "footSide")),
  pad: optional(
    describe(
      z.strictObject({
        length: quantity("length", SIDE, "Length of the pad."),
        width: optional(quantity("length", SIDE, "Its width.", { rule: "as its length" })),
      }),
      "A pad or slab under each foot.",
    ),
  ),
  width: optional(
    quantity(
      "length",
      SIDE,
      "Width of the stand over its outer edges, the narrow way: over these it would tip.",
      {
        rule: "that of the vessel",
      },
    ),
  ),
  weighs: weight("What the stand weighs.", "not counted"),
  vessel: weight("What the empty vessel weighs.", "that of a known vessel; else not known"),
  tied: optional(
    describe(z.boolean(), "Whether the vessel is strapped to something that holds in wind.", { rule: "no" }),
  ),
});

export const soil = describe(
  z.enum(SOILS),
  "The soil under the stands, undisturbed and dry: what it is presumed to bear.",
  { rule: "clay, the least that is presumed" },
);

/** Lengths that a pipe is sold in. */
export const sold = describe(
  z.union([
    quantity("length", PIPE, "Length of a stick or coil."),
    z.array(quantity("length", PIPE, "Length of a stick or coil.")).check(atLeast(1), atMost(4)),
  ]),
  "Length it is sold in, or a list of up to four.",
  { rule: "the commonest of its make" },
);

export const pieces = describe(
  z.array(quantity("length", PIPE, "Length of one piece.")).check(atMost(60)),
  "Pieces of it that lie there, one by one: cut before any is bought.",
  { rule: "none" },
);

export const partPrices = describe(
  z.record(
    name("Name of the part, as `headfall build` lists it."),
    describe(z.number().check(z.minimum(0), z.maximum(1e6)), "Price of one. In the plan's own money."),
  ),
  "Prices of fittings, drinkers, vessels and other parts, by the names that `headfall build` lists.",
);

export const contacts = describe(
  z
    .array(
      z.strictObject({
        who: text(80, "Who it is: a neighbour, a vet, whoever owns the water supply."),
        phone: optional(text(40, "The number, as it is dialled.")),
        note: optional(text(200, "When to call, or anything worth knowing.")),
      }),
    )
    .check(atMost(12)),
  "Whom to call; printed on the sheet that hangs in the coop.",
);
