import { describe, expect, it } from "vitest";
import {
  boreThatHoldsBubble,
  flowThatClearsAir,
  velocityThatClearsAir,
} from "../../../packages/hydraulics/src/physics/air.js";
import { surfaceTensionOfWater, waterAt } from "../../../packages/hydraulics/src/physics/water.js";

const DEGREE = Math.PI / 180;

describe("velocityThatClearsAir and flowThatClearsAir", () => {
  it("on the level is 0.825 √(g d), and down a plumb pipe 1.075 √(g d)", () => {
    const bore = 0.0209;
    expect(velocityThatClearsAir({ bore, slopeAngle: 0 })).toBeCloseTo(0.825 * Math.sqrt(9.80665 * bore), 15);
    expect(velocityThatClearsAir({ bore, slopeAngle: Math.PI / 2 })).toBeCloseTo(
      1.075 * Math.sqrt(9.80665 * bore),
      15,
    );
  });

  // Half-inch pipe needs about 3.8 to 4.6 L/min, one inch about 14: what a drinker line never reaches.
  it("is 3.8 to 4.6 L/min in a half-inch pipe and 14 in one inch", () => {
    const litres = (bore: number, degrees: number) =>
      60_000 * flowThatClearsAir({ bore, slopeAngle: degrees * DEGREE });
    expect(litres(0.0158, 0)).toBeCloseTo(3.8, 1);
    expect(litres(0.0158, 30)).toBeCloseTo(4.6, 1);
    expect(Math.abs(litres(0.0266, 0) - 14)).toBeLessThan(0.5);
  });

  it("grows as the bore to the power 2.5: a bigger pipe makes it worse", () => {
    const ratio =
      flowThatClearsAir({ bore: 0.04, slopeAngle: 0.1 }) / flowThatClearsAir({ bore: 0.02, slopeAngle: 0.1 });
    expect(ratio).toBeCloseTo(2 ** 2.5, 12);
  });

  it("refuse a rising pipe and a bore of nought", () => {
    expect(() => velocityThatClearsAir({ bore: 0.02, slopeAngle: -0.1 })).toThrow("pipe.slopeAngle is -0.1");
    expect(() => flowThatClearsAir({ bore: 0, slopeAngle: 0 })).toThrow(RangeError);
  });
});

describe("boreThatHoldsBubble and surfaceTensionOfWater", () => {
  // IAPWS R1-76 table (from memory) [mN/m].
  it.each([
    [10, 74.22],
    [20, 72.74],
    [25, 71.97],
    [50, 67.94],
  ])("surfaceTensionOfWater(%d) is %d mN/m", (temperatureC, milli) => {
    expect(Math.abs(1000 * surfaceTensionOfWater(temperatureC) - milli)).toBeLessThan(0.011);
  });

  it("boreThatHoldsBubble in water at 20 °C is 5.0 mm, and a little less when warm", () => {
    expect(1000 * boreThatHoldsBubble(waterAt(20))).toBeCloseTo(5.0, 2);
    expect(boreThatHoldsBubble(waterAt(40))).toBeLessThan(boreThatHoldsBubble(waterAt(20)));
    expect(() => boreThatHoldsBubble({ ...waterAt(20), temperatureC: 80 })).toThrow(RangeError);
    expect(() => boreThatHoldsBubble({ ...waterAt(20), density: 0 })).toThrow("water.density is 0");
  });
});
