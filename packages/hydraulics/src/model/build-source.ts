import { defaultSourceId } from "../document/default-names.js";
import { DEFAULTS } from "../document/defaults.js";
import { findVesselByName } from "../document/find-names.js";
import type { Plan, PlanSource } from "../document/plan-schema.js";
import type { Problem } from "../document/problem.js";
import { readShare } from "../document/read-share.js";
import { flowThroughOrifice } from "../physics/orifice.js";
import { heightOfVessel, type VesselShape } from "../physics/vessel.js";
import type { Source, Vent } from "./line.js";
import type { TypedValues } from "./typed-values.js";

/** A source before it is tied to a point of the line. */
export type StandingSource = Omit<Source, "point" | "feed">;

/** Builds every source of a plan, and finds levels and outlets that do not fit their vessels. */
export function buildSources(
  plan: Plan,
  values: TypedValues,
): { sources: StandingSource[]; problems: Problem[] } {
  const problems: Problem[] = [];
  const sources = plan.sources.map((source, i) => buildSource(source, i, values, problems));
  return { sources, problems };
}

function buildSource(
  source: PlanSource,
  index: number,
  values: TypedValues,
  problems: Problem[],
): StandingSource {
  const path = `sources[${index}]`;
  const known = typeof source.vessel === "string" ? findVesselByName(source.vessel) : undefined;
  const shape: VesselShape = known?.shape ?? shapeOf(source.vessel, values);
  const ground = values.siOr(source.ground, "length", "ground", `${path}.ground`);
  const stand = values.siOr(source.stand, "length", "stand", `${path}.stand`);
  const outlet =
    source.outlet === undefined && known !== undefined
      ? known.outletHeight
      : values.siOr(source.outlet, "length", "outlet", `${path}.outlet`);
  const height = heightOfVessel(shape);
  const levels = levelsOf(source, outlet, height, path, values);
  problems.push(...misfits(levels, outlet, height, path, source));
  return {
    id: source.id ?? defaultSourceId(index),
    index,
    vesselName: known?.name ?? "vessel",
    shape,
    emptyMass: known?.emptyMass ?? 0,
    ground,
    stand,
    base: ground + stand,
    outlet,
    ...(source.outletBore === undefined ? {} : { outletBore: values.si(source.outletBore, "length") }),
    levels,
    vent: ventOf(source, path, values),
  };
}

function shapeOf(vessel: PlanSource["vessel"], values: TypedValues): VesselShape {
  if (typeof vessel === "string") return { kind: "upright", diameter: 0.5, height: 0.5 };
  const length = (typed: string) => values.si(typed, "length");
  switch (vessel.shape) {
    case "upright":
      return { kind: "upright", diameter: length(vessel.diameter), height: length(vessel.height) };
    case "lying":
      return { kind: "lying", diameter: length(vessel.diameter), length: length(vessel.length) };
    case "tapered":
      return {
        kind: "tapered",
        bottomDiameter: length(vessel.bottomDiameter),
        topDiameter: length(vessel.topDiameter),
        height: length(vessel.height),
      };
    case "box":
      return {
        kind: "box",
        length: length(vessel.length),
        width: length(vessel.width),
        height: length(vessel.height),
      };
    case "table":
      return {
        kind: "table",
        levels: vessel.readings.map((reading) => length(reading.level)),
        volumes: vessel.readings.map((reading) => values.si(reading.volume, "volume")),
      };
  }
}

function levelsOf(
  source: PlanSource,
  outlet: number,
  height: number,
  path: string,
  values: TypedValues,
): Source["levels"] {
  const { level } = source;
  const fullShare = readShare(DEFAULTS.fullShare.typed) ?? 1;
  if (level?.full === undefined) values.note("fullShare", `${path}.level.full`);
  const full = level?.full === undefined ? fullShare * height : values.si(level.full, "length");
  const lowest =
    level?.lowest === undefined
      ? lowestOf(source, outlet, full, path, values)
      : values.si(level.lowest, "length");
  const ordinary = level?.ordinary === undefined ? (full + lowest) / 2 : values.si(level.ordinary, "length");
  return { full, lowest, ordinary };
}

/** A header tank is topped up as soon as its float falls; any other vessel may be drawn down to its outlet. */
function lowestOf(
  source: PlanSource,
  outlet: number,
  full: number,
  path: string,
  values: TypedValues,
): number {
  if (source.feed === undefined)
    return outlet + values.siOr(undefined, "length", "outletCover", `${path}.level.lowest`);
  return Math.max(outlet, full - values.siOr(undefined, "length", "feedTravel", `${path}.level.lowest`));
}

function misfits(
  levels: Source["levels"],
  outlet: number,
  height: number,
  path: string,
  source: PlanSource,
): Problem[] {
  const cm = (metres: number) => `${(metres * 100).toFixed(1)} cm`;
  const problems: Problem[] = [];
  const misfit = (key: string, found: string, allowed: string) =>
    problems.push({
      code: "doesNotFit",
      path: `${path}.${key}`,
      found,
      allowed,
      mend: "Correct one of the two.",
    });
  if (levels.full > height + 1e-9)
    misfit("level.full", cm(levels.full), `The vessel is ${cm(height)} high inside.`);
  if (outlet > height) misfit("outlet", cm(outlet), `The vessel is ${cm(height)} high inside.`);
  if (levels.lowest < outlet - 1e-9)
    misfit("level.lowest", cm(levels.lowest), `The outlet is at ${cm(outlet)}: below it no water comes.`);
  if (levels.full < levels.lowest - 1e-9) {
    const key = source.level?.full === undefined ? "level.lowest" : "level.full";
    misfit(
      key,
      cm(key === "level.full" ? levels.full : levels.lowest),
      `Lowest is ${cm(levels.lowest)}, full is ${cm(levels.full)}: full is the higher.`,
    );
  } else if (levels.ordinary > levels.full + 1e-9 || levels.ordinary < levels.lowest - 1e-9) {
    misfit(
      "level.ordinary",
      cm(levels.ordinary),
      `It lies between the lowest (${cm(levels.lowest)}) and the full level (${cm(levels.full)}).`,
    );
  }
  return problems;
}

function ventOf(source: PlanSource, path: string, values: TypedValues): Vent {
  const { vent } = source;
  if (vent === undefined) values.note("vent", `${path}.vent`);
  if (vent === "sealed") return { kind: "sealed" };
  if (vent === undefined || vent === "open") return { kind: "open", diameter: undefined };
  const diameter = vent.opening === undefined ? undefined : values.si(vent.opening, "length");
  if ("airTube" in vent && vent.airTube !== undefined)
    return { kind: "airTube", foot: values.si(vent.airTube, "length"), diameter };
  return { kind: "open", diameter };
}

/** Seat of a small float valve when the plan gives none [m], and how much of an ideal jet it passes: from memory. */
const FLOAT_SEAT = 0.006;
const SEAT_DISCHARGE = 0.6;

/** q at 1 m of head through a wide-open float valve with this seat [m3/s]. */
export function feedCoefficient(seat: number | undefined): number {
  const diameter = seat ?? FLOAT_SEAT;
  return flowThroughOrifice(
    { area: (Math.PI * diameter * diameter) / 4, dischargeCoefficient: SEAT_DISCHARGE },
    1,
  );
}
