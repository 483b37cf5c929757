/** A drinker's place on a run. */
export interface Station {
  /** Distance from the start of the run [m]. */
  readonly along: number;
  /** Height of the pipe there [m above datum]. */
  readonly height: number;
  readonly bleed: boolean;
  /** Name for a point that the plan surveyed; undefined for one made by a drinker. */
  readonly surveyed: boolean;
}

/** One reading of a survey: distance and height below the start of the run [m]. */
export interface SurveyReading {
  readonly along: number;
  readonly fall: number;
  readonly bleed: boolean;
}

/** Distances closer than this are one place [m]. */
const SAME_PLACE = 1e-6;

/**
 * Lays one run out as the stations between its two ends: surveyed places and drinkers, in order, each with its height.
 * Between surveyed places (and the ends) the pipe is straight.
 */
export function layRun(run: {
  readonly length: number;
  readonly startHeight: number;
  /** What the survey's falls are counted from [m above datum]. */
  readonly surveyedFrom: number;
  readonly endHeight: number;
  readonly survey: readonly SurveyReading[];
  /** Distances of the drinkers, ascending. */
  readonly drinkersAt: readonly number[];
}): Station[] {
  const { length, startHeight, surveyedFrom, endHeight, drinkersAt } = run;
  const inner = run.survey.filter(({ along }) => along > SAME_PLACE && along < length - SAME_PLACE);
  const knots = [
    { along: 0, height: startHeight },
    ...inner.map(({ along, fall }) => ({ along, height: surveyedFrom - fall })),
    { along: length, height: endHeight },
  ];
  const stations: Station[] = inner.map(({ along, fall, bleed }) => ({
    along,
    height: surveyedFrom - fall,
    bleed,
    surveyed: true,
  }));
  for (const along of drinkersAt) {
    if (along <= SAME_PLACE || along >= length - SAME_PLACE) continue;
    if (stations.length > 0 && nearestDistance(inner, along) <= SAME_PLACE) continue;
    stations.push({ along, height: heightAt(knots, along), bleed: false, surveyed: false });
  }
  stations.sort((a, b) => a.along - b.along);
  return stations.filter((station, i) => i === 0 || station.along - stations[i - 1].along > SAME_PLACE);
}

function nearestDistance(places: readonly { readonly along: number }[], along: number): number {
  return places.reduce(
    (least, place) => Math.min(least, Math.abs(place.along - along)),
    Number.POSITIVE_INFINITY,
  );
}

function heightAt(
  knots: readonly { readonly along: number; readonly height: number }[],
  along: number,
): number {
  let k = 1;
  while (k < knots.length - 1 && knots[k].along < along) k += 1;
  const [a, b] = [knots[k - 1], knots[k]];
  if (b.along <= a.along) return b.height;
  return a.height + ((b.height - a.height) * (along - a.along)) / (b.along - a.along);
}

/**
 * Distances of a regular group of drinkers along its run [m].
 *
 * @param group.first  distance of the first; undefined: one spacing
 * @param group.every  spacing; undefined: even, the last at the end of the run
 */
export function placeDrinkers(group: {
  readonly count: number;
  readonly runLength: number;
  readonly first: number | undefined;
  readonly every: number | undefined;
}): number[] {
  const { count, runLength } = group;
  const every = group.every ?? evenSpacing(group);
  const first = group.first ?? every;
  return Array.from({ length: count }, (_, i) => Math.min(runLength, first + i * every));
}

function evenSpacing(group: { count: number; runLength: number; first: number | undefined }): number {
  if (group.first === undefined) return group.runLength / group.count;
  return group.count === 1 ? 0 : Math.max(0, group.runLength - group.first) / (group.count - 1);
}
