/** A place in the waterer's own frame [m]: x downhill along its base, z at right angles up from its floor. */
export type Place = readonly [x: number, z: number];

/** How a waterer stands: the slope under it, where its air hole looks [rad from downhill], and whether it drains. */
export interface Standing {
  readonly slope: number;
  readonly facing: number;
  readonly isDraining: boolean;
}

/** Shapes in the waterer's own frame, its water plane as z = plane + x slope. */
export interface Cut {
  readonly walls: readonly (readonly Place[])[];
  /** Vessels that hold water up to the plane or to a level of their own: floor, from, to, brim. */
  readonly basins: readonly (readonly Place[])[];
  readonly plane: number;
  readonly hole?: Place;
  readonly spill?: Place;
  readonly pins?: readonly (readonly Place[])[];
  readonly reach: number;
  readonly top: number;
}

/** Walls and floor of an open tray as one line: `floor` and `rim` are half its width below and above. */
export const trayWall = (floor: number, rim: number, depth: number): readonly Place[] => [
  [-rim, depth],
  [-floor, 0],
  [floor, 0],
  [rim, depth],
];

/** Both halves of a ring under the water plane. */
export function ring(of: {
  readonly rim: number;
  readonly jar: number;
  readonly lip: number;
  readonly plane: number;
  readonly slope: number;
}): readonly (readonly Place[])[] {
  const { rim, jar, lip, plane, slope } = of;
  const sides: readonly (readonly [Place, Place])[] = [
    [
      [-rim, 0],
      [-jar, 0],
    ],
    [
      [jar, 0],
      [rim, 0],
    ],
  ];
  return sides.map(([from, to]) => below([from, to], { plane, slope, brim: lip }));
}

/** Between a stretch of floor and the plane over it, dry where the plane lies under the floor. */
export function below(
  [[from], [to]]: readonly [Place, Place],
  { plane, slope, brim }: { readonly plane: number; readonly slope: number; readonly brim: number },
): readonly Place[] {
  const level = (x: number) => Math.min(brim, plane + x * slope);
  const start = level(from) < 0 && slope > 0 ? Math.min(to, -plane / slope) : from;
  if (level(to) <= 0) return [];
  return [
    [start, 0],
    [to, 0],
    [to, level(to)],
    [start, Math.max(0, level(start))],
  ];
}
