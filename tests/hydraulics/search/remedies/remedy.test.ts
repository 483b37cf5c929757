import { describe, expect, it } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import {
  bought,
  freshName,
  withJointAt,
  withRun,
} from "../../../../packages/hydraulics/src/search/remedies/remedy.js";

function planOf(more: Record<string, unknown> = {}) {
  const reading = checkDocument({
    headfall: 1,
    sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "40 cm" }],
    runs: [{ id: "line", length: "5 m", drinkers: { kind: "nipple-side-action", count: 2 } }],
    ...more,
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

describe("bought", () => {
  it("costs money where it has a price, and counts as without one where not", () => {
    expect(bought(3, 2.5)).toMatchObject({ parts: 3, money: 7.5, unpriced: 0 });
    expect(bought(3, undefined)).toMatchObject({ parts: 3, money: 0, unpriced: 3 });
    expect(bought(2, 0)).toMatchObject({ parts: 2, money: 0, unpriced: 0 });
  });
});

describe("freshName", () => {
  it("is what is wished for, with a number where something is called so: a source, point, run or end", () => {
    const points = [{ id: "tank", ground: "0 cm" }];
    expect(freshName(planOf(), "tank")).toBe("tank");
    expect(freshName(planOf({ points, runs: [{ id: "line", to: "tank", length: "5 m" }] }), "tank")).toBe(
      "tank 2",
    );
    expect(freshName(planOf(), "barrel")).toBe("barrel 2");
    expect(freshName(planOf(), "line")).toBe("line 2");
    expect(freshName(planOf(), "line end")).toBe("line end 2");
    const two = [
      { id: "line", length: "5 m" },
      { id: "line 2", from: "barrel", length: "5 m" },
    ];
    expect(freshName(planOf({ runs: two }), "line")).toBe("line 3");
  });
});

describe("withJointAt", () => {
  const joint = { name: "tee", height: 0.35, ground: 0.05 };

  it("adds a point that the plan has not, and changes one that it has, keeping the rest of it", () => {
    expect(withJointAt(planOf(), joint, "metric").points).toEqual([
      { id: "tee", ground: "5 cm", above: "30 cm" },
    ]);
    const points = [
      { id: "tee", ground: "0 cm", above: "90 cm", bleed: true },
      { id: "end", ground: "0 cm", above: "10 cm" },
    ];
    const runs = [
      { id: "a", to: "tee", length: "5 m" },
      { id: "b", to: "end", length: "5 m" },
    ];
    expect(withJointAt(planOf({ points, runs }), joint, "us").points).toEqual([
      { id: "tee", ground: "1.97 in", above: "11.81 in", bleed: true },
      points[1],
    ]);
  });
});

describe("withRun", () => {
  it("changes one run and leaves the others", () => {
    const plan = planOf({
      runs: [
        { id: "a", length: "5 m" },
        { id: "b", from: "barrel", length: "4 m" },
      ],
    });
    expect(withRun(plan, 1, { length: "7 m" }).runs.map(({ id, length }) => [id, length])).toEqual([
      ["a", "5 m"],
      ["b", "7 m"],
    ]);
  });
});
