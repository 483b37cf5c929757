import { describe, expect, it } from "vitest";
import { crowdLoad, numbersAtOnce, waitsOf } from "../../../packages/hydraulics/src/simulate/crowd-load.js";
import type { BatchWant, DrinkerPlace } from "../../../packages/hydraulics/src/simulate/crowd-want.js";

const ML = 1e-6;
const MINUTE = 60;
const nipples = (count: number, flow: number): DrinkerPlace[] =>
  Array.from({ length: count }, () => ({ flow: (flow * ML) / MINUTE, workedBy: "trigger", places: 1 }));

/** Hens that drink 270 mL a day, 13.333 % of it in the busiest hour, in 40 bouts. */
const hens = (count: number, fastest = 60): BatchWant => ({
  count,
  demand: (270 * ML * (2 / 15)) / 3600,
  fastest: (fastest * ML) / MINUTE,
  boutVolume: (270 * ML) / 40,
});

describe("crowdLoad", () => {
  // Simultaneity of 50 hens: 270 mL a day, 13.333 % in the hour, 30 mL/min taken in (a nipple of 60, half of it):
  // p = 0.020, mean 1.0, 99th percentile of Binomial(50, p) = 4.
  it("of 50 hens at 60 mL/min has a mean of 1.0 birds and 4 at the 99th percentile, as in the worked case", () => {
    const crowd = crowdLoad([hens(50)], nipples(6, 60));
    expect(crowd.load / 50).toBeCloseTo(0.02, 4);
    expect(crowd.load).toBeCloseTo(1, 3);
    expect(crowd.atOnceAlone).toBe(4);
    // As they follow one another, half as many again.
    expect(crowd.atOnce).toBe(6);
  });

  // The other worked case: 30 meat birds of 660 mL a day, 15 % in the hour, 31 mL/min taken in: p = 0.053, mean 1.6, N99 = 5.
  it("of 30 meat birds in heat has a mean of 1.6 and 5 at the 99th percentile", () => {
    const want = {
      count: 30,
      demand: (660 * ML * 0.15) / 3600,
      fastest: (62 * ML) / MINUTE,
      boutVolume: 15 * ML,
    };
    const crowd = crowdLoad([want], nipples(6, 62));
    expect(crowd.load).toBeCloseTo(1.6, 1);
    expect(crowd.atOnceAlone).toBe(5);
  });

  it("is held back by what a bird can swallow, not by what more the drinker gives", () => {
    expect(crowdLoad([hens(50, 60)], nipples(6, 600)).load).toBe(
      crowdLoad([hens(50, 60)], nipples(6, 6000)).load,
    );
  });

  it("takes all drinkers as equally taken: ten that give 40 and ten that give 80 are like twenty of 60", () => {
    const mixed = crowdLoad([hens(50)], [...nipples(10, 40), ...nipples(10, 80)]);
    expect(mixed.load).toBeCloseTo(crowdLoad([hens(50)], nipples(20, 60)).load, 9);
  });

  it("saturates exactly where the hour's want is all that the drinkers pass on", () => {
    // 50 hens want 50 * 36 / 60 = 30 mL/min; one nipple of 60 passes 30 on.
    expect(crowdLoad([hens(50)], nipples(1, 60)).saturates).toBe(true);
    expect(crowdLoad([hens(49)], nipples(1, 60)).saturates).toBe(false);
    expect(crowdLoad([hens(49)], nipples(1, 60)).capacity * MINUTE).toBeCloseTo(30 * ML, 12);
  });

  it("lets a bell serve five at once, as far as its valve refills it", () => {
    const bell = (flow: number): DrinkerPlace => ({
      flow: (flow * ML) / MINUTE,
      workedBy: "float",
      places: 5,
    });
    expect(crowdLoad([hens(50)], [bell(1000)]).capacity * MINUTE).toBeCloseTo(300 * ML, 12);
    expect(crowdLoad([hens(50)], [bell(120)]).capacity * MINUTE).toBeCloseTo(120 * ML, 12);
  });

  it("of nobody, or at drinkers that give nothing, says so without a number that is none", () => {
    const nobody = { demand: 0, capacity: 0, rate: 0, load: 0, atOnceAlone: 0, atOnce: 0, saturates: false };
    expect(crowdLoad([], nipples(2, 60))).toEqual(nobody);
    expect(crowdLoad([{ ...hens(10), count: 0 }], nipples(2, 60))).toMatchObject({ load: 0, atOnce: 0 });
    const dry = crowdLoad([hens(10)], nipples(2, 0));
    expect(dry).toMatchObject({ rate: 0, atOnce: 10, atOnceAlone: 10, saturates: true, capacity: 0 });
    expect(crowdLoad([hens(10), hens(0)], nipples(2, 0))).toEqual(dry);
  });
});

describe("numbersAtOnce", () => {
  it("never exceeds the birds there are", () => {
    expect(numbersAtOnce(3, 2.9)).toEqual({ atOnceAlone: 3, atOnce: 3 });
    expect(numbersAtOnce(3, 50)).toEqual({ atOnceAlone: 3, atOnce: 3 });
  });
});

describe("waitsOf", () => {
  // Erlang B and C at 2 erlangs and 4 places, hand-worked: B = (2^4/24)/(1+2+2+4/3+2/3) = 2/21; C = 4B/(4-2(1-B)) = 4/23.
  it("at 2 erlangs and 4 places has all taken 2 times in 21, and a mean wait of C s / (c - A)", () => {
    const crowd = { ...crowdLoad([], []), demand: 1, capacity: 2, load: 2 };
    const { chanceAllTaken, meanWait } = waitsOf(crowd, 4, 23);
    expect(chanceAllTaken).toBeCloseTo(2 / 21, 12);
    expect(meanWait).toBeCloseTo(((4 / 23) * 23) / 2, 12);
  });

  it("are none where nobody drinks", () => {
    expect(waitsOf(crowdLoad([], []), 4, 10)).toEqual({ chanceAllTaken: 0, meanWait: 0 });
  });

  it("of a crowd that never clears are left out", () => {
    const none = { chanceAllTaken: undefined, meanWait: undefined };
    expect(waitsOf({ ...crowdLoad([], []), load: 4 }, 4, 10)).toEqual(none);
    expect(waitsOf({ ...crowdLoad([], []), load: 1, saturates: true }, 4, 10)).toEqual(none);
  });
});
