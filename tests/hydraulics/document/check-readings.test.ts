import { expect, test } from "vitest";
import { checkReadings } from "../../../packages/hydraulics/src/document/check-readings.js";

const check = (readings: unknown, more: Record<string, unknown> = {}) =>
  checkReadings({ readings, ...more }, ["ownDrinkers", "jar"]).map(({ path, allowed }) => [path, allowed]);
const reading = (head: string, flow: string) => ({ head, flow });
const PLAIN = [reading("25 cm", "60 mL/min"), reading("1 m", "120 mL/min")];

test("checkReadings(a plain orifice: four times the head, twice the flow) finds nothing", () => {
  expect(check(PLAIN)).toEqual([]);
  expect(check(PLAIN, { opensAt: "5 cm" })).toEqual([]);
});

test("checkReadings(readings in any order) finds nothing", () => {
  expect(check([...PLAIN].reverse())).toEqual([]);
});

test("checkReadings(a head below the opening head) points at that head", () => {
  expect(check(PLAIN, { opensAt: "25 cm" })).toEqual([
    ["ownDrinkers.jar.readings[0].head", "A reading is taken above the head that opens the drinker."],
  ]);
});

test("checkReadings(less flow at more head) points at that flow", () => {
  expect(check([...PLAIN, reading("2 m", "100 mL/min")])).toEqual([
    ["ownDrinkers.jar.readings[2].flow", "At more head a drinker gives more."],
  ]);
});

test("checkReadings looks as closely when the opening head is written as 0", () => {
  expect(check([...PLAIN, reading("2 m", "100 mL/min")], { opensAt: "0 cm" })).toHaveLength(1);
});

test("checkReadings(all at one head) asks for another head", () => {
  expect(check([reading("30 cm", "60 mL/min"), reading("30 cm", "61 mL/min")])).toEqual([
    ["ownDrinkers.jar.readings", "At least two readings at different heads."],
  ]);
});

test("checkReadings(flow as head to the power 3) gives the exponent it found", () => {
  expect(check([reading("1 m", "10 mL/min"), reading("2 m", "80 mL/min")])).toEqual([
    ["ownDrinkers.jar.readings", "Flow grows as head to the power 0.2 to 2; these give 3.00."],
  ]);
});

test.each([
  ["no readings", []],
  ["one reading", [PLAIN[0]]],
  ["no list", "many"],
  ["an unreadable head", [PLAIN[0], reading("high", "60 mL/min")]],
  ["a negative head", [PLAIN[0], reading("-1 m", "60 mL/min")]],
  ["no flow", [PLAIN[0], reading("1 m", "0 mL/min")]],
  ["null for a reading", [PLAIN[0], null]],
])("checkReadings(%s) leaves the matter to the schema", (_, readings) => {
  expect(check(readings)).toEqual([]);
});
