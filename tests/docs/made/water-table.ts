import { waterAt } from "../../../packages/hydraulics/src/physics/water.js";
import { writeColumns } from "./columns.js";

/** Water every five degrees. */
export function writeWaterTable(): string {
  return writeColumns([
    ["degC", "density kg/m3", "viscosity mm2/s", "vapour Pa"],
    ...[0, 5, 10, 15, 20, 25, 30, 40, 50].map((temperatureC) => {
      const water = waterAt(temperatureC);
      return [
        String(temperatureC),
        water.density.toFixed(2),
        (1e6 * water.viscosity).toFixed(4),
        water.vapourPressure.toFixed(0),
      ];
    }),
  ]);
}
