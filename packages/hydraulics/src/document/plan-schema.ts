import * as z from "zod/mini";
import { type QuantityKind, readQuantity } from "../units/quantity.js";
import { DEFAULTS, type DefaultName } from "./defaults.js";

/**
 * The plan file, version 1: the one definition. Types, the reader's checks and `docs/plan.schema.json` all come
 * from here. Quantities are text with their unit, kept as typed ("55 gal", "3/4 in", "2 ft 6 in", "40 mL/min").
 */

export const PLAN_VERSION = 1;

/** Ceilings that keep a hostile file from costing more than a moment. */
export const LIMITS = {
  textLength: 8_000_000,
  depth: 40,
  runs: 20_000,
  drinkers: 200_000,
  name: 80,
  note: 4000,
} as const;

interface Range {
  readonly min: number;
  readonly max: number;
  /** The range as a person would say it. */
  readonly words: string;
}

/** What a quantity's check leaves for the problem writer (see read-issues.ts). */
export interface QuantityFault {
  readonly fault: "unreadable" | "range";
  readonly found: string;
  readonly allowed: string;
  readonly mend: string;
}

function quantity(kind: QuantityKind, range: Range, description: string, fallback?: DefaultName) {
  const text = z.string().check(
    z.check<string>((payload) => {
      const fault = faultIn(payload.value, kind, range);
      if (fault !== undefined)
        payload.issues.push({ code: "custom", input: payload.value, params: { ...fault } });
    }),
  );
  return describe(text, `${description} A ${kind}, ${range.words}.`, fallback);
}

function faultIn(typed: string, kind: QuantityKind, range: Range): QuantityFault | undefined {
  const read = readQuantity(typed, kind);
  if (!read.ok) return { fault: "unreadable", found: read.found, allowed: read.allowed, mend: read.mend };
  if (read.quantity.si >= range.min && read.quantity.si <= range.max) return undefined;
  return {
    fault: "range",
    found: JSON.stringify(typed),
    allowed: `Here a ${kind} is ${range.words}.`,
    mend: "Check the unit and the figure.",
  };
}

function describe<T extends z.core.$ZodType>(schema: T, description: string, fallback?: DefaultName): T {
  const text =
    fallback === undefined
      ? description
      : `${description} If left out: ${DEFAULTS[fallback].typed} (${DEFAULTS[fallback].because}).`;
  z.globalRegistry.add(schema, {
    description: text,
    ...(fallback === undefined ? {} : { default: DEFAULTS[fallback].typed }),
  });
  return schema;
}

const text = (most: number, description: string) =>
  describe(z.string().check(z.minLength(1), z.maxLength(most)), description);
const count = (least: number, most: number, description: string) =>
  describe(z.int().check(z.minimum(least), z.maximum(most)), description);
const optional = z.optional;

const HEIGHT: Range = { min: -200, max: 200, words: "from -200 m to 200 m" };
const DEPTH: Range = { min: 0, max: 20, words: "from 0 to 20 m" };
const name = (description: string) => text(LIMITS.name, description);

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
              { min: 0, max: 1000, words: "from 0 to 1000 m3" },
              "Water in the vessel at that level.",
            ),
          }),
        )
        .check(z.minLength(2), z.maxLength(200)),
      "Readings from the bottom (level 0, volume 0) to the brim, each larger than the one before.",
    ),
  }),
]);

const level = z.strictObject({
  full: optional(quantity("length", DEPTH, "Level when full.", "fullShare")),
  lowest: optional(quantity("length", DEPTH, "Lowest level the line is meant to work at.", "outletCover")),
  ordinary: optional(
    quantity("length", DEPTH, "Level in an ordinary hour. If left out: halfway between lowest and full."),
  ),
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

const source = z.strictObject({
  id: optional(name("Name of the source; the first is `barrel` if left out.")),
  vessel: describe(
    z.union([name("A vessel from the table, by its id or in plain words."), vesselShape]),
    "What holds the water: a known vessel (`drum-55gal-plastic`) or a shape with inside dimensions.",
  ),
  ground: optional(
    quantity("length", HEIGHT, "Height of the ground it stands on, above the datum.", "ground"),
  ),
  stand: optional(
    quantity(
      "length",
      { min: 0, max: 30, words: "from 0 to 30 m" },
      "Height of the stand under it.",
      "stand",
    ),
  ),
  outlet: optional(
    quantity(
      "length",
      DEPTH,
      "Height of the outlet's middle above the inside bottom. If left out: the vessel's own, else 5 cm.",
      "outlet",
    ),
  ),
  level: optional(describe(level, "Water levels above the inside bottom.")),
  vent: optional(describe(vent, "How air gets in: `open`, `sealed`, an opening, or an air tube.", "vent")),
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

const point = z.strictObject({
  id: name("Name of the point."),
  ground: optional(quantity("length", HEIGHT, "Height of the ground there, above the datum.", "ground")),
  above: optional(quantity("length", HEIGHT, "Height of the pipe above that ground.", "above")),
  bleed: optional(describe(z.boolean(), "Whether air can leave here (a bleed screw or riser vent).")),
});

const BORE: Range = { min: 0.001, max: 1, words: "from 1 mm to 1 m" };
const SHARE = /^\s*(\d{1,3}(?:\.\d+)?)\s*%\s*$/;
const drinkersAtWork = (description: string, fallback: DefaultName) =>
  describe(
    z.union([z.int().check(z.minimum(0), z.maximum(LIMITS.drinkers)), z.string().check(z.regex(SHARE))]),
    `${description} A whole number, or a share such as "50 %".`,
    fallback,
  );

const drinkerGroup = z.strictObject({
  id: optional(name("Name of the group; made from its run if left out.")),
  kind: name("A drinker from the table (`nipple-side-action`) or one of `ownDrinkers`."),
  count: optional(
    describe(z.int().check(z.minimum(1), z.maximum(LIMITS.drinkers)), "How many.", "drinkerCount"),
  ),
  first: optional(
    quantity(
      "length",
      { min: 0, max: 10000, words: "from 0 to 10 km" },
      "Distance of the first from the start of the run. If left out: one spacing.",
    ),
  ),
  every: optional(
    quantity(
      "length",
      { min: 0, max: 1000, words: "from 0 to 1 km" },
      "Distance from one to the next. If left out: spread evenly to the end of the run.",
    ),
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
    quantity(
      "flow",
      { min: 0, max: 0.01, words: "from 0 to 10 L/s" },
      "Flow each must give while worked. If left out: the kind's own.",
    ),
  ),
  busiest: optional(drinkersAtWork("How many are at work at once in the busiest minutes.", "busiest")),
  ordinary: optional(drinkersAtWork("How many are at work at once in an ordinary hour.", "ordinary")),
});

const fitting = z.union([
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

const pipe = z.union([
  name("A pipe from the table, by its id (`pvc-sch40-1/2`) or in plain words."),
  z.strictObject({
    name: optional(name("What it is.")),
    bore: quantity("length", BORE, "Inside diameter."),
    hazenWilliams: optional(
      describe(z.number().check(z.minimum(40), z.maximum(160)), "Hazen-Williams C. If left out: 140."),
    ),
    roughness: optional(
      quantity(
        "length",
        { min: 0, max: 0.01, words: "from 0 to 1 cm" },
        "Absolute roughness. If left out: that of smooth plastic.",
      ),
    ),
  }),
]);

const run = z.strictObject({
  id: optional(name("Name of the run; `run 1`, `run 2` ... if left out.")),
  from: optional(
    name(
      "Where it starts: a source or point. If left out: the end of the run before (the first starts at the first source).",
    ),
  ),
  to: optional(name("Where it ends. If left out: a point of its own.")),
  length: quantity("length", { min: 0, max: 10000, words: "from 0 to 10 km" }, "Along the pipe."),
  fall: optional(
    quantity("length", HEIGHT, "How much lower its end is than its start; negative where it rises.", "fall"),
  ),
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
              "How much lower the pipe is there than at the start of the run; negative where higher.",
            ),
            bleed: optional(describe(z.boolean(), "Whether air can leave here.")),
          }),
        )
        .check(z.maxLength(1000)),
      "Heights along the run, as read off a string or hose level: humps and sags.",
    ),
  ),
  pipe: optional(describe(pipe, "What pipe.", "pipe")),
  fittings: optional(
    describe(
      z.array(fitting).check(z.maxLength(200)),
      "Elbows, valves and the like, besides the way in from a source, which is always counted.",
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
            "Its own loss when wide open, velocity heads of this run's bore. If left out: 10 (common practice, no source).",
          ),
        ),
      }),
      "A low-pressure regulator at the start of the run.",
    ),
  ),
  drinkers: optional(
    describe(
      z.union([drinkerGroup, z.array(drinkerGroup).check(z.maxLength(1000))]),
      "Drinkers along the run: one regular group, or a list of groups.",
    ),
  ),
});

const ownDrinker = z.strictObject({
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
      .check(z.minLength(2), z.maxLength(100)),
    "Two or more readings with a jug and a watch, at different heads.",
  ),
  workedBy: optional(
    describe(z.enum(["trigger", "float"]), "Whether birds work it, or a float. If left out: trigger."),
  ),
  opensAt: optional(
    quantity(
      "head",
      { min: 0, max: 10, words: "from 0 to 10 m" },
      "Head below which nothing comes. If left out: none.",
    ),
  ),
  sealsFrom: optional(
    quantity(
      "head",
      { min: 0, max: 100, words: "from 0 to 100 m" },
      "Least head at which it seals. If left out: none.",
    ),
  ),
  holdsUpTo: quantity(
    "head",
    { min: 0.001, max: 1000, words: "from 1 mm to 1 km" },
    "Head above which it drips.",
  ),
  need: quantity("flow", { min: 0, max: 0.01, words: "from 0 to 10 L/s" }, "Flow it must give while worked."),
});

const shelfEntry = z.strictObject({
  pipe: name("A pipe from the table, by its id or in plain words."),
  price: optional(
    describe(
      z.number().check(z.minimum(0), z.maximum(1e6)),
      "Price of one piece of the length `per`, in the plan's own money.",
    ),
  ),
  per: optional(
    quantity(
      "length",
      { min: 0.001, max: 10000, words: "from 1 mm to 10 km" },
      "Length that price buys. If left out: 1 m.",
    ),
  ),
});

const doubts = z.strictObject({
  heights: optional(
    quantity("length", { min: 0, max: 5, words: "from 0 to 5 m" }, "Of each surveyed height.", "heightDoubt"),
  ),
  level: optional(
    quantity("length", { min: 0, max: 5, words: "from 0 to 5 m" }, "Of the water levels.", "levelDoubt"),
  ),
});

export const planSchema = z.strictObject({
  headfall: describe(z.literal(PLAN_VERSION), "Version of this file format."),
  name: optional(text(LIMITS.name, "Name of the plan.")),
  note: optional(text(LIMITS.note, "Anything worth keeping with it.")),
  water: optional(
    quantity(
      "temperature",
      { min: 0, max: 50, words: "from 0 to 50 degC" },
      "Temperature of the water.",
      "waterTemperature",
    ),
  ),
  friction: optional(
    describe(
      z.enum(["hazen-williams", "darcy-weisbach"]),
      "The law whose figures are shown first; every verdict is taken with both.",
      "friction",
    ),
  ),
  doubts: optional(
    describe(
      doubts,
      "How far the measurements may be off (two standard deviations): decides what is sure and what is a close call.",
    ),
  ),
  sources: describe(
    z.array(source).check(z.minLength(1), z.maxLength(200)),
    "Barrels, tanks, header tanks, buckets.",
  ),
  points: optional(
    describe(z.array(point).check(z.maxLength(20000)), "Named places where runs meet, with their heights."),
  ),
  runs: describe(z.array(run).check(z.minLength(1), z.maxLength(LIMITS.runs)), "Lengths of pipe or hose."),
  ownDrinkers: optional(
    describe(
      z.record(z.string().check(z.minLength(1), z.maxLength(LIMITS.name)), ownDrinker),
      "Drinkers measured by the user, by name.",
    ),
  ),
  shelf: optional(
    describe(
      z.array(shelfEntry).check(z.maxLength(200)),
      "Pipe sizes to compare. If left out: all sizes of each run's own family.",
    ),
  ),
  money: optional(text(12, "Name of the money prices are in, for instance `EUR`.")),
});

/** A plan exactly as typed; only `readPlan` and the named edits of a caller make one. */
export type Plan = z.infer<typeof planSchema>;
export type PlanSource = Plan["sources"][number];
export type PlanRun = Plan["runs"][number];
export type PlanPoint = NonNullable<Plan["points"]>[number];
export type PlanDrinkerGroup = z.infer<typeof drinkerGroup>;
export type PlanFitting = z.infer<typeof fitting>;
export type PlanPipe = z.infer<typeof pipe>;
export type OwnDrinker = z.infer<typeof ownDrinker>;

/** The groups of a run as a list, however they were written. */
export function drinkerGroupsOf(run: PlanRun): readonly PlanDrinkerGroup[] {
  if (run.drinkers === undefined) return [];
  return Array.isArray(run.drinkers) ? run.drinkers : [run.drinkers];
}

/** "50 %" as 0.5; undefined when it is no share. */
export function readShare(typed: string): number | undefined {
  const match = SHARE.exec(typed);
  if (match === null) return undefined;
  const share = Number(match[1]) / 100;
  return share <= 1 ? share : undefined;
}
