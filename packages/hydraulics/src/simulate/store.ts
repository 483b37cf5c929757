import type { Line, Source } from "../model/line.js";
import { givenBeforeStall, pressureSurfaceAt, stallsWithinUse } from "../model/moment.js";
import { findRoot } from "../numerics/root.js";
import { levelAtVolume, volumeAtLevel } from "../physics/vessel.js";

/** The water of one source, as time sees it: volumes [m³], and the height its water presses from [m above datum]. */
export interface Store {
  /** Position in `line.sources`. */
  readonly source: number;
  readonly full: number;
  /** Left in it when it gives no more: its level is at the outlet and the line draws air, or it is sealed and has stalled. */
  readonly dead: number;
  /** Pressure surface when it is full, and when it has given all it can. */
  readonly top: number;
  readonly bottom: number;
  /** Pressure surface with a volume in it; rises with the volume. */
  readonly surfaceAt: (volume: number) => number;
  /** The most water that can be in it while its pressure surface stands no higher; between dead and full. */
  readonly volumeAt: (surface: number) => number;
  readonly levelAt: (volume: number) => number;
}

export function storeOf(line: Line, source: Source): Store {
  const { shape, levels, outlet } = source;
  const full = volumeAtLevel(shape, levels.full);
  const below = volumeAtLevel(shape, outlet);
  const stalled = stallsWithinUse(line, source) ? full - (givenBeforeStall(line, source) ?? 0) : 0;
  const dead = Math.min(full, Math.max(below, stalled));
  const surfaceAt = (volume: number) => pressureSurfaceAt(line, source, levelAtVolume(shape, volume));
  return {
    source: source.index,
    full,
    dead,
    top: surfaceAt(full),
    bottom: surfaceAt(dead),
    surfaceAt,
    volumeAt: (surface) => volumeBelow(surface, { full, dead, surfaceAt, source }),
    levelAt: (volume) => levelAtVolume(shape, volume),
  };
}

function volumeBelow(
  surface: number,
  { full, dead, surfaceAt, source }: Pick<Store, "full" | "dead" | "surfaceAt"> & { readonly source: Source },
): number {
  if (surfaceAt(full) <= surface) return full;
  if (surfaceAt(dead) >= surface) return dead;
  // An open vessel presses from its own level.
  if (source.vent.kind === "open") return volumeAtLevel(source.shape, surface - source.base);
  return findRoot((volume) => surfaceAt(volume) - surface, dead, full).root;
}
