import type { Mishap } from "../../model/mishap.js";
import { flockWithMishap } from "../../model/with-mishap.js";
import type { Bench } from "./bench.js";
import type { Supposition } from "./mishap-causes.js";
import type { Trial } from "./trial.js";

/**
 * The birds drink more than the plan says: a batch more of them in some pen, or a hot week. The line is as it was, and
 * as many drinkers are at work as at its busiest; undefined for a plan without birds.
 */
export function supposeMoreDrunk(bench: Bench, mishaps: readonly Mishap[]): Supposition | undefined {
  const { flock, judged } = bench.asked;
  const ofBirds = mishaps.filter(({ kind }) => kind === "moreBirds" || kind === "hottestWeek");
  if (ofBirds.length === 0) return undefined;
  const trials = ofBirds.map(
    (mishap): Trial => ({
      weight: 1 / ofBirds.length,
      severity: {},
      line: bench.line,
      isAlike: true,
      flock: flockWithMishap(flock, mishap),
      atWork: judged.moments.named.fullBusiest.atWork,
    }),
  );
  return { cause: { code: "moreDrunk", at: "line", id: "", index: 0 }, trials };
}

/** What the birds still drink when they are fewer, cooler, ill or drink elsewhere; common practice, no source. */
const STILL_DRUNK = [0.6, 0.3];

/** The birds drink less than the plan says; undefined for a plan without birds. */
export function supposeLessDrunk(bench: Bench): Supposition | undefined {
  const { flock } = bench.asked;
  if (flock.pens.every(({ batches }) => batches.length === 0)) return undefined;
  const trials = STILL_DRUNK.map((share): Trial => {
    const pens = flock.pens.map((pen) => ({
      ...pen,
      batches: pen.batches.map((batch) => ({ ...batch, count: batch.count * share })),
    }));
    return { weight: 0.5, severity: {}, line: bench.line, isAlike: true, flock: { ...flock, pens } };
  });
  return { cause: { code: "lessDrunk", at: "line", id: "", index: 0 }, trials };
}
