import type { Plan } from "@headfall/hydraulics";
import { describe, expect, test } from "vitest";
import { namePath } from "../../../packages/ui/src/kernels/name-path.js";

const plan: Plan = {
  headfall: 1,
  sources: [{ id: "barrel", vessel: "drum-55gal-plastic" }, { vessel: "drum-55gal-plastic" }],
  points: [{ id: "gate" }],
  runs: [{ id: "feed", length: "12 m" }, { length: "6 m" }],
};

describe("namePath", () => {
  test.each([
    ["runs[0].length", "run feed, length"],
    ["runs[1].length", "run 2, length"],
    ["runs[0]", "run feed"],
    ["sources[0].level.full", "source barrel, level, full"],
    ["sources[1].stand", "source 2, stand"],
    ["points[0].place.x", "joint gate, place, x"],
    ["runs[0].drinkers.every", "run feed, drinkers, every"],
    ["runs[0].drinkers[1].first", "run feed, drinkers, group 2, first"],
    ["runs[0].survey[2].fall", "run feed, surveyed height 3, fall"],
    ["runs[1].oneWay.opensAt", "run 2, one way, opens at"],
    ["shelf[3].pipe", "shelf, number 4, pipe"],
    ["runs", "runs"],
  ])("names %s %s", (path, words) => {
    expect(namePath(path, plan)).toBe(words);
  });

  test("counts a part that the plan does not have", () => {
    expect(namePath("runs[7].length", plan)).toBe("run 8, length");
    expect(namePath("points[2]", plan)).toBe("joint 3");
  });

  test("leaves what is no path as it is", () => {
    expect(namePath("the plan", plan)).toBe("the plan");
    expect(namePath('runs[0]["odd key"]', plan)).toBe('runs[0]["odd key"]');
  });
});
