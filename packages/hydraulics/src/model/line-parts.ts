import { type Line, type Points, SEGMENT_KIND, type Segments } from "./line.js";

/** A column of numbers, picked from each part. Written in a loop: `from` with a function goes through an iterator. */
function fill<Column extends Float64Array | Int32Array | Uint8Array, Part>(
  column: Column,
  parts: readonly Part[],
  pick: (part: Part) => number,
): Column {
  for (let k = 0; k < parts.length; k += 1) column[k] = pick(parts[k]);
  return column;
}

const numbersOf = <Part>(parts: readonly Part[], pick: (part: Part) => number): Float64Array =>
  fill(new Float64Array(parts.length), parts, pick);

const placesOf = <Part>(parts: readonly Part[], pick: (part: Part) => number): Int32Array =>
  fill(new Int32Array(parts.length), parts, pick);

const marksOf = <Part>(parts: readonly Part[], pick: (part: Part) => number): Uint8Array =>
  fill(new Uint8Array(parts.length), parts, pick);

/** Growing lists that become the line's typed arrays once everything is known. */
export interface PointList {
  add(point: { id: string; height: number; ground: number; bleed: boolean; measured: boolean }): number;
  heightOf(point: number): number;
  finish(): Points;
}

export function listPoints(): PointList {
  const id: string[] = [];
  const height: number[] = [];
  const ground: number[] = [];
  const bleed: number[] = [];
  const measured: number[] = [];
  return {
    add(point) {
      id.push(point.id);
      height.push(point.height);
      ground.push(point.ground);
      bleed.push(point.bleed ? 1 : 0);
      measured.push(point.measured ? 1 : 0);
      return id.length - 1;
    },
    heightOf: (point) => height[point],
    finish: () => ({
      count: id.length,
      id,
      height: Float64Array.from(height),
      ground: Float64Array.from(ground),
      bleed: Uint8Array.from(bleed),
      measured: Uint8Array.from(measured),
    }),
  };
}

export interface SegmentPart {
  readonly from: number;
  readonly to: number;
  readonly run: number;
  readonly kind?: number;
  readonly shut?: boolean;
  readonly length: number;
  readonly bore: number;
  readonly hazenWilliams: number;
  readonly roughness: number;
  readonly k1: number;
  readonly kInfinity: number;
  readonly setting?: number;
}

export function columnsOfSegments(parts: readonly SegmentPart[]): Segments {
  const numbers = (pick: (part: SegmentPart) => number) => numbersOf(parts, pick);
  return {
    count: parts.length,
    from: placesOf(parts, (part) => part.from),
    to: placesOf(parts, (part) => part.to),
    run: placesOf(parts, (part) => part.run),
    kind: marksOf(parts, (part) => part.kind ?? SEGMENT_KIND.pipe),
    shut: marksOf(parts, (part) => (part.shut === true ? 1 : 0)),
    length: numbers((part) => part.length),
    bore: numbers((part) => part.bore),
    hazenWilliams: numbers((part) => part.hazenWilliams),
    roughness: numbers((part) => part.roughness),
    k1: numbers((part) => part.k1),
    kInfinity: numbers((part) => part.kInfinity),
    setting: numbers((part) => part.setting ?? 0),
  };
}

export interface DrinkerPart {
  readonly id: string;
  readonly group: number;
  readonly run: number;
  readonly point: number;
  readonly along: number;
  readonly height: number;
  readonly coefficient: number;
  readonly exponent: number;
  readonly openingHead: number;
  readonly need: number;
}

export function columnsOfDrinkers(parts: readonly DrinkerPart[]): Omit<Line["drinkers"], "groups"> {
  const numbers = (pick: (part: DrinkerPart) => number) => numbersOf(parts, pick);
  return {
    count: parts.length,
    id: parts.map((part) => part.id),
    group: placesOf(parts, (part) => part.group),
    run: placesOf(parts, (part) => part.run),
    point: placesOf(parts, (part) => part.point),
    along: numbers((part) => part.along),
    height: numbers((part) => part.height),
    coefficient: numbers((part) => part.coefficient),
    exponent: numbers((part) => part.exponent),
    openingHead: numbers((part) => part.openingHead),
    need: numbers((part) => part.need),
  };
}
