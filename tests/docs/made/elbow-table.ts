import {
  headLossDarcyWeisbach,
  reynoldsNumber,
} from "../../../packages/hydraulics/src/physics/darcy-weisbach.js";
import {
  headLossFitting,
  lossCoefficientAtSize,
  lossCoefficientTwoK,
} from "../../../packages/hydraulics/src/physics/fittings.js";
import { viscosityOfWater } from "../../../packages/hydraulics/src/physics/water.js";
import { fittingById } from "../../../packages/hydraulics/src/tables/fittings.js";
import { writeColumns } from "./columns.js";

const BORE = 0.0158;

/** One elbow over the flows of a drinker line, and how much straight pipe loses the same. */
export function writeElbowTable(): string {
  const elbow = fittingById("elbow-90");
  if (elbow === undefined) throw new Error("no elbow-90 in the table");
  const { k1, kInfinity } = elbow;
  const viscosity = viscosityOfWater(20);
  const atSize = lossCoefficientAtSize({ kInfinity, bore: BORE });
  const row = (litresAMinute: number): string[] => {
    const flow = litresAMinute / 60000;
    const reynolds = reynoldsNumber({ bore: BORE, viscosity }, flow);
    const loss = headLossFitting({ k1, kInfinity: atSize, bore: BORE, viscosity }, flow);
    const perMetre = headLossDarcyWeisbach({ length: 1, bore: BORE, roughness: 1.5e-6, viscosity }, flow);
    return [
      String(litresAMinute),
      reynolds.toFixed(0),
      lossCoefficientTwoK({ k1, kInfinity, bore: BORE }, reynolds).toPrecision(3),
      (1000 * loss).toPrecision(3),
      (loss / perMetre).toFixed(2),
    ];
  };
  return writeColumns([
    ["L/min", "Re", "K", "loss mm", "as m of pipe"],
    ...[0.1, 0.2, 0.5, 1, 2, 4, 8].map(row),
  ]);
}
