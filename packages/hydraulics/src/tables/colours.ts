import { sunColours } from "./colours.generated.js";
import type { SunColour } from "./weather-types.js";

export type { SunColour } from "./weather-types.js";

/** Every colour, by id. */
export const allColours: readonly SunColour[] = sunColours;

/** What the sun sees where the plan does not say: the cautious side. */
export const COLOUR_NOT_SAID = "dark";

/**
 * The colour a plan names.
 *
 * @example colourById("white").id   // "white"
 */
export function colourById(id: string): SunColour {
  const found = sunColours.find((one) => one.id === id);
  if (found === undefined) throw new RangeError(`colourById: id is ${id}; it must be a row of the table`);
  return found;
}
