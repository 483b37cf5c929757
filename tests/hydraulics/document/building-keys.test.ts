import { expect, test } from "vitest";
import { readPlan } from "../../../packages/hydraulics/src/document/read-plan.js";
import { SOILS } from "../../../packages/hydraulics/src/document/soil-names.js";
import { writeProblem } from "../../../packages/hydraulics/src/document/write-problem.js";
import { shelfOf } from "../../../packages/hydraulics/src/search/cure-space.js";
import { allSoils } from "../../../packages/hydraulics/src/tables/building.js";

const PLAN = { headfall: 1, sources: [{ vessel: "bucket-5gal" }], runs: [{ length: "2 m" }] };
const problemsOf = (keys: object): string[] => {
  const reading = readPlan(JSON.stringify({ ...PLAN, ...keys }));
  return reading.ok ? [] : reading.problems.map(writeProblem);
};

test("the soils that plans can name are those of the table", () => {
  expect([...SOILS]).toEqual(allSoils.map(({ id }) => id));
});

test("keys for building are read as typed", () => {
  const keys = {
    soil: "sand",
    contacts: [{ who: "A neighbour", phone: "555 0100" }],
    shelf: [{ pipe: "pvc-sch40-1/2", sold: ["10 ft", "20 ft"], pieces: ["1.2 m", "0.8 m"], onHand: "3 m" }],
    prices: { parts: { "elbow-90": 0.5 } },
    sources: [
      { vessel: "bucket-5gal", footing: { feet: 4, foot: "3.5 in", pad: { length: "40 cm" }, weighs: 12 } },
    ],
  };
  expect(problemsOf(keys)).toEqual([]);
});

test("pieces that are longer together than all that is on hand are a problem, told with how to mend it", () => {
  expect(problemsOf({ shelf: [{ pipe: "pvc-sch40-1/2", pieces: ["1 m", "1.5 m"], onHand: "2 m" }] })).toEqual(
    [
      'shelf[0].onHand (line 1): found "2 m". Its pieces are 2.50 m together: there is at least as much on hand. Correct one of the two, or leave `onHand` out.',
    ],
  );
});

test("a soil nobody knows and a piece without a length are problems", () => {
  const [second, first] = problemsOf({ soil: "mud", shelf: [{ pipe: "pvc-sch40-1/2", pieces: ["long"] }] });
  expect(first).toMatch(/^shelf\[0\]\.pieces\[0\] \(line 1\): found "long"/);
  expect(second).toMatch(/^soil \(line 1\): found "mud"/);
});

test("pieces on hand count as pipe on hand for a cure, unless all of it is told", () => {
  const onHand = (entry: object) => {
    const reading = readPlan(JSON.stringify({ ...PLAN, shelf: [{ pipe: "pvc-sch40-1/2", ...entry }] }));
    return reading.ok ? shelfOf(reading.plan)?.[0]?.onHand : undefined;
  };
  expect(onHand({ pieces: ["1.2 m", "0.8 m"] })).toBeCloseTo(2, 9);
  expect(onHand({ pieces: ["1.2 m"], onHand: "3 m" })).toBeCloseTo(3, 9);
});
