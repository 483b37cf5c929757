import { DEFAULTS } from "../../document/defaults.js";
import type { Plan } from "../../document/plan-schema.js";
import { untappedSources } from "../../document/untapped.js";
import { buildLine } from "../../model/build-line.js";
import { buildYard } from "../../model/build-yard.js";
import { drainOf } from "../../model/drain.js";
import { type ExposedVessel, exposedRuns, exposedVessels } from "../../model/exposed.js";
import { type FrostAsked, type FrostNight, frostNightOf } from "../../model/extremes.js";
import { type Line, SEGMENT_KIND } from "../../model/line.js";
import { createTypedValues } from "../../model/typed-values.js";
import type { Yard } from "../../model/yard.js";
import { FROST_HEAD_SPACE } from "../../physics/freezing.js";
import type { FrostMaterial } from "../../tables/frost-materials.js";
import { readClock } from "../../units/day.js";
import { frostOfDrinkers, frostOfRun, frostOfVessel, type InFrost } from "./frost-bodies.js";
import { frostRefills, thawOf } from "./frost-refills.js";
import type { FrostAnswer, FrostDrain, FrostPart, FrostRefills, HeadSpace } from "./frost-result.js";
import { frostOfWaterer } from "./frost-waterers.js";

/**
 * What a night of frost does to a plan: hours until each part is at 0 °C, stopped and solid, what to drain and what
 * stays, refills of the day after, what grows brittle.
 *
 * @param plan   from `readPlan` or `checkDocument`
 * @param asked  the night, where it is not the plan's
 * @example frostOfPlan(plan, { low: -8 }).frost.parts[0].id   // "hen line"
 */
export function frostOfPlan(plan: Plan, asked: FrostAsked = {}): FrostAnswer {
  const built = buildLine(plan);
  if (!built.ok) return built;
  const yarding = buildYard(plan);
  if (!yarding.ok) return yarding;
  const { line } = built;
  const values = createTypedValues();
  const night = frostNightOf(plan, asked, values);
  if (plan.water === undefined) values.note("waterTemperature", "water");
  const frost = { night, water: line.water.temperatureC };
  const vessels = exposedVessels(plan, line);
  const parts = [
    ...line.drinkers.groups.map((group) => frostOfDrinkers(group, pathOfGroup(line, group.run), frost)),
    ...exposedRuns(plan, line, values).map((run) => frostOfRun(run, frost)),
    ...vessels.map((vessel) => frostOfVessel(vessel, frost)),
    ...looseOf(yarding.yard, (waterer, path) => frostOfWaterer(waterer, path, frost)),
  ];
  const day = dayOf(plan, night);
  return {
    ok: true,
    frost: {
      night,
      waterTemperature: frost.water,
      dusk: (day.dawn + day.light) % 86_400,
      parts,
      first: firstToStop(parts),
      drain: { ...drainNamed(line), untapped: untappedOf(plan, vessels) },
      refills: refillsOf(yarding.yard, frost, day),
      thaw: thawOf(day),
      headSpace: vessels.flatMap(headSpaceOf),
      brittle: brittleIn(parts, night),
      defaults: values.used,
    },
  };
}

const pathOfGroup = (line: Line, run: number) => `runs[${line.runs[run].index}]`;

const looseOf = <Made>(
  { pens }: Yard,
  make: (waterer: Yard["pens"][number]["waterers"][number], path: string) => Made,
): Made[] =>
  pens.flatMap(({ index, waterers }) =>
    waterers.map((waterer) => make(waterer, `pens[${index}].waterers[${waterer.index}]`)),
  );

/** The day after: its light is the plan's. */
function dayOf(plan: Plan, { low, high }: FrostNight) {
  const values = createTypedValues();
  return {
    high,
    low,
    dawn: readClock(plan.weather?.dawn ?? DEFAULTS.dawn.typed) ?? 0,
    light: values.siOr(plan.weather?.light, "time", "light", "weather.light"),
  };
}

/** The part that stops first of those that give water. */
function firstToStop(parts: readonly FrostPart[]): number | undefined {
  let first: number | undefined;
  parts.forEach(({ blocked }, k) => {
    if (blocked === undefined || blocked.soonest === Number.POSITIVE_INFINITY) return;
    const before = first === undefined ? undefined : parts[first].blocked;
    if (before === undefined || blocked.soonest < before.soonest) first = k;
  });
  return first;
}

function untappedOf(plan: Plan, vessels: readonly ExposedVessel[]): FrostDrain["untapped"] {
  const isUntapped = untappedSources(plan);
  return vessels
    .filter((_, place) => isUntapped[place])
    .map(({ id, full }) => ({ source: id, volume: full.volume }));
}

function drainNamed(line: Line): Omit<FrostDrain, "untapped"> {
  const { volume, ends, sags, devices } = drainOf(line);
  return {
    volume,
    ends: ends.map((end) => ({ ...end, point: line.points.id[end.point] })),
    sags: sags.map((sag) => ({ ...sag, point: line.points.id[sag.point], run: line.runs[sag.run].id })),
    devices: devices.map((s) => ({
      run: line.runs[line.segments.run[s]].id,
      kind:
        line.segments.kind[s] === SEGMENT_KIND.oneWay
          ? "oneWay"
          : line.segments.kind[s] === SEGMENT_KIND.regulator
            ? "regulator"
            : "tap",
    })),
  };
}

function refillsOf(yard: Yard, frost: InFrost, day: ReturnType<typeof dayOf>): FrostRefills[] {
  return looseOf(yard, (waterer, path) => frostRefills(waterer, path, frost, day)).filter(
    (one) => one !== undefined,
  );
}

function headSpaceOf({ id, full, capacity }: ExposedVessel): HeadSpace[] {
  const empty = 1 - full.volume / capacity;
  if (empty >= FROST_HEAD_SPACE - 1e-9) return [];
  return [{ source: id, empty, takeOut: full.volume - (1 - FROST_HEAD_SPACE) * capacity }];
}

function brittleIn(parts: readonly FrostPart[], { low }: FrostNight) {
  const found = new Map<FrostMaterial, string[]>();
  for (const { material, id } of parts) {
    if (material?.brittleBelow === undefined || low >= material.brittleBelow) continue;
    found.set(material, [...(found.get(material) ?? []), id]);
  }
  return [...found].map(([material, of]) => ({ material, parts: of }));
}
