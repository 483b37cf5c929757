import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { randomFrom } from "../../../packages/hydraulics/src/numerics/random.js";
import {
  doubtOfFlow,
  fitDrinkerLaw,
  type MeasurementFinding,
} from "../../../packages/hydraulics/src/physics/measured-drinker.js";
import { flowAtHead } from "../../../packages/hydraulics/src/physics/orifice.js";

const ML_PER_MIN = 1e-6 / 60;

describe("fitDrinkerLaw", () => {
  it("finds the law again from readings that follow it exactly", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-7, max: 1e-4, noNaN: true }),
        fc.double({ min: 0.3, max: 1.1, noNaN: true }),
        fc.double({ min: 0, max: 0.2, noNaN: true }),
        (coefficient, exponent, openingHead) => {
          const law = { coefficient, exponent, openingHead };
          const readings = [0.05, 0.3, 1.2].map((above) => ({
            head: openingHead + above,
            flow: flowAtHead(law, openingHead + above),
          }));
          const fit = fitDrinkerLaw(readings, { openingHead });
          expect(fit.law.exponent).toBeCloseTo(exponent, 10);
          expect(fit.law.coefficient / coefficient).toBeCloseTo(1, 10);
          expect(fit.law.openingHead).toBe(openingHead);
          for (const residual of fit.residuals) expect(Math.abs(residual)).toBeLessThan(1e-12);
        },
      ),
    );
  });

  it("gives the doubts of the textbook's straight line: σ/√n at the centre, σ/√S for the slope", () => {
    const fit = fitDrinkerLaw(
      [
        { head: 0.25, flow: 40 * ML_PER_MIN },
        { head: 1, flow: 80 * ML_PER_MIN },
      ],
      { readingError: 0.04 },
    );
    const spread = 2 * Math.log(2) ** 2; // ln 0.25 and ln 1 lie ln 2 either side of their mean
    expect(fit.law.exponent).toBeCloseTo(0.5, 12);
    expect(fit.centreHead).toBeCloseTo(0.5, 12);
    expect(fit.relativeDoubt).toBeCloseTo(0.04 / Math.SQRT2, 12);
    expect(fit.exponentDoubt).toBeCloseTo(0.04 / Math.sqrt(spread), 12);
    expect(fit.outside).toEqual(["no-check"]);
    expect(doubtOfFlow(fit, 0.5)).toBeCloseTo(fit.relativeDoubt, 12);
    expect(doubtOfFlow(fit, 2)).toBeCloseTo(
      Math.hypot(fit.relativeDoubt, fit.exponentDoubt * Math.log(4)),
      12,
    );
  });

  it("states doubts that are true: over 2000 noisy sets the errors scatter as it says", () => {
    const random = randomFrom(31);
    const law = { coefficient: 1.5e-6, exponent: 0.55, openingHead: 0 };
    const heads = [0.1, 0.25, 0.6, 1.5];
    let exponentSquares = 0;
    let flowSquares = 0;
    const sets = 2000;
    for (let set = 0; set < sets; set++) {
      const readings = heads.map((head) => ({
        head,
        flow: flowAtHead(law, head) * Math.exp(0.05 * random.normal()),
      }));
      const fit = fitDrinkerLaw(readings);
      exponentSquares += (fit.law.exponent - law.exponent) ** 2;
      flowSquares += Math.log(flowAtHead(fit.law, 3) / flowAtHead(law, 3)) ** 2;
    }
    const exact = fitDrinkerLaw(heads.map((head) => ({ head, flow: flowAtHead(law, head) })));
    expect(Math.abs(Math.sqrt(exponentSquares / sets) / exact.exponentDoubt - 1)).toBeLessThan(0.08);
    expect(Math.abs(Math.sqrt(flowSquares / sets) / doubtOfFlow(exact, 3) - 1)).toBeLessThan(0.08);
  });

  it("raises its doubt when the readings disagree by more than the stated error", () => {
    const flows = [30, 60, 45, 110];
    const fit = fitDrinkerLaw(
      [0.1, 0.3, 0.6, 1.2].map((head, i) => ({ head, flow: flows[i]! * ML_PER_MIN })),
    );
    expect(fit.relativeDoubt).toBeGreaterThan(0.05 / Math.sqrt(4));
    const squares = fit.residuals.reduce((total, r) => total + r * r, 0);
    expect(fit.relativeDoubt).toBeCloseTo(Math.sqrt(squares / 2 / 4), 12);
  });

  it("assumes the exponent, and says so, when the heads are alike", () => {
    const readings = [
      { head: 0.5, flow: 50 * ML_PER_MIN },
      { head: 0.52, flow: 60 * ML_PER_MIN },
    ];
    const fit = fitDrinkerLaw(readings);
    expect(fit.outside).toEqual(["heads-alike"]);
    expect(fit.law.exponent).toBe(0.5);
    expect(fit.exponentDoubt).toBeCloseTo(0.8 / Math.sqrt(12), 12);
    expect(fitDrinkerLaw(readings, { assumedExponent: 0.57 }).law.exponent).toBe(0.57);
    const same = fitDrinkerLaw([readings[0]!, readings[0]!, readings[0]!]);
    expect(same.law.exponent).toBe(0.5);
    expect(flowAtHead(same.law, 0.5)).toBeCloseTo(50 * ML_PER_MIN, 15);
  });

  it("takes a single reading as one point of an assumed law", () => {
    const fit = fitDrinkerLaw([{ head: 0.4, flow: 70 * ML_PER_MIN }]);
    expect(fit.outside).toEqual(["heads-alike", "no-check"]);
    expect(flowAtHead(fit.law, 0.4) / ML_PER_MIN).toBeCloseTo(70, 10);
    expect(fit.relativeDoubt).toBeCloseTo(0.05, 15);
  });

  it("reports an exponent out of range and does not change it", () => {
    const steep = fitDrinkerLaw([
      { head: 0.1, flow: 10 * ML_PER_MIN },
      { head: 1, flow: 200 * ML_PER_MIN },
    ]);
    expect(steep.law.exponent).toBeCloseTo(Math.log10(20), 12);
    expect(steep.outside).toContain<MeasurementFinding>("exponent-high");
    const flat = fitDrinkerLaw([
      { head: 0.1, flow: 60 * ML_PER_MIN },
      { head: 1, flow: 66 * ML_PER_MIN },
    ]);
    expect(flat.law.exponent).toBeCloseTo(Math.log10(1.1), 12);
    expect(flat.outside).toContain<MeasurementFinding>("exponent-low");
  });

  it.each<[number, MeasurementFinding[]]>([
    [0.299, ["exponent-low"]],
    [0.301, []],
    [1.099, []],
    [1.101, ["exponent-high"]],
  ])("finds nothing strange in exponents from 0.3 to 1.1: %f", (exponent, outside) => {
    const readings = [0.1, 0.4, 1.6].map((head) => ({ head, flow: 1e-6 * head ** exponent }));
    expect(fitDrinkerLaw(readings).outside).toEqual(outside);
  });

  it("refuses no readings, a flow of nought, a head at the opening head and senseless options", () => {
    const good = { head: 0.4, flow: 1e-6 };
    expect(() => fitDrinkerLaw([])).toThrow("readings is empty");
    expect(() => fitDrinkerLaw([good, { head: 0.4, flow: 0 }])).toThrow("readings[1].flow is 0");
    expect(() => fitDrinkerLaw([good], { openingHead: 0.4 })).toThrow("above the opening head 0.4");
    expect(() => fitDrinkerLaw([good], { readingError: 0 })).toThrow("readingError is 0");
    expect(() => doubtOfFlow(fitDrinkerLaw([good]), 0)).toThrow("above the opening head 0");
  });
});

describe("doubts where readings are few or the drinker opens late", () => {
  const flows = (...given: readonly [head: number, flow: number][]) =>
    given.map(([head, flow]) => ({ head, flow }));

  it("two readings at one head differ by what was not seen: σ = √2 ln 1.1 of one free, over √2", () => {
    const fit = fitDrinkerLaw(flows([0.5, 1e-6], [0.5, 1.21e-6]));
    expect(fit.relativeDoubt).toBeCloseTo(Math.log(1.1), 12);
    expect(fit.law.exponent).toBe(0.5);
  });

  it("three readings off their line tell σ with one free, and are a check", () => {
    // ln of heads -1, 0, 1 and of flows r, -2r, r off a line: Σr² = 6 r², one free, over √3.
    const r = 0.05;
    const fit = fitDrinkerLaw(
      flows([1 / Math.E, Math.exp(-0.5 + r)], [1, Math.exp(-2 * r)], [Math.E, Math.exp(0.5 + r)]),
    );
    expect(fit.law.exponent).toBeCloseTo(0.5, 12);
    expect(fit.relativeDoubt).toBeCloseTo(r * Math.SQRT2, 12);
    expect(fit.outside).not.toContain("no-check");
  });

  it("grow with the head over where it opens, not over nothing", () => {
    const fit = fitDrinkerLaw(flows([0.35, 1e-6], [1.1, 2e-6]), { openingHead: 0.1 });
    expect(fit.centreHead).toBeCloseTo(0.6, 12);
    expect(doubtOfFlow(fit, 0.6)).toBeCloseTo(fit.relativeDoubt, 12);
    expect(doubtOfFlow(fit, 2.1)).toBeCloseTo(
      Math.hypot(fit.relativeDoubt, fit.exponentDoubt * Math.log(4)),
      12,
    );
  });

  it("refuse heads and openings without meaning", () => {
    const fit = fitDrinkerLaw(flows([0.25, 1e-6], [1, 2e-6]));
    expect(() => doubtOfFlow(fit, Number.POSITIVE_INFINITY)).toThrow("head is Infinity");
    expect(() => fitDrinkerLaw(flows([Number.POSITIVE_INFINITY, 1e-6]))).toThrow(
      "readings[0].head is Infinity",
    );
    expect(() => fitDrinkerLaw(flows([0.25, 1e-6]), { openingHead: -0.1 })).toThrow("openingHead is -0.1");
  });
});
