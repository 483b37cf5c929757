import type { Plan } from "../../packages/hydraulics/src/document/plan-schema.js";
import { checkDocument } from "../../packages/hydraulics/src/document/read-plan.js";
import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import { COST_MEASURES, type CostMeasure } from "../../packages/hydraulics/src/search/cost.js";
import type { CureOptions } from "../../packages/hydraulics/src/search/cure-options.js";
import { type Chooser, chooserOf } from "./typed.js";

/** A plan whose sizes and stands can all be tried, and what is asked of its cure. */
export interface CureCase {
  readonly plan: Plan;
  readonly options: CureOptions & { readonly by: CostMeasure };
}

const FAMILIES = [
  ["pvc-sch40-1/2", "pvc-sch40-3/4", "pvc-sch40-1", "pvc-sch40-1-1/4"],
  ["drip-1/4", "drip-16", "drip-1/2"],
  ["hose-1/2", "hose-5/8", "hose-3/4", "hose-1"],
] as const;
const KINDS = [
  "nipple-side-action",
  "nipple-horizontal",
  "cup-trigger",
  "cup-float",
  "bell",
  "trough-float",
] as const;

/**
 * A small random plan that does not always work: lines, forks and rings, humps, devices, two barrels, sealed ones, birds; with
 * a shelf of two or three sizes, prices for some, some pipe on hand. Same number, same case.
 */
export function cureCase(seed: number): CureCase {
  const choose = chooserOf(randomFrom(seed));
  const shelf = shelfOf(choose);
  const runs = runsOf(choose, shelf);
  if (runs.length > 1 && choose.chance(0.12)) runs.push(ringOf(choose, runs, shelf));
  const document = {
    headfall: 1,
    water: choose.temperature(choose.uniform(4, 25)),
    sources: sourcesOf(choose, runs),
    runs,
    ...(choose.chance(0.25) ? birdsOf(choose) : {}),
    shelf: shelf.map((pipe) => ({
      pipe,
      ...(choose.chance(0.7) ? { price: choose.whole(1, 5) } : {}),
      ...(choose.chance(0.3) ? { per: `${choose.whole(1, 3)} m` } : {}),
      ...(choose.chance(0.3) ? { onHand: `${choose.whole(1, 30)} m` } : {}),
    })),
    ...(choose.chance(0.4) ? { prices: { stand: choose.whole(0, 6) } } : {}),
  };
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(`${seed}: ${JSON.stringify(reading.problems)}`);
  return {
    plan: reading.plan,
    options: {
      by: choose.oneOf(COST_MEASURES),
      standMost: choose.oneOf([0.6, 0.9]),
      standStep: choose.oneOf([0.15, 0.3]),
      margin: choose.chance(0.4) ? choose.uniform(0, 0.1) : 0,
    },
  };
}

function shelfOf(choose: Chooser): string[] {
  const family = choose.oneOf(FAMILIES);
  const first = choose.whole(0, family.length - 2);
  return family.slice(first, first + choose.whole(2, 3));
}

type RunData = Record<string, unknown>;

function runsOf(choose: Chooser, shelf: readonly string[]): RunData[] {
  const count = choose.oneOf([1, 2, 2, 3, 3, 4]);
  return Array.from({ length: count }, (_, i): RunData => {
    const length = choose.spread(2, 60);
    return {
      id: `run ${i}`,
      from: i === 0 ? "barrel" : `end ${choose.whole(Math.max(0, i - 2), i - 1)}`,
      to: `end ${i}`,
      length: `${length.toFixed(2)} m`,
      fall: choose.length(choose.uniform(-0.3, 0.5)),
      pipe: choose.oneOf(shelf),
      ...(choose.chance(0.15) ? { survey: [humpOf(choose, length)] } : {}),
      ...(choose.chance(0.3) ? { fittings: [`elbow-90 x ${choose.whole(1, 8)}`] } : {}),
      ...(choose.chance(0.05) ? { regulator: { sets: choose.head(choose.uniform(0.1, 0.8)) } } : {}),
      ...(choose.chance(0.05) ? { oneWay: true } : {}),
      ...(choose.chance(0.75) || i === count - 1 ? { drinkers: groupOf(choose) } : {}),
    };
  });
}

/** A second way to some end: from the barrel, or from another end. */
function ringOf(choose: Chooser, runs: readonly RunData[], shelf: readonly string[]): RunData {
  const from = choose.chance(0.5) ? "barrel" : "end 0";
  return { id: "ring", from, to: `end ${runs.length - 1}`, length: "70 m", pipe: choose.oneOf(shelf) };
}

const humpOf = (choose: Chooser, length: number) => ({
  along: `${(length * choose.uniform(0.2, 0.8)).toFixed(3)} m`,
  fall: choose.length(choose.uniform(-0.5, 0.3)),
  ...(choose.chance(0.3) ? { bleed: true } : {}),
});

function groupOf(choose: Chooser) {
  const count = choose.whole(1, 12);
  return {
    kind: choose.oneOf(KINDS),
    count,
    ...(choose.chance(0.5) ? { busiest: choose.whole(0, count) } : {}),
    ...(choose.chance(0.3) ? { drop: choose.length(choose.uniform(-0.1, 0.3)) } : {}),
  };
}

function sourcesOf(choose: Chooser, runs: RunData[]) {
  const barrel = (id: string) => ({
    id,
    vessel: choose.oneOf(["drum-55gal-plastic", "bucket-5gal", "drum-15gal-plastic"]),
    stand: choose.length(choose.uniform(0, 0.7)),
    ...(choose.chance(0.1) ? { vent: choose.oneOf(["sealed", { airTube: "10 cm" }]) } : {}),
    ...(choose.chance(0.15) ? { outletBore: choose.length(choose.spread(0.003, 0.02)) } : {}),
  });
  if (!choose.chance(0.12)) return [barrel("barrel")];
  const joins = choose.chance(0.5);
  runs.push({
    id: "other run",
    from: "other barrel",
    ...(joins ? { to: "end 0" } : { fall: "0 cm", drinkers: groupOf(choose) }),
    length: "12 m",
    pipe: runs[0]!["pipe"],
  });
  return [barrel("barrel"), barrel("other barrel")];
}

const birdsOf = (choose: Chooser) => ({
  pens: [
    {
      birds: {
        kind: choose.oneOf(["hen", "meat-chicken", "pullet"]),
        count: choose.whole(5, 120),
        ...(choose.chance(0.3) ? { age: `${choose.whole(1, 5)} weeks` } : {}),
      },
    },
  ],
});
