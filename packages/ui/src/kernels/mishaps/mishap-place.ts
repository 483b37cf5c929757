import type { Checked, Line, Mishap, MishapResult, VerdictName } from "@headfall/hydraulics";
import type { ProfileLayout } from "../profile-layout.js";
import { type ProfilePath, pathTo, pathToDrinker } from "../profile-path.js";
import type { Spot } from "../profile-request.js";

/** Where on the line a mishap is: at a point of the pipe, at a drinker, or at a vessel. */
export type MishapPlace =
  | { readonly at: "point"; readonly point: number; readonly run: number | undefined }
  | { readonly at: "drinker"; readonly drinker: number }
  | { readonly at: "source"; readonly source: number };

/** @returns undefined where it has no place: more birds, the hottest week */
export function placeOfMishap({ runs }: Line, mishap: Mishap): MishapPlace | undefined {
  if ("drinker" in mishap) return { at: "drinker", drinker: mishap.drinker };
  if ("source" in mishap) return { at: "source", source: mishap.source };
  if ("point" in mishap) return { at: "point", point: mishap.point, run: runAt(runs, mishap.point) };
  // What sits in a run is drawn at its middle: at its start it would seem to be of the run before.
  if ("run" in mishap) return { at: "point", point: middleOf(runs[mishap.run]!), run: mishap.run };
  return undefined;
}

const middleOf = ({ points, along, length }: Line["runs"][number]): number => {
  const middle = points.findIndex((_, i) => along[i]! >= length / 2);
  return points[middle === -1 ? points.length - 1 : middle]!;
};

/** The run that ends at a point, else one that starts there: the way to it is then drawn to the end of that run. */
function runAt(runs: Line["runs"], point: number): number | undefined {
  const ends = runs.findIndex(({ points }) => points[points.length - 1] === point);
  const run = ends >= 0 ? ends : runs.findIndex(({ points }) => points[0] === point);
  return run < 0 ? undefined : run;
}

/** The way through the line on which a mishap, and as many as can be of those it harms, are drawn. */
export function wayOfMishap(line: Line, { mishap, dry, starve }: MishapResult): ProfilePath | undefined {
  const place = placeOfMishap(line, mishap);
  if (place?.at === "drinker") return pathToDrinker(line, place.drinker);
  const harmed = [...dry, ...starve];
  const far = harmed[harmed.length - 1] ?? line.drinkers.count - 1;
  const beyond = far < 0 ? undefined : pathToDrinker(line, far);
  if (place === undefined) return beyond;
  const isOn = (path: ProfilePath) =>
    place.at === "source" ? path.source === place.source : path.points.includes(place.point);
  if (beyond !== undefined && isOn(beyond)) return beyond;
  if (place.at === "point") return pathTo(line, place.point, place.run);
  const leaves = line.runs.findIndex(({ points }) => points[0] === line.sources[place.source]!.point);
  return leaves < 0 ? beyond : pathTo(line, middleOf(line.runs[leaves]!), leaves);
}

/** What the check found out, with the verdicts that the mishap makes of it; for its drawing. */
export function checkedAfter(checked: Checked, { dry, starve, drip }: MishapResult): Checked {
  const worse = new Map<number, VerdictName>();
  for (const drinker of drip) worse.set(drinker, "drips");
  for (const drinker of starve) worse.set(drinker, "starves");
  for (const drinker of dry) worse.set(drinker, "dry");
  const drinkers = checked.drinkers.map((drinker, d) => ({
    ...drinker,
    verdict: worse.get(d) ?? drinker.verdict,
  }));
  return { ...checked, drinkers };
}

/** Where the mishap is on the drawing [px]; undefined where it is not on it. */
export function spotOfMishap(
  layout: ProfileLayout,
  path: ProfilePath,
  place: MishapPlace | undefined,
): Spot | undefined {
  if (place === undefined) return undefined;
  if (place.at === "drinker") return layout.drinkers.find(({ index }) => index === place.drinker);
  const { vessel } = layout;
  if (place.at === "source")
    return path.source === place.source ? { x: (vessel.left + vessel.right) / 2, y: vessel.top } : undefined;
  // The pipe is drawn point by point, the whole way.
  return layout.pipe[path.points.indexOf(place.point)];
}
