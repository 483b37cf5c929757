import { describe, it } from "vitest";
import { airAt } from "../../packages/hydraulics/src/birds/air.js";
import { errorFunction } from "../../packages/hydraulics/src/numerics/error-function.js";
import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import { timeToCool } from "../../packages/hydraulics/src/physics/cooling.js";
import { iceAfter } from "../../packages/hydraulics/src/physics/freezing.js";
import { groundThroughDay } from "../../packages/hydraulics/src/physics/ground.js";
import { sunAt, sunRiseOfPipe, throughDay } from "../../packages/hydraulics/src/physics/sun.js";
import { askPython, PYTHON_IS } from "./ask-python.js";
import { expectClose } from "./closeness.js";

const random = randomFrom(273);
const between = (low: number, high: number) => low + (high - low) * random.uniform();
const times = <Made>(count: number, draw: () => Made): Made[] => Array.from({ length: count }, draw);

type Cooled = [capacity: number, conductance: number, from: number, air: number, to: number];
type Iced = [from: number, time: number, film: number, air: number];
interface Day {
  readonly high: number;
  readonly low: number;
  readonly dawn: number;
  readonly light: number;
  readonly peak: number;
  readonly absorptance: number;
  readonly film: number;
}

const day = (): Day => {
  const low = between(5, 25);
  const light = 3600 * between(9, 16);
  return {
    low,
    high: low + between(4, 18),
    dawn: 43_200 - light / 2,
    light,
    peak: between(400, 1000),
    absorptance: between(0.2, 0.95),
    film: between(10, 30),
  };
};

const asked = {
  cooling: times(
    20,
    (): Cooled => [between(50, 1e6), between(0.2, 30), between(1, 20), between(-25, -0.5), 0],
  ),
  ice: times(20, (): Iced => [between(0, 0.05), between(600, 400_000), between(8, 50), between(-30, -0.5)]),
  erf: times(20, () => between(-4, 4)),
  sunny: times(6, (): [Day, number] => [day(), 10 ** between(2.5, 4.8)]),
  ground: times(2, (): [Day, number] => [day(), between(0.08, 0.35)]),
};

const { answer, recorded } = askPython<Record<keyof typeof asked, number[] | number[][]>>("weather", asked, {
  digits: 9,
});

/** What a pipe tends to, each quarter of an hour. */
const towards = ({ high, low, dawn, light, peak, absorptance, film }: Day): number[] =>
  times(96, () => 0).map((_, k) => {
    const rise = sunRiseOfPipe({ absorptance, film }, sunAt({ peak, dawn, light }, k * 900));
    return airAt({ high, low, dawn, light }, k * 900) + rise;
  });

const ofDay = { relative: 0, absolute: 0.1 };

describe(`cooling, ice, sun and ground against scipy, ${PYTHON_IS}`, () => {
  const numbers = (name: "cooling" | "ice" | "erf") => answer[name] as number[];
  const curves = (name: "sunny" | "ground") => answer[name] as number[][];

  it("the record is what was answered", () => {
    for (const name of ["cooling", "ice", "erf"] as const)
      expectClose(name, numbers(name), recorded[name] as number[], { relative: 1e-6, absolute: 1e-8 });
    for (const name of ["sunny", "ground"] as const)
      expectClose(name, curves(name).flat(), (recorded[name] as number[][]).flat(), { relative: 1e-5 });
  });

  it("timeToCool is when the equation's solution is at freezing", () => {
    const ours = asked.cooling.map(([capacity, conductance, from, air, to]) =>
      timeToCool({ capacity, conductance, from, air }, to),
    );
    expectClose("cooling", ours, numbers("cooling"), { relative: 1e-7 });
  });

  it("iceAfter is the thickness that the equation grows", () => {
    const ours = asked.ice.map(([from, time, film, air]) => iceAfter({ from, time }, { film, air }));
    expectClose("ice", ours, numbers("ice"), { relative: 1e-7 });
  });

  it("errorFunction is scipy's", () => {
    expectClose("erf", asked.erf.map(errorFunction), numbers("erf"), { relative: 0, absolute: 1e-8 });
  });

  it("throughDay is the water of a day that has come round, within a tenth of a degree", () => {
    asked.sunny.forEach(([one, tau], k) => {
      expectClose(`day ${k}`, throughDay(towards(one), tau), curves("sunny")[k]!, ofDay);
    });
  });

  it("groundThroughDay is a column of soil in slices, within a tenth of a degree", () => {
    asked.ground.forEach(([one, depth], k) => {
      expectClose(`day ${k}`, groundThroughDay(towards(one), depth), curves("ground")[k]!, ofDay);
    });
  });
});
