import { expect, test } from "vitest";
import { deviceOf, isOpen, placesOf, rateAt } from "../../../packages/hydraulics/src/simulate/crowd-want.js";
import { lineOf } from "../model/built.js";

const groupOf = (kind: string) => lineOf([{ length: "3 m", drinkers: { kind } }]).drinkers.groups[0]!;

test.each([
  ["nipple-side-action", "nipple", 1, false],
  ["cup-float", "cup", 1, false],
  ["bell", "bell", 5, true],
  ["trough-float", "trough", 10, true],
] as const)("%s is a %s for %i birds at once", (kind, device, places, open) => {
  const group = groupOf(kind);
  expect([deviceOf(group), placesOf(group), isOpen(group)]).toEqual([device, places, open]);
});

test("deviceOf takes a measured drinker of one's own for a cup where a float works it, else for a nipple", () => {
  const group = { ...groupOf("bell"), kindId: "my own" };
  expect(deviceOf({ ...group, workedBy: "float" })).toBe("cup");
  expect(deviceOf({ ...group, workedBy: "trigger" })).toBe("nipple");
});

test("rateAt gives half of a trigger's flow, all of a float's, and never more than the bird swallows", () => {
  expect(rateAt({ flow: 2e-6, workedBy: "trigger", places: 1 }, 5e-6)).toBe(1e-6);
  expect(rateAt({ flow: 2e-6, workedBy: "float", places: 5 }, 5e-6)).toBe(2e-6);
  expect(rateAt({ flow: 2e-6, workedBy: "trigger", places: 1 }, 5e-7)).toBe(5e-7);
});
