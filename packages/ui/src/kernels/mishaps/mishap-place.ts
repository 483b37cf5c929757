import type { Checked, Line, Mishap, MishapResult, VerdictName } from "@headfall/hydraulics";
import type { ProfileLayout } from "../profile-layout.js";
import { type ProfilePath, pathTo, pathToDrinker } from "../profile-path.js";
import type { Spot } from "../profile-request.js";

/** Where on the line a mishap is: at a point of the pipe, in a run, at a drinker, or at a vessel. */
export type MishapPlace =
  | { readonly at: "point"; readonly point: number; readonly run: number | undefined }
  | { readonly at: "run"; readonly run: number }
  | { readonly at: "drinker"; readonly drinker: number }
  | { readonly at: "source"; readonly source: number };

/** @returns undefined where it has no place: more birds, the hottest week */
function placeOfMishap({ runs }: Line, mishap: Mishap): MishapPlace | undefined {
  if ("drinker" in mishap) return { at: "drinker", drinker: mishap.drinker };
  if ("source" in mishap) return { at: "source", source: mishap.source };
  if ("point" in mishap) return { at: "point", point: mishap.point, run: runAt(runs, mishap.point) };
  if ("run" in mishap) return { at: "run", run: mishap.run };
  return undefined;
}

/** The run that ends at a point, else one that starts there: the way to it is then drawn to the end of that run. */
function runAt(runs: Line["runs"], point: number): number | undefined {
  const ends = runs.findIndex(({ points }) => points[points.length - 1] === point);
  const run = ends >= 0 ? ends : runs.findIndex(({ points }) => points[0] === point);
  return run < 0 ? undefined : run;
}

/** The way through the line on which a mishap, and as many as can be of those it harms, are drawn. */
function wayOfMishap(line: Line, { mishap, dry, starve }: MishapResult): ProfilePath | undefined {
  const place = placeOfMishap(line, mishap);
  if (place?.at === "drinker") return pathToDrinker(line, place.drinker);
  const harmed = [...dry, ...starve];
  const far = harmed[harmed.length - 1] ?? line.drinkers.count - 1;
  const beyond = far < 0 ? undefined : pathToDrinker(line, far);
  if (place === undefined) return beyond;
  const isOn = (path: ProfilePath) =>
    place.at === "source" ? path.source === place.source : path.points.includes(pointOf(line, place));
  if (beyond !== undefined && isOn(beyond)) return beyond;
  return pathTo(line, pointOf(line, place), runOf(line, place)) ?? beyond;
}

type OffDrinker = Exclude<MishapPlace, { at: "drinker" }>;

/** A point that the way to a place goes through: the far end of a run, the outlet of a vessel. */
function pointOf({ runs, sources }: Line, place: OffDrinker): number {
  if (place.at === "point") return place.point;
  if (place.at === "source") return sources[place.source]!.point;
  const { points } = runs[place.run]!;
  return points[points.length - 1]!;
}

/** The run that is drawn to its end; of a vessel, the first that leaves it. */
function runOf({ runs, sources }: Line, place: OffDrinker): number | undefined {
  if (place.at !== "source") return place.run;
  const leaves = runs.findIndex(({ points }) => points[0] === sources[place.source]!.point);
  return leaves < 0 ? undefined : leaves;
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
  { path, place, checked }: StruckDrawing,
): Spot | undefined {
  if (place === undefined) return undefined;
  if (place.at === "drinker") return layout.drinkers.find(({ index }) => index === place.drinker);
  const { vessel, pipe } = layout;
  if (place.at === "source")
    return path.source === place.source ? { x: (vessel.left + vessel.right) / 2, y: vessel.top } : undefined;
  // The pipe is drawn point by point, the whole way.
  if (place.at === "point") return pipe[path.points.indexOf(place.point)];
  // What sits in a run is drawn at its middle: at its start it would seem to be of the run before.
  const { points } = checked.line.runs[place.run]!;
  const ends = [points[0]!, points[points.length - 1]!].map(
    (point) => path.along[path.points.indexOf(point)],
  );
  const [from, to] = ends;
  return from === undefined || to === undefined ? undefined : spotAt(pipe, path.along, (from + to) / 2);
}

/** On the drawn pipe, so far along the way [m]. */
function spotAt(pipe: readonly Spot[], along: readonly number[], at: number): Spot | undefined {
  const next = along.findIndex((distance) => distance >= at);
  const [a, b] = [pipe[Math.max(0, next - 1)], pipe[next]];
  if (a === undefined || b === undefined) return undefined;
  const [from, to] = [along[Math.max(0, next - 1)]!, along[next]!];
  const share = to > from ? (at - from) / (to - from) : 0;
  return { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) };
}

/** All that the drawing of a mishap is made from. */
export interface StruckDrawing {
  readonly path: ProfilePath;
  readonly place: MishapPlace | undefined;
  readonly checked: Checked;
}

/** @returns undefined where no pipe leads there */
export function drawingOfMishap(checked: Checked, result: MishapResult): StruckDrawing | undefined {
  const path = wayOfMishap(checked.line, result);
  if (path === undefined) return undefined;
  const place = placeOfMishap(checked.line, result.mishap);
  return { path, place, checked: checkedAfter(checked, result) };
}

/** Names of the drinkers by what becomes of them, the worst first; verdicts that none has are left out. */
export function drinkersByVerdict({
  drinkers,
  line,
}: Checked): readonly (readonly [VerdictName, readonly string[]])[] {
  return (["dry", "starves", "drips", "good"] as const).flatMap((verdict) => {
    const names = drinkers.flatMap((one, d) => (one.verdict === verdict ? [line.drinkers.id[d]!] : []));
    return names.length === 0 ? [] : [[verdict, names] as const];
  });
}
