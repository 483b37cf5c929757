import {
  CLEARING_SLOPE_RANGE,
  DRINKER_EXPONENT_RANGE,
  FRICTION_RANGE,
  type FrictionLaw,
  HAZEN_WILLIAMS_RANGE,
  heightOfVessel,
  isHazenWilliamsInRange,
  regimeAt,
  type VesselShape,
  WATER_RANGE,
} from "@headfall/hydraulics";
import { bare, type Figures } from "./figures.js";
import type { Validity } from "./how-got.js";

/** State of the water in one run, as the ranges of the friction laws ask for it. */
export interface FlowState {
  readonly bore: number;
  readonly velocity: number;
  readonly reynolds: number;
  readonly temperatureC: number;
  readonly roughness: number;
}

const within = (value: number, range: { readonly least: number; readonly greatest: number }): boolean =>
  value >= range.least && value <= range.greatest;

/** A Reynolds number as it is read: whole. */
export const wholeReynolds = (reynolds: number): string => `Re ${bare(Math.round(reynolds), 7)}`;

export function validityOfFriction(law: FrictionLaw, state: FlowState, figures: Figures): Validity {
  return law === "hazenWilliams" ? ofHazenWilliams(state, figures) : ofDarcyWeisbach(state);
}

function ofHazenWilliams(state: FlowState, figures: Figures): Validity {
  const { reynolds, bore, velocity, temperatureC } = HAZEN_WILLIAMS_RANGE;
  const speed = Math.abs(state.velocity);
  const isInside = isHazenWilliamsInRange(state);
  const outside = [
    ...(within(state.reynolds, reynolds)
      ? []
      : [`${wholeReynolds(state.reynolds)} (${regimeAt(state.reynolds)})`]),
    ...(within(state.bore, bore) ? [] : [`a bore of ${figures.length(state.bore)}`]),
    ...(within(speed, velocity) ? [] : [figures.velocity(speed)]),
    ...(within(state.temperatureC, temperatureC)
      ? []
      : [`water of ${figures.temperature(state.temperatureC)}`]),
  ];
  return {
    law: "Hazen-Williams",
    holds: `made for Re ${bare(reynolds.least)} to ${bare(reynolds.greatest / 1e6)} million, bores of ${figures.length(bore.least)} to ${figures.length(bore.greatest)}, up to ${figures.velocity(velocity.greatest)}, water of ${figures.temperature(temperatureC.least)} to ${figures.temperature(temperatureC.greatest)}`,
    here: isInside
      ? `${wholeReynolds(state.reynolds)}, a bore of ${figures.length(state.bore)}: inside the range it was made for`
      : `${outside.join(", ")}: outside the range it was made for; every verdict is taken with both laws`,
    isInside,
  };
}

function ofDarcyWeisbach({ reynolds, roughness, bore }: FlowState): Validity {
  const { laminar, critical, colebrook } = FRICTION_RANGE;
  const regime = regimeAt(reynolds);
  const isSmooth = within(roughness / bore, colebrook.relativeRoughness);
  const isCovered = reynolds <= colebrook.reynolds.greatest && isSmooth;
  const here =
    regime === "critical"
      ? "where the loss itself is uncertain by a factor of two, and is sampled so"
      : isCovered
        ? "where it holds"
        : "outside of what its charts cover";
  return {
    law: "Darcy-Weisbach with Churchill's factor",
    holds: `laminar up to Re ${bare(laminar.greatest)}; turbulent from ${bare(colebrook.reynolds.least)} to ${bare(colebrook.reynolds.greatest / 1e6)} million, walls up to ${bare(colebrook.relativeRoughness.greatest)} of the bore rough; uncertain from ${bare(critical.least)} to ${bare(critical.greatest)}`,
    here: `${wholeReynolds(reynolds)}: ${regime}, ${here}`,
    isInside: regime !== "critical" && isCovered,
  };
}

/** The drinkers' law, by its exponent and by the head its flow was stated at. */
export function validityOfDrinkerLaw(exponent: number, stated: string, here: string): Validity {
  const { least, greatest } = DRINKER_EXPONENT_RANGE;
  const isInside = within(exponent, DRINKER_EXPONENT_RANGE);
  return {
    law: "The drinker's law",
    holds: `exponents from ${least} to ${greatest}, near the heads its flow was read at${stated}`,
    here: `exponent ${bare(exponent, 3)}${here}: ${isInside ? "inside" : "outside; suspect a reading"}`,
    isInside,
  };
}

export function validityOfVessel(shape: VesselShape, level: number, figures: Figures): Validity {
  const height = heightOfVessel(shape);
  return {
    law: "The vessel's volume",
    holds: `water from its bottom to its brim, 0 to ${figures.length(height)}`,
    here: `water ${figures.length(level)} deep: ${level <= height + 1e-9 ? "inside" : "above the brim"}`,
    isInside: level >= 0 && level <= height + 1e-9,
  };
}

export function validityOfWater(temperatureC: number, figures: Figures): Validity {
  const { least, greatest } = WATER_RANGE.temperatureC;
  return {
    law: "The water's viscosity and density",
    holds: `clean water of ${figures.temperature(least)} to ${figures.temperature(greatest)}`,
    here: `${figures.temperature(temperatureC)}: inside`,
    isInside: within(temperatureC, WATER_RANGE.temperatureC),
  };
}

/** Models of how flow carries air off differ, and none was measured in pipes this small. */
export function validityOfClearing(): Validity {
  const degrees = (angle: number) => `${bare((angle * 180) / Math.PI, 3)}°`;
  const { least, greatest } = CLEARING_SLOPE_RANGE;
  return {
    law: "The flow that clears air",
    holds: `pipe that falls by ${degrees(least)} to ${degrees(greatest)}, measured in wide pipes`,
    here: "a small pipe may need more or less: take it as a guide",
    isInside: false,
  };
}

/** Hydrostatics and geometry hold at any size: said all the same, so that nobody has to wonder. */
export const alwaysValid = (law: string, why: string): Validity => ({
  law,
  holds: `holds at any size; ${why}`,
  here: "",
  isInside: true,
});
