import { buildLine, type Plan } from "@headfall/hydraulics";
import { describe, expect, test } from "vitest";
import { heightKeyOf } from "../../../packages/ui/src/store/measure-height.js";
import { heightsOf } from "../../../packages/ui/src/store/plan-heights.js";
import { valueIn } from "../../../packages/ui/src/store/plan-values.js";
import { PLANS, planOf } from "./plan-cases.js";

test("heightsOf puts every joint of 200 random plans where the library's own line has it", () => {
  let joints = 0;
  for (let seed = 0; seed < PLANS; seed++) {
    const building = buildLine(planOf(seed));
    if (!building.ok) throw new Error(`plan ${seed}: ${JSON.stringify(building.problems)}`);
    const { points } = building.line;
    for (const [name, { height }] of heightsOf(planOf(seed)).joints) {
      expect(height, `${seed} ${name}`).toBeCloseTo(points.height[points.id.indexOf(name)]!, 9);
      joints += 1;
    }
  }
  expect(joints).toBeGreaterThan(800);
});

const plan: Plan = {
  headfall: 1,
  sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "60 cm" }],
  points: [
    { id: "fence", above: "30 cm" },
    { id: "gate", bleed: true },
  ],
  runs: [
    { id: "feed", to: "gate", length: "12 m", fall: "10 cm" },
    { id: "up", to: "fence", length: "5 m" },
    {
      id: "coop",
      length: "3 m",
      survey: [
        { along: "1 m", fall: "5 cm" },
        { along: "3 m", fall: "8 cm" },
      ],
    },
    { id: "level", from: "gate", length: "4 m" },
  ],
};

describe("heightKeyOf", () => {
  test.each([
    ["barrel", ["sources", 0, "stand"], "60 cm", "stand of barrel"],
    ["fence", ["points", 0, "above"], "30 cm", "height of the pipe at fence"],
    ["gate", ["runs", 0, "fall"], "10 cm", "fall of feed"],
    ["coop end", ["runs", 2, "survey", 1, "fall"], "8 cm", "fall of coop"],
    ["level end", ["runs", 3, "fall"], undefined, "fall of level"],
  ])("of %s is the key that decides it", (joint, path, typed, what) => {
    expect(heightKeyOf(plan, joint)).toEqual({ path, typed, what });
  });

  test("of any joint of a random plan leads to what is typed there", () => {
    for (let seed = 0; seed < 100; seed++) {
      for (const joint of heightsOf(planOf(seed)).joints.keys()) {
        const { path, typed } = heightKeyOf(planOf(seed), joint);
        expect(path.reduce(valueIn, planOf(seed) as unknown)).toBe(typed);
      }
    }
  });
});
