import { type Line, SEGMENT_KIND, STUCK } from "../../model/line.js";
import { sourceHeads, stallsWithinUse } from "../../model/moment.js";
import type { Network } from "../../solve/network.js";
import { type PreparedLine, prepareAlike, prepareLine } from "../../solve/prepare-line.js";
import { FRICTION_LAWS, type FrictionLaw, type LineSolution } from "../../solve/solution.js";
import { reachState } from "../../solve/solve-line.js";
import { type KeptState, keepState, startFrom } from "../../solve/workspace.js";
import type { JudgedLine } from "../judge-line.js";
import { costAtNeed } from "../solve-moments.js";
import type { WeighingCase } from "../weigh-drinker.js";
import type { VariedLine } from "./vary-line.js";

/** The line as written with one law, and its solution when the birds are busiest, where every sample starts. */
interface Written {
  readonly prepared: PreparedLine;
  readonly start: KeptState;
  /** Filled anew for each sample. */
  readonly network: Network;
}

/** Heads with nobody drinking. */
interface Idle {
  readonly full: Pick<LineSolution, "head">;
  readonly lowest: Pick<LineSolution, "head">;
}

/**
 * Solves lines that differ from one only in figures, for what their verdicts hang on: states as the solver leaves them,
 * which are tested by the loop itself but not checked again from scratch. Each starts from the solution of the line as
 * written, so that it hangs on no sample before it.
 *
 * @returns cases by law, of a varied line and the same for Darcy-Weisbach
 */
export function createSampleSolver(
  judged: JudgedLine,
): (varied: VariedLine, shortened: Line) => WeighingCase[] {
  const { lowestBusiest } = judged.moments.named;
  const written = FRICTION_LAWS.map((friction): Written => {
    const prepared = prepareLine(judged.line, friction);
    reachState(prepared, lowestBusiest);
    const { network, work } = prepared.current;
    return { prepared, network, start: keepState(work) };
  });
  const isStill = standsStill(judged.line);
  const lineFor = (friction: FrictionLaw, { line }: VariedLine, shortened: Line) =>
    friction === "darcyWeisbach" ? shortened : line;
  return (varied, shortened) => {
    const { line, atWork = lowestBusiest.atWork } = varied;
    const heads = { full: sourceHeads(line, "fullIdle"), lowest: sourceHeads(line, "lowestBusiest") };
    const stalledBelow = line.sources.some((source) => stallsWithinUse(line, source));
    let filling: WeighingCase["filling"] | undefined;
    let still: Idle | undefined;
    return FRICTION_LAWS.map((friction, f) => {
      const ready = prepareAlike(
        written[f].prepared,
        lineFor(friction, varied, shortened),
        written[f].network,
      );
      startFrom(ready.current.work, written[f].start);
      const solution = reachState(ready, { ...lowestBusiest, sourceHead: heads.lowest, atWork });
      const oneMore = { atNeed: costAtNeed(ready, atWork) };
      still ??= isStill ? idleStill(line, solution.reached, heads) : undefined;
      const idle = still ?? solveIdle(ready, judged, heads);
      // Humps stand where the sample has them; with nobody drinking both laws have the same heads.
      filling ??= judged.fill(line, idle.lowest);
      return {
        line: ready.line,
        moments: { named: { lowestBusiest: { atWork } } },
        fullIdle: { idle: idle.full },
        lowestBusiest: { solution, idle: idle.lowest, oneMore },
        filling,
        stalledBelow,
      };
    });
  };
}

/** Heads of the sources at two levels, by source [m above datum]. */
interface SourceHeads {
  readonly full: Float64Array;
  readonly lowest: Float64Array;
}

function solveIdle(ready: PreparedLine, { moments }: JudgedLine, { full, lowest }: SourceHeads): Idle {
  return {
    full: reachState(ready, { ...moments.idle.fullIdle, sourceHead: full }),
    lowest: reachState(ready, { ...moments.idle.lowestBusiest, sourceHead: lowest }),
  };
}

/**
 * Whether nothing flows while nobody drinks: one source, nothing that runs by itself, no valve that might hold a head
 * back.
 */
function standsStill({ sources, leaks = [], drinkers, segments }: Line): boolean {
  return (
    sources.length === 1 &&
    sources[0].feed === undefined &&
    leaks.length === 0 &&
    !(drinkers.stuck?.includes(STUCK.open) ?? false) &&
    segments.kind.every((kind) => kind === SEGMENT_KIND.pipe)
  );
}

/** In still water every head is that of the source. */
function idleStill({ points }: Line, reached: Uint8Array, { full, lowest }: SourceHeads): Idle {
  const at = (still: number) => {
    const head = points.height.slice();
    for (let p = 0; p < head.length; p += 1) if (reached[p] === 1) head[p] = still;
    return { head };
  };
  return { full: at(full[0]), lowest: at(lowest[0]) };
}
