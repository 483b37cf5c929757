import {
  type Checked,
  type DrinkerGroup,
  type Line,
  type VerdictName,
  writeQuantity,
} from "@headfall/hydraulics";
import type { UnitSystem } from "../typed-quantity.js";
import { VERDICT_MARKS, writeCounts } from "../verdict-marks.js";

/** A length as it is marked with a rule or a tape: to a millimetre or a quarter inch where it is short. */
export function writeMark(length: number, system: UnitSystem): string {
  if (Math.abs(length) < 5e-5) return "0";
  if (system === "us") {
    const quarters = Math.round(Math.abs(length) / (0.0254 / 4)) / 4;
    if (quarters < 12) return `${length < 0 && quarters > 0 ? "-" : ""}${quarters} in`;
  }
  return writeQuantity(length, "length", system);
}

/** "falls 12 cm", "rises 4 cm", "level". */
export function writeFall(fall: number, system: UnitSystem): string {
  if (Math.abs(fall) < 5e-4) return "level";
  return `${fall > 0 ? "falls" : "rises"} ${writeMark(Math.abs(fall), system)}`;
}

/** "30 cm above ground", "on the ground", "10 cm below ground". */
export function writeAboveGround(above: number, system: UnitSystem): string {
  if (Math.abs(above) < 5e-4) return "on the ground";
  return `${writeMark(Math.abs(above), system)} ${above > 0 ? "above" : "below"} ground`;
}

/** Height of a point of the pipe above the ground there [m]. */
export const aboveGround = ({ points }: Line, point: number): number =>
  points.height[point]! - points.ground[point]!;

/** Height of a drinker's valve above the ground there [m]. */
export const drinkerAboveGround = ({ drinkers, points }: Line, drinker: number): number =>
  drinkers.height[drinker]! - points.ground[drinkers.point[drinker]!]!;

/** A group of drinkers in three lines: how many of what, where, how they do. */
export function writeGroup(checked: Checked, group: DrinkerGroup, system: UnitSystem): string[] {
  const { line } = checked;
  const { along } = line.drinkers;
  const last = group.first + group.count - 1;
  const every = group.count > 1 ? (along[last]! - along[group.first]!) / (group.count - 1) : 0;
  const first = `first at ${writeMark(along[group.first]!, system)}`;
  const kind = group.count === 1 ? group.kindName : `${group.count} × ${group.kindName}`;
  return [
    `${group.id}: ${kind}`,
    group.count === 1
      ? `at ${writeMark(along[group.first]!, system)}`
      : `${first}, every ${writeMark(every, system)}`,
    `valves ${writeValves(line, group.first, last, system)}`,
    writeGroupCounts(checked, group),
  ];
}

function writeValves(line: Line, first: number, last: number, system: UnitSystem): string {
  const [from, to] = [drinkerAboveGround(line, first), drinkerAboveGround(line, last)];
  const words = [from, to].map((above) => writeMark(above, system));
  return words[0] === words[1] ? writeAboveGround(from, system) : `${words[0]} to ${words[1]} above ground`;
}

/** How the drinkers of a group do, in words: "4 good, 2 drip". */
export function writeGroupCounts(checked: Checked, group: DrinkerGroup): string {
  const counts: Record<VerdictName, number> = { good: 0, drips: 0, starves: 0, dry: 0 };
  for (let d = group.first; d < group.first + group.count; d += 1) counts[checked.drinkers[d]!.verdict] += 1;
  return group.count === 1 ? VERDICT_MARKS[checked.drinkers[group.first]!.verdict].word : writeCounts(counts);
}
