import type { LooseWaterer } from "../../model/yard.js";
import { heightOfVessel, surfaceAtLevel, wettedAreaAtLevel } from "../../physics/vessel.js";
import { vesselById } from "../../tables/vessels.js";
import type { WatererKind } from "../../tables/waterer-types.js";
import { type InFrost, lastsOf, type OpenWater, openWater, pinBands } from "./frost-bodies.js";
import type { FrostPart } from "./frost-result.js";

/** Share of a loose waterer that is left at dusk, on the cautious side; common practice, no source. */
const LEFT_AT_DUSK = 0.5;

/** A loose waterer: a ring of open water, open water throughout, or a bucket with pins. */
export function frostOfWaterer(waterer: LooseWaterer, path: string, frost: InFrost): FrostPart {
  const { kind, holds, id, count } = waterer;
  const shared = { id, count, path };
  switch (kind.works) {
    case "nipples": {
      const { cold, solid } = pinBands(frost);
      const bucket = openWater({ ...shared, kind: "bucket" }, bucketOf(kind.vessel, holds), frost);
      return { ...bucket, blocked: solid, cold, lasts: lastsOf(solid, frost.night) };
    }
    case "vacuum":
    case "bell": {
      const open = openWater({ ...shared, kind: "fount" }, drunkFrom(kind, holds), frost);
      const above = kind.works === "bell" ? bucketOf(kind.vessel, holds) : jarOf(kind.jar, holds);
      const whole = openWater({ ...shared, kind: "fount" }, above, frost);
      return { ...whole, cold: open.cold, blocked: open.blocked, lasts: open.lasts, ice: open.ice };
    }
    case "pan":
    case "trough":
      return openWater({ ...shared, kind: "pan" }, drunkFrom(kind, holds), frost);
  }
}

/** The water that beaks reach: the ring of a fount, or all of a pan. */
export function drunkFrom(
  kind: Exclude<WatererKind, { readonly works: "nipples" }>,
  holds: number,
): OpenWater {
  switch (kind.works) {
    case "vacuum":
    case "bell": {
      const surface = Math.PI * (kind.rim ** 2 - kind.jar ** 2);
      return { full: surface * kind.pool, least: surface * kind.pool, surface, wall: surface };
    }
    case "pan": {
      const surface = Math.PI * kind.rim ** 2;
      return { ...filled(holds), surface, wall: surface + Math.PI * (kind.rim + kind.floor) * kind.depth };
    }
    case "trough": {
      const surface = kind.length * kind.width;
      return { ...filled(holds), surface, wall: surface + 2 * (kind.length + kind.width) * kind.depth };
    }
  }
}

const filled = (holds: number) => ({ full: holds, least: LEFT_AT_DUSK * holds });

function bucketOf(id: string, holds: number) {
  const shape = vesselById(id)?.shape;
  if (shape === undefined) throw new TypeError(`frostOfWaterer: no vessel has the id ${JSON.stringify(id)}`);
  const height = heightOfVessel(shape);
  const surface = surfaceAtLevel(shape, height);
  return { ...filled(holds), surface, wall: wettedAreaAtLevel(shape, height) + surface };
}

/** A jar as a plain cylinder: its wall and its top. */
function jarOf(radius: number, holds: number) {
  const surface = Math.PI * radius ** 2;
  return { ...filled(holds), surface, wall: surface + 2 * Math.PI * radius * (holds / surface) };
}
