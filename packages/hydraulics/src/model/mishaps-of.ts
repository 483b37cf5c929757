import type { Plan } from "../document/plan-schema.js";
import { type Flock, isThere } from "./flock.js";
import { type Line, SEGMENT_KIND } from "./line.js";
import type { Mishap } from "./mishap.js";

/**
 * Every single thing that can go wrong with a plan, made from the plan: one a source, a drinker, a joint, a run, a
 * device, a refill, a batch. In the order of the plan; a plan of thousands of drinkers has thousands of them.
 *
 * @param plan   what was typed: its taps and refills are known from nowhere else
 * @param line   of that plan
 * @param flock  of that plan and line; without pens, nothing is made of birds
 * @example mishapsOf(small, mishaps.line, mishaps.flock)[0].kind   // "ventBlocked"
 */
export function mishapsOf(plan: Plan, line: Line, flock: Flock): Mishap[] {
  return [
    ...line.sources.flatMap((_, source) => ofSource(plan, line, source)),
    ...Array.from(line.drinkers.id.keys()).flatMap((drinker) => ofDrinker(line, drinker)),
    ...jointsOf(line).map((point): Mishap => ({ kind: "jointApart", point })),
    ...line.runs.flatMap((_, run) => ofRun(plan, line, run)),
    ...ofBirds(flock),
  ];
}

function ofSource(plan: Plan, line: Line, source: number): Mishap[] {
  const { vent, feed } = line.sources[source];
  const { refill } = plan.sources[source];
  const found: Mishap[] = [];
  if (vent.kind !== "sealed") found.push({ kind: "ventBlocked", source });
  if (vent.kind !== "open") found.push({ kind: "lidOff", source });
  if (feed !== undefined) found.push({ kind: "feedStuckDown", source }, { kind: "feedStuckUp", source });
  if (refill !== undefined && refill !== "none")
    found.push({ kind: "hose" in refill ? "hoseOff" : "refillMissed", source });
  return found;
}

function ofDrinker({ drinkers }: Line, drinker: number): Mishap[] {
  if (drinkers.groups[drinkers.group[drinker]].workedBy === "trigger")
    return [
      { kind: "drinkerStuckOpen", drinker },
      { kind: "drinkerBlocked", drinker },
    ];
  return [
    { kind: "floatStuckDown", drinker },
    { kind: "floatStuckUp", drinker },
    { kind: "cupTipped", drinker },
  ];
}

/** Points at which some run starts or ends, in the order of the runs. */
export function jointsOf({ runs }: Line): number[] {
  return [...new Set(runs.flatMap(({ points }) => [points[0], points[points.length - 1]]))];
}

function ofRun(plan: Plan, line: Line, run: number): Mishap[] {
  const { tap } = plan.runs[line.runs[run].index];
  const found: Mishap[] = [];
  if (tap === "shut") found.push({ kind: "tapLeftOpen", run });
  else found.push({ kind: tap === undefined ? "runBlocked" : "tapLeftShut", run });
  if (deviceOfRun(line, run, "regulator") !== undefined)
    found.push({ kind: "regulatorGone", run }, { kind: "regulatorShut", run });
  if (deviceOfRun(line, run, "oneWay") !== undefined)
    found.push({ kind: "oneWayOpen", run }, { kind: "oneWayShut", run });
  return found;
}

/** The segment of a run that is its regulator, or its one-way valve. */
export function deviceOfRun(
  { runs, segments }: Line,
  run: number,
  kind: "regulator" | "oneWay",
): number | undefined {
  const { firstSegment, segmentCount } = runs[run];
  for (let s = firstSegment; s < firstSegment + segmentCount; s += 1)
    if (segments.kind[s] === SEGMENT_KIND[kind]) return s;
  return undefined;
}

function ofBirds({ pens }: Flock): Mishap[] {
  if (pens.every(({ batches }) => batches.length === 0)) return [];
  return [
    ...pens.flatMap(({ batches, isElsewhere }, pen) =>
      (isElsewhere ? [] : batches).flatMap((birds, batch): Mishap[] =>
        // Twice as many of those that are not there are none.
        isThere(birds) ? [{ kind: "moreBirds", pen, batch }] : [],
      ),
    ),
    { kind: "hottestWeek" },
  ];
}
