import { FACING, type LooseWaterer, type Tilt } from "@headfall/hydraulics";
import { bowlCut } from "./bowl-cut.js";
import { bucketCut } from "./bucket-cut.js";
import type { Cut, Place, Standing } from "./cut.js";
import { fountCut } from "./fount-cut.js";
import { openCut } from "./open-cut.js";

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

interface Size {
  readonly width: number;
  readonly height: number;
}

const MARGIN = 14;
const GROUND_BELOW = 0.12;
/** The longest stretch of cord that is drawn, and room under what hangs [m]. */
const CORD = 0.25;
const UNDER = 0.06;

/** Its shapes in a picture of some size; true to its measures, one scale both ways. */
export function pictureOf({ kind, slope, hole, cord }: LooseWaterer, tilt: Tilt, size: Size): WatererPicture {
  const isDraining = "isDraining" in tilt && tilt.isDraining;
  const drainsAt = "drainsAt" in tilt ? tilt.drainsAt : undefined;
  const cut = cutOf(kind, { slope, facing: FACING[hole], isDraining });
  const hang = kind.hangs ? Math.min(CORD, cord) : 0;
  const { spot, line } = frameOf({ cut, slope, hang, under: kind.hangs ? UNDER : 0 }, size);
  const surface = (x: number): Place => [x, cut.plane + x * slope];
  return {
    ...size,
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

interface Standpoint {
  readonly cut: Cut;
  readonly slope: number;
  /** Cord above it and room below it [m]. */
  readonly hang: number;
  readonly under: number;
}

/** Where a place of the waterer, turned with the slope it stands on, and a straight of ground come in the picture. */
function frameOf({ cut, slope, hang, under }: Standpoint, { width, height }: Size) {
  const turn = turnBy(Math.atan(slope));
  const { left, right, low, high } = boundsOf(
    [-cut.reach, cut.reach].flatMap((x) => [turn([x, -under]), turn([x, cut.top + hang])]),
  );
  const scale = Math.min(
    (width - 2 * MARGIN) / (right - left),
    (height - 2 * MARGIN) / (high - low + GROUND_BELOW * (right - left)),
  );
  const middle = (left + right) / 2;
  const toSpot = ([x, y]: Place): Spot => [
    round(width / 2 + (x - middle) * scale),
    round(MARGIN + (high - y) * scale),
  ];
  const wide = width / scale;
  // Ground goes through the middle of the base, whatever slope it stands on itself.
  const [footX, footY] = turn([0, -under]);
  const line = (tangent: number): readonly Spot[] =>
    [-wide, wide].map((side) => toSpot([footX + side, footY - side * tangent]));
  return { spot: (place: Place): Spot => toSpot(turn(place)), line };
}

/** Downhill to the right by an angle [rad]. */
const turnBy =
  (angle: number) =>
  ([x, z]: Place): Place => [
    x * Math.cos(angle) + z * Math.sin(angle),
    z * Math.cos(angle) - x * Math.sin(angle),
  ];

function boundsOf(places: readonly Place[]) {
  const xs = places.map(([x]) => x);
  const ys = places.map(([, y]) => y);
  return { left: Math.min(...xs), right: Math.max(...xs), low: Math.min(...ys), high: Math.max(...ys) };
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

function cutOf(kind: LooseWaterer["kind"], standing: Standing): Cut {
  switch (kind.works) {
    case "vacuum":
      return fountCut(kind, standing);
    case "pan":
      return openCut(kind, standing.slope);
    case "trough":
      return openCut({ floor: kind.length / 2, rim: kind.length / 2, depth: kind.depth }, standing.slope);
    case "bell":
      return bowlCut(kind, standing);
    case "nipples":
      return bucketCut(kind.base / 2);
  }
}
