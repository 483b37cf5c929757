import {
  headLossDarcyWeisbach,
  regimeAt,
  reynoldsNumber,
} from "../../../packages/hydraulics/src/physics/darcy-weisbach.js";
import { headLossHazenWilliams } from "../../../packages/hydraulics/src/physics/hazen-williams.js";
import { viscosityOfWater } from "../../../packages/hydraulics/src/physics/water.js";
import { writeColumns } from "./columns.js";

const BORE = 0.0158;
const SMOOTH_PLASTIC = 1.5e-6;
const LITRE_A_MINUTE = 1e-3 / 60;

/** Loss per metre by both laws in one bore, over the flows of a drinker line. */
export function writeFrictionRatio(): string {
  const viscosity = viscosityOfWater(20);
  const row = (litresAMinute: number): string[] => {
    const flow = litresAMinute * LITRE_A_MINUTE;
    const reynolds = reynoldsNumber({ bore: BORE, viscosity }, flow);
    const run = { length: 1, bore: BORE };
    const hazenWilliams = headLossHazenWilliams({ ...run, coefficient: 150 }, flow);
    const darcyWeisbach = headLossDarcyWeisbach({ ...run, roughness: SMOOTH_PLASTIC, viscosity }, flow);
    return [
      String(litresAMinute),
      reynolds.toFixed(0),
      regimeAt(reynolds),
      (1000 * hazenWilliams).toPrecision(3),
      (1000 * darcyWeisbach).toPrecision(3),
      (hazenWilliams / darcyWeisbach).toFixed(2),
    ];
  };
  return writeColumns([
    ["L/min", "Re", "regime", "HW mm/m", "DW mm/m", "HW / DW"],
    ...[0.1, 0.2, 0.5, 1, 1.4, 2, 4, 8, 12, 20].map(row),
  ]);
}
