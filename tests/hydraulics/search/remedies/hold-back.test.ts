import { describe, expect, it } from "vitest";
import { holdBack } from "../../../../packages/hydraulics/src/search/remedies/hold-back.js";
import { ailingOf, barrel, nipples } from "../ailing.js";

/** Water so high above its four nipples that they drip. */
const ailing = ailingOf({
  sources: [barrel({ stand: "80 cm", level: { full: "70 cm", lowest: "60 cm" } })],
  points: [{ id: "end", ground: "0 cm", above: "10 cm" }],
  runs: [{ id: "line", to: "end", length: "5 m", drinkers: nipples(4, { first: "4 m", every: "30 cm" }) }],
});

/** What the regulator is set to, where this much head is asked to be left to spare. */
function setting(margin: number): number | undefined {
  const [change] = holdBack({ ...ailing, margin }).flatMap(({ changes }) => changes);
  return change?.code === "regulator" ? change.sets : undefined;
}

describe("holdBack", () => {
  const { drinkers, points, runs } = ailing.line;
  const ceilings = [...drinkers.height].map(
    (height, d) => height + drinkers.groups[drinkers.group[d]!]!.holdsUpTo,
  );
  const room = Math.min(...ceilings) - points.height[runs[0]!.points[0]!]!;

  it("sets a regulator as high as the drinkers hold, to the centimetre below, less what is to be spared", () => {
    for (const margin of [0, 0.0333, 0.1]) {
      const sets = setting(margin)!;
      expect(sets).toBeLessThanOrEqual(room - margin);
      expect(sets).toBeGreaterThan(room - margin - 0.01);
      expect(sets * 100).toBeCloseTo(Math.round(sets * 100), 9);
    }
  });

  it("sets none to less than two centimetres", () => {
    expect(setting(room - 0.024)).toBe(0.02);
    expect(setting(room - 0.0199)).toBeUndefined();
  });

  it("sets none where there is one", () => {
    const [run] = ailing.plan.runs;
    const regulated = { ...ailing.plan, runs: [{ ...run!, regulator: { sets: "3 m" } }] };
    expect(holdBack({ ...ailing, plan: regulated })).toEqual([]);
  });
});
