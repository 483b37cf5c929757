import { expect, test } from "vitest";
import { writeRaw } from "../../../packages/ui/src/storage/raw-text.js";
import { readStored } from "../../../packages/ui/src/storage/stored-plan.js";
import { smallLine } from "../fixtures/stored-plans.js";

const record = { id: "a", name: "old name", plan: smallLine, revision: 3, changedAt: 1000 };

test("readStored gives the plan of a good record, under the name the plan itself bears", () => {
  expect(readStored("a", record)).toMatchObject({
    kind: "openable",
    id: "a",
    name: smallLine.name,
    plan: smallLine,
    revision: 3,
  });
});

test("readStored brings an older document to the present version and leaves the record as it was", () => {
  const { sources, ...rest } = smallLine;
  const older = { ...record, plan: { ...rest, headfall: 0, source: sources[0] } };
  const before = JSON.stringify(older);
  expect(readStored("a", older)).toMatchObject({ kind: "openable", plan: smallLine });
  expect(JSON.stringify(older)).toBe(before);
});

test("readStored tells a document from a newer page from a damaged one, and keeps the record whole", () => {
  const newer = { ...record, plan: { headfall: 99, anything: [1] } };
  expect(readStored("a", newer)).toMatchObject({ kind: "newer", name: "old name", record: newer });
  expect(readStored("a", { ...record, plan: { headfall: 1 } })).toMatchObject({ kind: "damaged" });
});

test.each([
  null,
  7,
  "text",
  [],
  {},
  { plan: smallLine, revision: Number.NaN, changedAt: "yesterday", name: 4 },
])("readStored makes something of %j without throwing", (found) => {
  const kept = readStored("key", found);
  expect(kept).toMatchObject({ id: "key", revision: 0, changedAt: 0 });
});

test("writeRaw writes anything a browser can store, so that a damaged record can always be taken out", () => {
  const ring: Record<string, unknown> = { big: 12n, map: new Map([["a", 1]]), set: new Set([2]) };
  ring["self"] = ring;
  expect(JSON.parse(writeRaw(ring))).toEqual({
    big: "12",
    map: [["a", 1]],
    set: [2],
    self: "(the same as above)",
  });
  expect(writeRaw(undefined)).toBe("null\n");
});
