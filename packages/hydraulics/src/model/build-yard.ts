import { DEFAULTS } from "../document/defaults.js";
import { findWatererId } from "../document/find-names.js";
import type { Plan, PlanPen, PlanWaterer } from "../document/plan-schema.js";
import { type Problem, sortProblems, writeFound } from "../document/problem.js";
import { type WatererKind, watererById } from "../tables/waterers.js";
import { createTypedValues, type DefaultUsed, type TypedValues } from "./typed-values.js";
import { holdsOf, withSizes } from "./waterer-sizes.js";
import type { LooseWaterer, Yard, YardPen } from "./yard.js";

/** The loose waterers of a plan in SI, or what in the plan contradicts itself. */
export type YardBuilding =
  | { readonly ok: true; readonly yard: Yard; readonly defaults: readonly DefaultUsed[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Makes the yard a plan describes: every pen, with the loose waterers in it.
 *
 * @param plan  from `readPlan` or `checkDocument`
 * @returns the yard (pens without waterers have none), or sizes that do not fit each other
 * @example buildYard(examplePlan("yard")).yard.pens.length   // 6
 */
export function buildYard(plan: Plan): YardBuilding {
  const values = createTypedValues();
  const problems: Problem[] = [];
  const pens = (plan.pens ?? []).map((pen, p) => penOf(pen, p, values, problems));
  if (problems.length > 0) return { ok: false, problems: sortProblems(problems) };
  return { ok: true, yard: { pens }, defaults: values.used };
}

function penOf(pen: PlanPen, index: number, values: TypedValues, problems: Problem[]): YardPen {
  const typed = pen.waterers ?? [];
  const slope =
    typed.length === 0 && pen.slope === undefined
      ? 0
      : values.siOr(pen.slope, "slope", "slope", `pens[${index}].slope`);
  const id = pen.id ?? `pen ${index + 1}`;
  const waterers = typed.map((waterer, w) => {
    const path = `pens[${index}].waterers[${w}]`;
    const made = watererOf(waterer, { id: nameOf(id, typed, w), index: w, slope, path }, values);
    problems.push(...misfits(made.kind, waterer, path));
    return made;
  });
  return { id, index, slope, waterers };
}

/** A waterer without a name is called by its pen, and by its place where there are several. */
const nameOf = (pen: string, waterers: readonly PlanWaterer[], w: number): string =>
  waterers[w].id ?? (waterers.length === 1 ? `${pen} waterer` : `${pen} waterer ${w + 1}`);

function watererOf(
  waterer: PlanWaterer,
  place: { readonly id: string; readonly index: number; readonly slope: number; readonly path: string },
  values: TypedValues,
): LooseWaterer {
  const { id, index, path } = place;
  const kind = withSizes(kindOf(waterer.kind), waterer.sizes, values);
  const onSlope = kind.hangs ? 0 : place.slope;
  const slope = waterer.slope === undefined ? onSlope : values.si(waterer.slope, "slope");
  return {
    id,
    index,
    kind,
    count: waterer.count ?? Number(DEFAULTS.waterers.typed),
    slope,
    hole: waterer.hole ?? "uphill",
    holds: waterer.holds === undefined ? holdsOf(kind) : values.si(waterer.holds, "volume"),
    hang: waterer.hang === undefined ? undefined : values.si(waterer.hang, "length"),
    cord: kind.hangs ? values.siOr(waterer.cord, "length", "cord", `${path}.cord`) : 0,
    refillEvery: waterer.refill === undefined ? undefined : values.si(waterer.refill, "time"),
    isShaded: waterer.shade ?? kind.hasShade,
  };
}

function kindOf(words: string): WatererKind {
  const kind = watererById(findWatererId(words) ?? "");
  if (kind === undefined)
    throw new TypeError(
      `buildYard: no waterer is called ${JSON.stringify(words)}; only plans from readPlan or checkDocument can be built`,
    );
  return kind;
}

/** Sizes of the plan's own that cannot be: a hole outside the lip, a pool under no lip. */
function misfits(kind: WatererKind, { sizes }: PlanWaterer, path: string): Problem[] {
  if (sizes === undefined) return [];
  const misfit = (key: keyof typeof sizes, allowed: string): Problem => ({
    code: "doesNotFit",
    path: `${path}.sizes.${key}`,
    found: writeFound(sizes[key]),
    allowed,
    mend: "Measure it again, or leave it out.",
  });
  const problems = Object.keys(sizes)
    .filter((key) => !(sizeField(key) in kind))
    .map((key) => misfit(key as keyof typeof sizes, `${kind.name} has no such size.`));
  if (kind.works !== "vacuum") return problems;
  if (kind.hole >= kind.rim)
    problems.push(
      misfit(sizes.hole === undefined ? "rim" : "hole", "The air hole lies nearer the middle than the lip."),
    );
  if (kind.jar >= kind.rim) problems.push(misfit("rim", "The lip lies outside the jar."));
  return problems;
}

const sizeField = (key: string): string => (key === "lip" ? "lipOverHole" : key);
