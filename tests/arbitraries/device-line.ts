import { SEGMENT_KIND } from "../../packages/hydraulics/src/model/line.js";
import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import { makeLine, makeMoment, type PipePart } from "./make-line.js";

/** Of the segments of a line, the shares that are valves and regulators; its rings and sources, at most. */
export interface Devices {
  readonly valves: number;
  readonly regulators: number;
  readonly rings: number;
  readonly sources: number;
}

/** A small line of little but valves and regulators, either way round, by number. Same number, same line. */
export function deviceLine(seed: number, devices: Devices) {
  const random = randomFrom(seed);
  const between = (low: number, high: number) => low + (high - low) * random.uniform();
  const wholeBelow = (high: number) => random.integerBelow(high);
  const segment = (from: number, to: number): PipePart => {
    const drawn = random.uniform();
    const pipe = { from, to, length: between(0.1, 20), bore: between(0.008, 0.03) };
    if (drawn < devices.valves)
      return { ...pipe, kind: SEGMENT_KIND.oneWay, setting: random.uniform() < 0.3 ? 0 : between(0, 0.1) };
    if (drawn < devices.valves + devices.regulators)
      return { ...pipe, kind: SEGMENT_KIND.regulator, setting: between(0.05, 0.8) };
    return pipe;
  };
  const pointCount = 3 + wholeBelow(6);
  const heights = Array.from({ length: pointCount }, () => between(-0.3, 0.3));
  const pipes: PipePart[] = [];
  for (let point = 1; point < pointCount; point += 1) {
    const other = wholeBelow(point);
    pipes.push(random.uniform() < 0.7 ? segment(other, point) : segment(point, other));
  }
  for (let ring = wholeBelow(devices.rings + 1); ring > 0; ring -= 1) {
    const [from, to] = [wholeBelow(pointCount), wholeBelow(pointCount)];
    if (from !== to) pipes.push(segment(from, to));
  }
  const sources = [0];
  if (devices.sources > 1 && random.uniform() < 0.5) sources.push(pointCount - 1);
  const drinkers = Array.from({ length: 1 + wholeBelow(6) }, () => ({
    point: wholeBelow(pointCount),
    coefficient: between(1e-6, 1e-5),
  }));
  const line = makeLine({ heights, pipes, drinkers, sources });
  return {
    line,
    moment: makeMoment(
      line,
      sources.map(() => between(0.5, 2)),
    ),
  };
}
