import { FACING, type LooseWaterer, type Tilt, type VacuumFount } from "@headfall/hydraulics";

/** A place in the picture [px], x to the right and y down. */
export type Spot = readonly [x: number, y: number];

/** A waterer cut along the slope, downhill to the right, as shapes of a picture. */
export interface WatererPicture {
  readonly width: number;
  readonly height: number;
  readonly ground: readonly Spot[];
  /** The ground on which it would just drain; left out where none does or it is out of the picture. */
  readonly limit: readonly Spot[] | undefined;
  /** Walls and floors, as lines. */
  readonly walls: readonly (readonly Spot[])[];
  /** Water, as closed shapes. */
  readonly water: readonly (readonly Spot[])[];
  /** The level surface, from side to side. */
  readonly level: readonly Spot[] | undefined;
  /** The air hole that decides the level. */
  readonly hole: Spot | undefined;
  /** Drops that run over the lower lip, when they do. */
  readonly drops: readonly Spot[];
  readonly cord: readonly Spot[] | undefined;
  readonly pins: readonly (readonly Spot[])[];
}

/** A place in the waterer's own frame [m]: x downhill along its base, z at right angles up from its floor. */
type Place = readonly [x: number, z: number];

/** Shapes in the waterer's own frame, its water plane as z = at + x slope. */
interface Cut {
  readonly walls: readonly (readonly Place[])[];
  /** Vessels that hold water up to the plane or to a level of their own: floor, from, to, brim. */
  readonly basins: readonly (readonly Place[])[];
  readonly plane: number;
  readonly hole?: Place;
  readonly spill?: Place;
  readonly pins?: readonly (readonly Place[])[];
  readonly reach: number;
  readonly top: number;
  readonly floor?: number;
}

const MARGIN = 14;
const GROUND_BELOW = 0.12;

/** Its shapes in a picture of some size; true to its measures, one scale both ways. */
export function pictureOf(
  { kind, slope, hole, cord }: LooseWaterer,
  tilt: Tilt,
  { width, height }: { readonly width: number; readonly height: number },
): WatererPicture {
  const cut = cutOf(kind, {
    slope,
    facing: FACING[hole],
    isDraining: "isDraining" in tilt && tilt.isDraining,
  });
  const angle = Math.atan(slope);
  const hang = kind.hangs ? Math.min(0.25, cord) : 0;
  const under = kind.hangs ? 0.06 : 0;
  const turn = ([x, z]: Place): Place => [
    x * Math.cos(angle) + z * Math.sin(angle),
    z * Math.cos(angle) - x * Math.sin(angle),
  ];
  const corners = [
    [-cut.reach, -under],
    [cut.reach, -under],
    [-cut.reach, cut.top + hang],
    [cut.reach, cut.top + hang],
  ] as const;
  const turned = corners.map(turn);
  const [xs, ys] = [turned.map(([x]) => x), turned.map(([, y]) => y)];
  const [left, right, low, high] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const scale = Math.min(
    (width - 2 * MARGIN) / (right - left),
    (height - 2 * MARGIN) / (high - low + GROUND_BELOW * (right - left)),
  );
  const middle = (left + right) / 2;
  const spot = (place: Place): Spot => {
    const [x, y] = turn(place);
    return [round(width / 2 + (x - middle) * scale), round(MARGIN + (high - y) * scale)];
  };
  const wide = width / scale;
  const line = (tangent: number): readonly Spot[] => {
    // Through the middle of the base, whatever slope it stands on itself.
    const [x, y] = turn([0, -under]);
    const at = (side: number): Spot => [
      round(width / 2 + (x + side - middle) * scale),
      round(MARGIN + (high - (y - side * tangent)) * scale),
    ];
    return [at(-wide), at(wide)];
  };
  const drainsAt = "drainsAt" in tilt ? tilt.drainsAt : undefined;
  const surface = (x: number): Place => [x, cut.plane + x * slope];
  return {
    width,
    height,
    ground: line(slope),
    limit: drainsAt === undefined || drainsAt > 1 || kind.hangs ? undefined : line(drainsAt),
    walls: cut.walls.map((wall) => wall.map(spot)),
    water: cut.basins.map((basin) => basin.map(spot)),
    level: [spot(surface(-cut.reach)), spot(surface(cut.reach))],
    hole: cut.hole === undefined ? undefined : spot(cut.hole),
    drops: cut.spill === undefined ? [] : dropsFrom(spot(cut.spill)),
    cord: kind.hangs ? cordOf(cut, hang, kind.works === "nipples").map(spot) : undefined,
    pins: (cut.pins ?? []).map((pin) => pin.map(spot)),
  };
}

/** From hook to waterer; a bucket hangs by its bail. */
function cordOf({ top, reach }: Cut, hang: number, hasBail: boolean): readonly Place[] {
  const bail: readonly Place[] = [
    [-reach, top],
    [0, top + hang / 2],
    [reach, top],
    [0, top + hang / 2],
  ];
  return [...(hasBail ? bail : [[0, top] as const]), [0, top + hang]];
}

const dropsFrom = ([x, y]: Spot): Spot[] => [0, 1, 2].map((k): Spot => [x + 5 + 2 * k, y + 8 + 11 * k]);
const round = (value: number): number => Math.round(value * 10) / 10;

interface Standing {
  readonly slope: number;
  readonly facing: number;
  readonly isDraining: boolean;
}

function cutOf(kind: LooseWaterer["kind"], standing: Standing): Cut {
  switch (kind.works) {
    case "vacuum":
      return fountCut(kind, standing);
    case "pan":
      return openCut({ floor: kind.floor, rim: kind.rim, depth: kind.depth }, standing.slope);
    case "trough":
      return openCut({ floor: kind.length / 2, rim: kind.length / 2, depth: kind.depth }, standing.slope);
    case "bell": {
      const { rim, jar, pool, lipOverHole } = kind;
      const lip = pool + lipOverHole;
      const plane = standing.isDraining ? lip - rim * standing.slope : pool;
      return {
        walls: [
          [
            [-rim, lip],
            [-rim, 0],
            [rim, 0],
            [rim, lip],
          ],
          dome(jar, lip + 0.06),
        ],
        basins: ring({ rim, jar, lip, plane, slope: standing.slope }),
        plane,
        ...(standing.isDraining ? { spill: [rim, lip] as Place } : {}),
        reach: rim,
        top: lip + 0.06,
      };
    }
    case "nipples":
      return bucketCut(kind.base / 2);
  }
}

function fountCut(kind: VacuumFount, { slope, facing, isDraining }: Standing): Cut {
  const { rim, jar, hole, holes, pool, lipOverHole, reservoir } = kind;
  const lip = pool + lipOverHole;
  const cosines = Array.from({ length: holes }, (_, k) => Math.cos(facing + (2 * Math.PI * k) / holes));
  const at = hole * Math.min(...cosines);
  const lowest = rim * (kind.lip === "spouts" ? Math.max(...cosines) : 1);
  const plane = isDraining ? lip - lowest * slope : pool - at * slope;
  const high = pool + reservoir / (Math.PI * jar ** 2);
  const inJar = isDraining ? plane : pool + 0.62 * (high - pool);
  return {
    walls: [
      [
        [-rim, lip],
        [-rim, 0],
        [rim, 0],
        [rim, lip],
      ],
      [
        [-jar, pool],
        [-jar, high],
        [jar, high],
        [jar, pool],
      ],
    ],
    basins: [
      ...ring({ rim, jar, lip, plane, slope }),
      below(
        [
          [-jar, 0],
          [jar, 0],
        ],
        { plane: inJar, slope, brim: high },
      ),
    ],
    plane,
    hole: [at, pool],
    ...(isDraining ? { spill: [lowest, lip] as Place } : {}),
    reach: rim,
    top: high,
  };
}

function openCut(
  { floor, rim, depth }: { readonly floor: number; readonly rim: number; readonly depth: number },
  slope: number,
): Cut {
  const plane = depth - rim * slope;
  const wall = (z: number) => floor + ((rim - floor) * z) / depth;
  // Where the surface meets the upper wall, or the floor once that is dry.
  const met = (depth - (rim + floor) * slope) / (1 + ((rim - floor) / depth) * slope);
  const upper: readonly Place[] =
    met >= 0
      ? [
          [-floor, 0],
          [-wall(met), met],
        ]
      : [[slope > 0 ? -plane / slope : -floor, 0]];
  return {
    walls: [
      [
        [-rim, depth],
        [-floor, 0],
        [floor, 0],
        [rim, depth],
      ],
    ],
    basins: [[...[...upper].reverse(), [floor, 0], [rim, depth]]],
    plane,
    reach: rim,
    top: depth,
  };
}

function bucketCut(radius: number): Cut {
  const high = radius * 2.4;
  const level = 0.9 * high;
  const wide = radius * 1.1;
  return {
    walls: [
      [
        [-wide, high],
        [-radius, 0],
        [radius, 0],
        [wide, high],
      ],
    ],
    basins: [
      [
        [-wide * 0.99, level],
        [-radius, 0],
        [radius, 0],
        [wide * 0.99, level],
      ],
    ],
    plane: level,
    pins: [-0.5, 0.5].map((x): readonly Place[] => [
      [x * radius, 0],
      [x * radius, -0.035],
    ]),
    reach: wide,
    top: high,
  };
}

const dome = (jar: number, top: number): readonly Place[] =>
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

/** Both halves of a ring under the water plane. */
function ring(of: {
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
function below(
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
