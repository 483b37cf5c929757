import { describe, expect, it } from "vitest";
import type { Checked, FillingFinding } from "../../../packages/hydraulics/src/judge/check-result.js";
import { flowThatClearsAir } from "../../../packages/hydraulics/src/physics/air.js";
import { siphonCrestLimit } from "../../../packages/hydraulics/src/physics/vent.js";
import { waterAt } from "../../../packages/hydraulics/src/physics/water.js";
import { checkOf, reasonOf, verdictOf, yard } from "./yard/yard.js";

const half = { pipe: { bore: "15.8 mm" } };
const drinkers = { kind: "plain", count: 1 };
type Survey = readonly { along: string; fall: string; bleed?: boolean }[];

/** A lane that starts on the ground 2 m from the barrel, with heights told along it; its end lies on the ground. */
const lane = (
  survey: Survey,
  more: Record<string, unknown> = {},
  set: Partial<Parameters<typeof yard>[0]> = {},
) =>
  checkOf(
    yard({
      stand: "0 cm",
      lowest: "30 cm",
      runs: [
        { length: "2 m", fall: "0 cm", ...half },
        { id: "lane", length: "12 m", fall: "0 cm", survey, ...half, drinkers, ...more },
      ],
      ...set,
    }),
  );

/** Humps 10 cm high, 2 m apart, the pipe on the ground between them. */
const humps = (count: number, bleed = false): Survey =>
  Array.from({ length: count }, (_, k) => [
    { along: `${1 + 3 * k} m`, fall: "-10 cm", bleed },
    { along: `${2 + 3 * k} m`, fall: "0 cm" },
  ]).flat();

const found = <Code extends FillingFinding["code"]>(checked: Checked, code: Code) =>
  checked.filling.filter((one): one is Extract<FillingFinding, { code: Code }> => one.code === code);
const mm = (metres: number) => Math.round(1000 * metres);

describe("checkPlan of a line with humps", () => {
  // Jordan 1984: each column of air in a leg that goes down takes its own height; three of 10 cm take 30 cm.
  it("is air-locked by three humps of 10 cm where the head is 30 cm", () => {
    const checked = lane(humps(3));
    const dry = verdictOf(checked);
    expect(dry.verdict).toBe("dry");
    const reason = reasonOf(dry.because, "airLocked");
    expect([mm(reason.airHead), mm(reason.staticHead)]).toEqual([300, 300]);
    expect(found(checked, "humpTrapsAir").map(({ point, airHead }) => [point, mm(airHead)])).toEqual([
      ["lane at 1.00 m", 100],
      ["lane at 4.00 m", 100],
      ["lane at 7.00 m", 100],
    ]);
    expect(reason.hump).toBe("lane at 7.00 m");
  });

  it("starves behind two, with 10 cm of the 30 left; and lacks nothing behind one: 20 cm where 16 are needed", () => {
    const two = verdictOf(lane(humps(2)));
    expect(two.verdict).toBe("starves");
    expect(mm(reasonOf(two.because, "flowTooLow").airHead)).toBe(200);
    expect(mm(two.margin)).toBe(-61);
    expect(verdictOf(lane(humps(1))).verdict).toBe("good");
  });

  it("is cured by a bleed at the top of each", () => {
    const checked = lane(humps(3, true));
    expect(verdictOf(checked).verdict).toBe("good");
    expect(checked.filling).toEqual([]);
  });

  it("keeps air behind the one hump that has no bleed", () => {
    const survey = humps(3, true).map((one, k) => (k === 2 ? { ...one, bleed: false } : one));
    expect(found(lane(survey), "humpTrapsAir").map(({ point }) => point)).toEqual(["lane at 4.00 m"]);
  });

  it("says what flow would sweep the air along, by the slope of the leg beyond, and what flows there", () => {
    const [hump] = found(lane(humps(1)), "humpTrapsAir");
    expect(hump?.flowToClear).toBeCloseTo(
      flowThatClearsAir({ bore: 0.0158, slopeAngle: Math.asin(0.1) }),
      12,
    );
    expect(hump?.flowThere).toBeLessThan(hump?.flowToClear ?? 0);
  });

  it("holds no air in a hump lower than the bore, nor in a level or falling or only rising line", () => {
    const flat: Survey = [{ along: "1 m", fall: "0 cm" }];
    expect(
      lane([
        { along: "1 m", fall: "-1.5 cm" },
        { along: "2 m", fall: "0 cm" },
      ]).filling,
    ).toEqual([]);
    expect(lane(flat).filling).toEqual([]);
    expect(lane([], { fall: "50 cm" }).filling).toEqual([]);
  });

  it("is dry behind a hump above the lowest water, by how much it stands above", () => {
    const checked = lane([
      { along: "2 m", fall: "-35 cm" },
      { along: "4 m", fall: "0 cm" },
    ]);
    const dry = verdictOf(checked);
    expect(dry.verdict).toBe("dry");
    const reason = reasonOf(dry.because, "humpAboveWater");
    expect([reason.hump, mm(reason.above)]).toEqual(["lane at 2.00 m", 50]);
    expect(found(checked, "humpAboveWater").map(({ point, above }) => [point, mm(above)])).toEqual([
      ["lane at 2.00 m", 50],
    ]);
  });
});

describe("checkPlan of a pipe that stands above the water", () => {
  const over = (drop: string) =>
    checkOf(
      yard({
        runs: [
          { length: "2 m", fall: "0 cm", ...half },
          { length: "5 m", fall: "-55 cm", ...half, drinkers: { ...drinkers, drop } },
        ],
      }),
    );

  it("is dry at a drinker that hangs from it, even one whose drop reaches below the water", () => {
    // The water at its lowest stands at 50 cm, the pipe at 55, the valve at 25.
    const dry = verdictOf(over("30 cm"));
    expect(dry.verdict).toBe("dry");
    expect(mm(reasonOf(dry.because, "humpAboveWater").above)).toBe(50);
    expect(dry.moments.lowestBusiest.darcyWeisbach).toMatchObject({ flowingHead: 0, flow: 0 });
    // Full it is under water, and gives.
    expect(dry.moments.fullBusiest.darcyWeisbach.flow).toBeGreaterThan(0);
  });

  it("is too high, and not behind a hump, at a drinker in it", () => {
    expect(verdictOf(over("0 cm")).because.code).toBe("tooHigh");
  });
});

describe("checkPlan of air that stands in the line", () => {
  it("takes its height from what presses a seal shut, too: 20 cm of 30 are left where 25 are wanted", () => {
    const drinker = { sealsFrom: "25 cm", need: "20 mL/min" };
    const weeps = verdictOf(lane(humps(1), {}, { drinker }));
    expect(weeps.verdict).toBe("drips");
    expect(mm(reasonOf(weeps.because, "idleHeadTooLow").head)).toBe(200);
    expect(mm(weeps.margin)).toBe(-50);
    expect(verdictOf(lane(humps(1, true), {}, { drinker })).verdict).toBe("good");
  });
});

describe("checkPlan of a line that ends high", () => {
  it("says that the end keeps air until it is let out, and how far it rises over the sag before", () => {
    const checked = lane([{ along: "6 m", fall: "10 cm" }], {
      fall: "-10 cm",
      drinkers: { kind: "plain", count: 1, first: "1 m" },
    });
    const [end] = found(checked, "endHoldsAir");
    expect(end?.point).toBe("lane end");
    expect(mm(end?.rise ?? 0)).toBe(200);
  });

  it("says nothing of it where the end has a bleed", () => {
    const points = [{ id: "top", ground: "10 cm", bleed: true }];
    const checked = lane(
      [{ along: "6 m", fall: "10 cm" }],
      { to: "top", fall: undefined },
      { more: { points } },
    );
    expect(found(checked, "endHoldsAir")).toEqual([]);
  });
});

describe("checkPlan of a running line under suction", () => {
  /** A crest just under the full water, and beyond it a long fall that draws hard. */
  const crest = (height: string) =>
    lane(
      [{ along: "1 m", fall: `-${height}`, bleed: true }],
      { fall: "2 m", drinkers: { kind: "strong", count: 1 } },
      {
        more: {
          ownDrinkers: {
            strong: {
              readings: [
                { head: "25 cm", flow: "5 L/min" },
                { head: "1 m", flow: "10 L/min" },
              ],
              holdsUpTo: "9 m",
              need: "0 L/min",
            },
          },
        },
      },
    );

  it("reports the crest at which the grade line lies lowest under the pipe", () => {
    const checked = crest("29 cm");
    const [suction] = found(checked, "suction");
    expect(suction?.point).toBe("lane at 1.00 m");
    const { head } = checked.solutions[suction!.moment].darcyWeisbach;
    expect(suction?.head).toBeCloseTo(head[suction!.pointIndex]! - 0.29, 12);
    expect(suction?.head).toBeLessThan(0);
    expect(suction?.breaks).toBe(false);
    expect(siphonCrestLimit(waterAt(20))).toBeCloseTo(10.1, 1);
  });

  it("says nothing where the grade line clears the pipe", () => {
    expect(found(crest("1 cm"), "suction")).toEqual([]);
  });
});
