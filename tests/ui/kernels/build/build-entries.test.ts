import { readPlan } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import {
  addContact,
  dropContact,
  footingEntries,
  lengthEntries,
  soilEntry,
} from "../../../../packages/ui/src/build/build-entries.js";
import type { PlanChange } from "../../../../packages/ui/src/store/plan-change.js";

const planWith = (keys: object = {}, source: object = {}) => {
  const reading = readPlan(
    JSON.stringify({
      headfall: 1,
      sources: [{ vessel: "bucket-5gal", ...source }],
      runs: [{ length: "2 m" }],
      ...keys,
    }),
  );
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
};
const setIn = (change: PlanChange | undefined) =>
  change?.kind === "set" ? [change.path, change.value] : undefined;
const entryOf = (entries: ReturnType<typeof footingEntries>, title: string) => {
  const entry = entries.find((one) => one.title === title);
  if (entry?.form !== "typed") throw new Error(`no field ${title}`);
  return entry;
};

test("a footing begins with the first thing typed, and goes with the last taken out", () => {
  const path = ["sources", 0, "footing"];
  const bare = footingEntries(planWith(), 0);
  expect(setIn(entryOf(bare, "Side of a foot").change("10 cm"))).toEqual([path, { foot: "10 cm" }]);
  const padded = footingEntries(planWith({}, { footing: { pad: { length: "40 cm", width: "20 cm" } } }), 0);
  expect(setIn(entryOf(padded, "Length of a pad").change(undefined))).toEqual([path, undefined]);
  expect(setIn(entryOf(padded, "Width of a pad").change(undefined))).toEqual([
    path,
    { pad: { length: "40 cm" } },
  ]);
});

test("lengths of a pipe are typed as a list, and an empty one is none", () => {
  const plan = planWith({ shelf: [{ pipe: "pvc-sch40-1/2", sold: "10 ft", pieces: ["1.2 m", "85 cm"] }] });
  const [sold, pieces] = lengthEntries(plan, 0, "PVC") as ReturnType<typeof entryOf>[];
  expect([sold!.typed, pieces!.typed]).toEqual(["10 ft", "1.2 m; 85 cm"]);
  expect(setIn(sold!.change("10 ft; 20 ft"))).toEqual([
    ["shelf", 0, "sold"],
    ["10 ft", "20 ft"],
  ]);
  expect(setIn(pieces!.change(" ; "))).toEqual([["shelf", 0, "pieces"], undefined]);
});

test("the last contact takes the list with it, and the soil can be left untold again", () => {
  const two = planWith({ contacts: [{ who: "A" }, { who: "B" }], soil: "sand" });
  expect(setIn(dropContact(two, 0))).toEqual([["contacts"], [{ who: "B" }]]);
  expect(setIn(dropContact(planWith({ contacts: [{ who: "A" }] }), 0))).toEqual([["contacts"], undefined]);
  expect(setIn(addContact(planWith()))?.[1]).toHaveLength(1);
  const soil = soilEntry(two);
  expect(soil.form === "choice" && soil.value).toBe("sand");
  expect(soil.form === "choice" && setIn(soil.change(""))).toEqual([["soil"], undefined]);
});
