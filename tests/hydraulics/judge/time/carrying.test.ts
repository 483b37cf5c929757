import { describe, expect, it } from "vitest";
import { carryingOf } from "../../../../packages/hydraulics/src/judge/time/carrying.js";
import { read, tubPlan } from "./tub.js";

describe("carryingOf", () => {
  const chicks = (day: string) => {
    const answer = carryingOf(
      read(
        tubPlan("60 cm", {
          day,
          pens: [{ id: "chicks", birds: { kind: "pullet", count: 40, hatched: "2026-07-01" } }],
        }),
      ),
      { weeks: 3 },
    );
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    return answer.carrying.days;
  };

  it("carries in the third week what is carried on that day", () => {
    const now = chicks("2026-07-04");
    expect(now.map(({ week }) => week)).toEqual([0, 1, 2, 3]);
    for (const [week, day] of [
      [1, "2026-07-11"],
      [2, "2026-07-18"],
      [3, "2026-07-25"],
    ] as const)
      expect(now[week]!.volume.size).toBeCloseTo(chicks(day)[0]!.volume.size, 12);
    expect(now[3]!.volume.size).toBeGreaterThan(1.5 * now[0]!.volume.size);
  });
});
