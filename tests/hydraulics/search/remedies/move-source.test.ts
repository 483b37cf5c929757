import { describe, expect, it } from "vitest";
import { moveSource } from "../../../../packages/hydraulics/src/search/remedies/move-source.js";
import { ailingOf, barrel, nipples } from "../ailing.js";

/** A barrel on the ground whose water first goes up to a bank, and comes down to a pen that starves. */
const below = (more: Record<string, unknown> = {}, lead: Record<string, unknown> = {}) => ({
  sources: [barrel({ stand: "0 cm", level: { full: "40 cm", lowest: "10 cm" } })],
  points: [
    { id: "bank", ground: "80 cm", above: "0 cm" },
    { id: "pen", ground: "0 cm", above: "30 cm" },
  ],
  runs: [
    { id: "up", to: "bank", length: "6 m", pipe: "hose-3/4", ...lead },
    {
      id: "lane",
      from: "bank",
      to: "pen",
      length: "8 m",
      drinkers: nipples(3, { first: "7 m", every: "40 cm" }),
    },
  ],
  ...more,
});

describe("moveSource", () => {
  it("puts the barrel at each joint, on the ground there, the highest first", () => {
    const moved = moveSource(ailingOf(below()));
    expect(moved.map(({ changes }) => changes)).toEqual([
      [{ code: "moveSource", source: "barrel", to: "bank" }],
      [{ code: "moveSource", source: "barrel", to: "pen" }],
    ]);
    expect(moved.map(({ plan }) => plan.sources[0]!.ground)).toEqual(["80 cm", "0 cm"]);
    expect(moved[0]!.spent).toMatchObject({ runs: 1, parts: 0, money: 0 });
  });

  it("leads down from it by half a metre more of the first run's own pipe than the highest stand is high", () => {
    const [first] = moveSource(ailingOf(below()));
    const [down, lane] = first!.plan.runs;
    expect(down).toEqual({ id: "down pipe", from: "barrel", to: "bank", length: "200 cm", pipe: "hose-3/4" });
    expect([lane!.id, lane!.from, lane!.to]).toEqual(["lane", "bank", "pen"]);
    // The joints stay where they were.
    expect(first!.plan.points!.map(({ id, ground, above }) => [id, ground, above])).toEqual([
      ["bank", "80 cm", "0 cm"],
      ["pen", "0 cm", "30 cm"],
    ]);
  });

  it("tries four places at the most", () => {
    const more = ["p", "q", "r"].map((id, k) => ({ id, ground: "0 cm", above: `${10 * k} cm` }));
    const runs = more.map(({ id }, k) => ({ id: `to ${id}`, from: "pen", to: id, length: `${k + 1} m` }));
    const many = ailingOf(below({ points: [...below().points, ...more], runs: [...below().runs, ...runs] }));
    expect(moveSource(many)).toHaveLength(4);
  });

  it("moves none whose first run has drinkers or is too short for the pipe down, and none of two", () => {
    expect(moveSource(ailingOf(below({}, { drinkers: nipples(1) })))).toEqual([]);
    expect(moveSource(ailingOf(below({}, { length: "1.4 m" })))).toEqual([]);
    const two = [...below().sources, barrel({ id: "other" })];
    const more = [...below().runs, { id: "second", from: "other", fall: "0 cm", length: "2 m" }];
    expect(moveSource(ailingOf(below({ sources: two, runs: more })))).toEqual([]);
  });
});
