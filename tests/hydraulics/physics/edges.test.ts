import { describe, expect, it } from "vitest";
import { CLEARING_SLOPE_RANGE, velocityThatClearsAir } from "../../../packages/hydraulics/src/physics/air.js";
import {
  conductanceOfPipe,
  flowThatHolds,
  timeToCool,
} from "../../../packages/hydraulics/src/physics/cooling.js";
import {
  FRICTION_RANGE,
  frictionFactorChurchill,
  frictionFactorColebrook,
} from "../../../packages/hydraulics/src/physics/darcy-weisbach.js";
import { timeToDrainLying, timeToDrainPrism } from "../../../packages/hydraulics/src/physics/draining.js";
import { DROP_VOLUME } from "../../../packages/hydraulics/src/physics/drips.js";
import {
  EVAPORATION_BY_AIR,
  SMALL_PAN_IN_SUN,
} from "../../../packages/hydraulics/src/physics/evaporation.js";
import {
  headLossFitting,
  lossCoefficientOfBoreRatio,
  lossCoefficientOfWidening,
} from "../../../packages/hydraulics/src/physics/fittings.js";
import {
  FROST_HEAD_SPACE,
  iceAfter,
  timeToFreezeRound,
} from "../../../packages/hydraulics/src/physics/freezing.js";
import {
  groundAfterFrost,
  groundThroughDay,
  SOIL_DIFFUSIVITY,
  timeOfFrostAt,
} from "../../../packages/hydraulics/src/physics/ground.js";
import {
  HAZEN_WILLIAMS_LAW,
  HAZEN_WILLIAMS_RANGE,
  isHazenWilliamsInRange,
} from "../../../packages/hydraulics/src/physics/hazen-williams.js";
import {
  DISCHARGE_COEFFICIENT,
  drinkerLawThrough,
} from "../../../packages/hydraulics/src/physics/orifice.js";
import { openShareOfScreen } from "../../../packages/hydraulics/src/physics/screen.js";
import { sunRiseOfPipe, sunRiseOfVessel, throughDay } from "../../../packages/hydraulics/src/physics/sun.js";
import {
  VENT_SHARE,
  volumeBeforeStall,
  volumeExpelledByWarming,
} from "../../../packages/hydraulics/src/physics/vent.js";
import { DRAG } from "../../../packages/hydraulics/src/physics/wind.js";

describe("figures and ranges", () => {
  it("are those their sources give", () => {
    expect(FRICTION_RANGE).toEqual({
      laminar: { least: 0, greatest: 2000 },
      critical: { least: 2000, greatest: 4000 },
      colebrook: {
        reynolds: { least: 4000, greatest: 1e8 },
        relativeRoughness: { least: 0, greatest: 0.05 },
      },
      swameeJain: {
        reynolds: { least: 5000, greatest: 1e8 },
        relativeRoughness: { least: 1e-6, greatest: 0.01 },
      },
    });
    expect(HAZEN_WILLIAMS_LAW).toEqual({ constant: 10.67, flowExponent: 1.852, boreExponent: 4.8704 });
    expect(HAZEN_WILLIAMS_RANGE).toMatchObject({
      reynolds: { least: 4000, greatest: 3.2e6 },
      bore: { least: 0.05, greatest: 1.85 },
      velocity: { least: 0, greatest: 3 },
      temperatureC: { least: 5, greatest: 25 },
    });
    expect(DISCHARGE_COEFFICIENT).toEqual({ sharp: 0.61, shortTube: 0.82, rounded: 0.98 });
    expect(DRAG).toEqual({ round: 0.8, box: 1.3 });
    expect(DROP_VOLUME).toEqual({ small: 5e-8, large: 2.5e-7 });
    expect(EVAPORATION_BY_AIR).toEqual({ highC: [10, 24, 36], mmPerDay: [2, 5, 10] });
    expect(SMALL_PAN_IN_SUN).toEqual({ factor: 1.25, least: 1.1, most: 1.4 });
    expect([VENT_SHARE, FROST_HEAD_SPACE, CLEARING_SLOPE_RANGE.greatest]).toEqual([0.01, 0.1, Math.PI / 2]);
  });

  it("of Hazen-Williams include both their ends, and no more", () => {
    const { reynolds, bore, velocity, temperatureC } = HAZEN_WILLIAMS_RANGE;
    const at = (end: "least" | "greatest") => ({
      bore: bore[end],
      velocity: velocity[end],
      reynolds: reynolds[end],
      temperatureC: temperatureC[end],
    });
    expect([at("least"), at("greatest")].map(isHazenWilliamsInRange)).toEqual([true, true]);
    expect(isHazenWilliamsInRange({ ...at("greatest"), temperatureC: 25.1 })).toBe(false);
    expect(isHazenWilliamsInRange({ ...at("least"), temperatureC: 4.9 })).toBe(false);
  });
});

describe("formulas refuse what has no meaning", () => {
  it.each([
    ["lossCoefficientOfBoreRatio: boreRatio is 0;", () => lossCoefficientOfBoreRatio(0)],
    ["lossCoefficientOfBoreRatio: boreRatio is 1.5;", () => lossCoefficientOfBoreRatio(1.5)],
    ["it must be finite and above 0", () => lossCoefficientOfWidening(0)],
    ["relativeRoughness is 1.5;", () => frictionFactorChurchill(1e5, 1.5)],
    ["relativeRoughness is -0.1;", () => frictionFactorColebrook(1e5, -0.1)],
    [
      "fall.from is -1;",
      () => timeToDrainPrism({ surface: 1 }, { area: 1e-4, dischargeCoefficient: 0.6 }, { from: -1, to: -2 }),
    ],
    [
      "timeToDrainLying: vessel.length is -1;",
      () =>
        timeToDrainLying(
          { diameter: 1, length: -1 },
          { area: 1e-4, dischargeCoefficient: 0.6 },
          { from: 1, to: 0 },
        ),
    ],
    ["point.flow is -1;", () => drinkerLawThrough({ head: 1, flow: -1 })],
    ["point.exponent is 0;", () => drinkerLawThrough({ head: 1, flow: 1e-6, exponent: 0 })],
    ["point.head is Infinity;", () => drinkerLawThrough({ head: Number.POSITIVE_INFINITY, flow: 1e-6 })],
    ["pipe.absorptance is 1.5;", () => sunRiseOfPipe({ absorptance: 1.5, film: 12 }, 900)],
    [
      "vessel.absorptance is 1.5;",
      () => sunRiseOfVessel({ absorptance: 1.5, film: 12, silhouette: 1, wall: 1 }, 900),
    ],
    ["screen.wires is -1;", () => openShareOfScreen({ wires: -1, wiresAcross: 600, wire: 3e-4 })],
    ["screen.wire is 2;", () => openShareOfScreen({ wires: 100, wiresAcross: 2000, wire: 1e-3 })],
    ["pipe.slopeAngle is 1.6;", () => velocityThatClearsAir({ bore: 0.016, slopeAngle: 1.6 })],
    ["p0/(rho g), 10.3", () => volumeBeforeStall({ airVolume: 0.01, head: 11, density: 998.2 })],
    [
      "air.atmosphere is 10050000;",
      () => volumeExpelledByWarming({ airVolume: 0.01, fromC: 20, toC: 30, atmosphere: 1.005e7 }),
    ],
  ] as const)("%s", (said, call) => {
    expect(call).toThrow(RangeError);
    expect(call).toThrow(said);
  });

  it("but not what is only unusual", () => {
    expect(headLossFitting({ k1: 800, kInfinity: 1, bore: 0.016, viscosity: 1e-6 }, 0)).toBe(0);
    expect(frictionFactorColebrook(1e6, 1)).toBeGreaterThan(0.5);
    expect(conductanceOfPipe({ outside: 0.02, lagging: 0, film: 0.5 })).toBeCloseTo(Math.PI * 0.02 * 0.5, 12);
    // Air at a pressure two and a half times that of the vapour in it.
    expect(volumeExpelledByWarming({ airVolume: 1, fromC: 20, toC: 20, atmosphere: 6000 })).toBeCloseTo(
      0,
      12,
    );
  });
});

describe("air that is no colder than it must be", () => {
  it("never freezes, never cools, and takes nothing from what flows", () => {
    expect(timeToFreezeRound(0.02, { film: 10, air: 0.5 })).toBe(Number.POSITIVE_INFINITY);
    expect(timeOfFrostAt({ depth: 0.1, ground: 4, air: 0.5 })).toBe(Number.POSITIVE_INFINITY);
    expect(timeOfFrostAt({ depth: 0.1, ground: 4, air: 2 })).toBe(Number.POSITIVE_INFINITY);
    expect(timeToCool({ capacity: 8e4, conductance: 4, from: 10, air: 5 }, 2)).toBe(Number.POSITIVE_INFINITY);
    expect(flowThatHolds({ conductance: 0.8, length: 10 }, { enters: 4, leaves: 1, air: 6 })).toBe(0);
    expect(iceAfter({ from: 0.01, time: 3600 }, { film: 15, air: 0.5 })).toBe(0.01);
  });

  it("and the shortest frost begins at once", () => {
    expect(iceAfter({ from: 0, time: 1 }, { film: 15, air: -10 })).toBeGreaterThan(0);
    expect(groundAfterFrost({ depth: 0.001, ground: 4, air: -8 }, 1)).toBeLessThan(3.9);
    expect(groundAfterFrost({ depth: 0, ground: 4, air: -8 }, 0)).toBe(4);
    expect(timeOfFrostAt({ depth: 0.1, ground: 0.5, air: -8 })).toBeGreaterThan(0);
  });
});

describe("groundThroughDay", () => {
  const DEPTH = 0.03;
  /** What the ground does at a depth below a wave of so many a day: damped and late (Carslaw and Jaeger). */
  const below = (count: number, n: number) => {
    const late = DEPTH / Math.sqrt((SOIL_DIFFUSIVITY * 86_400) / (Math.PI * n));
    return Array.from(
      { length: count },
      (_, k) => Math.exp(-late) * Math.cos((2 * Math.PI * n * k) / count - late),
    );
  };
  const wave = (count: number, n: number) =>
    Array.from({ length: count }, (_, k) => Math.cos((2 * Math.PI * n * k) / count));

  it.each([
    [4, 1],
    [4, 2],
    [5, 2],
    [6, 3],
    [48, 12],
  ])("of %i steps damps and delays a wave of %i a day as the closed form does", (count, n) => {
    const found = groundThroughDay(wave(count, n), DEPTH);
    for (const [k, expected] of below(count, n).entries()) expect(found[k]).toBeCloseTo(expected, 12);
  });

  it("leaves out waves of more than twelve a day", () => {
    for (const one of groundThroughDay(wave(48, 13), DEPTH)) expect(one).toBeCloseTo(0, 12);
  });
});

describe("throughDay", () => {
  it("is what it tends to where nothing is stored, begins at its mean where all is, and nothing of nothing", () => {
    const towards = [10, 20, 30, 20];
    expect(throughDay(towards, 0)).toEqual(towards);
    expect(throughDay(towards, 1)).not.toEqual(towards);
    expect(throughDay(towards, 1e25)[0]).toBeCloseTo(20, 9);
    expect(throughDay([], 100)).toEqual([]);
  });
});
