import type { MomentName, Source } from "@headfall/hydraulics";
import { innerHeight } from "../profile-layout.js";
import type { HandlesRequest } from "./handles-request.js";
import { jointLimits } from "./joint-limits.js";
import type { SideHandle } from "./side-handle.js";

/** Which of the source's levels is the surface of the water at each moment. */
const LEVEL_AT: Readonly<Record<MomentName, "full" | "lowest" | "ordinary">> = {
  fullIdle: "full",
  fullBusiest: "full",
  lowestBusiest: "lowest",
  ordinary: "ordinary",
};
/** Highest stand the plan file knows [m]. */
const HIGHEST_STAND = 30;
const ANYWHERE = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY] as const;

/** What the handles of one source are found from. */
interface SourceLimits {
  readonly source: Source;
  /** The levels that the plan states. */
  readonly stated: Stated;
  readonly reach: HandlesRequest["reach"];
  /** How low and how high the runs let the outlet go [m]. */
  readonly outlet: { readonly low: number; readonly high: number };
}

/** The foot of the vessel, its outlet, and the water's surface at the moment shown. */
export function sourceHandles(request: HandlesRequest): SideHandle[] {
  const { checked, path, plan, reach } = request;
  const source = checked.line.sources[path.source];
  const typed = source === undefined ? undefined : plan.sources[source.index];
  if (source === undefined || typed === undefined) return [];
  const outlet = jointLimits({ ...request, reach: ANYWHERE })(source.point);
  const limits = { source, stated: typed.level ?? {}, reach, outlet };
  return [standHandle(limits), outletHandle(limits), waterHandle(limits, LEVEL_AT[request.moment])];
}

function standHandle({ source, reach, outlet }: SourceLimits): SideHandle {
  const { base, ground } = source;
  const high = Math.max(base, outlet.high - source.outlet);
  return handleOf(source, "stand", "stand", ["stand"], {
    height: base,
    from: ground,
    fromWords: "",
    low: Math.max(ground, outlet.low - source.outlet),
    high: Math.min(Math.max(reach[1], base), ground + HIGHEST_STAND, high),
  });
}

function outletHandle({ source, stated, outlet }: SourceLimits): SideHandle {
  const { base } = source;
  return handleOf(source, "outlet", "outlet", ["outlet"], {
    height: base + source.outlet,
    from: base,
    fromWords: "its bottom",
    low: Math.max(base, outlet.low),
    high: Math.min(base + highestOutlet(source, stated), outlet.high),
  });
}

function waterHandle({ source, stated }: SourceLimits, level: keyof Stated): SideHandle {
  const { base, levels } = source;
  const [low, high] = levelLimits(source, stated, level);
  return handleOf(source, "water", LEVEL_WORDS[level], ["level", level], {
    height: base + levels[level],
    from: base,
    fromWords: "its bottom",
    low: base + low,
    high: base + high,
  });
}

/** @param what  is moved, in words: "full water level" */
function handleOf(
  { id, index }: Source,
  kind: "stand" | "water" | "outlet",
  what: string,
  keys: readonly string[],
  heights: Pick<SideHandle, "height" | "from" | "fromWords" | "low" | "high">,
): SideHandle {
  const name = `${what} of ${id}`;
  return {
    key: `${kind} ${index}`,
    kind,
    name,
    part: { kind: "source", source: index },
    along: undefined,
    counts: "up",
    isFirm: true,
    target: { kind: "typed", path: ["sources", index, ...keys], what: name },
    ...heights,
  };
}

const LEVEL_WORDS = {
  full: "full water level",
  lowest: "lowest water level",
  ordinary: "ordinary water level",
} as const;

type Stated = Readonly<Partial<Record<"full" | "lowest" | "ordinary", string | undefined>>>;

/** How far one level may go, so that outlet, lowest, ordinary, full and brim keep their order; those left out give way. */
function levelLimits(
  { levels, outlet, shape, feed }: Source,
  stated: Stated,
  level: keyof Stated,
): [number, number] {
  const brim = innerHeight({ shape });
  switch (level) {
    case "full": {
      const lowest = stated.lowest === undefined && feed !== undefined ? outlet : levels.lowest;
      return [stated.ordinary === undefined ? lowest : levels.ordinary, brim];
    }
    case "ordinary":
      return [levels.lowest, levels.full];
    case "lowest":
      return [outlet, stated.ordinary === undefined ? levels.full : levels.ordinary];
  }
}

/** Water stands over the outlet at the lowest level; where that is left out, it rises with the outlet. */
function highestOutlet({ levels, outlet, feed }: Source, stated: Stated): number {
  if (stated.lowest !== undefined) return levels.lowest;
  const cover = feed === undefined ? levels.lowest - outlet : 0;
  return (stated.ordinary === undefined ? levels.full : levels.ordinary) - cover;
}
