import { DEFAULTS } from "../document/defaults.js";
import { findBirdByName } from "../document/find-names.js";
import { batchesOf } from "../document/plan-lists.js";
import type { Plan, PlanBirds, PlanPen } from "../document/plan-schema.js";
import { type Problem, sortProblems, writeFound } from "../document/problem.js";
import { readShare } from "../document/read-share.js";
import { readClock, readDay } from "../units/day.js";
import { buildRoster } from "./build-roster.js";
import type { Batch, Flock, Pen, Weather } from "./flock.js";
import type { Line } from "./line.js";
import { pensOfRoster } from "./roster.js";
import { createTypedValues, type DefaultUsed, type TypedValues } from "./typed-values.js";

/** The birds of a plan in SI, or what in the plan contradicts itself. */
export type FlockBuilding =
  | { readonly ok: true; readonly flock: Flock; readonly defaults: readonly DefaultUsed[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** What the parts of a flock are made with. */
interface Making {
  readonly line: Line;
  readonly day: number | undefined;
  readonly values: TypedValues;
  readonly problems: Problem[];
}

const DAY = 86_400;

/**
 * Makes the flock a plan describes.
 *
 * @param plan  from `readPlan` or `checkDocument`
 * @param line  the same plan's line, from `buildLine`
 * @param day   the day it is asked on, "2026-07-04"; counts where the plan names none
 * @returns the flock (no pens: nobody drinks), or what in the plan does not fit
 * @example buildFlock(plan, line, "2026-07-04").flock.pens[0].id   // "hens"
 */
export function buildFlock(plan: Plan, line: Line, day?: string): FlockBuilding {
  const values = createTypedValues();
  const asked = plan.day ?? day;
  const making: Making = {
    line,
    day: asked === undefined ? undefined : readDay(asked),
    values,
    problems: [],
  };
  const pens = plan.pens ?? [];
  const reached = drinkersOfPens(pens, making);
  const there = pens.map(
    (pen, index): Pen => ({
      id: pen.id ?? `pen ${index + 1}`,
      index,
      batches: batchesOf(pen).map((birds, k) => batchOf(birds, pathOfBatch(pen, index, k), k, making)),
      drinkers: reached[index] ?? [],
    }),
  );
  const weather = weatherOf(plan, pens.length > 0, values);
  if (making.problems.length > 0) return { ok: false, problems: sortProblems(making.problems) };
  const flock = { day: making.day, pens: there, weather };
  return { ok: true, flock: withRoster(plan, flock), defaults: values.used };
}

function withRoster(plan: Plan, flock: Flock): Flock {
  const roster = buildRoster(plan, flock.pens);
  if (roster === undefined || flock.day === undefined) return flock;
  return { ...flock, pens: pensOfRoster(flock.pens, roster, flock.day), roster };
}

const pathOfBatch = (pen: PlanPen, index: number, k: number) =>
  Array.isArray(pen.birds) ? `pens[${index}].birds[${k}]` : `pens[${index}].birds`;

function batchOf(birds: PlanBirds, path: string, index: number, making: Making): Batch {
  const kind = findBirdByName(birds.kind);
  if (kind === undefined)
    throw new TypeError(
      `buildFlock: no bird is called ${JSON.stringify(birds.kind)}; only plans from readPlan or checkDocument can be built`,
    );
  if (kind.lays && birds.lay === undefined) making.values.note("lay", `${path}.lay`);
  return {
    kind,
    index,
    count: birds.count,
    ageDays: ageOf(birds, kind.grownDays, path, making),
    lay: kind.lays ? (readShare(birds.lay ?? DEFAULTS.lay.typed) ?? 0) : 0,
  };
}

function ageOf(birds: PlanBirds, grownDays: number, path: string, making: Making): number {
  const { age, hatched, arrives, leaves, moves } = birds;
  if (making.day === undefined && hatched !== undefined)
    making.problems.push(
      whichDay(`The birds at ${path} hatched on ${hatched}: their age needs a day to be counted on.`),
    );
  else if (making.day === undefined && (arrives ?? leaves ?? moves) !== undefined)
    making.problems.push(
      whichDay(`The birds at ${path} come, move or leave on a date: whether they are there needs a day.`),
    );
  const day = making.day ?? 0;
  if (hatched !== undefined) return day - (readDay(hatched) ?? 0);
  const typed = age === undefined ? grownDays : making.values.si(age, "time") / DAY;
  return arrives === undefined ? typed : typed + day - (readDay(arrives) ?? day);
}

const whichDay = (allowed: string): Problem => ({
  code: "missing",
  path: "day",
  found: "nothing",
  allowed,
  mend: 'Add for instance "day": "2026-07-04", or say the day when asking.',
});

/** By pen the drinkers it reaches: those it names, or if it names none those no other pen names. */
function drinkersOfPens(pens: readonly PlanPen[], making: Making): (readonly number[])[] {
  const { drinkers } = making.line;
  const owner = new Int32Array(drinkers.count).fill(-1);
  pens.forEach((pen, p) => {
    pen.drinkers?.forEach((name, k) => {
      for (const d of drinkersNamed(making.line, name)) {
        if (owner[d] >= 0 && owner[d] !== p) {
          making.problems.push(reachedTwice(`pens[${p}].drinkers[${k}]`, name, owner[d], pens));
          return;
        }
        owner[d] = p;
      }
    });
  });
  // In a yard without a line, nothing is left to take.
  const open = drinkers.count === 0 ? [] : pensLeftOpen(pens, owner);
  for (const p of open.slice(1)) making.problems.push(whichDrinkers(`pens[${p}].drinkers`));
  const [rest] = open;
  if (rest !== undefined)
    owner.forEach((p, d) => {
      if (p < 0) owner[d] = rest;
    });
  return pens.map((_, p) =>
    Array.from({ length: drinkers.count }, (_unused, d) => d).filter((d) => owner[d] === p),
  );
}

/**
 * Pens that name no drinkers and so take what is left of the line. Of several, those with loose waterers take none; nor
 * does it matter which takes them where none are left.
 */
function pensLeftOpen(pens: readonly PlanPen[], owner: Int32Array): number[] {
  const open = pens.flatMap((pen, p) => (pen.drinkers === undefined ? [p] : []));
  const withoutLoose = open.filter((p) => (pens[p].waterers ?? []).length === 0);
  if (open.length === withoutLoose.length || open.length < 2) return open;
  return withoutLoose.length > 0 || owner.every((p) => p >= 0) ? withoutLoose : open;
}

/** Drinkers of the groups, or of the run, that have this name. */
function drinkersNamed({ drinkers, runs }: Line, name: string): number[] {
  const run = runs.findIndex(({ id }) => id === name);
  return Array.from({ length: drinkers.count }, (_, d) => d).filter(
    (d) => drinkers.groups[drinkers.group[d]].id === name || drinkers.run[d] === run,
  );
}

const reachedTwice = (path: string, name: string, other: number, pens: readonly PlanPen[]): Problem => ({
  code: "doesNotFit",
  path,
  found: writeFound(name),
  allowed: `Each drinker serves one pen; pen ${writeFound(pens[other]?.id ?? `pen ${other + 1}`)} has it already.`,
  mend: "Give each pen its own group of drinkers, or put the birds into one pen.",
});

const whichDrinkers = (path: string): Problem => ({
  code: "missing",
  path,
  found: "nothing",
  allowed: "Only one pen may leave out which drinkers it reaches.",
  mend: "Name its groups of drinkers, or its runs.",
});

function weatherOf(plan: Plan, isNeeded: boolean, values: TypedValues): Weather {
  const { weather } = plan;
  // Nobody drinks: no default had to stand in for anything.
  const made = isNeeded ? values : createTypedValues();
  const high = made.siOr(weather?.high, "temperature", "air", "weather.high");
  const low = weather?.low === undefined ? high : made.si(weather.low, "temperature");
  if (weather?.dawn === undefined) made.note("dawn", "weather.dawn");
  return {
    high,
    low,
    light: made.siOr(weather?.light, "time", "light", "weather.light"),
    dawn: readClock(weather?.dawn ?? DEFAULTS.dawn.typed) ?? 0,
    hotSpell: hotSpellOf(weather?.hotSpell, high - low, made),
  };
}

function hotSpellOf(
  spell: NonNullable<Plan["weather"]>["hotSpell"],
  swing: number,
  values: TypedValues,
): Weather["hotSpell"] {
  if (spell === undefined) return undefined;
  const high = values.si(spell.high, "temperature");
  if (spell.days === undefined) values.note("hotDays", "weather.hotSpell.days");
  return {
    high,
    low: spell.low === undefined ? high - swing : values.si(spell.low, "temperature"),
    days: spell.days ?? Number(DEFAULTS.hotDays.typed),
  };
}
