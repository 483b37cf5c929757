import type { FedBowl } from "@headfall/hydraulics";
import { type Cut, type Place, ring, type Standing, trayWall } from "./cut.js";

/** How far the dome over a bowl stands above its lip [m]. */
const DOME = 0.06;

/** A bowl that a float keeps full: its pool is level with the float's mark while it does not run over. */
export function bowlCut({ rim, jar, pool, lipOverHole }: FedBowl, { slope, isDraining }: Standing): Cut {
  const lip = pool + lipOverHole;
  const plane = isDraining ? lip - rim * slope : pool;
  return {
    walls: [trayWall(rim, rim, lip), domeWall(jar, lip + DOME)],
    basins: ring({ rim, jar, lip, plane, slope }),
    plane,
    ...(isDraining ? { spill: [rim, lip] as Place } : {}),
    reach: rim,
    top: lip + DOME,
  };
}

/** The dome in the middle, or the stem where the bowl has none. */
const domeWall = (jar: number, top: number): readonly Place[] =>
  jar > 0
    ? [
        [-jar, 0.01],
        [-jar * 0.5, top],
        [jar * 0.5, top],
        [jar, 0.01],
      ]
    : [
        [0, 0],
        [0, top],
      ];
