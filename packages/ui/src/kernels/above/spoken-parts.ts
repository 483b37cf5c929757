import { type Plan, vesselById } from "@headfall/hydraulics";
import { startingWith } from "../name-path.js";
import { showFlow, showHead, showLength } from "../shown.js";
import type { UnitSystem } from "../typed-quantity.js";
import { writeCounts } from "../verdict-marks.js";
import type { AboveJoint, AboveRun } from "./lay-above.js";
import type { PlacedDrinker } from "./place-drinkers.js";
import type { RunFigures } from "./run-figures.js";

/** Parts as a screen reader says them, and as their labels are worded. */

export function spokenRun(run: AboveRun, figures: RunFigures | undefined, system: UnitSystem): string {
  return [
    startingWith("run", run.name),
    showLength(run.length, system),
    run.isToScale ? "" : "not drawn to scale",
    ...(figures === undefined
      ? ["not checked yet"]
      : [fallWords(figures.fall, system), figures.pipeName, flowWords(figures.flow, system)]),
  ]
    .filter((part) => part !== "")
    .join(", ");
}

/** "falls 20 cm", "rises 60 cm" or "level". */
export function fallWords(fall: number, system: UnitSystem): string {
  if (!Number.isFinite(fall)) return "";
  // Half a millimetre is no fall that anybody builds.
  if (Math.abs(fall) < 0.0005) return "level";
  return `${fall > 0 ? "falls" : "rises"} ${showHead(Math.abs(fall), system)}`;
}

export function flowWords(flow: number, system: UnitSystem): string {
  return flow === 0 ? "no flow" : `flow ${showFlow(flow, system)}`;
}

export function spokenSource(plan: Plan, joint: AboveJoint): string {
  const source = plan.sources[joint.source];
  const typed = source?.vessel;
  const vessel = typeof typed === "string" ? `, ${vesselById(typed)?.name ?? typed}` : "";
  const stand = source?.stand === undefined ? "" : `, on a stand of ${source.stand}`;
  return `${startingWith("source", joint.name)}${vessel}${stand}`;
}

export function spokenJoint({ name }: AboveJoint, meeting: number): string {
  if (meeting === 1) return name.endsWith("end") ? name : startingWith("end", name);
  return `${startingWith("joint", name)}, ${meeting} runs meet`;
}

/** "hen line drinkers, 24 nipples: 17 good, 7 drip". */
export function spokenDrinkers(name: string, kind: string, drinkers: readonly PlacedDrinker[]): string {
  const many = `${drinkers.length} ${kind}${drinkers.length === 1 ? "" : "s"}`;
  return `${name} drinkers, ${many}: ${countsOf(drinkers)}`;
}

function countsOf(drinkers: readonly PlacedDrinker[]): string {
  const counts = { good: 0, drips: 0, starves: 0, dry: 0 };
  for (const { verdict } of drinkers) {
    if (verdict === undefined) return "not checked yet";
    counts[verdict]++;
  }
  return writeCounts(counts);
}

/** What a kind of drinker is called in one word. */
export function kindWord(kind: string): string {
  return /^(nipple|cup|trough|bell)/.exec(kind)?.[1] ?? "drinker";
}
