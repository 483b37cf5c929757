import { describe, expect, it, test } from "vitest";
import { errorFunction } from "../../../packages/hydraulics/src/numerics/error-function.js";
import {
  conductanceOfPipe,
  filmOfWind,
  flowThatHolds,
  timeToCool,
} from "../../../packages/hydraulics/src/physics/cooling.js";
import {
  iceAfter,
  leastTimeToFreeze,
  timeToFreezeRound,
  timeToIce,
} from "../../../packages/hydraulics/src/physics/freezing.js";
import { groundAfterFrost, timeOfFrostAt } from "../../../packages/hydraulics/src/physics/ground.js";

const HOUR = 3600;
const PVC = { bore: 0.02093, outside: 0.02667 };
const capacity = (4.19e6 * Math.PI * PVC.bore ** 2) / 4;

/** Hours to 0 °C, and to frozen through, of a three-quarter inch pipe at 10 °C. */
function pipe(lagging: number, film: number, air: number): [number, number] {
  const conductance = conductanceOfPipe({ outside: PVC.outside, lagging, film });
  const cold = timeToCool({ capacity, conductance, from: 10, air }, 0);
  const inside = conductance / (Math.PI * PVC.bore);
  return [cold / HOUR, (cold + timeToFreezeRound(PVC.bore, { film: inside, air })) / HOUR];
}

describe("a pipe in frost, worked by hand", () => {
  it.each([
    ["bare, still air, -5 °C", 0, 10, -5, 0.525, 8.375],
    ["bare, still air, -10 °C", 0, 10, -10, 0.33, 4.3],
    ["bare, breeze, -20 °C", 0, 25, -20, 0.08, 0.9],
    ["13 mm of foam, still air, -5 °C", 0.013, 10, -5, 1.589, 24.885],
    ["13 mm of foam, still air, -20 °C", 0.013, 10, -20, 0.59, 6.4],
  ])("%s", (_, lagging, film, air, toNought, toSolid) => {
    const [cold, solid] = pipe(lagging, film, air);
    expect(Math.abs(cold - toNought)).toBeLessThan(0.01);
    expect(Math.abs(solid / toSolid - 1)).toBeLessThan(0.04);
  });

  it("10 m of it at -10 °C lose 105 W between 4 and 1 °C: half a litre a minute holds it", () => {
    const conductance = conductanceOfPipe({ outside: PVC.outside, lagging: 0, film: 10 });
    expect(conductance * 10 * 12.5).toBeCloseTo(104.7, 1);
    const flow = flowThatHolds({ conductance, length: 10 }, { enters: 4, leaves: 1, air: -10 });
    expect(flow * 60_000).toBeCloseTo(0.5, 2);
  });
});

describe("a vessel in frost, worked by hand", () => {
  it.each([
    ["bucket of 18.9 L", 0.0189, 0.42, 3.63, 41.75],
    ["drum of 208 L", 0.208, 2.1, 7.991, 91.894],
  ])("%s at -10 °C", (_, volume, wall, toNought, latent) => {
    const conductance = 10 * wall;
    const cooling = { capacity: 4.19e6 * volume, conductance, from: 10, air: -10 };
    expect(timeToCool(cooling, 0) / HOUR).toBeCloseTo(toNought, 2);
    expect(leastTimeToFreeze({ volume, conductance }, -10) / HOUR).toBeCloseTo(latent, 2);
  });
});

test("air that does not freeze freezes nothing, and water as cold already needs no time", () => {
  const cooling = { capacity: 1, conductance: 1, from: 10, air: 0 };
  expect(timeToCool(cooling, 0)).toBe(Number.POSITIVE_INFINITY);
  expect(timeToCool({ ...cooling, from: 0 }, 0)).toBe(0);
  expect(timeToIce(0.003, { film: 10, air: 0 })).toBe(Number.POSITIVE_INFINITY);
  expect(timeToFreezeRound(0.02, { film: 10, air: 2 })).toBe(Number.POSITIVE_INFINITY);
  expect(leastTimeToFreeze({ volume: 1, conductance: 1 }, 0)).toBe(Number.POSITIVE_INFINITY);
  expect(iceAfter({ from: 0.01, time: 99 }, { film: 10, air: 1 })).toBe(0.01);
});

test("iceAfter(timeToIce(X)) is X, and ice grown in two halves of a night is that of the whole", () => {
  for (const film of [10, 25, 60])
    for (const air of [-0.5, -8, -35])
      for (const thickness of [0.0005, 0.003, 0.05]) {
        const time = timeToIce(thickness, { film, air });
        expect(iceAfter({ from: 0, time }, { film, air })).toBeCloseTo(thickness, 12);
        const half = iceAfter({ from: 0, time: time / 2 }, { film, air });
        expect(iceAfter({ from: half, time: time / 2 }, { film, air })).toBeCloseTo(thickness, 12);
      }
});

test("filmOfWind is never below still air, and rises with the wind", () => {
  expect(filmOfWind(0)).toBe(10);
  expect(filmOfWind(5)).toBeCloseTo(24.7, 12);
  expect(filmOfWind(8)).toBeCloseTo(36.1, 12);
});

test("errorFunction meets its printed table (Abramowitz and Stegun, table 7.1, from memory)", () => {
  for (const [x, printed] of [
    [0, 0],
    [0.5, 0.5204998778],
    [1, 0.8427007929],
    [2, 0.995322265],
    [3, 0.9999779095],
  ] as const) {
    expect(errorFunction(x)).toBeCloseTo(printed, 10);
    expect(errorFunction(-x)).toBeCloseTo(-printed, 10);
  }
  expect(errorFunction(2.5 - 1e-12)).toBeCloseTo(errorFunction(2.5 + 1e-12), 11);
  expect(errorFunction(40)).toBe(1);
});

test("the ground reaches 0 °C at timeOfFrostAt: later the deeper, never before it is cold", () => {
  const frost = { depth: 0.15, ground: 4, air: -8 };
  const time = timeOfFrostAt(frost);
  expect(groundAfterFrost(frost, time)).toBeCloseTo(0, 9);
  expect(timeOfFrostAt({ ...frost, depth: 0.3 })).toBeCloseTo(4 * time, 3);
  expect(timeOfFrostAt({ ...frost, air: 0 })).toBe(Number.POSITIVE_INFINITY);
  expect(timeOfFrostAt({ ...frost, ground: 0 })).toBe(0);
  expect(groundAfterFrost(frost, 0)).toBe(4);
});

test("the formulas refuse sizes that are none", () => {
  expect(() => conductanceOfPipe({ outside: 0, lagging: 0, film: 10 })).toThrow("pipe.outside is 0");
  expect(() => conductanceOfPipe({ outside: 0.02, lagging: 0, film: 0 })).toThrow("pipe.film is 0");
  expect(() => timeToFreezeRound(-1, { film: 10, air: -5 })).toThrow("bore is -1");
  expect(() => flowThatHolds({ conductance: 1, length: 1 }, { enters: 1, leaves: 4, air: -5 })).toThrow(
    "enters",
  );
});
