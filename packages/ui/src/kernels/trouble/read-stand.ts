import { readQuantity } from "@headfall/hydraulics";
import { showLength } from "../shown.js";
import type { UnitSystem } from "../typed-quantity.js";

/** Where the water stands above the inside bottom [m], undefined where it is not said; or what is wrong. */
export type StandReading =
  | { readonly ok: true; readonly level: number | undefined }
  | { readonly ok: false; readonly because: string };

/**
 * @param typed  "40 cm"; nothing typed is nothing said
 * @param full   the full level of that vessel [m]
 * @param system whose units to tell it in
 */
export function readStand(typed: string, full: number, system: UnitSystem): StandReading {
  if (typed.trim() === "") return { ok: true, level: undefined };
  const read = readQuantity(typed, "length");
  if (!read.ok) return { ok: false, because: `${read.allowed} ${read.mend}` };
  const level = read.quantity.si;
  if (level >= 0 && level <= full) return { ok: true, level };
  return {
    ok: false,
    because: `From 0 to the full level, ${showLength(full, system)} above the inside bottom.`,
  };
}
