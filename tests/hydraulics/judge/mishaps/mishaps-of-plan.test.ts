import { describe, expect, it, test } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import type { MishapResult } from "../../../../packages/hydraulics/src/judge/mishaps/mishap-result.js";
import {
  compareHarm,
  mishapsOfPlan,
} from "../../../../packages/hydraulics/src/judge/mishaps/mishaps-of-plan.js";

const HOUR = 3600;

const of = (more: {
  readonly without?: number;
  readonly halfDry?: number;
  readonly hasBirds?: boolean;
  readonly lost?: number;
  readonly dry?: number;
  readonly starve?: number;
  readonly drip?: number;
}): MishapResult => {
  const { without, halfDry, hasBirds = true, lost = 0, dry = 0, starve = 0, drip = 0 } = more;
  const drinkers = (count: number) => Array.from({ length: count }, (_, d) => d);
  return {
    ...{ hasBirds, halfDry, dry: drinkers(dry), starve: drinkers(starve), drip: drinkers(drip) },
    firstWithout: without === undefined ? undefined : { after: without, pen: "hens" },
    balance: { start: 1, poured: 0, drunk: 0, lost, left: 1 - lost },
  } as unknown as MishapResult;
};
const order = (...results: MishapResult[]) =>
  results.map((result) => [...results].sort(compareHarm).indexOf(result));

describe("compareHarm", () => {
  it("puts the soonest bird without first, and last where none ever is", () => {
    expect(order(of({ lost: 0.9, dry: 9 }), of({ without: 2 * HOUR }), of({ without: HOUR }))).toEqual([
      2, 1, 0,
    ]);
  });

  it("then most water lost, then most drinkers dry or starving together, then most that drip", () => {
    expect(order(of({ lost: 0.1, dry: 9 }), of({ lost: 0.2 }))).toEqual([1, 0]);
    expect(order(of({ dry: 2, drip: 9 }), of({ dry: 1, starve: 2 }))).toEqual([1, 0]);
    expect(order(of({ starve: 2 }), of({ dry: 1 }))).toEqual([0, 1]);
    expect(order(of({ drip: 1 }), of({ drip: 2 }))).toEqual([1, 0]);
    expect(compareHarm(of({ drip: 2 }), of({ drip: 2 }))).toBe(0);
  });

  it("goes by half of the drinkers where no bird drinks", () => {
    const dryAfter = (halfDry: number | undefined) =>
      of({ hasBirds: false, ...(halfDry === undefined ? {} : { halfDry }) });
    expect(order(dryAfter(undefined), dryAfter(3 * HOUR), dryAfter(2 * HOUR))).toEqual([2, 1, 0]);
    // With birds, drinkers that are dry while none goes without are no harm yet.
    expect(order(of({ halfDry: HOUR }), of({ without: 9 * HOUR }))).toEqual([1, 0]);
  });
});

describe("the rows of a plan's mishaps", () => {
  const reading = checkDocument({
    headfall: 1,
    sources: [{ vessel: "drum-55gal-plastic", stand: "60 cm" }],
    runs: [
      {
        ...{ id: "lane", length: "4 m", fall: "0 cm" },
        drinkers: [
          { id: "nipples", kind: "nipple-side-action", count: 3, every: "50 cm" },
          { id: "cups", kind: "cup-float", count: 2, every: "50 cm", first: "2 m" },
        ],
      },
    ],
    pens: [{ birds: { kind: "hen", count: 6 } }],
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const told: number[] = [];
  const answer = mishapsOfPlan(reading.plan, { day: "2026-07-04", progress: (share) => told.push(share) });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  const { rows } = answer.mishaps;

  it("are one for a kind at a group of drinkers, however many hang there, and one for each run or joint", () => {
    const count = (kind: string) =>
      rows.filter(({ kinds }) => kinds.includes(kind as never)).map((row) => row.count);
    expect(count("drinkerStuckOpen")).toEqual([3]);
    expect(count("drinkerBlocked")).toEqual([3]);
    expect(count("floatStuckDown")).toEqual([2]);
    expect(count("runBlocked")).toEqual([1]);
  });

  it("stand in the order of harm, and tell what the least and the most of theirs lose", () => {
    for (let k = 1; k < rows.length; k += 1)
      expect(compareHarm(rows[k - 1]!.worst, rows[k]!.worst)).toBeLessThanOrEqual(0);
    for (const { lost, worst } of rows) {
      expect(lost.least).toBeLessThanOrEqual(worst.balance.lost);
      expect(lost.most).toBeGreaterThanOrEqual(worst.balance.lost);
    }
  });

  it("tell how far they are done, to the end", () => {
    expect(told).toEqual([...told].sort((a, b) => a - b));
    expect(told[0]).toBeGreaterThan(0);
    expect(told.at(-1)).toBe(1);
  });
});

test("mishapsOfPlan tells each source and each run by itself", () => {
  const reading = checkDocument({
    headfall: 1,
    sources: ["left", "right"].map((id) => ({ id, vessel: "bucket-5gal", stand: "60 cm" })),
    runs: ["left", "right"].map((from) => ({
      from,
      length: "2 m",
      fall: "30 cm",
      drinkers: { kind: "nipple-side-action", count: 1 },
    })),
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const answer = mishapsOfPlan(reading.plan, { guardsFor: 0 });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  const { rows } = answer.mishaps;
  const places = (key: "source" | "run") =>
    rows.flatMap(({ worst: { mishap }, count }) =>
      key in mishap ? [[mishap.kind, (mishap as Record<string, unknown>)[key], count]] : [],
    );
  for (const key of ["source", "run"] as const) {
    const told = places(key);
    expect(told.length).toBeGreaterThan(1);
    expect(told.every(([, , count]) => count === 1)).toBe(true);
    expect(new Set(told.map(([, place]) => place))).toEqual(new Set([0, 1]));
  }
});

test("mishapsOfPlan tells how much is done: ever more, and never more than all", () => {
  const reading = checkDocument({
    headfall: 1,
    sources: [{ vessel: "bucket-5gal", stand: "60 cm" }],
    runs: [{ length: "2 m", fall: "30 cm", drinkers: { kind: "nipple-side-action", count: 1 } }],
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const shares: number[] = [];
  const answer = mishapsOfPlan(reading.plan, { guardsFor: 1, progress: (share) => void shares.push(share) });
  expect(answer.ok && answer.mishaps.leavesOut).toEqual(["nobodyDrinks"]);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
  expect(shares[0]).toBeGreaterThan(0);
  expect(shares[0]).toBeLessThan(1);
  expect(shares.at(-1)).toBe(1);
});
