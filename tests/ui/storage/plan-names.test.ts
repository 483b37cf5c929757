import { checkDocument } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import { nameFor, newId, withName } from "../../../packages/ui/src/storage/plan-names.js";
import { smallLine } from "../fixtures/stored-plans.js";

test("nameFor counts on until the name is free", () => {
  const taken = new Set(["Pen (copy)", "Pen (copy 2)"]);
  expect(nameFor("Pen", "copy", taken)).toBe("Pen (copy 3)");
  expect(nameFor("", "copy", taken)).toBe("Line (copy)");
});

test("nameFor never makes a name too long for a plan, nor cuts a sign in two", () => {
  const name = nameFor("🐔".repeat(40), "other tab", new Set());
  expect(name.length).toBeLessThanOrEqual(80);
  expect(name.isWellFormed()).toBe(true);
  expect(checkDocument(withName(smallLine, name)).ok).toBe(true);
});

test("withName puts the name first after the version, and takes it out when it is empty", () => {
  expect(Object.keys(withName(smallLine, "x")).slice(0, 2)).toEqual(["headfall", "name"]);
  expect("name" in withName(smallLine, "")).toBe(false);
});

test("newId is another one each time", () => {
  expect(new Set(Array.from({ length: 1000 }, newId)).size).toBe(1000);
});
