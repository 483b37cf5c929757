import type { Plan } from "@headfall/hydraulics";
import { describe, expect, test } from "vitest";
import {
  NO_HISTORY,
  type PlanHistory,
  type PlanStep,
  withStep,
} from "../../../packages/ui/src/store/plan-history.js";

const plans = Array.from(
  { length: 1201 },
  (_, cm): Plan => ({ headfall: 1, sources: [{ vessel: "bucket-20l", stand: `${cm} cm` }], runs: [] }),
);
const stepTo = (n: number, gesture?: string): PlanStep => ({
  before: plans[n - 1]!,
  after: plans[n]!,
  words: `step ${n}`,
  gesture,
});
const historyOf = (
  steps: number,
  gestureOf: (n: number) => string | undefined = () => undefined,
): PlanHistory =>
  plans
    .slice(1, steps + 1)
    .reduce((history, _, k) => withStep(history, stepTo(k + 1, gestureOf(k + 1))), NO_HISTORY);

describe("withStep", () => {
  test("keeps every step up to a thousand, and then the newest thousand", () => {
    expect(historyOf(1000).done).toHaveLength(1000);
    const { done } = historyOf(1200);
    expect(done).toHaveLength(1000);
    expect([done[0]!.words, done.at(-1)!.words]).toEqual(["step 201", "step 1200"]);
  });

  test("keeps of a drag where it began and where it is, none of the plans between, however long it is", () => {
    const { done } = historyOf(1200, () => "drag");
    expect(done).toEqual([{ before: plans[0], after: plans[1200], words: "step 1200", gesture: "drag" }]);
  });

  test("keeps as many drags, each of a hundred edits, as steps of their own", () => {
    const { done } = historyOf(1200, (n) => `drag ${Math.ceil(n / 100)}`);
    expect(done.map(({ before, after: end }) => [before, end])).toEqual(
      Array.from({ length: 12 }, (_, k) => [plans[100 * k], plans[100 * k + 100]]),
    );
  });

  test("forgets what was undone once something else is done", () => {
    const undone = { done: [stepTo(1)], undone: [stepTo(2)] };
    expect(withStep(undone, stepTo(3)).undone).toEqual([]);
  });
});
