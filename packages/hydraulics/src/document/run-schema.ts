import * as z from "zod/mini";
import type { DefaultName } from "./defaults.js";
import { LIMITS } from "./limits.js";
import { SHARE } from "./read-share.js";
import {
  atMost,
  colour,
  count,
  describe,
  doubt,
  HEIGHT,
  name,
  optional,
  place,
  quantity,
  type Range,
  shade,
} from "./schema-parts.js";

/** The part of the plan file that says where pipe runs, what it is, and what hangs on it. */

export const point = z.strictObject({
  id: name("Name of the point."),
  ground: optional(quantity("length", HEIGHT, "Height of the ground there, above the datum.", "ground")),
  above: optional(quantity("length", HEIGHT, "Height of the pipe above that ground.", "above")),
  doubt: doubt("that height", "heights"),
  bleed: optional(describe(z.boolean(), "Whether air can leave here (a bleed screw or riser vent).")),
  place: optional(place("Where it is seen from above; for the drawing only.")),
});

const BORE: Range = { min: 0.001, max: 1, words: "from 1 mm to 1 m" };
const drinkersAtWork = (description: string, fallback: DefaultName) =>
  describe(
    z.union([z.int().check(z.minimum(0), z.maximum(LIMITS.drinkers)), z.string().check(z.regex(SHARE))]),
    `${description} A whole number, or a share such as "50 %".`,
    fallback,
  );

export const drinkerGroup = z.strictObject({
  id: optional(name("Name of the group; made from its run if left out.")),
  kind: name("A drinker from the table (`nipple-side-action`) or one of `ownDrinkers`."),
  count: optional(
    describe(z.int().check(z.minimum(1), z.maximum(LIMITS.drinkers)), "How many.", "drinkerCount"),
  ),
  first: optional(
    quantity(
      "length",
      { min: 0, max: 10000, words: "from 0 to 10 km" },
      "Distance of the first from the start of the run.",
      { rule: "one spacing" },
    ),
  ),
  every: optional(
    quantity("length", { min: 0, max: 1000, words: "from 0 to 1 km" }, "Distance from one to the next.", {
      rule: "spread evenly to the end of the run",
    }),
  ),
  drop: optional(
    quantity(
      "length",
      { min: -10, max: 10, words: "from -10 m to 10 m" },
      "How far the drinker's valve hangs below the pipe.",
      "drop",
    ),
  ),
  need: optional(
    quantity("flow", { min: 0, max: 0.01, words: "from 0 to 10 L/s" }, "Flow each must give while worked.", {
      rule: "the kind's own",
    }),
  ),
  busiest: optional(drinkersAtWork("How many are at work at once in the busiest minutes.", "busiest")),
  ordinary: optional(drinkersAtWork("How many are at work at once in an ordinary hour.", "ordinary")),
});

export const fitting = z.union([
  name("A fitting from the table, with a count: `elbow-90 x 4`."),
  z.strictObject({
    name: name("What it is."),
    k: describe(
      z.number().check(z.minimum(0), z.maximum(1e5)),
      "Loss coefficient, velocity heads of this run's bore.",
    ),
    count: optional(count(1, 10000, "How many.")),
  }),
]);

export const pipe = z.union([
  name("A pipe from the table, by its id (`pvc-sch40-1/2`) or in plain words."),
  z.strictObject({
    name: optional(name("What it is.")),
    bore: quantity("length", BORE, "Inside diameter."),
    hazenWilliams: optional(
      describe(z.number().check(z.minimum(40), z.maximum(160)), "Hazen-Williams C.", { rule: "140" }),
    ),
    roughness: optional(
      quantity("length", { min: 0, max: 0.01, words: "from 0 to 1 cm" }, "Absolute roughness.", {
        rule: "that of smooth plastic",
      }),
    ),
  }),
]);

export const run = z.strictObject({
  id: optional(name("Name of the run; `run 1`, `run 2` ... if left out.")),
  from: optional(
    name(
      "Where it starts: a source or point. If left out: the end of the run before (the first starts at the first source).",
    ),
  ),
  to: optional(name("Where it ends. If left out: a point of its own.")),
  length: quantity("length", { min: 0, max: 10000, words: "from 0 to 10 km" }, "Along the pipe."),
  fall: optional(
    quantity(
      "length",
      HEIGHT,
      "How much lower its end is than its start, or than the ground under the source it starts at; negative where higher.",
      "fall",
    ),
  ),
  doubt: doubt("the height of its end", "heights"),
  survey: optional(
    describe(
      z
        .array(
          z.strictObject({
            along: quantity(
              "length",
              { min: 0, max: 10000, words: "from 0 to 10 km" },
              "Distance from the start of the run, along the pipe.",
            ),
            fall: quantity(
              "length",
              HEIGHT,
              "How much lower the pipe is there than at the start of the run, or than the ground under the source it starts at; negative where higher.",
            ),
            doubt: doubt("that height", "heights"),
            bleed: optional(describe(z.boolean(), "Whether air can leave here.")),
          }),
        )
        .check(atMost(1000)),
      "Heights along the run, as read off a string or hose level: humps and sags.",
    ),
  ),
  corners: optional(
    describe(
      z.array(place("One corner.")).check(atMost(200)),
      "Corners on the way, seen from above, from start to end; for the drawing only.",
    ),
  ),
  pipe: optional(describe(pipe, "What pipe.", "pipe")),
  fittings: optional(
    describe(
      z.array(fitting).check(atMost(200)),
      "Elbows, valves and the like, besides the way in from a source, which is always counted.",
    ),
  ),
  hung: optional(
    describe(
      z.boolean(),
      "Whether it hangs on cords and is raised as the birds grow; its heights in the plan are those of the plan's day.",
    ),
  ),
  colour: colour("What colour the sun sees of it.", "dark, the cautious side"),
  shade,
  buried: optional(
    quantity(
      "length",
      { min: 0, max: 3, words: "from 0 to 3 m" },
      "How deep it lies under the ground, to its middle.",
      { rule: "not at all" },
    ),
  ),
  lagging: optional(
    quantity(
      "length",
      { min: 0, max: 0.2, words: "from 0 to 20 cm" },
      "How thick the closed-cell foam around it is.",
      { rule: "none" },
    ),
  ),
  tap: optional(describe(z.enum(["open", "half", "shut"]), "A tap at the start of the run.", "tap")),
  oneWay: optional(
    describe(
      z.union([
        z.boolean(),
        z.strictObject({
          opensAt: quantity(
            "head",
            { min: 0, max: 10, words: "from 0 to 10 m" },
            "Head that opens it.",
            "oneWayOpensAt",
          ),
        }),
      ]),
      "A one-way valve at the start of the run.",
    ),
  ),
  regulator: optional(
    describe(
      z.strictObject({
        sets: quantity(
          "head",
          { min: 0.005, max: 100, words: "from 5 mm to 100 m" },
          "Head it holds at its outlet.",
        ),
        k: optional(
          describe(
            z.number().check(z.minimum(0), z.maximum(1e6)),
            "Its own loss when wide open, velocity heads of this run's bore.",
            { rule: "10 (common practice, no source)" },
          ),
        ),
      }),
      "A low-pressure regulator at the start of the run.",
    ),
  ),
  drinkers: optional(
    describe(
      z.union([drinkerGroup, z.array(drinkerGroup).check(atMost(1000))]),
      "Drinkers along the run: one regular group, or a list of groups.",
    ),
  ),
});
