import type { MomentName } from "../model/moment.js";
import type { FrictionLaw } from "../solve/solution.js";
import { type UnitSystem, writeQuantity } from "../units/quantity.js";

export const MOMENT_WORDS: Readonly<Record<MomentName, string>> = {
  fullIdle: "full and idle",
  fullBusiest: "full and busiest",
  lowestBusiest: "lowest usable and busiest",
  ordinary: "an ordinary hour",
};

export const LAW_WORDS: Readonly<Record<FrictionLaw, string>> = {
  hazenWilliams: "Hazen-Williams",
  darcyWeisbach: "Darcy-Weisbach",
};

/** An avoirdupois pound [kg], exact; nist-sp-811. */
export const POUND = 0.45359237;

export const writeMass = (mass: number, system: UnitSystem): string =>
  system === "us" ? `${Math.round(mass / POUND)} lb` : `${mass < 10 ? mass.toFixed(1) : Math.round(mass)} kg`;

/** A head or a difference of heads with its sign spelt out where it is one of shortage. */
export const writeHead = (head: number, system: UnitSystem): string => writeQuantity(head, "head", system, 3);
export const writeFlow = (flow: number, system: UnitSystem): string => writeQuantity(flow, "flow", system, 2);
export const writeVolume = (volume: number, system: UnitSystem): string =>
  writeQuantity(volume, "volume", system, 3);

/** A speed: cm/s under a metre a second. */
export function writeVelocity(velocity: number, system: UnitSystem): string {
  const size = Math.abs(velocity);
  if (system === "us") return `${Number((size / 0.3048).toPrecision(2))} ft/s`;
  return size < 1 ? `${Number((size * 100).toPrecision(2))} cm/s` : `${Number(size.toPrecision(3))} m/s`;
}

/** A margin in head with its sign: what is to spare or missing. */
export function writeMargin(margin: number, system: UnitSystem): string {
  const text = writeQuantity(Math.abs(margin), "head", system, 2);
  return margin < 0 ? `-${text}` : `+${text}`;
}

export const writeQuantityOfLitres = (litres: number, system: UnitSystem): string =>
  writeVolume(litres / 1000, system);
