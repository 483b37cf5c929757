import { describe, expect, it } from "vitest";
import {
  siphonCrestLimit,
  surfaceHeadAirTube,
  surfaceHeadOpen,
  surfaceHeadSealed,
  ventDiameterFor,
  volumeBeforeStall,
  volumeExpelledByWarming,
} from "../../../packages/hydraulics/src/physics/vent.js";
import { waterAt } from "../../../packages/hydraulics/src/physics/water.js";

const density = waterAt(20).density;

describe("surfaceHeadOpen and surfaceHeadAirTube", () => {
  it("surfaceHeadOpen is the height of the surface", () => {
    expect(surfaceHeadOpen({ bottom: -0.2, level: 0.8 })).toBeCloseTo(0.6, 15);
    expect(() => surfaceHeadOpen({ bottom: 0, level: -0.1 })).toThrow("vessel.level is -0.1");
  });

  it("surfaceHeadAirTube stays at the tube's foot until the surface passes it, then follows the surface", () => {
    const head = (level: number) => surfaceHeadAirTube({ bottom: 0.6, level, tubeFoot: 0.1 });
    expect([0.8, 0.4, 0.1].map(head)).toEqual([0.7, 0.7, 0.7]);
    expect(head(0.05)).toBeCloseTo(0.65, 15);
    expect(head(0)).toBe(0.6);
  });
});

describe("volumeBeforeStall and surfaceHeadSealed", () => {
  // The share of the air's volume that leaves, by Boyle: 3.0 % at 0.3 m, 5.1 % at 0.5 m, 10.7 % at 1 m, 24 % at 2 m.
  it.each([
    [0.3, 0.03],
    [0.5, 0.051],
    [1, 0.107],
    [2, 0.24],
  ])("volumeBeforeStall at %d m of head is that share of the air", (head, share) => {
    expect(Math.abs(volumeBeforeStall({ airVolume: 1, head, density }) - share)).toBeLessThan(0.0025);
  });

  it("a full barrel with 10 L of air and 1 m of head gives about 1.1 L and stops", () => {
    expect(volumeBeforeStall({ airVolume: 0.01, head: 1, density }) * 1000).toBeCloseTo(1.07, 2);
    expect(volumeBeforeStall({ airVolume: 0, head: 1, density })).toBe(0);
  });

  it("once that much has left, surfaceHeadSealed is level with the drinker", () => {
    for (const head of [0.2, 1, 5]) {
      const withdrawn = volumeBeforeStall({ airVolume: 0.01, head, density });
      const left = surfaceHeadSealed({ bottom: 0, level: head, airVolume: 0.01, withdrawn, density });
      expect(Math.abs(left)).toBeLessThan(1e-13);
    }
    expect(surfaceHeadSealed({ bottom: 1, level: 0.5, airVolume: 0.01, withdrawn: 0, density })).toBe(1.5);
  });

  it("thinner air on a mountain stalls it later", () => {
    const low = volumeBeforeStall({ airVolume: 0.01, head: 1, density });
    expect(volumeBeforeStall({ airVolume: 0.01, head: 1, density, atmosphere: 80_000 })).toBeGreaterThan(low);
  });

  it("refuse a head at which there would be a vacuum, and negative volumes", () => {
    expect(() => volumeBeforeStall({ airVolume: 0.01, head: 10.4, density })).toThrow(
      "must be below p0/(rho g)",
    );
    expect(() => volumeBeforeStall({ airVolume: -1, head: 1, density })).toThrow("vessel.airVolume is -1");
    expect(() => surfaceHeadSealed({ bottom: 0, level: 1, airVolume: 0, withdrawn: 0, density })).toThrow(
      RangeError,
    );
  });
});

describe("ventDiameterFor", () => {
  it("lets the air in at the suction it allows: back through Bernoulli's law", () => {
    const vent = { flow: 1e-4, headAllowed: 0.005, density, airDensity: 1.2, dischargeCoefficient: 0.6 };
    const area = (Math.PI / 4) * ventDiameterFor(vent) ** 2;
    const airSpeed = vent.flow / (0.6 * area);
    expect((1.2 * airSpeed ** 2) / 2 / (density * 9.80665)).toBeCloseTo(0.005, 12);
  });

  it("needs twice the diameter for four times the flow, none for none", () => {
    const one = ventDiameterFor({ flow: 1e-4, headAllowed: 0.01 });
    expect(ventDiameterFor({ flow: 4e-4, headAllowed: 0.01 }) / one).toBeCloseTo(2, 12);
    expect(ventDiameterFor({ flow: 0, headAllowed: 0.01 })).toBe(0);
    expect(() => ventDiameterFor({ flow: 1e-4, headAllowed: 0 })).toThrow("vent.headAllowed is 0");
  });
});

describe("volumeExpelledByWarming", () => {
  it.each([
    [0.01, 20, 30, 0.55],
    [0.005, 15, 35, 0.57],
  ])("of %d m³ from %d to %d °C is about %d L", (airVolume, fromC, toC, litres) => {
    expect(Math.abs(1000 * volumeExpelledByWarming({ airVolume, fromC, toC }) - litres)).toBeLessThan(0.01);
  });

  it("is none without a change, and draws in what it gave when it cools again", () => {
    expect(volumeExpelledByWarming({ airVolume: 0.01, fromC: 20, toC: 20 })).toBe(0);
    const out = volumeExpelledByWarming({ airVolume: 0.01, fromC: 10, toC: 40 });
    const back = volumeExpelledByWarming({ airVolume: 0.01 + out, fromC: 40, toC: 10 });
    expect(back).toBeCloseTo(-out, 15);
  });

  it("is more than dry air would give, whose volume grows as its absolute temperature", () => {
    expect(volumeExpelledByWarming({ airVolume: 1, fromC: 0, toC: 50 })).toBeGreaterThan(50 / 273.15);
  });

  it("refuses a temperature it has no vapour pressure for", () => {
    expect(() => volumeExpelledByWarming({ airVolume: 0.01, fromC: 20, toC: 60 })).toThrow(RangeError);
    expect(() => volumeExpelledByWarming({ airVolume: 0.01, fromC: 20, toC: 30, atmosphere: 5000 })).toThrow(
      "air.atmosphere is 5000",
    );
  });
});

describe("siphonCrestLimit", () => {
  // (101325 Pa − 2339 Pa)/(998.2 kg/m³ g): 10.1 m; without vapour 1 atm is 33.96 ft of water at 68 °F
  // (Hydraulic Institute unit data, seen).
  it("is 10.1 m at sea level and 20 °C, and 33.96 ft if there were no vapour", () => {
    expect(siphonCrestLimit(waterAt(20))).toBeCloseTo(10.11, 2);
    const dry = { ...waterAt(20), vapourPressure: 0 };
    expect(Math.abs(siphonCrestLimit(dry) / 0.3048 - 33.959633)).toBeLessThan(0.001);
  });

  it("is lower in warm water and on a mountain, and never negative", () => {
    expect(siphonCrestLimit(waterAt(40))).toBeLessThan(siphonCrestLimit(waterAt(20)));
    expect(siphonCrestLimit(waterAt(20), 80_000)).toBeLessThan(8.2);
    expect(siphonCrestLimit(waterAt(50), 5000)).toBe(0);
    expect(() => siphonCrestLimit(waterAt(20), 0)).toThrow("atmosphere is 0");
  });
});
