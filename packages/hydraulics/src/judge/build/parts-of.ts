import {
  findFittingByName,
  findVesselByName,
  findWatererId,
  readFittingText,
} from "../../document/find-names.js";
import type { Plan, PlanRun } from "../../document/plan-schema.js";
import { runEnds, sourceNames } from "../../document/run-ends.js";
import { untappedSources } from "../../document/untapped.js";
import type { Line } from "../../model/line.js";
import { drinkerById } from "../../tables/drinkers.js";
import { boughtAs, isBought } from "../../tables/fittings.js";
import { watererById } from "../../tables/waterers.js";
import type { FillingFinding } from "../check-result.js";
import type { Part, PartBasis, PartKind, PipeToCut } from "./part-list.js";

/** A part before its like are put together and priced. */
interface Want {
  readonly kind: PartKind;
  /** What it is called without its size. */
  readonly id: string;
  readonly name?: string | undefined;
  readonly size?: string | undefined;
  readonly count?: number;
  readonly where: string;
  readonly basis: PartBasis;
}

/**
 * The parts of a plan, pipe apart: what it names, and what its line cannot do without: an outlet in each vessel for
 * each run, a tee where three pipes meet, a joiner where two do, an end cap, a screen on each vent and overflow.
 */
export function partsOf(
  plan: Plan,
  line: Line,
  filling: readonly FillingFinding[],
  pipes: readonly PipeToCut[],
): Part[] {
  const wants = [
    ...vesselParts(plan, line),
    ...jointParts(plan, line),
    ...tapsMissing(plan, line),
    ...line.runs.flatMap((run) => runParts(plan.runs[run.index], run.id, sizeOf(run.pipeName))),
    ...pipes.flatMap(joinersIn),
    ...bleeds(plan, filling),
    ...drinkerParts(line),
    ...looseParts(plan),
  ];
  return together(wants).map((part) => ({ ...part, price: priceOf(plan, part) }));
}

/** Size of a pipe as sold: what stands after the last comma of its name. */
export const sizeOf = (pipeName: string): string | undefined =>
  /, (\d[^,]*(?: in| mm))$/.exec(pipeName)?.[1] ?? undefined;

function vesselParts(plan: Plan, line: Line): Want[] {
  return line.sources.flatMap((source): Want[] => {
    const where = source.id;
    const typed = plan.sources[source.index];
    const known = typeof typed.vessel === "string" ? findVesselByName(typed.vessel) : undefined;
    const hasOpening = typed.vent !== undefined && typeof typed.vent !== "string";
    return [
      { kind: "vessel", id: known?.id ?? "vessel", name: known?.name, where, basis: "typed" },
      ...(hasOpening ? [{ kind: "vent", id: "vent", where, basis: "typed" } as const] : []),
      ...(source.vent.kind === "sealed"
        ? []
        : [{ kind: "screen", id: "screen", where, basis: "implied" } as const]),
      ...(typed.roof === undefined
        ? []
        : [{ kind: "screen", id: "screen", where, basis: "implied" } as const]),
      ...(typed.feed === undefined
        ? []
        : [{ kind: "floatValve", id: typed.feed.valve ?? "float-valve", where, basis: "typed" } as const]),
    ];
  });
}

/** What sits where runs begin, meet and end. */
function jointParts(plan: Plan, line: Line): Want[] {
  const sources = new Set(sourceNames(plan));
  const meeting = new Map<string, string[]>();
  const ends = runEnds(plan);
  for (const { index, pipeName } of line.runs)
    for (const joint of [ends[index].from, ends[index].to])
      meeting.set(joint, [...(meeting.get(joint) ?? []), sizeOf(pipeName) ?? ""]);
  for (const { feed } of plan.sources)
    if (feed !== undefined) meeting.set(feed.from, [...(meeting.get(feed.from) ?? []), ""]);
  return [...meeting].flatMap(([where, sizes]): Want[] => {
    const size = sizes.find((each) => each !== "");
    if (sources.has(where))
      return sizes
        .filter((each) => each !== "")
        .map((each) => ({ kind: "bulkhead", id: "bulkhead", size: each, where, basis: "implied" }));
    if (sizes.length === 1) return [{ kind: "endCap", id: "end-cap", size, where, basis: "implied" }];
    if (sizes.length > 2)
      return [{ kind: "tee", id: "tee", size, count: sizes.length - 2, where, basis: "implied" }];
    const both = [...new Set(sizes.filter((each) => each !== ""))].join(" to ");
    return [
      {
        kind: "joiner",
        id: both.includes(" to ") ? "reducer" : "coupling",
        size: both === "" ? undefined : both,
        where,
        basis: "implied",
      },
    ];
  });
}

/** A vessel that nothing shuts cannot be drained for frost, cleaned or mended without losing its water. */
function tapsMissing(plan: Plan, line: Line): Want[] {
  const ends = runEnds(plan);
  const isUntapped = untappedSources(plan);
  return line.sources
    .filter(({ index }) => isUntapped[index])
    .map(({ id }) => {
      const run = line.runs.find(({ index }) => ends[index].from === id || ends[index].to === id);
      const size = run === undefined ? undefined : sizeOf(run.pipeName);
      return { kind: "tap", id: "tap", size, where: id, basis: "advised" };
    });
}

function runParts(run: PlanRun, where: string, size: string | undefined): Want[] {
  const typed = (kind: PartKind, id: string): Want => ({ kind, id, size, where, basis: "typed" });
  return [
    ...(run.tap === undefined ? [] : [typed("tap", "tap")]),
    ...(run.oneWay === undefined || run.oneWay === false ? [] : [typed("oneWay", "check-valve")]),
    ...(run.regulator === undefined ? [] : [typed("regulator", "regulator")]),
    ...fittingsOf(run).map(({ id, name, count }): Want => ({ ...typed("fitting", id), name, count })),
  ];
}

/** What is bought for the fittings that a run names; nothing for the mouth of a pipe, where the outlet's fitting is. */
export function fittingsOf(
  run: PlanRun,
): { readonly id: string; readonly name: string; readonly count: number }[] {
  return (run.fittings ?? []).flatMap((fitting) => {
    if (typeof fitting !== "string")
      return [{ id: fitting.name, name: fitting.name, count: fitting.count ?? 1 }];
    const { name, count } = readFittingText(fitting);
    const known = findFittingByName(name);
    if (known === undefined) return [{ id: name, name, count }];
    return isBought(known.id) ? [{ id: known.id, name: boughtAs(known.name), count }] : [];
  });
}

/** Joints within runs that are longer than what is sold. */
function joinersIn({ name, bars }: PipeToCut): Want[] {
  const first = bars.flatMap(({ pieces }) => pieces).filter(({ part }) => part > 1);
  return first.map(({ run }) => ({
    kind: "joiner",
    id: "coupling",
    size: sizeOf(name),
    where: run,
    basis: "implied",
  }));
}

/** Bleeds the plan has, and those that filling shows to be missing. */
function bleeds(plan: Plan, filling: readonly FillingFinding[]): Want[] {
  const points = (plan.points ?? []).filter(({ bleed }) => bleed === true).map(({ id }) => id);
  const surveyed = plan.runs.flatMap(({ survey = [] }) => survey.filter(({ bleed }) => bleed === true));
  const missing = filling.flatMap((finding) =>
    finding.code === "humpTrapsAir" || finding.code === "endHoldsAir" ? [finding.point] : [],
  );
  const want = (where: string, basis: PartBasis): Want => ({ kind: "bleed", id: "bleed", where, basis });
  return [
    ...points.map((point) => want(point, "typed")),
    ...surveyed.map(({ along }) => want(along, "typed")),
    ...missing.map((point) => want(point, "advised")),
  ];
}

/** Drinkers that screw into the pipe itself need a hole; others hang from a tee each. */
export const screwsIntoPipe = (kindId: string): boolean => drinkerById(kindId)?.kind === "nipple";

function drinkerParts(line: Line): Want[] {
  return line.drinkers.groups.flatMap((group): Want[] => {
    const run = line.runs[group.run];
    const where = run.id;
    return [
      { kind: "drinker", id: group.kindId, name: group.kindName, count: group.count, where, basis: "typed" },
      ...(screwsIntoPipe(group.kindId)
        ? []
        : [
            {
              kind: "tee",
              id: "tee",
              size: sizeOf(run.pipeName),
              count: group.count,
              where,
              basis: "implied",
            } as const,
          ]),
    ];
  });
}

function looseParts(plan: Plan): Want[] {
  return (plan.pens ?? []).flatMap((pen, p) =>
    (pen.waterers ?? []).map(({ kind, count = 1 }): Want => {
      const id = findWatererId(kind) ?? kind;
      const where = pen.id ?? `pen ${p + 1}`;
      return { kind: "waterer", id, name: watererById(id)?.name ?? kind, count, where, basis: "typed" };
    }),
  );
}

/** Parts that are alike as one, in the order in which they were first met. */
function together(wants: readonly Want[]): Omit<Part, "price">[] {
  const parts = new Map<string, Omit<Part, "price">>();
  for (const { kind, id, name, size, count = 1, where, basis } of wants) {
    const full = size === undefined ? id : `${id} ${size}`;
    const key = `${kind} ${full} ${basis}`;
    const before = parts.get(key);
    parts.set(key, {
      id: full,
      kind,
      name,
      size,
      count: (before?.count ?? 0) + count,
      where: [...new Set([...(before?.where ?? []), where])],
      basis,
    });
  }
  return [...parts.values()];
}

/** A price by the part's own name, by its name without the size, else that of `prices` for its kind. */
function priceOf(plan: Plan, { id, size, kind }: Omit<Part, "price">): number | undefined {
  const { prices } = plan;
  const bare = bareId(id, size);
  const own = prices?.parts;
  for (const key of [id, bare]) if (own !== undefined && Object.hasOwn(own, key)) return own[key];
  switch (kind) {
    case "drinker":
      return prices?.drinker;
    case "regulator":
      return prices?.regulator;
    case "tee":
      return prices?.joint;
    case "bleed":
      return prices?.bleed;
    default:
      return undefined;
  }
}

const bareId = (id: string, size: string | undefined): string =>
  size === undefined ? id : id.slice(0, id.length - size.length - 1);

/** Prices in the plan that are called by no part. */
export function strayPrices(plan: Plan, parts: readonly Part[]): string[] {
  const known = new Set(parts.flatMap(({ id, size }) => [id, bareId(id, size)]));
  return Object.keys(plan.prices?.parts ?? {}).filter((key) => !known.has(key));
}
