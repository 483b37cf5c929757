import { expect, test } from "vitest";
import { bundlesOf } from "../../../../packages/hydraulics/src/judge/mishaps/mishap-bundles.js";
import type { Mishap } from "../../../../packages/hydraulics/src/model/mishap.js";

/** A line of groups of so many drinkers each. */
const lineOf = (...counts: number[]) =>
  ({ drinkers: { group: counts.flatMap((count, g) => new Array<number>(count).fill(g)) } }) as never;
const stuck = (
  count: number,
  kind: "drinkerStuckOpen" | "floatStuckDown" | "cupTipped" = "drinkerStuckOpen",
) => Array.from({ length: count }, (_, drinker): Mishap => ({ kind, drinker }));
const drinkersOf = (run: readonly Mishap[]) => run.map((one) => ("drinker" in one ? one.drinker : -1));

test("bundlesOf runs all of twelve drinkers, and of more twelve from the first to the last", () => {
  const [twelve] = bundlesOf(lineOf(12), stuck(12));
  expect(drinkersOf(twelve!.run)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
  const [many] = bundlesOf(lineOf(23), stuck(23));
  expect(many!.count).toBe(23);
  expect(drinkersOf(many!.run)).toEqual([0, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22]);
});

test("bundlesOf runs fewer of each of many groups, 120 in all, but never less than both ends", () => {
  const runsOf = (groups: number) => {
    const counts = new Array<number>(groups).fill(20);
    return bundlesOf(lineOf(...counts), stuck(20 * groups)).map(({ run }) => run.length);
  };
  expect(new Set(runsOf(10))).toEqual(new Set([12]));
  expect(new Set(runsOf(11))).toEqual(new Set([10]));
  expect(new Set(runsOf(50))).toEqual(new Set([2]));
  expect(new Set(runsOf(100))).toEqual(new Set([2]));
});

test("bundlesOf tells what does the same there in one line, and runs the first kind of it alone", () => {
  const mishaps = [...stuck(3, "floatStuckDown"), ...stuck(3, "cupTipped")];
  expect(bundlesOf(lineOf(3), mishaps)).toEqual([
    { kinds: ["floatStuckDown", "cupTipped"], count: 3, run: stuck(3, "floatStuckDown") },
  ]);
  const shut: Mishap[] = [
    { kind: "runBlocked", run: 0 },
    { kind: "regulatorShut", run: 0 },
    { kind: "oneWayShut", run: 1 },
    { kind: "tapLeftShut", run: 1 },
  ];
  expect(bundlesOf(lineOf(1), shut).map(({ kinds }) => kinds)).toEqual([
    ["runBlocked", "regulatorShut"],
    ["oneWayShut", "tapLeftShut"],
  ]);
});

test("bundlesOf keeps places apart: groups, sources, points, batches of pens", () => {
  const apart: Mishap[] = [
    ...stuck(2),
    { kind: "ventBlocked", source: 0 },
    { kind: "ventBlocked", source: 1 },
    { kind: "jointApart", point: 3 },
    { kind: "jointApart", point: 4 },
    { kind: "moreBirds", pen: 0, batch: 0 },
    { kind: "moreBirds", pen: 0, batch: 1 },
    { kind: "moreBirds", pen: 1, batch: 0 },
    { kind: "hottestWeek" },
  ];
  expect(bundlesOf(lineOf(1, 1), apart)).toHaveLength(apart.length);
});
