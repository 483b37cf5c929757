import { describe, expect, it } from "vitest";
import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import {
  timeToDrainLying,
  timeToDrainPrism,
  timeToDrainTapered,
  timeToDrainUpright,
} from "../../packages/hydraulics/src/physics/draining.js";
import {
  capacityOfVessel,
  heightOfVessel,
  levelAtVolume,
  surfaceAtLevel,
  type VesselShape,
  volumeAtLevel,
  wettedAreaAtLevel,
} from "../../packages/hydraulics/src/physics/vessel.js";
import { askPython, PYTHON_IS } from "./ask-python.js";
import { expectClose } from "./closeness.js";

const random = randomFrom(77);
const between = (low: number, high: number) => low + (high - low) * random.uniform();

function drawTable(): VesselShape {
  const rows = 3 + random.integerBelow(5);
  const levels = [0];
  const volumes = [0];
  for (let row = 1; row < rows; row += 1) {
    levels.push(levels[row - 1]! + between(0.02, 0.3));
    volumes.push(volumes[row - 1]! + between(0.001, 0.05));
  }
  return { kind: "table", levels, volumes };
}

const DRAWN: Readonly<Record<VesselShape["kind"], () => VesselShape>> = {
  upright: () => ({ kind: "upright", diameter: between(0.1, 2), height: between(0.1, 2) }),
  lying: () => ({ kind: "lying", diameter: between(0.1, 2), length: between(0.1, 3) }),
  tapered: () => ({
    kind: "tapered",
    bottomDiameter: between(0.1, 1),
    topDiameter: between(0.1, 1),
    height: between(0.1, 1),
  }),
  box: () => ({ kind: "box", length: between(0.1, 2), width: between(0.1, 2), height: between(0.1, 2) }),
  table: drawTable,
};

const shapes = Object.values(DRAWN).flatMap((draw) => Array.from({ length: 8 }, draw));
const cylinders = shapes.filter(({ kind }) => kind === "upright" || kind === "lying");
type At = [VesselShape, number];
const levels = shapes.map((shape): At => [shape, between(0.01, 0.99) * heightOfVessel(shape)]);
const volumes = shapes.map((shape): At => [shape, between(0.01, 0.99) * capacityOfVessel(shape)]);
const wetted = cylinders.map((shape): At => [shape, between(0.01, 0.99) * heightOfVessel(shape)]);

type Drain = [VesselShape, area: number, coefficient: number, from: number, to: number];
const drains = shapes
  .filter(({ kind }) => kind !== "table")
  .map((shape, index): Drain => {
    const from = between(0.5, 1) * heightOfVessel(shape);
    const to = index % 3 === 0 ? 0 : between(0.05, 0.9) * from;
    return [shape, between(1e-5, 1e-3), between(0.6, 1), from, to];
  });

function timeToDrain([shape, area, dischargeCoefficient, from, to]: Drain): number {
  const outlet = { area, dischargeCoefficient };
  const fall = { from, to };
  switch (shape.kind) {
    case "upright":
      return timeToDrainUpright(shape, outlet, fall);
    case "lying":
      return timeToDrainLying(shape, outlet, fall);
    case "tapered":
      return timeToDrainTapered(shape, outlet, fall);
    case "box":
      return timeToDrainPrism({ surface: shape.length * shape.width }, outlet, fall);
    case "table":
      throw new Error("no closed form drains a table");
  }
}

interface Answer {
  readonly volumes: number[];
  readonly surfaces: number[];
  readonly levels: number[];
  readonly wetted: number[];
  readonly timesByIntegral: number[];
  readonly timesBySteps: number[];
}

describe(`vessels against scipy and fluids, ${PYTHON_IS}`, () => {
  const { answer, recorded } = askPython<Answer>(
    "vessels",
    { levels, volumes, wetted, drains },
    { digits: 15 },
  );
  const rounding = { relative: 1e-11 };

  it("volumeAtLevel is the same volume in cylinders, buckets, boxes and measured vessels", () => {
    expectClose(
      "volumes",
      levels.map(([shape, h]) => volumeAtLevel(shape, h)),
      answer.volumes,
      rounding,
    );
  });

  it("surfaceAtLevel is the same area", () => {
    expectClose(
      "surfaces",
      levels.map(([shape, h]) => surfaceAtLevel(shape, h)),
      answer.surfaces,
      rounding,
    );
  });

  it("levelAtVolume is the root that scipy finds", () => {
    expectClose(
      "levels",
      volumes.map(([shape, v]) => levelAtVolume(shape, v)),
      answer.levels,
      rounding,
    );
  });

  it("wettedAreaAtLevel of cylinders is the area that fluids finds", () => {
    expectClose(
      "wetted",
      wetted.map(([shape, h]) => wettedAreaAtLevel(shape, h)),
      answer.wetted,
      rounding,
    );
  });

  it("timeToDrain… is the integral of surface over outflow, down to the outlet", () => {
    expectClose("times", drains.map(timeToDrain), answer.timesByIntegral, rounding);
  });

  it("timeToDrain… is the time at which the differential equation has brought the level down", () => {
    const times = drains.filter(([, , , , to]) => to > 0).map(timeToDrain);
    expectClose("times", times, answer.timesBySteps, { relative: 1e-8 });
  });

  it("is what was recorded", () => {
    expect(Object.keys(recorded)).toEqual(Object.keys(answer));
    for (const name of Object.keys(answer) as (keyof Answer)[]) {
      expectClose(name, recorded[name], answer[name], { relative: 1e-9 });
    }
  });
});
