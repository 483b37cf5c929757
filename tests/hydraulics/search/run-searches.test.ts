import { describe, expect, it } from "vitest";
import { buildLine } from "../../../packages/hydraulics/src/model/build-line.js";
import { compareBy, NO_COST } from "../../../packages/hydraulics/src/search/cost.js";
import type { Change, CureKind } from "../../../packages/hydraulics/src/search/cure-answer.js";
import type { CureOptions } from "../../../packages/hydraulics/src/search/cure-options.js";
import { buildRequirement } from "../../../packages/hydraulics/src/search/requirement.js";
import { beginSearch, type Task } from "../../../packages/hydraulics/src/search/run-searches.js";
import { barrel, nipples, planOf } from "./ailing.js";

const lineFrom = (stand: string) =>
  planOf({
    sources: [barrel({ stand })],
    points: [{ id: "end", ground: "0 cm", above: "10 cm" }],
    runs: [{ id: "line", to: "end", length: "5 m", drinkers: nipples(4, { first: "4 m", every: "30 cm" }) }],
  });
/** Works as it is; on the ground it does not. */
const [good, low] = [lineFrom("40 cm"), lineFrom("0 cm")];

function search(options: CureOptions = {}) {
  const built = buildLine(good);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  const building = buildRequirement(good, built.line, options);
  if (!building.ok) throw new Error(JSON.stringify(building.problems));
  return beginSearch(building.requirement, { by: "parts", ...options }, compareBy("parts"));
}

/** A remedy that is made already, at the price of so many parts. */
const made = (kind: CureKind, parts: number, changes: readonly Change[], more: Partial<Task> = {}): Task => ({
  ...{ kind, plan: good, changes, spent: { ...NO_COST, parts } },
  ...{ pipes: false, stands: false, ...more },
});
const tap = (run: string): Change => ({ code: "openTap", run, was: "shut" });
const [a, b, c, d] = ["a", "b", "c", "d"].map(tap) as [Change, Change, Change, Change];

describe("what a search tells", () => {
  it("is in order of cost, without what does all that a cheaper one does and more", () => {
    const searching = search();
    searching.run(made("bleed", 4, [a, c]));
    searching.run(made("vent", 3, [b, d]));
    searching.run(made("outlet", 2, [b, c]));
    searching.run(made("tap", 1, [a]));
    const { cures, proven } = searching.answer();
    expect(cures.map(({ kind, cost }) => [kind, cost.parts])).toEqual([
      ["tap", 1],
      ["outlet", 2],
      ["vent", 3],
    ]);
    expect(proven).toBe(true);
  });

  it("is six cures at the most", () => {
    const searching = search();
    const kinds = ["tap", "vent", "bleed", "drinkers", "outlet", "regulator", "split"] as const;
    for (const [k, kind] of kinds.entries()) searching.run(made(kind, 7 - k, [tap(kind)]));
    expect(searching.answer().cures.map(({ cost }) => cost.parts)).toEqual([1, 2, 3, 4, 5, 6]);
  });

  it("is the cheapest of each kind, with all that was looked at for it", () => {
    const searching = search();
    for (const parts of [2, 1, 3]) searching.run(made("tap", parts, [tap(`${parts}`)]));
    const { cures, searches } = searching.answer();
    expect(cures.map(({ changes }) => changes)).toEqual([[tap("1")]]);
    // The third costs more than what is known: nothing of it is judged.
    expect(searches).toMatchObject([
      { kind: "tap", plans: 3, judged: 2, proven: true, found: true, bound: undefined },
    ]);
    expect(searching.hasCure()).toBe(true);
    // The first two are looked at as one part each, the third is dropped as one.
    expect(searches[0]!.parts).toBe(3);
  });

  it("says that nothing was found where nothing works, and that this is proven", () => {
    const searching = search();
    searching.run(made("tap", 1, [a], { plan: low }));
    searching.run(made("tap", 1, [b], { plan: low }));
    expect(searching.answer()).toMatchObject({
      cures: [],
      proven: true,
      searches: [{ found: false, plans: 2 }],
    });
    expect(searching.hasCure()).toBe(false);
  });

  it("does not call proven what a search that was stopped might have found cheaper", () => {
    let isStopped = false;
    const told = (then: number) => {
      isStopped = false;
      const searching = search({ isStopped: () => isStopped });
      searching.run(made("tap", 5, [a]));
      isStopped = true;
      searching.run(made("tap", then, [b]));
      const { cures, proven, stopped } = searching.answer();
      return [cures.map((cure) => [cure.cost.parts, cure.proven]), proven, stopped];
    };
    expect(told(1)).toEqual([[[5, false]], false, true]);
    expect(told(6)).toEqual([[[5, true]], true, true]);
  });

  it("takes the stand of a tank that comes new, and the pipe of a run that does, as part of its coming", () => {
    const tank: Change = { code: "headerTank", tank: "barrel", run: "line", at: "end", stand: 0 };
    const run = (id: string): Change => ({
      ...{ code: "newRun", run: id, from: "barrel", to: "end", length: 5, pipe: "own" },
      ...{ into: undefined, along: undefined, isCut: false },
    });
    const changesOf = (change: Change, more: Partial<Task>) => {
      const searching = search({ standMost: 0.4, standStep: 0.4 });
      searching.run(made("headerTank", 1, [change], { plan: low, stands: true, ...more }));
      return searching.answer().cures[0]?.changes;
    };
    expect(changesOf(tank, {})).toEqual([{ ...tank, stand: 0.4 }]);
    // Another tank, and another run: what is changed of this one is told beside it.
    expect(changesOf({ ...tank, tank: "other" }, {})?.map(({ code }) => code)).toEqual([
      "headerTank",
      "stand",
    ]);
    expect(changesOf(run("line"), { pipes: [0], fresh: 0 })?.map(({ code }) => code)).toEqual([
      "newRun",
      "stand",
    ]);
  });
});

describe("pairs", () => {
  it("are tried from the cheapest on, and no more of them once one is known that is as cheap", () => {
    const searching = search();
    searching.runPairs([3, 1, 2].map((parts) => made("two", parts, [tap(`${parts}`)])));
    const { cures, searches } = searching.answer();
    expect(cures.map(({ cost, proven }) => [cost.parts, proven])).toEqual([[1, true]]);
    expect(searches).toMatchObject([{ kind: "two", plans: 1, judged: 1 }]);
  });

  it("that were not looked at leave open what costs no less than coming to them", () => {
    const searching = search({ mostJudged: 0 });
    searching.runPairs([3, 2].map((parts) => made("two", parts, [tap(`${parts}`)])));
    const { cures, searches, proven } = searching.answer();
    expect(cures).toEqual([]);
    expect(searches).toMatchObject([
      { kind: "two", plans: 0, judged: 0, proven: false, found: false, bound: { parts: 2 } },
    ]);
    expect(proven).toBe(false);
  });

  it("that were not looked at and are dearer than the best leave it the cheapest of all", () => {
    const best = (parts: number) => {
      const searching = search({ mostJudged: 4 });
      searching.run(made("tap", parts, [a]));
      // Judged in vain: what may be judged of pairs is used up.
      searching.runPairs([
        made("two", 0, [b], { plan: low }),
        ...[2, 3].map((more) => made("two", more, [tap(`${more}`)])),
      ]);
      return searching.answer();
    };
    expect(best(1)).toMatchObject({ proven: true, cures: [{ kind: "tap", proven: true }] });
    expect(best(9).cures.map(({ kind }) => kind)).toEqual(["tap"]);
    expect(best(9).proven).toBe(false);
  });
});
