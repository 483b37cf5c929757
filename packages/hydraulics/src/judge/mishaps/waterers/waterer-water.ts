import { type WatererMishap, watererWithMishap } from "../../../model/waterer-mishap.js";
import type { LooseWaterer } from "../../../model/yard.js";
import { openingsOf } from "../../yard/waterer-openings.js";
import { staysIn, tiltOf, waterLeft } from "../../yard/waterer-tilt.js";
import type { Tilt } from "../../yard/yard-result.js";

/** Water in one waterer [m³]. */
export interface WatererWater {
  /** As it stands or leans. */
  readonly waterer: LooseWaterer;
  readonly tilt: Tilt;
  /** In it, and of that what birds can drink. */
  readonly stays: number;
  readonly gives: number;
}

/** Water in one as it stands, full. */
export function waterOf(waterer: LooseWaterer): WatererWater {
  const tilt = tiltOf(waterer);
  const stays = staysIn(waterer, tilt);
  return { waterer, tilt, stays, gives: Math.max(0, stays - waterLeft(waterer, tilt)) };
}

/**
 * Water in one to which a mishap happens when it is full. What runs out is taken to be gone at once: minutes beside hours.
 *
 * @param density  of the water [kg/m³]
 */
export function waterAfter(
  waterer: LooseWaterer,
  mishap: Pick<WatererMishap, "kind">,
  density: number,
): WatererWater {
  const before = waterOf(waterer);
  switch (mishap.kind) {
    case "kickedOver":
      return { ...before, stays: 0, gives: 0 };
    case "capOff":
    case "lidLoose":
    case "jarCracked":
    case "ventShut":
      return afterOpening(before, mishap.kind, density);
    case "refillMissed":
      return before;
    default: {
      const after = waterOf(watererWithMishap(waterer, mishap));
      return {
        ...after,
        stays: Math.min(before.stays, after.stays),
        gives: Math.min(before.gives, after.gives),
      };
    }
  }
}

function afterOpening(before: WatererWater, code: string, density: number): WatererWater {
  const opening = openingsOf(before.waterer, density).find((one) => one.code === code);
  if (opening === undefined) return before;
  if (opening.code === "ventShut") return { ...before, gives: Math.min(before.gives, opening.gives) };
  const stays = Math.max(0, before.stays - opening.lost);
  return { ...before, stays, gives: Math.max(0, stays - (before.stays - before.gives)) };
}
