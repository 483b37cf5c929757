import type { Plan, PlanDrinkerGroup, PlanPen, PlanPoint, PlanRun, PlanSource } from "@headfall/hydraulics";

/** A part of the plan of which keys may be taken out by giving them as undefined. */
type Loose<Part> = { readonly [Key in keyof Part]: Part[Key] | undefined };

const PLAN_KEYS = [
  "headfall",
  "name",
  "note",
  "water",
  "friction",
  "doubts",
  "sources",
  "points",
  "runs",
  "pens",
  "kit",
  "day",
  "weather",
  "region",
  "carry",
  "ownDrinkers",
  "shelf",
  "money",
];
const SOURCE_KEYS = [
  "id",
  "vessel",
  "ground",
  "place",
  "stand",
  "doubt",
  "outlet",
  "outletBore",
  "level",
  "vent",
  "feed",
  "refill",
  "roof",
];
const POINT_KEYS = ["id", "ground", "above", "doubt", "bleed", "place"];
const RUN_KEYS = [
  "id",
  "from",
  "to",
  "length",
  "fall",
  "doubt",
  "survey",
  "corners",
  "pipe",
  "fittings",
  "tap",
  "oneWay",
  "regulator",
  "hung",
  "drinkers",
];
const GROUP_KEYS = ["id", "kind", "count", "first", "every", "drop", "need", "busiest", "ordinary"];

const PEN_KEYS = ["id", "birds", "drinkers", "waterers", "slope"];

/** Parts with their keys in the order a reader expects, without those that hold nothing. */
export const tidyPlan = (plan: Loose<Plan>): Plan => tidy(plan, PLAN_KEYS);
export const tidySource = (source: Loose<PlanSource>): PlanSource => tidy(source, SOURCE_KEYS);
export const tidyPoint = (point: Loose<PlanPoint>): PlanPoint => tidy(point, POINT_KEYS);
export const tidyRun = (run: Loose<PlanRun>): PlanRun => tidy(run, RUN_KEYS);
export const tidyPen = (pen: Loose<PlanPen>): PlanPen => tidy(pen, PEN_KEYS);
export const tidyGroup = (group: Loose<PlanDrinkerGroup>): PlanDrinkerGroup => tidy(group, GROUP_KEYS);

function tidy<Part extends object>(part: Loose<Part>, order: readonly string[]): Part {
  const entries = Object.entries(part).filter(([, value]) => value !== undefined);
  entries.sort(([a], [b]) => order.indexOf(a) - order.indexOf(b));
  return Object.fromEntries(entries) as Part;
}
