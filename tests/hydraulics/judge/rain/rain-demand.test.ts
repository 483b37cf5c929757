import { expect, test } from "vitest";
import type { RainRecord } from "../../../../packages/hydraulics/src/document/rain-record.js";
import { demandByDay } from "../../../../packages/hydraulics/src/judge/rain/rain-demand.js";
import { flockInAir } from "../../../../packages/hydraulics/src/model/flock-on.js";
import { drawOfPen } from "../../../../packages/hydraulics/src/simulate/pen-draw.js";
import type { PlanData } from "../../../arbitraries/plans.js";
import { asked } from "../../../laws/asked-plans.js";
import { headerTank } from "../header-tank.js";

const barrel = (id: string) => ({ id, vessel: "drum-55gal-plastic", stand: "60 cm", ground: "0 cm" });
/** Two barrels on one lane, and a third with a pen of its own. */
const PLAN: PlanData = {
  headfall: 1,
  sources: [barrel("left"), barrel("right"), barrel("alone")],
  points: [{ id: "tee", ground: "0 cm", above: "30 cm" }],
  runs: [
    { from: "left", to: "tee", length: "2 m" },
    { from: "right", to: "tee", length: "2 m" },
    { from: "tee", length: "4 m", fall: "0 cm", drinkers: { id: "a", kind: "cup-float", count: 4 } },
    { from: "alone", length: "4 m", fall: "30 cm", drinkers: { id: "b", kind: "cup-float", count: 2 } },
  ],
  weather: { high: "24 degC" },
  pens: [
    { id: "many", drinkers: ["a"], birds: { kind: "hen", count: 20 } },
    { id: "few", drinkers: ["b"], birds: { kind: "hen", count: 6 } },
  ],
};
const plan = asked(PLAN);
const { judged, flock } = plan;
const drawn = (pen: number, high: number, low: number, figure: "size" | "expect" = "size") => {
  const on = flockInAir(flock, { high, low });
  return drawOfPen(judged.line, on, on.pens[pen]!, figure).daily;
};
const record = (air?: Record<"high" | "low" | "known", readonly number[]>) =>
  ({ rain: new Float64Array(3), air }) as unknown as RainRecord;

test("demandByDay is each day what the plan's pens draw, half of it from each of two barrels on one lane", () => {
  const { high, low } = flock.weather;
  for (const figure of ["size", "expect"] as const) {
    const of = (source: number) => [...demandByDay(plan, source, record(), figure)];
    const half = drawn(0, high, low, figure) / 2;
    expect(of(0)).toEqual(new Array(3).fill(expect.closeTo(half, 12)));
    expect(of(1)).toEqual(of(0));
    expect(of(2)).toEqual(new Array(3).fill(expect.closeTo(drawn(1, high, low, figure), 12)));
  }
});

test("demandByDay goes by the heat of the record, to half a degree, and by the plan's own where it tells none", () => {
  const air = { high: [33.2, 12.3, 40], low: [20.3, 12.6, 30], known: [1, 1, 0] };
  const [hot, odd, unknown] = demandByDay(plan, 2, record(air), "size");
  expect(hot).toBeCloseTo(drawn(1, 33, 20.5), 12);
  // A lowest above the highest is a slip of the record.
  expect(odd).toBeCloseTo(drawn(1, 12.5, 12.5), 12);
  expect(unknown).toBeCloseTo(drawn(1, flock.weather.high, flock.weather.low), 12);
  expect(hot).toBeGreaterThan(unknown!);
});

test("demandByDay draws nothing on a header tank by itself: what fills it is drawn on", () => {
  const tank = asked(headerTank);
  expect([...demandByDay(tank, 1, record(), "size")]).toEqual([0, 0, 0]);
  expect(demandByDay(tank, 0, record(), "size")[0]).toBeGreaterThan(0);
});
