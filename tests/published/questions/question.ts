import { siphonCrestLimit } from "../../../packages/hydraulics/src/physics/vent.js";
import { waterAt } from "../../../packages/hydraulics/src/physics/water.js";
import type { Figure, Givens } from "../figures.js";

/** Puts what a case gives to the library, and names what comes back. */
export type Question = (given: Givens) => Readonly<Record<string, Figure>>;

export const plain = (si: number): Figure => ({ kind: "plain", si });
export const headOf = (si: number): Figure => ({ kind: "head", si });
export const velocityOf = (si: number): Figure => ({ kind: "velocity", si });
export const pressureOf = (si: number): Figure => ({ kind: "pressure", si });

/** Column of a fluid that a pressure bears [m]: the limit of a siphon of a fluid without vapour. */
export const columnOf = (pressure: number, density: number): number =>
  siphonCrestLimit({ ...waterAt(20), vapourPressure: 0, density }, pressure);
