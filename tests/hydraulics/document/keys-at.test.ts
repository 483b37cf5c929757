import { expect, test } from "vitest";
import { keyMeant, keysAt } from "../../../packages/hydraulics/src/document/keys-at.js";
import { planSchema } from "../../../packages/hydraulics/src/document/plan-schema.js";
import { planWith, problemsOf } from "./problem-cases.js";

const mend = (document: unknown) => problemsOf(document).map((problem) => [problem.path, problem.mend]);
const ASKED = "Check the spelling, or remove it.";

test.each([
  ["a source", { sources: [{ vessel: "drum-55gal-plastic", stnd: "60 cm" }] }, "sources[0].stnd", "stand"],
  ["a run", { runs: [{ length: "3 m", pippe: "pvc-sch40-1/2" }] }, "runs[0].pippe", "pipe"],
  [
    "a group, its letters swapped",
    { runs: [{ length: "3 m", drinkers: { kind: "cup-float", cuont: 3 } }] },
    "runs[0].drinkers.cuont",
    "count",
  ],
  [
    "a group in a list",
    { runs: [{ length: "3 m", drinkers: [{ kind: "cup-float", evry: "30 cm" }] }] },
    "runs[0].drinkers[0].evry",
    "every",
  ],
  [
    "the plan, its language another",
    { runs: [{ length: "3 m", color: "white" }] },
    "runs[0].color",
    "colour",
  ],
  ["the plan, in capitals", { Friction: "hazen-williams" }, "Friction", "friction"],
  ["the plan, with a sign", { own_drinkers: {} }, "own_drinkers", "ownDrinkers"],
  [
    "a drinker of one's own",
    {
      ownDrinkers: {
        jar: {
          readings: [
            { head: "30 cm", flow: "75 mL/min" },
            { head: "60 cm", flow: "106 mL/min" },
          ],
          holdsUpTo: "1 m",
          neeed: "50 mL/min",
        },
      },
    },
    "ownDrinkers.jar.neeed",
    "need",
  ],
])("a slip in a key of %s is told the key it was meant to be", (_where, more, path, meant) => {
  expect(mend(planWith(more))).toContainEqual([path, `Did you mean "${meant}"?`]);
});

test.each([["colour"], ["constructor"], ["x"], ["stand"], ["s".repeat(100_000)]])(
  "a key of the plan that is near none is offered none: %.20s",
  (key) => {
    expect(problemsOf(planWith({ [key]: "red" })).map((problem) => problem.mend)).toEqual([ASKED]);
  },
);

test("a vessel is offered the keys of its own shape only", () => {
  const box = { shape: "box", length: "1 m", width: "1 m", height: "1 m", diametr: "1 m" };
  const upright = { shape: "upright", height: "1 m", diametr: "1 m" };
  const of = (vessel: unknown) =>
    mend(planWith({ sources: [{ vessel }] })).find(([path]) => path?.endsWith("diametr"));
  expect(of(box)?.[1]).toBe(ASKED);
  expect(of(upright)?.[1]).toBe('Did you mean "diameter"?');
});

test("an object of more wrong keys than anybody mistypes is offered none", () => {
  const wrong = Object.fromEntries(Array.from({ length: 21 }, (_, i) => [`pen${i}`, 1]));
  expect(mend(planWith(wrong)).map(([, words]) => words)).toEqual(Object.keys(wrong).map(() => ASKED));
  delete wrong["pen0"];
  expect(mend(planWith(wrong))[0]?.[1]).toBe('Did you mean "pens"?');
});

test("of many runs with a slip the first are offered the key, the others not", () => {
  const words = mend(
    planWith({ runs: Array.from({ length: 201 }, () => ({ length: "3 m", pipes: "pex" })) }),
  );
  expect(words[199]?.[1]).toBe('Did you mean "pipe"?');
  expect(words[200]?.[1]).toBe(ASKED);
});

test("keysAt names what may stand at a place, and nothing where no object may", () => {
  const document = { sources: [{ vessel: { shape: "lying" } }], runs: [{ drinkers: [{}] }] };
  const at = (...steps: (string | number)[]) => keysAt(planSchema, document, steps);
  expect(at()).toContain("ownDrinkers");
  expect(at("sources", 0)).toContain("stand");
  expect(at("sources", 0, "vessel")).toEqual(["shape", "diameter", "length"]);
  expect(at("runs", 0, "drinkers", 0)).toEqual(at("runs", 0, "drinkers"));
  expect(at("runs", 0, "length")).toEqual([]);
  expect(at("runs", "length")).toEqual([]);
  expect(at("toString")).toEqual([]);
});

test("keyMeant takes the nearest, and of equals the first", () => {
  expect(keyMeant("bale", ["bake", "base", "bales"])).toBe("bake");
  expect(keyMeant("bales", ["bake", "base", "bale"])).toBe("bale");
  expect(keyMeant("x", ["y", "xy"])).toBeUndefined();
});
