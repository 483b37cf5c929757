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

/** The foot of the vessel, its outlet, and the water's surface at the moment shown. */
export function sourceHandles(request: HandlesRequest): SideHandle[] {
  const { checked, path, plan, reach } = request;
  const source = checked.line.sources[path.source];
  const typed = source === undefined ? undefined : plan.sources[source.index];
  if (source === undefined || typed === undefined) return [];
  const { ground, base, id, index } = source;
  const shared = {
    part: { kind: "source", source: index } as const,
    along: undefined,
    counts: "up" as const,
    isFirm: true,
  };
  const handle = (
    kind: "stand" | "water" | "outlet",
    own: Pick<SideHandle, "name" | "height" | "from" | "fromWords" | "low" | "high">,
    keys: readonly string[],
    what: string,
  ): SideHandle => ({
    ...shared,
    ...own,
    key: `${kind} ${index}`,
    kind,
    target: { kind: "typed", path: ["sources", index, ...keys], what: `${what} of ${id}` },
  });
  const level = LEVEL_AT[request.moment];
  const outletLimits = jointLimits({ ...request, reach: ANYWHERE })(source.point);
  const levels = levelLimits(source, typed.level ?? {}, level);
  return [
    handle(
      "stand",
      {
        name: `stand of ${id}`,
        height: base,
        from: ground,
        fromWords: "",
        low: Math.max(ground, outletLimits.low - source.outlet),
        high: Math.min(
          Math.max(reach[1], base),
          ground + HIGHEST_STAND,
          Math.max(base, outletLimits.high - source.outlet),
        ),
      },
      ["stand"],
      "stand",
    ),
    handle(
      "outlet",
      {
        name: `outlet of ${id}`,
        height: base + source.outlet,
        from: base,
        fromWords: "its bottom",
        low: Math.max(base, outletLimits.low),
        high: Math.min(base + highestOutlet(source, typed.level ?? {}), outletLimits.high),
      },
      ["outlet"],
      "outlet",
    ),
    handle(
      "water",
      {
        name: `${LEVEL_WORDS[level]} of ${id}`,
        height: base + source.levels[level],
        from: base,
        fromWords: "its bottom",
        low: base + levels[0],
        high: base + levels[1],
      },
      ["level", level],
      LEVEL_WORDS[level],
    ),
  ];
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
