import { describe, expect, it } from "vitest";
import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import {
  waterInTiltedTaper,
  waterOverSlopingFloor,
} from "../../packages/hydraulics/src/physics/tilted-pan.js";
import { askPython, PYTHON_IS } from "./ask-python.js";
import { expectClose } from "./closeness.js";

const random = randomFrom(41);
const between = (low: number, high: number) => low + (high - low) * random.uniform();

/** Radius, depth over the middle, slope: covered floors, half dry ones, and ones dry in the middle. */
type Floor = [radius: number, depth: number, slope: number];
const floors = Array.from({ length: 60 }, (): Floor => {
  const radius = between(0.03, 0.6);
  const slope = between(0.005, 0.6);
  return [radius, between(-0.95, 1.6) * radius * slope, slope];
});

type Taper = [floor: number, rim: number, depth: number, slope: number];
const tapers = Array.from({ length: 30 }, (): Taper => {
  const floor = between(0.05, 0.3);
  return [floor, floor * between(1.01, 1.4), between(0.02, 0.2), between(0.005, 0.8)];
});

interface Answer {
  readonly floors: number[];
  readonly tapers: number[];
}

describe(`tilted pans against quadrature by columns, ${PYTHON_IS}`, () => {
  const { answer, recorded } = askPython<Answer>("tilted", { floors, tapers }, { digits: 12 });

  it("waterOverSlopingFloor is the integral over the columns, floor covered or half dry", () => {
    const ours = floors.map(([radius, depth, slope]) => waterOverSlopingFloor({ radius, depth, slope }));
    expectClose("floors", ours, answer.floors, { relative: 1e-9, absolute: 1e-15 });
  });

  it("waterInTiltedTaper is the sum over columns up to the surface at the lowest lip", () => {
    const ours = tapers.map(([floor, rim, depth, slope]) => waterInTiltedTaper({ floor, rim, depth, slope }));
    expectClose("tapers", ours, answer.tapers, { relative: 2e-5, absolute: 2e-8 });
  });

  it("has the recorded answers", () => {
    expectClose("recorded floors", answer.floors, recorded.floors, { relative: 1e-9, absolute: 1e-15 });
    expectClose("recorded tapers", answer.tapers, recorded.tapers, { relative: 1e-9 });
    expect(recorded.floors).toHaveLength(floors.length);
  });
});
