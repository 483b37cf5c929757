import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import * as air from "../../../packages/hydraulics/src/physics/air.js";
import * as airGap from "../../../packages/hydraulics/src/physics/air-gap.js";
import * as cooling from "../../../packages/hydraulics/src/physics/cooling.js";
import * as darcyWeisbach from "../../../packages/hydraulics/src/physics/darcy-weisbach.js";
import * as draining from "../../../packages/hydraulics/src/physics/draining.js";
import * as drips from "../../../packages/hydraulics/src/physics/drips.js";
import * as evaporation from "../../../packages/hydraulics/src/physics/evaporation.js";
import * as fittings from "../../../packages/hydraulics/src/physics/fittings.js";
import * as freezing from "../../../packages/hydraulics/src/physics/freezing.js";
import * as ground from "../../../packages/hydraulics/src/physics/ground.js";
import * as hazenWilliams from "../../../packages/hydraulics/src/physics/hazen-williams.js";
import * as load from "../../../packages/hydraulics/src/physics/load.js";
import * as measuredDrinker from "../../../packages/hydraulics/src/physics/measured-drinker.js";
import * as multiOutlet from "../../../packages/hydraulics/src/physics/multi-outlet.js";
import * as orifice from "../../../packages/hydraulics/src/physics/orifice.js";
import * as screen from "../../../packages/hydraulics/src/physics/screen.js";
import * as sun from "../../../packages/hydraulics/src/physics/sun.js";
import * as swungBell from "../../../packages/hydraulics/src/physics/swung-bell.js";
import * as tiltedFount from "../../../packages/hydraulics/src/physics/tilted-fount.js";
import * as tiltedPan from "../../../packages/hydraulics/src/physics/tilted-pan.js";
import * as trappedAir from "../../../packages/hydraulics/src/physics/trapped-air.js";
import * as vent from "../../../packages/hydraulics/src/physics/vent.js";
import * as vessel from "../../../packages/hydraulics/src/physics/vessel.js";
import * as water from "../../../packages/hydraulics/src/physics/water.js";
import * as wind from "../../../packages/hydraulics/src/physics/wind.js";

/** The formulas by the file they stand in. */
const FILES = {
  air,
  "air-gap": airGap,
  cooling,
  "darcy-weisbach": darcyWeisbach,
  draining,
  drips,
  evaporation,
  fittings,
  freezing,
  ground,
  "hazen-williams": hazenWilliams,
  load,
  "measured-drinker": measuredDrinker,
  "multi-outlet": multiOutlet,
  orifice,
  screen,
  sun,
  "swung-bell": swungBell,
  "tilted-fount": tiltedFount,
  "tilted-pan": tiltedPan,
  "trapped-air": trappedAir,
  vent,
  vessel,
  water,
  wind,
};

interface Example {
  /** The call, as text, and the part of its answer that is meant. */
  readonly call: string;
  readonly owner: string;
  /** What the docstring says it gives, as it is written there. */
  readonly figure: string;
}

const everything: Readonly<Record<string, unknown>> = Object.assign({}, ...Object.values(FILES));
const folder = new URL("../../../packages/hydraulics/src/physics/", import.meta.url);
const examples = Object.keys(FILES).flatMap((file) =>
  examplesIn(readFileSync(new URL(`${file}.ts`, folder), "utf8")),
);

function examplesIn(source: string): Example[] {
  return [...source.matchAll(/@example ((\w+)\(.*?) {3}\/\/ (.*)$/gm)].map(([, call, owner, figure]) => ({
    call: call as string,
    owner: owner as string,
    figure: figure as string,
  }));
}

/** What a text gives that names nothing but the formulas. */
function evaluate(text: string): unknown {
  return new Function(...Object.keys(everything), `return ${text};`)(...Object.values(everything));
}

/** The call with one of its typed numbers replaced, each in turn. */
const spoiled = (call: string, by: string): string[] =>
  [...call.matchAll(/(?<![\w.[])\d[\d.]*(?:e-?\d+)?(?![\w\]])/g)].map(
    ({ 0: number, index }) => call.slice(0, index) + by + call.slice(index + number.length),
  );

/**
 * Who refuses a number that is not one where the formula leaves it to another, and for how many of its numbers. Nobody
 * does where the number is not used, where what is asked is whether figures are within a range, or where what is not a
 * number comes out again.
 */
const REFUSED_ELSEWHERE: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  flowThatClearsAir: { velocityThatClearsAir: 2 },
  boreThatHoldsBubble: { surfaceTensionOfWater: 1, nobody: 3 },
  evaporationInAir: { nobody: 1 },
  headLossFitting: { velocityInBore: 2, reynoldsNumber: 1 },
  timeToFreezeRound: { nobody: 1 },
  leastTimeToFreeze: { nobody: 1 },
  timeToIce: { nobody: 1 },
  iceAfter: { nobody: 1 },
  groundThroughDay: { nobody: 2 },
  isHazenWilliamsInRange: { nobody: 4 },
  centreOfMass: { nobody: 2 },
  doubtOfFlow: { fitDrinkerLaw: 4 },
  throughDay: { nobody: 2 },
  swingForgiven: { slopeThatOverflows: 2 },
  slopeThatDrains: { lowestLip: 4 },
  waterInTiltedRing: { decidingHole: 5 },
  waterOverSlopingFloor: { nobody: 1 },
  waterInTiltedPan: { waterOverSlopingFloor: 2 },
  mostPushedOut: { vapourPressureOfWater: 2 },
  volumeExpelledByWarming: { vapourPressureOfWater: 2 },
  siphonCrestLimit: { nobody: 5 },
};

/** What is said where a call is refused. */
function refusalOf(text: string): string | undefined {
  try {
    evaluate(text);
    return undefined;
  } catch (error) {
    if (error instanceof RangeError) return error.message;
    throw error;
  }
}

describe("the example in a formula's docstring", () => {
  it.each(examples)("$call gives $figure, to the last figure written", ({ call, figure }) => {
    const found = evaluate(call);
    if (typeof found !== "number") return expect(String(found)).toBe(figure.replaceAll('"', ""));
    const [mantissa = "", power = "0"] = figure.split("e");
    const lastPlace = 10 ** (Number(power) - (mantissa.split(".")[1] ?? "").length);
    expect(Math.abs(found - Number(figure))).toBeLessThanOrEqual(0.501 * lastPlace);
  });

  it.each(examples)("$call is refused with any of its numbers not a number", ({ call, owner }) => {
    const elsewhere: Record<string, number> = {};
    for (const text of spoiled(call, "Number.NaN")) {
      const refuser = refusalOf(text)?.split(":")[0] ?? "nobody";
      if (refuser !== owner) elsewhere[refuser] = (elsewhere[refuser] ?? 0) + 1;
    }
    expect(elsewhere).toEqual(REFUSED_ELSEWHERE[owner] ?? {});
  });
});
