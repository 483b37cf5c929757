import type { VacuumFount } from "@headfall/hydraulics";
import { below, type Cut, type Place, ring, type Standing, trayWall } from "./cut.js";

/** A fount: its ring is full to the air hole that lies highest, its jar holds more; drained, both to the lower lip. */
export function fountCut(kind: VacuumFount, standing: Standing): Cut {
  const { slope, isDraining } = standing;
  const { rim, jar, pool, lipOverHole, reservoir } = kind;
  const lip = pool + lipOverHole;
  const { at, lowest } = placesOf(kind, standing.facing);
  const plane = isDraining ? lip - lowest * slope : pool - at * slope;
  const high = pool + reservoir / (Math.PI * jar ** 2);
  const inJar = isDraining ? plane : pool + 0.62 * (high - pool);
  const floorOfJar = [
    [-jar, 0],
    [jar, 0],
  ] as const;
  return {
    walls: [trayWall(rim, rim, lip), jarWall(jar, pool, high)],
    basins: [
      ...ring({ rim, jar, lip, plane, slope }),
      below(floorOfJar, { plane: inJar, slope, brim: high }),
    ],
    plane,
    hole: [at, pool],
    ...(isDraining ? { spill: [lowest, lip] as Place } : {}),
    reach: rim,
    top: high,
  };
}

/** Along the slope: the air hole that lies uphill most, which decides, and the lip where water runs over. */
function placesOf({ rim, hole, holes, lip }: VacuumFount, facing: number) {
  const cosines = Array.from({ length: holes }, (_, k) => Math.cos(facing + (2 * Math.PI * k) / holes));
  return { at: hole * Math.min(...cosines), lowest: rim * (lip === "spouts" ? Math.max(...cosines) : 1) };
}

const jarWall = (jar: number, foot: number, high: number): readonly Place[] => [
  [-jar, foot],
  [-jar, high],
  [jar, high],
  [jar, foot],
];
