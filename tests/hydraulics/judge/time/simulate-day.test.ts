import { describe, expect, it } from "vitest";
import { simulateDay } from "../../../../packages/hydraulics/src/judge/time/simulate-day.js";
import { read, tubPlan } from "./tub.js";

describe("simulateDay", () => {
  it("tells what contradicts itself in the plan, as all questions do", () => {
    const points = [{ id: "end", ground: "0 cm", above: "0 cm" }];
    const runs = [
      { to: "end", length: "3 m", fall: "10 cm", drinkers: { kind: "nipple-side-action", count: 2 } },
    ];
    const answer = simulateDay(read(tubPlan("60 cm", { points, runs })));
    expect(answer.ok ? [] : answer.problems.map(({ code }) => code)).toEqual(["heightsDisagree"]);
  });
});
