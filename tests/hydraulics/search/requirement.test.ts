import { describe, expect, it } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { judgeLine } from "../../../packages/hydraulics/src/judge/judge-line.js";
import { buildLine } from "../../../packages/hydraulics/src/model/build-line.js";
import type { CureOptions } from "../../../packages/hydraulics/src/search/cure-options.js";
import {
  buildRequirement,
  hangInScene,
  judgeScene,
  lineInScene,
  requirementFor,
  spareOf,
} from "../../../packages/hydraulics/src/search/requirement.js";
import { yard } from "../judge/yard/yard.js";

function builtFrom(document: unknown, options: CureOptions = {}) {
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const built = buildLine(reading.plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  const building = buildRequirement(reading.plan, built.line, { day: "2026-07-04", ...options });
  if (!building.ok) throw new Error(JSON.stringify(building.problems));
  return { plan: reading.plan, line: built.line, requirement: building.requirement };
}
const lane = (more: Record<string, unknown> = {}) =>
  yard({ runs: [{ length: "3 m", fall: "0 cm", drinkers: { kind: "plain", count: 2 } }], more });
const pens = (birds: Record<string, unknown>) => ({ pens: [{ birds: { kind: "hen", count: 6, ...birds } }] });
const scenesOf = (more: Record<string, unknown>, options: CureOptions = {}) =>
  builtFrom(lane(more), options).requirement.scenes.map(({ week, hot }) => `${week}${hot ? " hot" : ""}`);
const hotSpell = { weather: { high: "21 degC", hotSpell: { high: "36 degC", days: 4 } } };

describe("buildRequirement", () => {
  it("asks of the day alone where no bird drinks or none tells its age", () => {
    expect(scenesOf({})).toEqual(["0"]);
    expect(scenesOf(pens({}))).toEqual(["0"]);
    expect(scenesOf({ ...pens({}), ...hotSpell })).toEqual(["0"]);
  });

  it("asks of eight weeks more where birds grow, told by age or by when they hatched", () => {
    const weeks = ["0", "1", "2", "3", "4", "5", "6", "7", "8"];
    expect(scenesOf(pens({ age: "3 weeks" }))).toEqual(weeks);
    expect(scenesOf(pens({ hatched: "2026-06-01" }))).toEqual(weeks);
  });

  it("asks of so many weeks as it is told, each with a hot day where the plan has a hot spell", () => {
    expect(scenesOf(pens({}), { weeks: 2 })).toEqual(["0", "1", "2"]);
    expect(scenesOf({ ...pens({}), ...hotSpell }, { weeks: 1 })).toEqual(["0", "0 hot", "1", "1 hot"]);
    expect(scenesOf(hotSpell, { weeks: 1 })).toEqual(["0"]);
  });

  it("has the birds of a week as old as they then are, and the air of the hot spell on its hot days alone", () => {
    const { scenes } = builtFrom(lane({ ...pens({ age: "3 weeks" }), ...hotSpell }), {
      weeks: 1,
    }).requirement;
    expect(scenes.map(({ flock }) => [flock.pens[0]!.batches[0]!.ageDays, flock.weather.high])).toEqual([
      [21, 21],
      [21, 36],
      [28, 21],
      [28, 36],
    ]);
  });
});

describe("requirementFor", () => {
  it("keeps scenes and margin, and has the changed plan's own drinkers in reach", () => {
    const { requirement } = builtFrom(lane(pens({ age: "3 weeks" })), { weeks: 1, margin: 0.05 });
    const more = builtFrom(
      yard({
        runs: [{ length: "3 m", fall: "0 cm", drinkers: { kind: "plain", count: 5 } }],
        more: pens({ age: "3 weeks" }),
      }),
    );
    const own = requirementFor(requirement, more.plan, more.line);
    expect(own.margin).toBe(0.05);
    expect(own.plan).toBe(more.plan);
    expect(own.now.pens[0]!.drinkers).toEqual([0, 1, 2, 3, 4]);
    expect(own.scenes.map(({ week, flock }) => [week, flock.pens[0]!.drinkers.length])).toEqual([
      [0, 5],
      [1, 5],
    ]);
  });
});

describe("judgeScene", () => {
  // The water stands 50 cm over the drinkers at the least, a metre at the most. They need 16 cm and hold 5 m.
  const spare = (drinker: Record<string, unknown>) => {
    const { line } = builtFrom(
      yard({
        drinker,
        runs: [
          { length: "3 m", fall: "0 cm", pipe: { bore: "10 cm" }, drinkers: { kind: "plain", count: 1 } },
        ],
      }),
    );
    const found = spareOf(judgeLine(line), 0);
    return [found.against, Number(found.head.toFixed(3))];
  };

  it("finds the side on which least is to spare: need, what it holds, what presses its seal shut", () => {
    expect(spare({})).toEqual(["starving", 0.34]);
    expect(spare({ holdsUpTo: "120 cm" })).toEqual(["dripping", 0.1]);
    expect(spare({ sealsFrom: "45 cm" })).toEqual(["notSealing", 0.05]);
  });

  it("tells of all drinkers the one with the least to spare", () => {
    // Three along a run that does not lie level.
    const { requirement, line } = builtFrom(
      yard({
        runs: [{ length: "6 m", fall: "-20 cm", drinkers: { kind: "plain", count: 3, every: "2 m" } }],
      }),
    );
    const spares = [0, 1, 2].map((d) => spareOf(judgeLine(line), d).head);
    const { spare } = judgeScene(requirement, line, requirement.scenes[0]!);
    const least = Math.min(...spares);
    expect(spare).toMatchObject({ drinker: spares.indexOf(least), head: least });
    expect(new Set(spares).size).toBe(3);
  });

  it("meets what is asked with just the margin that there is, and not with more", () => {
    const meets = (margin: number) => {
      const { requirement, line } = builtFrom(lane(), { margin });
      return judgeScene(requirement, line, requirement.scenes[0]!).meets;
    };
    const { requirement, line } = builtFrom(lane());
    const { spare: least } = judgeScene(requirement, line, requirement.scenes[0]!);
    expect([meets(least!.head - 1e-6), meets(least!.head + 1e-6)]).toEqual([true, false]);
  });

  it("has nothing to spare or to miss in a line without drinkers", () => {
    const { requirement, line } = builtFrom(yard({ runs: [{ length: "3 m", fall: "0 cm" }] }), { margin: 5 });
    expect(judgeScene(requirement, line, requirement.scenes[0]!)).toMatchObject({
      spare: undefined,
      meets: true,
    });
  });

  it("raises what hangs as far as its birds have grown", () => {
    const hung = yard({
      runs: [
        { id: "feed", to: "wall", length: "3 m", fall: "0 cm" },
        { id: "lane", length: "3 m", fall: "0 cm", hung: true, drinkers: { kind: "plain", count: 2 } },
      ],
      more: pens({ kind: "meat-chicken", age: "1 week" }),
    });
    const { requirement, line } = builtFrom(hung, { weeks: 3 });
    const heights = requirement.scenes.map(
      (scene) => hangInScene(requirement, line, scene).drinkers.height[0]!,
    );
    expect(heights[0]).toBe(line.drinkers.height[0]);
    for (let week = 1; week < heights.length; week += 1)
      expect(heights[week]).toBeGreaterThan(heights[week - 1]!);
  });

  it("leaves a line as it is where no bird drinks", () => {
    const { requirement, line } = builtFrom(lane());
    expect(hangInScene(requirement, line, requirement.scenes[0]!)).toBe(line);
    expect(lineInScene(requirement, line, requirement.scenes[0]!)).toBe(line);
  });
});
