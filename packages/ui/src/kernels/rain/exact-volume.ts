import type { UnitSystem } from "../typed-quantity.js";
import { US_GALLON } from "../us-units.js";

/** A volume to the millilitre, in litres or gallons: columns of these can be added up. */
export function exactVolume(volume: number, system: UnitSystem): string {
  const [size, unit, decimals] =
    system === "us" ? ([US_GALLON, "gal", 4] as const) : ([1e-3, "L", 3] as const);
  const [whole = "0", part = ""] = (volume / size).toFixed(decimals).split(".");
  return `${whole.replace(/\B(?=(\d{3})+(?!\d))/g, ",")}.${part} ${unit}`;
}
