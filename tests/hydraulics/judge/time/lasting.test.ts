import { describe, expect, it } from "vitest";
import { howLongItLasts } from "../../../../packages/hydraulics/src/judge/time/lasting.js";
import { read, tubPlan } from "./tub.js";

describe("howLongItLasts", () => {
  const lasting = (hot: boolean) => {
    const weather = { high: "21 degC", ...(hot ? { hotSpell: { high: "36 degC", days: 5 } } : {}) };
    const answer = howLongItLasts(read(tubPlan("10 cm", { weather })));
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    return answer.lasting.alone;
  };

  it("is shorter in the hot spell than in usual weather, on the same figure", () => {
    const { size, hot } = lasting(true);
    expect(hot.empty!).toBeLessThan(0.9 * size.empty!);
    expect(hot.firstDay).toBeGreaterThan(1.2 * size.firstDay);
  });
});
