import * as z from "zod/mini";
import { type birds, carry, pen, weather } from "./birds-schema.js";
import { contacts, soil } from "./build-schema.js";
import { kitEntry } from "./kit-schema.js";
import { LIMITS } from "./limits.js";
import { REGIONS } from "./regions.js";
import { type drinkerGroup, type fitting, type pipe, point, run } from "./run-schema.js";
import { atMost, date, describe, longText, name, optional, quantity, text } from "./schema-parts.js";
import { doubts, ownDrinker, prices, shelfEntry } from "./shelf-schema.js";
import { source } from "./source-schema.js";

/**
 * The plan file, version 1: the one definition. Types, the reader's checks and `docs/plan.schema.json` all come
 * from here. Quantities are text with their unit, kept as typed ("55 gal", "3/4 in", "2 ft 6 in", "40 mL/min").
 */

export const PLAN_VERSION = 1;

export const planSchema = z.strictObject({
  headfall: describe(z.literal(PLAN_VERSION), "Version of this file format."),
  name: optional(text(LIMITS.name, "Name of the plan.")),
  note: optional(longText(LIMITS.note, "Anything worth keeping with it.")),
  water: optional(
    quantity(
      "temperature",
      { min: 0, max: 50, words: "from 0 to 50 °C" },
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
    z.array(source).check(atMost(200)),
    "Barrels, tanks, header tanks, buckets; none where the pens have loose waterers only.",
  ),
  points: optional(
    describe(z.array(point).check(atMost(20000)), "Named places where runs meet, with their heights."),
  ),
  runs: describe(
    z.array(run).check(atMost(LIMITS.runs)),
    "Lengths of pipe or hose; none while a plan is only begun.",
  ),
  pens: optional(
    describe(
      z.array(pen).check(atMost(200)),
      "Pens of birds and the drinkers they reach: how many drink at once, and how much, then follows from them.",
    ),
  ),
  day: optional(
    date("The day the plan is for: ages of birds hatched on a known day are counted on it.", {
      rule: "the day it is asked on",
    }),
  ),
  kit: optional(
    describe(
      z.array(kitEntry).check(atMost(200)),
      "Waterers and drinkers on hand, to be given out to the pens week by week.",
    ),
  ),
  weather: optional(describe(weather, "The air where the birds are, and the light.")),
  region: optional(
    describe(z.enum(REGIONS), "Whose rules and advice on drinkers are held against the plan.", {
      rule: "EU",
    }),
  ),
  carry: optional(describe(carry, "How water is carried to what is filled by hand.")),
  ownDrinkers: optional(
    describe(z.record(name("Name of the drinker."), ownDrinker), "Drinkers measured by the user, by name."),
  ),
  shelf: optional(
    describe(z.array(shelfEntry).check(atMost(200)), "Pipe sizes to compare.", {
      rule: "all sizes of each run's own family",
    }),
  ),
  prices: optional(
    describe(
      prices,
      "What other things cost, for cures told apart by money; pipe has its prices on the shelf.",
    ),
  ),
  soil: optional(soil),
  contacts: optional(contacts),
  money: optional(text(12, "Name of the money prices are in, for instance `EUR`.")),
});

/** A plan exactly as typed; only `readPlan` and the named edits of a caller make one. */
export type Plan = z.infer<typeof planSchema>;
/** A vessel that feeds the line of a plan, as typed. */
export type PlanSource = Plan["sources"][number];
/** A run of pipe of a plan, as typed. */
export type PlanRun = Plan["runs"][number];
/** A joint of a plan, as typed. */
export type PlanPoint = NonNullable<Plan["points"]>[number];
/** A group of alike drinkers along a run of a plan, as typed. */
export type PlanDrinkerGroup = z.infer<typeof drinkerGroup>;
/** A fitting of a run of a plan, as typed. */
export type PlanFitting = z.infer<typeof fitting>;
/** A place seen from above, as typed. */
export type PlanPlace = NonNullable<PlanPoint["place"]>;
/** The pipe of a run, where a plan gives its bore instead of a name. */
export type PlanPipe = z.infer<typeof pipe>;
export type OwnDrinker = z.infer<typeof ownDrinker>;

/** A pen of a plan with its birds and loose waterers, as typed. */
export type PlanPen = NonNullable<Plan["pens"]>[number];
/** A loose waterer of a pen of a plan, as typed. */
export type PlanWaterer = NonNullable<PlanPen["waterers"]>[number];
/** One batch of birds in a pen of a plan, as typed. */
export type PlanBirds = z.infer<typeof birds>;
/** How a source of a plan is filled again, as typed. */
export type PlanRefill = NonNullable<PlanSource["refill"]>;
/** The roof that fills a source of a plan, as typed. */
export type PlanRoof = NonNullable<PlanSource["roof"]>;
