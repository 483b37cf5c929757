import { describe, expect, it } from "vitest";
import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import {
  frictionFactorChurchill,
  frictionFactorColebrook,
  frictionFactorLaminar,
  headLossDarcyWeisbach,
  headLossLaminar,
  reynoldsNumber,
  velocityInBore,
} from "../../packages/hydraulics/src/physics/darcy-weisbach.js";
import {
  headLossFitting,
  headLossOfCoefficient,
  lossCoefficientAtSize,
  lossCoefficientFromCv,
  lossCoefficientFromEquivalentLength,
  lossCoefficientFromKv,
  lossCoefficientTwoK,
} from "../../packages/hydraulics/src/physics/fittings.js";
import { askPython, PYTHON_IS } from "./ask-python.js";
import { expectClose } from "./closeness.js";

const random = randomFrom(2026);
const spread = (low: number, high: number) => low * (high / low) ** random.uniform();
const signed = (size: number) => (random.uniform() < 0.3 ? -size : size);
const times = (count: number, draw: () => number[]) => Array.from({ length: count }, draw);
const bore = () => spread(2e-3, 0.2);
const viscosity = () => spread(5e-7, 1.8e-6);
/** Flow of a Reynolds number in a bore. */
const flowAt = (reynolds: number, d: number, nu: number) =>
  reynolds / reynoldsNumber({ bore: d, viscosity: nu }, 1);

function pipe(least: number, most: number): number[] {
  const [d, nu] = [bore(), viscosity()];
  return [signed(flowAt(spread(least, most), d, nu)), d, spread(1e-7, 0.03) * d, spread(0.01, 300), nu];
}

function fitting(): number[] {
  const [d, nu] = [bore(), viscosity()];
  return [flowAt(spread(1, 1e6), d, nu), d, spread(10, 3000), spread(0.05, 20), nu];
}

/** Arguments of each formula, and the library's answer to one set of them. */
const FORMULAS: Record<string, { readonly asked: number[][]; readonly ours: (...one: number[]) => number }> =
  {
    churchill: {
      asked: times(60, () => [spread(1, 1e8), spread(1e-7, 0.05)]),
      ours: (reynolds, rough) => frictionFactorChurchill(reynolds!, rough!),
    },
    colebrook: {
      asked: times(60, () => [spread(4000, 1e8), random.uniform() < 0.1 ? 0 : spread(1e-7, 0.05)]),
      ours: (reynolds, rough) => frictionFactorColebrook(reynolds!, rough!),
    },
    laminar: {
      asked: times(10, () => [spread(1e-3, 2000)]),
      ours: (reynolds) => frictionFactorLaminar(reynolds!),
    },
    headLossChurchill: {
      asked: times(60, () => pipe(1, 1e7)),
      ours: (flow, d, roughness, length, nu) =>
        headLossDarcyWeisbach({ bore: d!, roughness: roughness!, length: length!, viscosity: nu! }, flow!),
    },
    headLossLaminar: {
      asked: times(20, () => pipe(1e-3, 2000)),
      ours: (flow, d, _roughness, length, nu) =>
        headLossLaminar({ bore: d!, length: length!, viscosity: nu! }, flow!),
    },
    hooper: {
      asked: times(30, () => [bore(), spread(1, 1e6), spread(10, 3000), spread(0.05, 20)]),
      ours: (d, reynolds, k1, kInfinity) =>
        lossCoefficientTwoK({ bore: d!, k1: k1!, kInfinity: kInfinity! }, reynolds!),
    },
    headLossHooper: {
      asked: times(30, fitting),
      ours: (flow, d, k1, large, nu) => {
        const kInfinity = lossCoefficientAtSize({ kInfinity: large!, bore: d! });
        return headLossFitting({ bore: d!, k1: k1!, kInfinity, viscosity: nu! }, flow!);
      },
    },
    kv: {
      asked: times(10, () => [spread(0.05, 500), bore()]),
      ours: (kv, d) => lossCoefficientFromKv({ kv: kv!, bore: d! }),
    },
    cv: {
      asked: times(10, () => [spread(0.05, 500), bore()]),
      ours: (cv, d) => lossCoefficientFromCv({ cv: cv!, bore: d! }),
    },
    equivalentLength: {
      asked: times(10, () => [spread(0.01, 50), bore(), spread(0.01, 0.1)]),
      ours: (equivalentLength, d, frictionFactor) =>
        lossCoefficientFromEquivalentLength({
          equivalentLength: equivalentLength!,
          bore: d!,
          frictionFactor: frictionFactor!,
        }),
    },
    headOfCoefficient: {
      asked: times(10, () => [spread(0.01, 50), spread(1e-3, 5)]),
      ours: (coefficient, velocity) => headLossOfCoefficient(coefficient!, velocity!),
    },
    reynolds: {
      asked: times(10, () => [spread(1e-3, 5), bore(), viscosity()]),
      ours: (velocity, d, nu) =>
        reynoldsNumber({ bore: d!, viscosity: nu! }, velocity! / velocityInBore(d!, 1)),
    },
  };

/** Rounding of powers; flow factors of valves stand there upon a constant of two digits, 1.6e9, which is 1.5991e9. */
const BOUNDS: Record<string, number> = { kv: 8e-4, cv: 8e-4, headLossChurchill: 1e-11, churchill: 1e-11 };
const ORDINARY_BOUND = 1e-12;

describe(`formulas against the fluids library, ${PYTHON_IS}`, () => {
  const asked = Object.fromEntries(Object.entries(FORMULAS).map(([name, { asked }]) => [name, asked]));
  const { answer, recorded } = askPython<Record<string, number[]>>("formulas", asked, { digits: 15 });

  it.each(Object.keys(FORMULAS))("%s is the same number", (name) => {
    const { asked, ours } = FORMULAS[name]!;
    const relative = BOUNDS[name] ?? ORDINARY_BOUND;
    expectClose(
      name,
      asked.map((one) => ours(...one)),
      answer[name]!,
      { relative },
    );
  });

  it("is what was recorded", () => {
    expect(Object.keys(recorded)).toEqual(Object.keys(answer));
    for (const [name, numbers] of Object.entries(answer)) {
      expectClose(name, recorded[name]!, numbers, { relative: 1e-11 });
    }
  });
});
