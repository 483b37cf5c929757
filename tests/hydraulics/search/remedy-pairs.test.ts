import { describe, expect, it } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { buildLine } from "../../../packages/hydraulics/src/model/build-line.js";
import { CURE_KINDS, type CureKind } from "../../../packages/hydraulics/src/search/cure-kinds.js";
import { remediesFor } from "../../../packages/hydraulics/src/search/remedies/all-remedies.js";
import { ailingIn } from "../../../packages/hydraulics/src/search/remedies/remedy.js";
import { pairsOf } from "../../../packages/hydraulics/src/search/remedy-pairs.js";
import { buildRequirement } from "../../../packages/hydraulics/src/search/requirement.js";
import { ailingOf, barrel, nipples } from "./ailing.js";

/** A thin hose of 40 m with eight bells behind a tap that is shut: opened, it starves all the same. */
function ailingPlan() {
  const reading = checkDocument({
    headfall: 1,
    sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "40 cm", level: { full: "70 cm" } }],
    points: [{ id: "end", ground: "0 cm", above: "0 cm" }],
    runs: [
      {
        ...{ id: "line", to: "end", length: "40 m", pipe: "hose-1/2", tap: "shut" },
        drinkers: { kind: "bell", count: 8, first: "17 m", every: "3 m", busiest: 8 },
      },
    ],
    shelf: [{ pipe: "hose-1/2" }],
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const built = buildLine(reading.plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  const building = buildRequirement(reading.plan, built.line, {});
  if (!building.ok) throw new Error(JSON.stringify(building.problems));
  return ailingIn(building.requirement, built.line)!;
}
const ailing = ailingPlan();
const KIND_OF_CHANGE: Readonly<Record<string, CureKind>> = { openTap: "tap", drinkers: "drinkers" };

describe("pairsOf", () => {
  const pairs = pairsOf(ailing, () => false);

  it("puts together remedies of two kinds, the first made before the second, and spends for both", () => {
    expect(pairs.length).toBeGreaterThan(0);
    const singles = remediesFor(ailing, () => true);
    for (const { kind, changes, spent } of pairs) {
      expect(kind).toBe("two");
      expect(changes.length).toBeGreaterThanOrEqual(2);
      const [first] = singles.filter((one) =>
        one.changes.every((change, k) => JSON.stringify(change) === JSON.stringify(changes[k])),
      );
      expect(first).toBeDefined();
      expect(spent.parts).toBeGreaterThanOrEqual(first!.spent.parts);
      const second = changes.slice(first!.changes.length).map(({ code }) => KIND_OF_CHANGE[code]);
      for (const later of second)
        if (later !== undefined)
          expect(CURE_KINDS.indexOf(later)).toBeGreaterThan(CURE_KINDS.indexOf(first!.kind));
    }
  });

  it("puts nothing together with what works by itself", () => {
    const shut = ailingOf({
      sources: [barrel()],
      points: [{ id: "end", ground: "0 cm", above: "10 cm" }],
      runs: [
        {
          id: "line",
          to: "end",
          length: "5 m",
          tap: "shut",
          drinkers: nipples(4, { first: "4 m", every: "30 cm" }),
        },
      ],
    });
    expect(pairsOf(shut, () => false).filter(({ changes: [first] }) => first?.code === "openTap")).toEqual(
      [],
    );
  });

  it("has each pair once", () => {
    const told = pairs.map(({ changes }) => JSON.stringify(changes.map((one) => JSON.stringify(one)).sort()));
    expect(new Set(told).size).toBe(told.length);
  });

  it("puts no more than four ways of one kind together with others, and none of a kind that is out", () => {
    const firsts = new Map<string, Set<string>>();
    for (const { changes } of pairs) {
      const [first] = changes;
      firsts.set(first!.code, (firsts.get(first!.code) ?? new Set()).add(JSON.stringify(first)));
    }
    for (const [code, ways] of firsts) expect([code, ways.size <= 4]).toEqual([code, true]);
    const withoutTap = pairsOf(ailing, (kind) => kind === "tap");
    expect(withoutTap.flatMap(({ changes }) => changes).filter(({ code }) => code === "openTap")).toEqual([]);
  });

  it("searches in every size the one run that either lays, and never lays two", () => {
    for (const { changes, fresh, pipes } of pairs) {
      const laid = changes.filter(({ code }) => code === "newRun").length;
      expect(laid).toBeLessThanOrEqual(1);
      if (laid === 1) expect(pipes).toEqual([fresh]);
      if (fresh === undefined) expect(pipes).toBe(true);
    }
  });
});
