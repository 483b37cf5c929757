import { describe, expect, it } from "vitest";
import type { Caution } from "../../../packages/hydraulics/src/judge/check-result.js";
import { ventDiameterFor } from "../../../packages/hydraulics/src/physics/vent.js";
import { checkOf, yard } from "./yard/yard.js";

const runs = [{ length: "2 m", drinkers: { kind: "plain", count: 4, busiest: 4 } }];
const cautionsOf = (set: Partial<Parameters<typeof yard>[0]>) => checkOf(yard({ runs, ...set })).cautions;
const codes = (cautions: readonly Caution[]) => cautions.map(({ code }) => code);
const only = <Code extends Caution["code"]>(cautions: readonly Caution[], code: Code) =>
  cautions.filter((one): one is Extract<Caution, { code: Code }> => one.code === code);

describe("checkPlan always shows", () => {
  it("food-grade vessels and backflow for each source, and that no figure replaces a look at the birds", () => {
    const cautions = cautionsOf({ stand: "0 cm" });
    expect(codes(cautions)).toEqual(expect.arrayContaining(["foodGrade", "backflow"]));
    expect(cautions.at(-1)).toEqual({ code: "lookAtTheBirds" });
  });
});

describe("checkPlan cautions where it applies", () => {
  it("weight on a stand: 178.6 L of water at 20 degC and nothing for the vessel, 40 cm up", () => {
    const [weight] = only(cautionsOf({ stand: "40 cm" }), "weightOnStand");
    expect(weight?.mass).toBeCloseTo((Math.PI / 4) * 0.57 ** 2 * 0.7 * 998.207, 1);
    expect(weight?.height).toBeCloseTo(0.4, 12);
    expect(codes(cautionsOf({ stand: "10 cm" }))).not.toContain("weightOnStand");
  });

  it("a sealed vessel", () => {
    expect(only(cautionsOf({ source: { vent: "sealed" } }), "sealedVessel")).toEqual([
      { code: "sealedVessel", source: "barrel" },
    ]);
  });

  it("a vent too small for the draw, and the size that costs a hundredth of the head over the lowest drinker", () => {
    const small = checkOf(yard({ runs, source: { vent: { opening: "0.2 mm" } } }));
    const [vent] = only(small.cautions, "ventTooSmall");
    const draw = small.solutions.fullBusiest.darcyWeisbach.sourceFlow[0]!;
    const needed = ventDiameterFor({ flow: draw, headAllowed: 0.005, density: small.line.water.density });
    expect(vent).toMatchObject({ source: "barrel", diameter: 0.0002 });
    expect(vent?.needed).toBeCloseTo(needed, 6);
    expect(codes(cautionsOf({ source: { vent: { opening: "2 cm" } } }))).not.toContain("ventTooSmall");
  });

  it("open water, at a trough and not at a nipple", () => {
    const trough = [{ id: "lane", length: "2 m", drinkers: { kind: "trough-float" } }];
    expect(only(cautionsOf({ runs: trough }), "openWater")).toEqual([{ code: "openWater", group: "lane" }]);
    expect(codes(cautionsOf({}))).not.toContain("openWater");
  });

  it("a run between laminar and turbulent, with its Reynolds number", () => {
    // 60 mL/min sqrt(1.1) of four drinkers is 0.42 L/min: Re 2950 in 3 mm.
    const narrow = [
      {
        id: "thin",
        length: "50 cm",
        fall: "0 cm",
        pipe: { bore: "3 mm" },
        drinkers: { kind: "plain", count: 4, busiest: 4 },
      },
    ];
    const [critical] = only(cautionsOf({ runs: narrow }), "criticalZone");
    expect(critical?.run).toBe("thin");
    expect(critical?.reynolds).toBeGreaterThan(2000);
    expect(critical?.reynolds).toBeLessThan(4000);
  });

  it("Hazen-Williams outside its range in every run that flows, and not in one that stands still", () => {
    const two = [...runs, { length: "3 m", drinkers: { kind: "plain", count: 1, busiest: 0 } }];
    expect(only(cautionsOf({ runs: two }), "outsideHazenWilliams")).toEqual([
      { code: "outsideHazenWilliams", runs: 1 },
    ]);
  });
});

describe("checkPlan of a header tank", () => {
  const tank = (opening: string, count: number) =>
    checkOf({
      headfall: 1,
      water: "20 degC",
      sources: [
        { id: "barrel", vessel: "drum-55gal-plastic", stand: "2 m" },
        {
          id: "tank",
          vessel: { shape: "box", length: "30 cm", width: "20 cm", height: "25 cm" },
          stand: "60 cm",
          outlet: "3 cm",
          level: { full: "20 cm" },
          feed: { from: "over the tank", opening },
        },
      ],
      points: [{ id: "over the tank", ground: "0 cm", above: "80 cm" }],
      runs: [
        { from: "barrel", to: "over the tank", length: "6 m", pipe: { bore: "15 mm" } },
        { from: "tank", length: "4 m", drinkers: { kind: "cup-float", count, busiest: count } },
      ],
    });

  it("that cannot be fed as fast as its drinkers take says so, with both flows", () => {
    const behind = tank("1 mm", 12);
    const [caution] = only(behind.cautions, "feedFallsBehind");
    const { drawBusiest, feedFlow, feedKeepsUp } = behind.sources[1]!;
    expect(caution).toEqual({ code: "feedFallsBehind", source: "tank", feedFlow, draw: drawBusiest });
    expect(feedKeepsUp).toBe(false);
    // A sharp hole of 1 mm, 0.6 of an ideal jet, under the head that is left at it.
    const { feed } = behind.line.sources[1]!;
    const head = behind.solutions.lowestBusiest.darcyWeisbach.head[feed!.point]! - feed!.height;
    expect(feedFlow).toBeCloseTo(0.6 * (Math.PI / 4) * 1e-6 * Math.sqrt(2 * 9.80665 * head), 12);
  });

  it("that is fed fast enough does not", () => {
    expect(codes(tank("6 mm", 2).cautions)).not.toContain("feedFallsBehind");
    expect(tank("6 mm", 2).sources[1]?.feedKeepsUp).toBe(true);
  });
});
