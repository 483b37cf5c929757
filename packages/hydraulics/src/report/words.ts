import type { MomentName } from "../model/moment.js";
import type { FrictionLaw } from "../solve/solution.js";
import { type UnitSystem, writeQuantity } from "../units/quantity.js";

/** The four moments, in words. */
export const MOMENT_WORDS: Readonly<Record<MomentName, string>> = {
  fullIdle: "full and idle",
  fullBusiest: "full and busiest",
  lowestBusiest: "lowest usable and busiest",
  ordinary: "an ordinary hour",
};

/** The four moments within a sentence. */
export const WHEN_WORDS: Readonly<Record<MomentName, string>> = {
  fullIdle: "with the source full and nobody drinking",
  fullBusiest: "with the source full and the birds busiest",
  lowestBusiest: "with the water lowest and the birds busiest",
  ordinary: "in an ordinary hour",
};

/** The two friction laws, in words. */
export const LAW_WORDS: Readonly<Record<FrictionLaw, string>> = {
  hazenWilliams: "Hazen-Williams",
  darcyWeisbach: "Darcy-Weisbach",
};

/** An avoirdupois pound [kg], exact; nist-sp-811. */
export const POUND = 0.45359237;

/**
 * A mass [kg] in kg, or in lb.
 *
 * @example writeMass(12.34, "metric")   // "12 kg"
 */
export const writeMass = (mass: number, system: UnitSystem): string =>
  system === "us" ? `${Math.round(mass / POUND)} lb` : `${mass < 10 ? mass.toFixed(1) : Math.round(mass)} kg`;

/**
 * A head or a difference of heads with its sign spelt out where it is one of shortage.
 *
 * @example writeHead(0.315, "metric")   // "31.5 cm"
 */
export const writeHead = (head: number, system: UnitSystem): string => writeQuantity(head, "head", system, 3);
/**
 * A flow [m³/s] in mL/min or L/min, or in US units.
 *
 * @example writeFlow(1e-6, "metric")   // "60 mL/min"
 */
export const writeFlow = (flow: number, system: UnitSystem): string => writeQuantity(flow, "flow", system, 2);
/**
 * A volume [m³] in mL or L, or in US units.
 *
 * @example writeVolume(0.0189, "us")   // "4.99 gal"
 */
export const writeVolume = (volume: number, system: UnitSystem): string =>
  writeQuantity(volume, "volume", system, 3);

/** Figures beyond which two sizes are called the same. */
const MOST_FIGURES = 7;

/**
 * Two sizes that a verdict sets against each other, in as many figures as tell them apart: "49.8 mL/min" and
 * "50 mL/min", where two figures would write 50 for both.
 *
 * @example writeApart([8.3e-7, 8.333e-7], "flow", "metric", 2)   // ["49.8 mL/min", "50 mL/min"]
 */
export function writeApart(
  sizes: readonly [number, number],
  kind: "flow" | "head",
  system: UnitSystem,
  figures: number,
): readonly [string, string] {
  const [one, other] = sizes.map((size) => writeQuantity(size, kind, system, figures));
  const isTold = one !== other || sizes[0] === sizes[1] || figures >= MOST_FIGURES;
  return isTold ? [one, other] : writeApart(sizes, kind, system, figures + 1);
}

/**
 * A speed: cm/s under a metre a second.
 *
 * @example writeVelocity(0.123, "metric")   // "12 cm/s"
 */
export function writeVelocity(velocity: number, system: UnitSystem): string {
  const size = Math.abs(velocity);
  if (system === "us") return `${Number((size / 0.3048).toPrecision(2))} ft/s`;
  return size < 1 ? `${Number((size * 100).toPrecision(2))} cm/s` : `${Number(size.toPrecision(3))} m/s`;
}

/**
 * A margin in head with its sign: what is to spare or missing.
 *
 * @example writeMargin(-0.052, "metric")   // "-52 mm"
 */
export function writeMargin(margin: number, system: UnitSystem): string {
  const text = writeQuantity(Math.abs(margin), "head", system, 2);
  return margin < 0 ? `-${text}` : `+${text}`;
}

export const writeQuantityOfLitres = (litres: number, system: UnitSystem): string =>
  writeVolume(litres / 1000, system);
