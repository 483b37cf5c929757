import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { buildLine } from "../../../packages/hydraulics/src/model/build-line.js";
import type { Line } from "../../../packages/hydraulics/src/model/line.js";

/** The line of a plan given as data, with its defaults; throws where there is none. */
export function builtFrom(document: unknown) {
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems, null, 1));
  const built = buildLine(reading.plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems, null, 1));
  return built;
}

/** The line of one barrel whose outlet is 5 cm over the datum, and the given runs. */
export const lineOf = (runs: unknown[], more: Record<string, unknown> = {}): Line =>
  builtFrom({ headfall: 1, sources: [{ vessel: "drum-55gal-plastic" }], runs, ...more }).line;

/** Problems found while building a plan that reads well, as "path: code". */
export function faultsOf(document: unknown): string[] {
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems, null, 1));
  const built = buildLine(reading.plan);
  return built.ok ? [] : built.problems.map(({ path, code }) => `${path}: ${code}`);
}

/** Height of a named point [m]. */
export function heightOf(line: Line, id: string): number {
  const p = line.points.id.indexOf(id);
  if (p < 0) throw new Error(`no point "${id}" among ${line.points.id.join(", ")}`);
  return line.points.height[p] as number;
}
