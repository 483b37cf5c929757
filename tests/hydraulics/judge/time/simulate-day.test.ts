import { describe, expect, it, test } from "vitest";
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

test("a day of twenty hens drinks about what the tables say, to the bit the same for the same seed", () => {
  const day = (seed: number) => {
    const answer = simulateDay(read(tubPlan("60 cm")), { seed });
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    return answer.result;
  };
  const [one, again] = [day(1), day(1)];
  expect(again).toEqual(one);
  // 270 mL each to size on; to expect is less.
  expect(one.pens[0]!.drunk).toBeGreaterThan(20 * 0.15e-3);
  expect(one.pens[0]!.drunk).toBeLessThan(20 * 0.27e-3);
});

test("a day of the figure to size on drinks more than one of what is to be expected", () => {
  const drunk = (figure?: "size" | "expect") => {
    const answer = simulateDay(read(tubPlan("60 cm")), figure === undefined ? {} : { figure });
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    return answer.result.pens[0]!.drunk;
  };
  expect(drunk("size")).toBeGreaterThan(drunk("expect"));
  expect(drunk()).toBe(drunk("expect"));
});
