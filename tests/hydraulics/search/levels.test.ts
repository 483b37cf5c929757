import { describe, expect, it } from "vitest";
import { compareBy } from "../../../packages/hydraulics/src/search/cost.js";
import { buildCureLines } from "../../../packages/hydraulics/src/search/cure-lines.js";
import { buildCureSpace } from "../../../packages/hydraulics/src/search/cure-space.js";
import { standsThatLevelsAllow } from "../../../packages/hydraulics/src/search/levels.js";
import { boundByCost } from "../../../packages/hydraulics/src/search/relaxed.js";
import { buildRequirement, judgeScene } from "../../../packages/hydraulics/src/search/requirement.js";
import { barrel, nipples, planOf } from "./ailing.js";

/** A run down, one along, and a ring of two, of which one has four nipples; a regulator may sit between. */
function ring(more: Record<string, unknown> = {}) {
  const plan = planOf({
    sources: [barrel()],
    points: [
      { id: "foot", ground: "0 cm", above: "30 cm" },
      { id: "tee", ground: "0 cm", above: "30 cm" },
      { id: "far", ground: "0 cm", above: "30 cm" },
    ],
    runs: [
      { id: "down", from: "barrel", to: "foot", length: "3 m" },
      { id: "feed", from: "foot", to: "tee", length: "3 m", ...more },
      { id: "one", from: "tee", to: "far", length: "6 m" },
      {
        ...{ id: "two", from: "tee", to: "far", length: "6 m" },
        drinkers: nipples(4, { first: "4 m", every: "30 cm" }),
      },
    ],
  });
  const space = buildCureSpace(plan, { standMost: 1.2, standStep: 0.2 }, { pipes: false, stands: true });
  const building = buildCureLines(space);
  if (!building.ok) throw new Error(JSON.stringify(building.problems));
  const { lines } = building;
  const requiring = buildRequirement(plan, lines.present, {});
  if (!requiring.ok) throw new Error(JSON.stringify(requiring.problems));
  const { requirement } = requiring;
  const [scene] = requirement.scenes;
  const isAllowed = standsThatLevelsAllow(lines, requirement, scene!);
  const spareOf = (option: number) =>
    judgeScene(requirement, lines.lineOf([0, 0, 0, 0, option])!, scene!).spare!;
  const isAllowedWith = (margin: number) => standsThatLevelsAllow(lines, { ...requirement, margin }, scene!);
  const works = (option: number) =>
    judgeScene(requirement, lines.lineOf([0, 0, 0, 0, option])!, scene!).meets;
  return {
    space,
    heights: space.sources[0]!.options.map((one, k) => ({ ...one, k })),
    isAllowed,
    isAllowedWith,
    spareOf,
    works,
  };
}

describe("standsThatLevelsAllow", () => {
  it("leaves out stands so high that drinkers drip, and so low that they starve, and none that works", () => {
    const { heights, isAllowed, works } = ring();
    const allowed = heights.filter(({ k }) => isAllowed(k)).map(({ height }) => height);
    const good = heights.filter(({ k }) => works(k)).map(({ height }) => height);
    expect(good.length).toBeGreaterThan(0);
    for (const height of good) expect(allowed).toContain(height);
    expect(allowed).not.toContain(0);
    expect(allowed).not.toContain(1.2);
  });

  it("leaves none out that has just the head to spare that is asked for", () => {
    const { heights, isAllowedWith, spareOf, works } = ring();
    const dripping = heights.filter(({ k }) => works(k) && spareOf(k).against === "dripping");
    expect(dripping.length).toBeGreaterThan(0);
    for (const { k } of dripping) expect(isAllowedWith(spareOf(k).head)(k)).toBe(true);
  });

  it("says nothing against a stand where a regulator holds the water back", () => {
    const { heights, isAllowed, works } = ring({ regulator: { sets: "40 cm" } });
    expect(heights.some(({ k, height }) => height === 1.2 && works(k))).toBe(true);
    expect(heights.every(({ k }) => isAllowed(k))).toBe(true);
  });

  it("bounds by the cheapest of those that are allowed", () => {
    const { space, isAllowed, heights } = ring();
    const { picks } = boundByCost(
      space,
      compareBy("stand"),
      isAllowed,
    )([[0], [0], [0], [0], heights.map(({ k }) => k)])!;
    expect(isAllowed(picks[4]!)).toBe(true);
  });
});
