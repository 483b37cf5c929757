import type { Plan } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import { mergePlans } from "../../../packages/ui/src/storage/merge-plans.js";
import { smallLine as base, withLength, withStand } from "../fixtures/stored-plans.js";

test("mergePlans makes one plan of two changes at different places, whichever is called mine", () => {
  const [one, other] = [withStand(base, "70 cm"), withLength(base, "5 m")];
  const both = withLength(one, "5 m");
  expect(mergePlans(base, one, other)).toEqual(both);
  expect(mergePlans(base, other, one)).toEqual(both);
});

test("mergePlans gives theirs back as it is when mine has no change that theirs lacks", () => {
  const theirs = withStand(base, "70 cm");
  expect(mergePlans(base, base, theirs)).toBe(theirs);
  expect(mergePlans(base, withStand(base, "70 cm"), theirs)).toBe(theirs);
});

test("mergePlans lets both have made the same change beside others of their own", () => {
  const mine = withLength(withStand(base, "70 cm"), "5 m");
  const theirs: Plan = { ...withStand(base, "70 cm"), note: "theirs" };
  expect(mergePlans(base, mine, theirs)).toEqual({ ...mine, note: "theirs" });
});

test("mergePlans is undefined when both changed the same place, each in its own way", () => {
  expect(mergePlans(base, withStand(base, "70 cm"), withStand(base, "80 cm"))).toBeUndefined();
});

test("mergePlans is undefined when two changes that are each good make no plan together", () => {
  const two: Plan = { ...base, runs: [...base.runs, { id: "second", length: "2 m" }] };
  const renamed = (index: number): Plan => ({
    ...two,
    runs: two.runs.map((run, i) => (i === index ? { ...run, id: "pen" } : run)),
  });
  expect(mergePlans(two, renamed(0), renamed(1))).toBeUndefined();
});
