import type { Plan } from "../../../document/plan-schema.js";
import type { Problem } from "../../../document/problem.js";
import { buildFlock } from "../../../model/build-flock.js";
import { watererMishapsOf } from "../../../model/waterer-mishap.js";
import type { WeighedLine } from "../../weigh-line.js";
import { yardForPlan } from "../../yard/yard-for-plan.js";
import { cheapestGuard } from "../cheapest-guard.js";
import { drawsOfPen, type PenAsked, runUntouched, runWaterer } from "./run-waterer.js";
import { watererGuardsAgainst } from "./waterer-guards.js";
import type { WatererMishapResult, WatererMishapRow } from "./waterer-mishap-result.js";

/** What any one mishap of a loose waterer does, or what in the plan contradicts itself. */
export type WatererMishapsAnswer =
  | { readonly ok: true; readonly rows: readonly WatererMishapRow[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Makes every single mishap of a plan's loose waterers happen: what runs out, when the birds of its pen find nothing, and
 * what guards against it. Birds go on at the others that hold water, and at the line where one of its drinkers gives.
 *
 * @param judged  the plan's line
 * @returns the worst first, see `compareWaterers`
 */
export function watererMishapsOfPlan(
  plan: Plan,
  judged: WeighedLine,
  day: string | undefined,
): WatererMishapsAnswer {
  const { line } = judged;
  const flocking = buildFlock(plan, line, day);
  if (!flocking.ok) return flocking;
  const yarding = yardForPlan(plan, { day, weeks: 0 });
  if (!yarding.ok) return yarding;
  const { flock } = flocking;
  const { pens, region } = yarding.yard;
  const asked = pens.map(
    (yard, p): PenAsked => ({
      yard,
      flock,
      line,
      region,
      linePlaces: flock.pens[p].drinkers.some((d) => judged.drinkers[d].verdict !== "dry")
        ? yard.linePlaces
        : 0,
      drawOn: drawsOfPen(flock, line, p),
    }),
  );
  const untouched = asked.map((pen) => (pen.yard.waterers.length === 0 ? NOTHING : runUntouched(pen)));
  const yard = {
    pens: pens.map(({ index, pen, slope, waterers }) => ({
      id: pen,
      index,
      slope,
      waterers: waterers.map(({ waterer }) => waterer),
    })),
  };
  // One that gives nothing as it stands cannot lose more: the yard tells of it.
  const all = watererMishapsOf(yard).filter(({ pen, waterer }) => pens[pen].waterers[waterer].gives > 0);
  const rows = all.map((mishap): WatererMishapRow => {
    const [pen, nothing] = [asked[mishap.pen], untouched[mishap.pen]];
    const worst = runWaterer(pen, mishap);
    const guards = watererGuardsAgainst({ asked: pen, result: worst, nothing });
    return { worst, nothing, guards, cheapest: cheapestGuard(guards) };
  });
  rows.sort((a, b) => compareWaterers(a.worst, b.worst));
  return { ok: true, rows };
}

const NOTHING = { harmAfter: undefined, birdHours: 0 };

/**
 * The order of harm: most birds times hours of light without water until somebody comes, then the soonest, then most water
 * to the ground. Equal ones keep the order of the plan.
 *
 * @example compareWaterers(loose[0].worst, loose[0].worst)   // 0
 */
export function compareWaterers(a: WatererMishapResult, b: WatererMishapResult): number {
  const soonest = ({ harmAfter }: WatererMishapResult) => harmAfter ?? Number.MAX_VALUE;
  return b.birdHours - a.birdHours || soonest(a) - soonest(b) || b.lost - a.lost;
}
