import { GRAVITY } from "../physics/constants.js";
import { DISCHARGE_COEFFICIENT } from "../physics/orifice.js";
import type { Flock } from "./flock.js";
import { flockInHottest } from "./flock-on.js";
import { type Leak, type Line, SEGMENT_KIND, type Source, STUCK } from "./line.js";
import type { Mishap } from "./mishap.js";
import { deviceOfRun } from "./mishaps-of.js";

/**
 * The line with one law changed; it shares every array that is not altered. Mishaps of birds, refills and hoses leave
 * the line itself as it is: those are the same object.
 *
 * A joint that comes apart gives each pipe that met there an end of its own, behind the line's other points: so
 * points,
 * segments, runs and drinkers keep their places.
 *
 * @example withMishap(line, { kind: "runBlocked", run: 0 }).runs.count === line.runs.count   // true
 */
export function withMishap(line: Line, mishap: Mishap): Line {
  switch (mishap.kind) {
    case "ventBlocked":
      return withSource(line, mishap.source, { vent: { kind: "sealed" } });
    case "lidOff":
      return withSource(line, mishap.source, { vent: { kind: "open", diameter: undefined } });
    case "feedStuckUp":
      return withSource(line, mishap.source, { feed: undefined });
    case "feedStuckDown":
      return withFeedOpen(line, mishap.source);
    case "drinkerStuckOpen":
    case "floatStuckDown":
    case "cupTipped":
      return withStuck(line, mishap.drinker, STUCK.open);
    case "drinkerBlocked":
    case "floatStuckUp":
      return withStuck(line, mishap.drinker, STUCK.shut);
    case "jointApart":
      return withJointApart(line, mishap.point);
    case "runBlocked":
    case "tapLeftShut":
      return withShut(line, line.runs[mishap.run].firstSegment, 1);
    case "tapLeftOpen":
      return withTapOpen(line, mishap.run);
    case "regulatorGone":
      return withoutDevice(line, deviceOfRun(line, mishap.run, "regulator"));
    case "regulatorShut":
      return withShut(line, deviceOfRun(line, mishap.run, "regulator"), 1);
    case "oneWayOpen":
      return withoutDevice(line, deviceOfRun(line, mishap.run, "oneWay"));
    case "oneWayShut":
      return withShut(line, deviceOfRun(line, mishap.run, "oneWay"), 1);
    case "refillMissed":
    case "hoseOff":
    case "moreBirds":
    case "hottestWeek":
      return line;
  }
}

/** The birds after a mishap; the same object for all but those of birds. */
export function flockWithMishap(flock: Flock, mishap: Mishap): Flock {
  if (mishap.kind === "hottestWeek") return flockInHottest(flock);
  if (mishap.kind !== "moreBirds") return flock;
  const pens = flock.pens.map((pen, p) => ({
    ...pen,
    batches: pen.batches.map((batch, b) =>
      p === mishap.pen && b === mishap.batch ? { ...batch, count: 2 * batch.count } : batch,
    ),
  }));
  return { ...flock, pens };
}

function withSource(line: Line, index: number, change: Partial<Pick<Source, "vent" | "feed">>): Line {
  return {
    ...line,
    sources: line.sources.map((source, i) => (i === index ? { ...source, ...change } : source)),
  };
}

function withFeedOpen(line: Line, index: number): Line {
  const { feed } = line.sources[index];
  return feed === undefined ? line : withSource(line, index, { feed: { ...feed, isStuckOpen: true } });
}

function withStuck(line: Line, drinker: number, state: number): Line {
  const stuck = line.drinkers.stuck?.slice() ?? new Uint8Array(line.drinkers.count);
  stuck[drinker] = state;
  return { ...line, drinkers: { ...line.drinkers, stuck } };
}

function withShut(line: Line, segment: number | undefined, state: 0 | 1): Line {
  if (segment === undefined || line.segments.shut[segment] === state) return line;
  const shut = line.segments.shut.slice();
  shut[segment] = state;
  return { ...line, segments: { ...line.segments, shut } };
}

/** The tap sits in the first piece of pipe of its run, behind any device. */
function withTapOpen(line: Line, run: number): Line {
  const { firstSegment, segmentCount } = line.runs[run];
  let opened = line;
  for (let s = firstSegment; s < firstSegment + segmentCount; s += 1) opened = withShut(opened, s, 0);
  return opened;
}

/** What is left of a device that no longer does anything: its own loss. */
function withoutDevice(line: Line, segment: number | undefined): Line {
  if (segment === undefined) return line;
  const kind = line.segments.kind.slice();
  const setting = line.segments.setting.slice();
  kind[segment] = SEGMENT_KIND.pipe;
  setting[segment] = 0;
  return { ...line, segments: { ...line.segments, kind, setting } };
}

/**
 * Every pipe that met at a point pours out of its own end there. Drinkers stay with the pipe that arrives; at a source
 * the outlet itself is left, a short tube.
 */
function withJointApart(line: Line, point: number): Line {
  const meeting = piecesAt(line, point);
  const isSource = line.sources.some((source) => source.point === point);
  const [first, ...others] = isSource ? [undefined, ...meeting] : meeting;
  const ends = others.filter((piece) => piece !== undefined);
  const moved = { from: line.segments.from.slice(), to: line.segments.to.slice() };
  ends.forEach(({ segment, end }, k) => {
    moved[end][segment] = line.points.count + k;
  });
  const bore = first === undefined ? Math.max(0, ...meeting.map((piece) => piece.bore)) : first.bore;
  const height = line.points.height[point];
  const leaks: Leak[] = [
    openEnd({ point, height, bore, discharge: isSource ? DISCHARGE_COEFFICIENT.shortTube : 1 }),
    ...ends.map((piece, k) =>
      openEnd({ point: line.points.count + k, height, bore: piece.bore, discharge: 1 }),
    ),
  ];
  return {
    ...line,
    points: withPointsLike(line.points, point, ends.length),
    segments: ends.length === 0 ? line.segments : { ...line.segments, ...moved },
    leaks: [...(line.leaks ?? []), ...leaks],
  };
}

interface Piece {
  readonly segment: number;
  /** Which of its ends is at the point. */
  readonly end: "from" | "to";
  readonly bore: number;
}

/** Pieces of pipe that meet at a point; those that arrive there come first. */
function piecesAt({ segments }: Line, point: number): Piece[] {
  const pieces: Piece[] = [];
  for (const end of ["to", "from"] as const)
    segments[end].forEach((at, segment) => {
      if (at === point) pieces.push({ segment, end, bore: segments.bore[segment] });
    });
  return pieces;
}

/**
 * An end that pours out freely: all the head left there goes into the jet, q = C_d a √(2 g h).
 *
 * @source unwin-1911, article Hydraulics, seen
 */
function openEnd({
  point,
  height,
  bore,
  discharge,
}: Pick<Leak, "point" | "height"> & { readonly bore: number; readonly discharge: number }): Leak {
  const area = (Math.PI * bore * bore) / 4;
  return { point, height, coefficient: discharge * area * Math.sqrt(2 * GRAVITY) };
}

function withPointsLike(points: Line["points"], like: number, count: number): Line["points"] {
  if (count === 0) return points;
  const each = <T>(value: T) => Array.from({ length: count }, () => value);
  return {
    count: points.count + count,
    id: [...points.id, ...each(points.id[like])],
    height: Float64Array.from([...points.height, ...each(points.height[like])]),
    ground: Float64Array.from([...points.ground, ...each(points.ground[like])]),
    bleed: Uint8Array.from([...points.bleed, ...each(0)]),
    measured: Uint8Array.from([...points.measured, ...each(points.measured[like])]),
  };
}
