import { describe, expect, it } from "vitest";
import { buildCureLines } from "../../../packages/hydraulics/src/search/cure-lines.js";
import { buildCureSpace } from "../../../packages/hydraulics/src/search/cure-space.js";
import { buildDemandForest, highestStands } from "../../../packages/hydraulics/src/search/demand-forest.js";
import { buildRequirement } from "../../../packages/hydraulics/src/search/requirement.js";
import { judgeOf } from "../../../packages/hydraulics/src/search/solve-space.js";
import { unbounded } from "../../arbitraries/searched-case.js";
import { barrel, nipples, planOf } from "./ailing.js";

/** The height of the highest stand from which a run of this length comes down to the ground. */
function highest(length: string) {
  const plan = planOf({
    sources: [barrel()],
    points: [{ id: "end", ground: "0 cm", above: "0 cm" }],
    runs: [{ id: "line", to: "end", length, drinkers: nipples(2) }],
  });
  const space = buildCureSpace(plan, { standMost: 1.5, standStep: 0.1 }, { pipes: true, stands: true });
  const building = buildCureLines(space);
  if (!building.ok) throw new Error(JSON.stringify(building.problems));
  const { lines } = building;
  const [option] = highestStands(lines);
  const requiring = buildRequirement(plan, lines.present, {});
  if (!requiring.ok) throw new Error(JSON.stringify(requiring.problems));
  const works = judgeOf(lines, requiring.requirement, unbounded());
  // From a higher stand such a run does not come down: there is no such line, so it does not work.
  for (const [k, { height }] of space.sources[0]!.options.entries())
    if (height > space.sources[0]!.options[option!]!.height + 1e-9)
      expect([lines.lineOf([0, k]), lines.lineOf([1, k]), works([0, k])]).toEqual([
        undefined,
        undefined,
        false,
      ]);
  return space.sources[0]!.options[option!]!.height;
}

describe("highestStands", () => {
  it("is the highest that is thought of, or from which the pipe is long enough to come down", () => {
    expect(highest("5 m")).toBeCloseTo(1.5, 9);
    const low = highest("80 cm");
    expect(low).toBeGreaterThan(0.5);
    expect(low).toBeLessThanOrEqual(0.8);
  });
});

describe("what levels say of a line with a one-way valve", () => {
  it("counts what opens the valve: no stand is left out that works", () => {
    const stands = (more: Record<string, unknown>) => {
      const plan = planOf({
        sources: [barrel({ level: { full: "30 cm", lowest: "20 cm" } })],
        points: [{ id: "end", ground: "0 cm", above: "10 cm" }],
        runs: [
          {
            id: "line",
            to: "end",
            length: "4 m",
            drinkers: nipples(2, { first: "3 m", every: "30 cm" }),
            ...more,
          },
        ],
      });
      const space = buildCureSpace(plan, { standMost: 1.5, standStep: 0.05 }, { pipes: false, stands: true });
      const building = buildCureLines(space);
      if (!building.ok) throw new Error(JSON.stringify(building.problems));
      const requiring = buildRequirement(plan, building.lines.present, {});
      if (!requiring.ok) throw new Error(JSON.stringify(requiring.problems));
      const { requirement } = requiring;
      const forest = buildDemandForest(building.lines, requirement, requirement.scenes[0]!)!;
      const works = judgeOf(building.lines, requirement, unbounded());
      const all = space.sources[0]!.options.map(({ height }, k) => ({ height, k }));
      const good = all.filter(({ k }) => works([0, k]));
      for (const { height, k } of good)
        expect([height, forest.standAt(0, k).allowed]).toEqual([height, true]);
      return Math.max(...good.map(({ height }) => height));
    };
    // A valve that takes 12 cm lets the barrel stand higher by as much.
    expect(stands({ oneWay: { opensAt: "12 cm" } })).toBeGreaterThan(stands({}) + 0.05);
  });
});

describe("what is asked of a line with a regulator", () => {
  it("is no more than the regulator holds: its setting above where it sits", () => {
    const plan = planOf({
      sources: [barrel()],
      points: [
        { id: "foot", ground: "0 cm", above: "15 cm" },
        { id: "end", ground: "0 cm", above: "10 cm" },
      ],
      runs: [
        { id: "down", to: "foot", length: "3 m" },
        {
          id: "line",
          from: "foot",
          to: "end",
          length: "3 m",
          regulator: { sets: "25 cm" },
          drinkers: nipples(2),
        },
      ],
    });
    const building = buildCureLines(buildCureSpace(plan, {}, { pipes: false, stands: true }));
    if (!building.ok) throw new Error(JSON.stringify(building.problems));
    const requiring = buildRequirement(plan, building.lines.present, {});
    if (!requiring.ok) throw new Error(JSON.stringify(requiring.problems));
    const { requirement } = requiring;
    const forest = buildDemandForest(building.lines, requirement, requirement.scenes[0]!)!;
    const { held } = forest.standAt(0, 0).asks;
    const finite = held.filter(Number.isFinite);
    expect(finite).toHaveLength(1);
    expect(finite[0]).toBeCloseTo(0.15 + 0.25, 9);
  });
});
