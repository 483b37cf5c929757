import type { MomentName } from "@headfall/hydraulics";
import { describe, expect, test } from "vitest";
import { handlesOf } from "../../../../packages/ui/src/kernels/side/handles-of.js";
import { drawPlan, examplePlan, handleIn, madePlan } from "./drawn-plan.js";

const henHouse = examplePlan("alder-bank-hen-house");
const rainBarrel = examplePlan("alder-bank-rain-barrel");
const TO_CHICKS = 4;

describe("handlesOf", () => {
  test("gives the vessel's three, every joint, the ground under listed points and one drop a group", () => {
    expect(drawPlan(henHouse).handles.map(({ key }) => key)).toEqual([
      "stand 0",
      "outlet 0",
      "water 0",
      "joint wall",
      "joint hung line",
      "joint hen line end",
      "ground wall",
      "ground hung line",
      "drop 2 0",
    ]);
  });

  test("gives every surveyed place between joints", () => {
    const drawn = drawPlan(rainBarrel, { drinker: TO_CHICKS });
    expect(handleIn(drawn, "reading 2 0").height).toBeCloseTo(0.1 + 0.65, 9);
    expect(handleIn(drawn, "reading 2 1").height).toBeCloseTo(0.1 - 0.1, 9);
  });

  test("leaves a survey's last reading to the joint where it lies", () => {
    const plan = madePlan({
      sources: [{ vessel: "rain-barrel-50gal", stand: "50 cm" }],
      runs: [
        {
          id: "slope",
          length: "10 m",
          survey: [
            { along: "4 m", fall: "10 cm" },
            { along: "10 m", fall: "30 cm" },
          ],
          drinkers: { kind: "nipple-side-action", count: 5 },
        },
      ],
    });
    const keys = drawPlan(plan).handles.map(({ key }) => key);
    expect(keys).toContain("reading 0 0");
    expect(keys).not.toContain("reading 0 1");
    expect(keys).toContain("joint slope end");
  });

  test.each<[MomentName, string]>([
    ["fullIdle", "full"],
    ["fullBusiest", "full"],
    ["lowestBusiest", "lowest"],
    ["ordinary", "ordinary"],
  ])("at %s the water's surface is the %s level", (moment, level) => {
    const { target, height } = handleIn(drawPlan(henHouse, { moment }), "water 0");
    expect(target).toMatchObject({ path: ["sources", 0, "level", level] });
    const typed = { full: 0.7, lowest: 0.07, ordinary: 0.4 }[level]!;
    expect(height).toBeCloseTo(0.45 + typed, 9);
  });

  test("keeps outlet, lowest, ordinary, full and brim in their order", () => {
    const limits = (moment: MomentName) => {
      const { low, high, from } = handleIn(drawPlan(henHouse, { moment }), "water 0");
      return [low - from, high - from].map((metres) => Math.round(metres * 1000) / 10);
    };
    const outlet = handleIn(drawPlan(henHouse), "outlet 0");
    const brim = drawPlan(henHouse).checked.line.sources[0]!.shape as { height: number };
    expect(limits("fullIdle")).toEqual([40, Math.round(brim.height * 1000) / 10]);
    expect(limits("ordinary")).toEqual([7, 70]);
    expect(limits("lowestBusiest")).toEqual([Math.round((outlet.height - outlet.from) * 1000) / 10, 40]);
    expect(outlet.low).toBe(outlet.from);
    expect(outlet.high - outlet.from).toBeCloseTo(0.07, 9);
  });

  test("lets levels that are left out give way", () => {
    const plan = madePlan({
      sources: [{ vessel: { shape: "box", length: "1 m", width: "1 m", height: "1 m" }, outlet: "5 cm" }],
      runs: [{ length: "5 m", drinkers: { kind: "nipple-side-action", count: 2 } }],
    });
    const full = handleIn(drawPlan(plan), "water 0");
    expect([full.low, full.high]).toEqual([expect.closeTo(0.07, 9), expect.closeTo(1, 9)]);
    // 95 cm full by default, less the 2 cm kept over an outlet.
    expect(handleIn(drawPlan(plan), "outlet 0").high).toBeCloseTo(0.93, 9);
  });

  test("lets no stand sink into the ground", () => {
    const stand = handleIn(drawPlan(examplePlan("alder-bank-two-pens")), "stand 0");
    expect(stand.low).toBeCloseTo(1.8, 9);
    expect(stand.height).toBeCloseTo(2, 9);
  });

  test("lets no joint go farther from a stated neighbour than the pipe between them is long", () => {
    // The riser from the wall (-10 cm) is 60 cm long.
    expect(handleIn(drawPlan(henHouse), "joint hung line").high).toBeCloseTo(0.5, 9);
  });

  test("counts a listed point from its ground, any other from the ground under the source", () => {
    const drawn = drawPlan(henHouse);
    expect(handleIn(drawn, "joint wall")).toMatchObject({
      from: -0.2,
      fromWords: "the ground",
      isFirm: true,
    });
    expect(handleIn(drawn, "joint hen line end")).toMatchObject({
      from: 0,
      fromWords: "the ground under barrel",
      isFirm: false,
    });
  });

  test("writes the drop where the plan's own form keeps it, be it one group or a list", () => {
    const list = { ...henHouse, runs: henHouse.runs.map((run) => ({ ...run })) };
    const hens = list.runs[2]!;
    const group = hens.drinkers as Exclude<typeof hens.drinkers, readonly unknown[] | undefined>;
    hens.drinkers = [
      { ...group, count: 4 },
      { ...group, id: "far", count: 2, first: "3 m" },
    ];
    expect(handleIn(drawPlan(henHouse), "drop 2 0").target).toMatchObject({
      path: ["runs", 2, "drinkers", "drop"],
    });
    expect(handleIn(drawPlan(list), "drop 2 1").target).toMatchObject({
      path: ["runs", 2, "drinkers", 1, "drop"],
    });
  });

  test("survives a plan that has gone on from what was checked", () => {
    const { checked, path, moment, layout } = drawPlan(rainBarrel, { drinker: TO_CHICKS });
    const gone = { ...rainBarrel, points: [], runs: rainBarrel.runs.slice(0, 1) };
    const keys = handlesOf({ plan: gone, checked, path, moment, reach: layout.heights }).map(
      ({ key }) => key,
    );
    expect(keys.filter((key) => /reading|ground|drop 2/.test(key))).toEqual([]);
    expect(keys).toContain("stand 0");
    expect(
      handlesOf({ plan: { ...gone, sources: [] }, checked, path, moment, reach: layout.heights }).some(
        ({ kind }) => kind === "stand",
      ),
    ).toBe(false);
  });
});
