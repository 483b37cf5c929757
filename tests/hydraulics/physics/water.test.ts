import { describe, expect, it } from "vitest";
import {
  densityAtKelvin,
  densityOfWater,
  vapourPressureAtKelvin,
  vapourPressureOfWater,
  viscosityDynamicAtKelvin,
  viscosityDynamicOfWater,
  viscosityOfWater,
  WATER_RANGE,
  waterAt,
} from "../../../packages/hydraulics/src/physics/water.js";

describe("water at 0.1 MPa", () => {
  // IAPWS SR6-08(2011), Table 8 (seen): temperature [K], density [kg/m³], viscosity [1e-6 Pa s].
  it.each([
    [260, 997.06836, 3058.36075],
    [298.15, 997.047013, 889.996774],
    [375, 957.00971, 276.207245],
  ])(
    "densityAtKelvin and viscosityDynamicAtKelvin at %d K give every printed digit of the release",
    (temperature, density, viscosity) => {
      expect(Math.abs(densityAtKelvin(temperature) - density)).toBeLessThan(5.1e-7);
      expect(Math.abs((1e6 * viscosityDynamicAtKelvin(temperature)) / viscosity - 1)).toBeLessThan(1e-9);
    },
  );

  // IAPWS SR1-86(1992) (seen as check values): triple point and normal boiling point.
  it.each([
    [273.16, 611.657, 1e-6],
    [373.1243, 101325, 1e-6],
  ])("vapourPressureAtKelvin(%d K) is %d Pa", (temperature, pressure, relative) => {
    expect(Math.abs(vapourPressureAtKelvin(temperature) / pressure - 1)).toBeLessThan(relative);
  });

  // The fuller viscosity formulation IAPWS R12-08 at (298.15 K, 998 kg/m³): 889.735100e-6 Pa s (seen).
  // Its density is 0.95 kg/m³ above that of 0.1 MPa, so only the size is compared.
  it("viscosityDynamicOfWater(25) is within 0.05 % of the general formulation at nearly the same state", () => {
    expect(Math.abs(viscosityDynamicOfWater(25) / 889.7351e-6 - 1)).toBeLessThan(5e-4);
  });

  // Chaplin, London South Bank University, water data (seen): rounded to the digits given.
  it.each([
    [0, 999.8, 1.792, 0.611],
    [10, 999.7, 1.307, 1.228],
    [30, 995.7, 0.797, 4.247],
    [40, 992.2, 0.653, 7.385],
    [50, 988.0, 0.547, 12.353],
  ])(
    "waterAt(%d) agrees with a printed table within its rounding and 0.1 %%",
    (temperatureC, density, viscosityMilli, pressureKilo) => {
      const water = waterAt(temperatureC);
      expect(Math.abs(water.density - density)).toBeLessThan(0.06);
      expect(Math.abs(1000 * water.viscosityDynamic - viscosityMilli)).toBeLessThan(
        0.0005 + 0.001 * viscosityMilli,
      );
      expect(Math.abs(water.vapourPressure / 1000 - pressureKilo)).toBeLessThan(
        0.0005 + 0.0002 * pressureKilo,
      );
    },
  );

  // Bettin & Spieweck's refit of Kell's equation on ITS-90 (seen): an independent density formula.
  it("densityOfWater stays within 0.005 kg/m³ of the ITS-90 Kell equation from 0 to 50 °C", () => {
    for (let t = 0; t <= 50; t += 0.5) {
      const top =
        999.83952 +
        16.952577 * t -
        7.9905127e-3 * t ** 2 -
        46.241757e-6 * t ** 3 +
        105.84601e-9 * t ** 4 -
        281.03006e-12 * t ** 5;
      expect(Math.abs(densityOfWater(t) - top / (1 + 16.887236e-3 * t))).toBeLessThan(0.005);
    }
  });

  // Kestin et al. 1978 (formula from memory): an independent viscosity formula.
  it("viscosityDynamicOfWater stays within 0.1 % of Kestin's formula from 0 to 50 °C", () => {
    for (let t = 0; t <= 50; t += 0.5) {
      const d = 20 - t;
      const power = (d / (t + 96)) * (1.2364 - 1.37e-3 * d + 5.7e-6 * d ** 2);
      expect(Math.abs(viscosityDynamicOfWater(t) / (1.002e-3 * 10 ** power) - 1)).toBeLessThan(1e-3);
    }
  });

  it("waterAt gathers exactly what the single functions give", () => {
    const water = waterAt(12.5);
    expect(water).toEqual({
      temperatureC: 12.5,
      density: densityOfWater(12.5),
      viscosityDynamic: viscosityDynamicOfWater(12.5),
      viscosity: viscosityOfWater(12.5),
      vapourPressure: vapourPressureOfWater(12.5),
    });
    expect(water.viscosity).toBe(water.viscosityDynamic / water.density);
  });

  it("waterAt refuses what lies outside its range, naming value and range", () => {
    expect(() => waterAt(50.1)).toThrow("waterAt: temperatureC is 50.1; it must be from 0 to 50");
    expect(() => densityOfWater(-0.1)).toThrow(RangeError);
    expect(() => viscosityOfWater(Number.NaN)).toThrow(RangeError);
    expect(() => viscosityDynamicOfWater(51)).toThrow(RangeError);
    expect(() => vapourPressureOfWater(Number.POSITIVE_INFINITY)).toThrow(RangeError);
    expect(waterAt(WATER_RANGE.temperatureC.least).density).toBeGreaterThan(999);
    expect(waterAt(WATER_RANGE.temperatureC.greatest).density).toBeLessThan(989);
  });
});
