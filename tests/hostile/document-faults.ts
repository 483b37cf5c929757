import { isDeepStrictEqual } from "node:util";
import { checkDocument, readPlan } from "../../packages/hydraulics/src/document/read-plan.js";
import { checkPlan } from "../../packages/hydraulics/src/judge/check-plan.js";
import { faultsOfProblems, notFinite } from "./plan-faults.js";

/**
 * What goes wrong when a document that may hold anything is read: it is refused in readable problems, or it is a plan
 * that can be checked; either way it stands as it stood. Throws where a reader throws.
 */
export function faultsOfDocument(document: unknown): string[] {
  const before = structuredClone(document);
  const reading = checkDocument(document);
  const faults = isDeepStrictEqual(document, before) ? [] : ["the document was changed"];
  if (!reading.ok) return [...faults, ...faultsOfProblems(reading.problems)];
  const checking = checkPlan(reading.plan, { samples: 0 });
  if (!checking.ok) return [...faults, ...faultsOfProblems(checking.problems)];
  return [...faults, ...notFinite(checking.checked).map((path) => `${path} is not finite`)];
}

/** What goes wrong when the same document is read as text: each problem stands on a line there is, in their order. */
export function faultsOfText(document: unknown): string[] {
  const text = JSON.stringify(document, null, 1);
  const reading = readPlan(text);
  if (reading.ok) return [];
  const lines = text.split("\n").length;
  const places = reading.problems.map(({ line = 0 }) => line);
  return [
    ...faultsOfProblems(reading.problems),
    ...places.flatMap((line) => (line >= 1 && line <= lines ? [] : [`line ${line} of ${lines}`])),
    ...(places.every((line, k) => k === 0 || line >= places[k - 1]!) ? [] : ["problems out of order"]),
  ];
}

/** What goes wrong when a text is broken off, begun in its middle, or has something between. */
export function faultsOfCutText(
  document: unknown,
  { from, to, between }: { readonly from: number; readonly to: number; readonly between: string },
): string[] {
  const text = JSON.stringify(document);
  const reading = readPlan(`${text.slice(from % text.length)}${between}${text.slice(0, to % text.length)}`);
  return reading.ok ? [] : faultsOfProblems(reading.problems);
}
