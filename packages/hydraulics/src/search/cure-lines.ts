import type { Problem } from "../document/problem.js";
import { buildLine } from "../model/build-line.js";
import type { Line, Segments } from "../model/line.js";
import { type CureSpace, type Picks, planOf } from "./cure-space.js";

/** The lines of a space: each plan of it, without building it from its document. */
export interface CureLines {
  readonly space: CureSpace;
  /** The line with nothing changed. */
  readonly present: Line;
  /** Its line; undefined where such a plan contradicts itself (a run too short to come down from so high a stand). */
  lineOf(picks: Picks): Line | undefined;
  /** A line in which run `r` has option `k`; what lies in the others does not matter. */
  withOption(r: number, k: number): Line;
  /** The line with these stands, by option of each source, and its present pipe. */
  withStands(stands: readonly number[]): Line | undefined;
}

export type LinesBuilding =
  | { readonly ok: true; readonly lines: CureLines }
  | { readonly ok: false; readonly problems: readonly Problem[] };

const COLUMNS = ["bore", "hazenWilliams", "roughness", "k1", "kInfinity"] as const;

/**
 * Pipe decides neither heights nor the places of drinkers, and stands decide no pipe: so a line of the space is the
 * line with its stands, with the columns of each run's pipe put in from a line that was built with it.
 */
export function buildCureLines(space: CureSpace): LinesBuilding {
  const built = buildLine(space.plan);
  if (!built.ok) return built;
  const nothing = [...space.runs.map(() => 0), ...space.sources.map(() => 0)];
  const byPipe = new Map<string, Line>();
  const byStands = new Map<string, Line | undefined>();
  const withOption = (r: number, k: number): Line => {
    const { pipe } = space.runs[r].options[k];
    if (pipe === undefined) return built.line;
    const known = byPipe.get(pipe);
    if (known !== undefined) return known;
    const everywhere = space.runs.map(({ options }) =>
      Math.max(
        0,
        options.findIndex((one) => one.pipe === pipe),
      ),
    );
    const line = lineOfPlan(space, [...everywhere, ...nothing.slice(space.runs.length)]) ?? built.line;
    byPipe.set(pipe, line);
    return line;
  };
  const withStands = (stands: readonly number[]): Line | undefined => {
    const key = stands.join();
    if (!byStands.has(key))
      byStands.set(key, lineOfPlan(space, [...nothing.slice(0, space.runs.length), ...stands]));
    return byStands.get(key);
  };
  const lineOf = (picks: Picks): Line | undefined => {
    const standing = withStands(picks.slice(space.runs.length));
    return standing === undefined ? undefined : withPipes(standing, space, picks, withOption);
  };
  return { ok: true, lines: { space, present: built.line, lineOf, withOption, withStands } };
}

function lineOfPlan(space: CureSpace, picks: Picks): Line | undefined {
  const built = buildLine(planOf(space, picks));
  return built.ok ? built.line : undefined;
}

function withPipes(line: Line, space: CureSpace, picks: Picks, withOption: CureLines["withOption"]): Line {
  if (space.runs.every((_, r) => picks[r] === 0)) return line;
  const columns = Object.fromEntries(COLUMNS.map((name) => [name, line.segments[name].slice()])) as Pick<
    Segments,
    (typeof COLUMNS)[number]
  >;
  line.runs.forEach(({ firstSegment, segmentCount }, r) => {
    if (picks[r] === 0) return;
    const other = withOption(r, picks[r]).segments;
    for (const name of COLUMNS)
      columns[name].set(other[name].subarray(firstSegment, firstSegment + segmentCount), firstSegment);
  });
  return { ...line, segments: { ...line.segments, ...columns } };
}
