import { expect, test } from "vitest";
import { countOf, findingsOf } from "../../../../packages/hydraulics/src/judge/yard/yard-findings.js";
import type { Batch, Pen } from "../../../../packages/hydraulics/src/model/flock.js";
import { birdById } from "../../../../packages/hydraulics/src/tables/birds.js";

test("countOf a pen is the birds of all batches that have come", () => {
  const batch = (count: number, ageDays: number): Batch => ({
    ...{ kind: birdById("hen")!, index: 0, lay: 0.9 },
    count,
    ageDays,
  });
  const penOf = (...batches: Batch[]): Pen => ({ id: "pen", index: 0, batches, drinkers: [] });
  expect(countOf(penOf(batch(12, 200), batch(5, 0), batch(30, -1)))).toBe(17);
  expect(countOf(penOf())).toBe(0);
});

test("findingsOf a pen speak of no water only where neither line nor waterers have a place", () => {
  const pen = { pen: "hens", birds: 12, covered: 1, coveredByLine: 1, waterers: [] };
  const codes = (linePlaces: number, loosePlaces: number) =>
    findingsOf({ ...pen, linePlaces, loosePlaces } as never, { most: undefined }).map(({ code }) => code);
  expect([codes(4, 4), codes(4, 0), codes(0, 4), codes(0, 0)]).toEqual([[], [], [], ["noWater"]]);
});
