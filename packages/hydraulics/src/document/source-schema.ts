import * as z from "zod/mini";
import { refill, roof } from "./birds-schema.js";
import { footing } from "./build-schema.js";
import { DEFAULTS } from "./defaults.js";
import {
  atLeast,
  atMost,
  colour,
  DEPTH,
  describe,
  doubt,
  HEIGHT,
  name,
  optional,
  place,
  quantity,
  shade,
} from "./schema-parts.js";

/** The part of the plan file that says what holds the water and how it stands. */

const vesselShape = z.union([
  z.strictObject({
    shape: describe(z.literal("upright"), "A cylinder that stands: a barrel or drum."),
    diameter: quantity("length", { min: 0.01, max: 20, words: "from 1 cm to 20 m" }, "Inside diameter."),
    height: quantity("length", { min: 0.01, max: 20, words: "from 1 cm to 20 m" }, "Inside height."),
  }),
  z.strictObject({
    shape: describe(z.literal("lying"), "A cylinder on its side."),
    diameter: quantity("length", { min: 0.01, max: 20, words: "from 1 cm to 20 m" }, "Inside diameter."),
    length: quantity("length", { min: 0.01, max: 50, words: "from 1 cm to 50 m" }, "Inside length."),
  }),
  z.strictObject({
    shape: describe(z.literal("tapered"), "A bucket or tub that widens upwards (or downwards)."),
    bottomDiameter: quantity(
      "length",
      { min: 0.01, max: 20, words: "from 1 cm to 20 m" },
      "Inside diameter at the bottom.",
    ),
    topDiameter: quantity(
      "length",
      { min: 0.01, max: 20, words: "from 1 cm to 20 m" },
      "Inside diameter at the brim.",
    ),
    height: quantity("length", { min: 0.01, max: 20, words: "from 1 cm to 20 m" }, "Inside height."),
  }),
  z.strictObject({
    shape: describe(z.literal("box"), "A box with upright sides: a tote or trough."),
    length: quantity("length", { min: 0.01, max: 50, words: "from 1 cm to 50 m" }, "Inside length."),
    width: quantity("length", { min: 0.01, max: 50, words: "from 1 cm to 50 m" }, "Inside width."),
    height: quantity("length", { min: 0.01, max: 20, words: "from 1 cm to 20 m" }, "Inside height."),
  }),
  z.strictObject({
    shape: describe(z.literal("table"), "Any shape, from measured levels and volumes."),
    readings: describe(
      z
        .array(
          z.strictObject({
            level: quantity("length", DEPTH, "Water level above the inside bottom."),
            volume: quantity(
              "volume",
              { min: 0, max: 1000, words: "from 0 to 1000 m³" },
              "Water in the vessel at that level.",
            ),
          }),
        )
        .check(atLeast(2), atMost(200)),
      "Readings from the bottom (level 0, volume 0) to the brim, each larger than the one before.",
    ),
  }),
]);

const level = z.strictObject({
  full: optional(
    quantity("length", DEPTH, "Level when full.", {
      rule: `${DEFAULTS.fullShare.typed} of the vessel's height`,
    }),
  ),
  lowest: optional(
    quantity("length", DEPTH, "Lowest level the line is meant to work at.", {
      rule: `${DEFAULTS.outletCover.typed} over the outlet; where a feed tops the vessel up, ${DEFAULTS.feedTravel.typed} under its full level`,
    }),
  ),
  ordinary: optional(
    quantity("length", DEPTH, "Level in an ordinary hour.", { rule: "halfway between lowest and full" }),
  ),
  doubt: doubt("these levels", "level"),
});

const vent = z.union([
  z.enum(["open", "sealed"]),
  z.strictObject({
    opening: quantity(
      "length",
      { min: 0.0001, max: 2, words: "from 0.1 mm to 2 m" },
      "Diameter of the opening that lets air in.",
    ),
  }),
  z.strictObject({
    airTube: quantity(
      "length",
      DEPTH,
      "Height of the tube's foot above the inside bottom: the pressure there is the air's until the level passes it.",
    ),
    opening: optional(
      quantity(
        "length",
        { min: 0.0001, max: 2, words: "from 0.1 mm to 2 m" },
        "Inside diameter of the tube.",
      ),
    ),
  }),
]);

export const source = z.strictObject({
  id: optional(name("Name of the source; the first is `barrel` if left out.")),
  vessel: describe(
    z.union([name("A vessel from the table, by its id or in plain words."), vesselShape]),
    "What holds the water: a known vessel (`drum-55gal-plastic`) or a shape with inside dimensions.",
  ),
  ground: optional(
    quantity("length", HEIGHT, "Height of the ground it stands on, above the datum.", "ground"),
  ),
  place: optional(place("Where it stands seen from above; for the drawing only.")),
  stand: optional(
    quantity(
      "length",
      { min: 0, max: 30, words: "from 0 to 30 m" },
      "Height of the stand under it.",
      "stand",
    ),
  ),
  doubt: doubt("the height it stands at", "heights"),
  outlet: optional(
    quantity("length", DEPTH, "Height of the outlet's middle above the inside bottom.", {
      rule: `the outlet of a known vessel, else ${DEFAULTS.outlet.typed}`,
    }),
  ),
  outletBore: optional(
    quantity(
      "length",
      { min: 0.0005, max: 1, words: "from 0.5 mm to 1 m" },
      "Narrowest inside diameter of the outlet: of a tap, a bulkhead or a strainer.",
      { rule: "as wide as the pipe that starts there" },
    ),
  ),
  level: optional(describe(level, "Water levels above the inside bottom.")),
  vent: optional(describe(vent, "How air gets in: `open`, `sealed`, an opening, or an air tube.", "vent")),
  refill: optional(
    describe(
      refill,
      "How it is filled again: `none`, by hand every so often, or by a hose with a float valve.",
      {
        rule: "none; a vessel with a `feed` or a `roof` fills by that",
      },
    ),
  ),
  colour: colour("What colour the sun sees of it.", "dark, the cautious side"),
  shade,
  roof: optional(describe(roof, "A roof whose rain runs into it.")),
  footing: optional(describe(footing, "What its stand rests on, for the load on the soil and the wind.")),
  feed: optional(
    describe(
      z.strictObject({
        from: name("The point of the line that fills it."),
        valve: optional(name("Float valve, from the fittings table.")),
        opening: optional(
          quantity(
            "length",
            { min: 0.0005, max: 0.2, words: "from 0.5 mm to 20 cm" },
            "Diameter of the float valve's seat.",
          ),
        ),
      }),
      "For a header tank: another part of the line fills it through a float valve, up to its full level.",
    ),
  ),
});
