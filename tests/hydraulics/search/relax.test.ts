import { describe, expect, it } from "vitest";
import { checkPlan } from "../../../packages/hydraulics/src/judge/check-plan.js";
import type { CureAnswer, Relaxation } from "../../../packages/hydraulics/src/search/cure-answer.js";
import type { CureOptions } from "../../../packages/hydraulics/src/search/cure-options.js";
import { findCures } from "../../../packages/hydraulics/src/search/find-cures.js";
import { barrel, nipples, planOf } from "./ailing.js";

/** Only sizes and stands are thought of. */
const REMEDIES = [
  ...(["tap", "vent", "bleed", "drinkers", "fewerDrinkers", "outlet", "secondFeed", "feedMiddle"] as const),
  ...(["split", "regulator", "headerTank", "moveSource", "two"] as const),
];

function relaxations(document: object, options: CureOptions): CureAnswer["relaxations"] {
  const finding = findCures(planOf(document), { never: REMEDIES, ...options });
  if (!finding.ok) throw new Error(JSON.stringify(finding.problems));
  expect(finding.answer.cures).toEqual([]);
  return finding.answer.relaxations;
}

function given<Give extends Relaxation["give"]>(all: readonly Relaxation[], give: Give) {
  return all.find((one): one is Extract<Relaxation, { readonly give: Give }> => one.give === give);
}

/** Water that stands 10 cm high on the ground, and a point so high above it; the pipe never changes. */
const below = (above: string, drinkers: unknown, more: Record<string, unknown> = {}) => ({
  sources: [barrel({ stand: "0 cm" })],
  points: [{ id: "end", ground: "0 cm", above }],
  runs: [{ id: "line", to: "end", length: "6 m", pipe: "hose-1/2", drinkers }],
  shelf: [{ pipe: "hose-1/2" }],
  ...more,
});
const four = nipples(4, { first: "5 m", every: "20 cm", busiest: 4 });

describe("relaxationsOf", () => {
  it("allows the least stand at which it works, up to three times the most that was allowed", () => {
    const options = { standMost: 0.2, standStep: 0.1 };
    const found = given(relaxations(below("20 cm", four), options), "standMost");
    expect(found).toMatchObject({ allowed: 0.2 });
    expect(found!.needed).toBeGreaterThan(0.2);
    expect(found!.plan.sources[0]!.stand).toBe(`${Math.round(found!.needed * 100)} cm`);
    const verdictOf = (stand: number) => {
      const [source] = found!.plan.sources;
      const checking = checkPlan(
        { ...found!.plan, sources: [{ ...source!, stand: `${stand} cm` }] },
        { samples: 0 },
      );
      return checking.ok && checking.checked.verdict;
    };
    expect(verdictOf(100 * found!.needed)).toBe("good");
    expect(verdictOf(100 * found!.needed - 10)).not.toBe("good");
    expect(given(relaxations(below("90 cm", four), options), "standMost")).toBeUndefined();
  });

  it("asks less to spare, by halving what was asked five times, only where some was asked", () => {
    const options = { standMost: 0.4, standStep: 0.1, margin: 0.6 };
    const found = given(relaxations(below("10 cm", four), options), "margin")!;
    expect(found.asked).toBe(0.6);
    expect(found.best).toBeGreaterThan(0);
    expect((found.best / 0.6) * 32).toBeCloseTo(Math.round((found.best / 0.6) * 32), 9);
    // It works with that much, and not with a step more.
    const works = (margin: number) => {
      const finding = findCures(planOf(below("10 cm", four)), { never: REMEDIES, ...options, margin });
      return finding.ok && (finding.answer.before.meets || finding.answer.cures.length > 0);
    };
    expect([works(found.best), works(found.best + 0.6 / 32)]).toEqual([true, false]);
    expect(given(relaxations(below("90 cm", four), { standMost: 0.2 }), "margin")).toBeUndefined();
  });

  it("names the drinkers that cannot be had, as many as it counts, and what the worst of them gives", () => {
    const rising = {
      ...below("38 cm", [], { sources: [barrel()] }),
      points: [
        { id: "low", ground: "0 cm", above: "10 cm" },
        { id: "end", ground: "0 cm", above: "38 cm" },
      ],
      runs: [
        { id: "down", to: "low", length: "1 m", pipe: "hose-1/2" },
        {
          ...{ id: "lane", to: "end", length: "6 m", pipe: "hose-1/2" },
          drinkers: nipples(12, { first: "50 cm", every: "50 cm" }),
        },
      ],
    };
    const found = given(relaxations(rising, { standMost: 0.4, standStep: 0.2 }), "drinkers")!;
    expect(found.of).toBe(12);
    expect(found.lost).toBeGreaterThan(0);
    expect(found.lost).toBeLessThan(12);
    expect(found.names).toHaveLength(found.lost);
    const checking = checkPlan(found.plan, { samples: 0 });
    if (!checking.ok) throw new Error("a plan is none");
    const bad = checking.checked.drinkers.filter(({ verdict }) => verdict !== "good");
    expect(bad.map(({ drinker }) => drinker)).toEqual(found.names);
    const flows = bad.map(
      ({
        moments: {
          lowestBusiest: { hazenWilliams, darcyWeisbach },
        },
      }) => Math.min(hazenWilliams.flow, darcyWeisbach.flow),
    );
    expect(found.flow).toBeCloseTo(Math.min(...flows), 12);
    expect(found.need).toBeCloseTo(checking.checked.line.drinkers.need[0]!, 12);
  });

  it("of plans that lose as many takes the one that is least short of it", () => {
    const found = given(relaxations(below("90 cm", four), { standMost: 0.2, standStep: 0.1 }), "drinkers")!;
    expect(found).toMatchObject({ lost: 4, of: 4 });
    expect(found.plan.sources[0]!.stand).toBe("20 cm");
    // Where all drip the lowest is least too high.
    const high = { ...below("10 cm", four), sources: [barrel({ stand: "0 cm", ground: "3 m" })] };
    const dripping = given(relaxations(high, { standMost: 0.2, standStep: 0.1 }), "drinkers")!;
    expect(dripping).toMatchObject({ lost: 4, flow: undefined, need: undefined });
    expect(dripping.plan.sources[0]!.stand).toBe("0 cm");
  });

  it("names those of the week in which most are lost, with what birds of that age need", () => {
    const pens = [{ birds: { kind: "meat-chicken", count: 200, age: "1 week" } }];
    const lane = nipples(10, { first: "3 m", every: "30 cm" });
    const document = {
      ...below("0 cm", lane, { pens }),
      sources: [barrel({ stand: "0 cm", level: { full: "60 cm", lowest: "20 cm" } })],
    };
    const options = { standMost: 0, never: [...REMEDIES, "stand", "pipe"] as const };
    const of = (weeks: number) => given(relaxations(document, { ...options, weeks }), "drinkers");
    const [now, later] = [of(0), of(6)];
    expect(later!.names).toHaveLength(later!.lost);
    expect(later!.lost).toBeGreaterThan(now?.lost ?? 0);
    expect(later!.need).toBeGreaterThan(now?.need ?? 0);
    expect(later!.flow).toBeLessThan(later!.need!);
  });
});
