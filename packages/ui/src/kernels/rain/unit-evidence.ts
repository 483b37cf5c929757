import { RAIN_UNITS, type RainUnit, writeRain } from "@headfall/hydraulics";

/** What a unit would make of the wettest day of a text: wetter than anybody ever saw, or drier than any year. */
export function wettestIn(unit: RainUnit, most: number): { readonly metres: number; readonly words: string } {
  const metres = most * RAIN_UNITS[unit];
  const likely =
    metres > 0.5 ? "; hardly anywhere rains so much" : metres < 0.005 && most > 0 ? "; hardly a wet day" : "";
  return { metres, words: `the wettest day had ${writeRain(metres, "metric")}${likely}` };
}
