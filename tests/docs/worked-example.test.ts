import { expect, test } from "vitest";
import { viscosityOfWater } from "../../packages/hydraulics/src/physics/water.js";
import { solveExample, workByHand } from "./made/worked-example.js";

test("the worked example by plain arithmetic ends where the solver does, after as many steps", () => {
  const rows = workByHand();
  const last = rows.at(-1)!;
  const solution = solveExample();
  expect(solution.outcome).toBe("solved");
  // The example writes the viscosity with six digits.
  expect(viscosityOfWater(20)).toBeCloseTo(1.00337e-6, 11);
  expect(solution.drinkerFlow[0]! * 6e7).toBeCloseTo(last.q1, 3);
  expect(solution.drinkerFlow[1]! * 6e7).toBeCloseTo(last.q2, 3);
  expect(solution.effort.steps).toBe(rows.length - 1);
});
