import { FILLED_TO } from "../../model/waterer-sizes.js";
import { FACING, type LooseWaterer } from "../../model/yard.js";
import { decidingHole, lowestLip, waterInTiltedRing } from "../../physics/tilted-fount.js";
import { mostPushedOut } from "../../physics/trapped-air.js";
import { volumeBeforeStall } from "../../physics/vent.js";
import { capacityOfVessel, heightOfVessel } from "../../physics/vessel.js";
import { vesselById } from "../../tables/vessels.js";
import type { FedBowl, NippleBucket, VacuumFount } from "../../tables/waterer-types.js";
import { ringOf } from "./waterer-tilt.js";
import type { Opening, Tilt, Warmed, YardOfPlan } from "./yard-result.js";

/**
 * Swing of a warm day where the plan gives none [°C]: from a cool night to afternoon sun on the jar.
 *
 * @source common-practice, 15 to 35 degC in the sun, derived
 */
const SWING = { from: 15, to: 35 } as const;
/** Water is liquid in all that is reckoned of it. */
const LIQUID = { least: 0, most: 50 } as const;

const within = (temperature: number): number => Math.min(LIQUID.most, Math.max(LIQUID.least, temperature));

/** What warming air pushes out of a fount on the hot day, when most is. */
export function warmedOf(
  { kind, slope, hole }: LooseWaterer,
  hotDay: YardOfPlan["hotDay"],
  tilt: Tilt,
): Warmed | undefined {
  if (kind.works !== "vacuum" || tilt.works !== "vacuum" || tilt.isDraining) return undefined;
  const isTaken = hotDay.high - hotDay.low < 1;
  const warming = isTaken ? SWING : { from: within(hotDay.low), to: within(hotDay.high) };
  const { most, air } = mostPushedOut(kind.reservoir, warming);
  const room = roomInRing(kind, slope, FACING[hole]);
  return {
    ...warming,
    isTaken,
    pushed: most,
    room,
    lost: Math.max(0, most - room),
    airShare: air / kind.reservoir,
  };
}

/** Water a fount's ring takes before any runs over: from the hole's level to that of the lowest lip [m³]. */
function roomInRing(kind: VacuumFount, slope: number, facing: number): number {
  const ring = ringOf(kind, facing);
  const { jar, pool } = kind;
  const lip = kind.lipOverHole - (lowestLip(ring) - decidingHole(ring)) * slope;
  if (lip <= 0) return 0;
  const standing = waterInTiltedRing(ring, { jar, pool, slope });
  return waterInTiltedRing(ring, { jar, pool, slope, above: lip }) - standing;
}

/** What happens when it is shut or opened wrongly. */
export function openingsOf({ kind, holds }: LooseWaterer, density: number): readonly Opening[] {
  switch (kind.works) {
    case "vacuum": {
      const ring = Math.PI * (kind.rim ** 2 - kind.jar ** 2) * kind.lipOverHole;
      const lost = Math.max(0, kind.reservoir - ring);
      const code = kind.seal === "cap" ? "capOff" : kind.seal === "lid" ? "lidLoose" : "jarCracked";
      return [{ code, lost }, ...(kind.fills === "top" ? [{ code: "filledOpen" as const, lost }] : [])];
    }
    case "nipples":
    case "bell":
      return [ventShut(kind, holds, density)];
    default:
      return [];
  }
}

/** A bucket whose lid lets no air in gives until the air in it holds its water up. */
function ventShut(kind: NippleBucket | FedBowl, holds: number, density: number): Opening {
  const shape = vesselById(kind.vessel)?.shape;
  if (shape === undefined) return { code: "ventShut", gives: holds, stays: 0 };
  const airVolume = capacityOfVessel(shape) * (1 - FILLED_TO);
  const head = Math.max(0, heightOfVessel(shape) - kind.left);
  const gives = Math.min(holds, volumeBeforeStall({ airVolume, head, density }));
  return { code: "ventShut", gives, stays: holds - gives };
}
