import { describe, expect, it } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { checkPlan } from "../../../../packages/hydraulics/src/judge/check-plan.js";
import { checkOf, plainDrinker } from "../yard/yard.js";
import { flockOfPlan, penPlan } from "./pens.js";

const pathsOf = (document: unknown) => checkOf(document).defaults.map(({ path }) => path);

describe("checkPlan of a plan with birds", () => {
  it("takes from the birds how many are at work, and no longer lists those defaults", () => {
    const plan = penPlan();
    const { pens, groups } = flockOfPlan(plan);
    expect(groups[0]).toMatchObject({
      group: "hen line",
      pen: 0,
      busiest: { count: pens[0]!.busiest, from: "birds" },
      ordinary: { count: pens[0]!.ordinary, from: "birds" },
      need: { flow: pens[0]!.batches[0]!.flowNeed, from: "birds" },
    });
    expect(checkOf(plan).line.drinkers.groups[0]!.busiest).toBe(pens[0]!.busiest);
    expect(pathsOf(plan).filter((path) => path.includes("drinkers.busiest"))).toEqual([]);
    expect(pathsOf(plan).filter((path) => path.includes("drinkers.ordinary"))).toEqual([]);
    expect(pathsOf({ ...plan, pens: undefined })).toEqual(
      expect.arrayContaining(["runs[1].drinkers.busiest", "runs[1].drinkers.ordinary"]),
    );
  });

  it("lets what the plan says stand", () => {
    const { groups } = flockOfPlan(
      penPlan({ drinkers: { busiest: 7, ordinary: "25 %", need: "33 mL/min" } }),
    );
    expect(groups[0]).toMatchObject({
      busiest: { count: 7, from: "typed" },
      ordinary: { count: 2, from: "typed" },
      need: { from: "typed" },
    });
    expect(groups[0]!.need.flow * 6e7).toBeCloseTo(33, 9);
  });

  it("is the same as without birds where the plan states everything", () => {
    const stated = penPlan({ drinkers: { busiest: 3, ordinary: 1, need: "40 mL/min" } });
    const [withBirds, without] = [checkOf(stated), checkOf({ ...stated, pens: undefined })];
    expect(withBirds.drinkers).toEqual(without.drinkers);
    expect(withBirds.solutions).toEqual(without.solutions);
    expect(withBirds.runs).toEqual(without.runs);
  });

  it("leaves a group that no pen reaches with the defaults, and says so", () => {
    const plan = penPlan();
    const yard = { id: "yard", from: "riser", length: "2 m", drinkers: { kind: "cup-float", count: 4 } };
    const open = { ...plan, runs: [...plan.runs, yard], pens: [{ ...plan.pens[0], drinkers: ["hen line"] }] };
    expect(flockOfPlan(open).groups[1]).toMatchObject({
      pen: undefined,
      busiest: { count: 2, from: "default" },
      ordinary: { count: 1, from: "default" },
      need: { from: "default" },
    });
    expect(pathsOf(open)).toContain("runs[2].drinkers.busiest");
  });

  it("asks less flow for chicks than for grown birds", () => {
    const need = (age: string) =>
      flockOfPlan(penPlan({ birds: { kind: "hen", count: 24, age } })).groups[0]!.need.flow;
    expect(need("2 days")).toBeLessThan(need("6 weeks"));
  });

  it("counts ages on the plan's day, else on the day asked about, and asks for one where it has neither", () => {
    const birds = { kind: "hen", count: 24, hatched: "2026-05-01" };
    const ageOn = (more: Record<string, unknown>, day?: string) =>
      flockOfPlan(penPlan({ birds, more }), day).pens[0]!.batches[0]!.ageDays;
    expect(ageOn({}, "2026-05-31")).toBe(30);
    expect(ageOn({ day: "2026-05-11" }, "2026-05-31")).toBe(10);
    const reading = checkDocument(penPlan({ birds }));
    if (!reading.ok) throw new Error("no plan");
    expect(checkPlan(reading.plan)).toMatchObject({
      ok: false,
      problems: [{ path: "day", code: "missing" }],
    });
  });

  it("says nothing of birds where there are none", () => {
    expect(Object.keys(checkOf({ ...penPlan(), pens: undefined }))).not.toContain("flock");
  });

  it("samples what and how fast the birds drink: where the crowd decides, that is what to measure; stated, it is sure", () => {
    const thin = (need: string, stated = {}) => {
      const more = { doubts: { heights: "0.1 mm", level: "0.1 mm" }, ownDrinkers: { plain: plainDrinker() } };
      const drinkers = { kind: "plain", need, ...stated };
      const plan = penPlan({ birds: { kind: "hen", count: 15 }, drinkers, more });
      return { ...plan, runs: plan.runs.map((run) => ({ ...run, pipe: { bore: "4 mm" } })) };
    };
    const flows = checkOf(thin("1 mL/min")).drinkers.map(
      ({ moments }) => moments.lowestBusiest.darcyWeisbach.flow,
    );
    // One more at work than in the plan takes more than a twentieth of the flow.
    const need = `${(Math.min(...flows) * 6e7 * 0.95).toFixed(3)} mL/min`;
    const sampled = checkOf(thin(need), { samples: 400 });
    const last = sampled.drinkers[7]!;
    expect(last).toMatchObject({
      verdict: "good",
      certainty: {
        kind: "closeCall",
        measureAgain: { input: { kind: "takenIn" } },
        otherwise: "starves",
      },
    });
    const { busiest } = sampled.flock!.pens[0]!;
    expect(checkOf(thin(need, { busiest }), { samples: 400 }).drinkers[7]!.certainty.kind).toBe("sure");
    expect(checkOf(thin(need), { samples: 400 }).drinkers).toEqual(sampled.drinkers);
  });
});
