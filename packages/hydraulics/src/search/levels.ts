import { headOfDrinker } from "../model/drinker-flow.js";
import { type Line, SEGMENT_KIND } from "../model/line.js";
import { sourceHeads } from "../model/moment.js";
import type { CureLines } from "./cure-lines.js";
import { highestStands, SLACK, withoutFriction } from "./demand-forest.js";
import { hangInScene, lineInScene, type Requirement, type Scene } from "./requirement.js";

/**
 * Whether the levels of the only source allow a height of its stand, whatever pipe lies below and whichever way water
 * goes: no drinker that stands over its head when idle and full, none that has less than its need when nothing flows.
 * Says yes to all where there are several sources, or devices on the way.
 */
export function standsThatLevelsAllow(
  lines: CureLines,
  requirement: Requirement,
  scene: Scene,
): (option: number) => boolean {
  const { sources } = lines.space;
  const { kind } = lines.present.segments;
  if (sources.length > 1 || kind.some((one) => one !== SEGMENT_KIND.pipe)) return () => true;
  const top = lines.withStands(highestStands(lines)) ?? lines.present;
  const asked = headsAsked(lineInScene(requirement, withoutFriction(top), scene), requirement.margin);
  const known = sources[0].options.map((_, k) => {
    const line = lines.withStands([k]);
    return line !== undefined && allows(hangInScene(requirement, line, scene), asked, requirement.margin);
  });
  return (option) => known[option];
}

/** Least head each drinker must have while it is worked [m]. */
const headsAsked = ({ drinkers }: Line, margin: number): number[] =>
  drinkers.id.map((_, d) => {
    const { sealsFrom } = drinkers.groups[drinkers.group[d]];
    const supply = headOfDrinker(drinkers, d, drinkers.need[d]) + margin;
    return Math.max(supply, sealsFrom > 0 ? sealsFrom + margin : supply);
  });

function allows(line: Line, asked: readonly number[], margin: number): boolean {
  const [[full], [low]] = (["fullIdle", "lowestBusiest"] as const).map((name) => sourceHeads(line, name));
  const { drinkers } = line;
  return asked.every((head, d) => {
    const { holdsUpTo } = drinkers.groups[drinkers.group[d]];
    const height = drinkers.height[d];
    return low - height >= head - SLACK && full - height <= holdsUpTo - margin + SLACK;
  });
}
