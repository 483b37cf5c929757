import { describe, expect, it } from "vitest";
import type { Plan } from "../../../packages/hydraulics/src/document/plan-schema.js";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { checkPlan } from "../../../packages/hydraulics/src/judge/check-plan.js";
import type { CureAnswer, CureKind } from "../../../packages/hydraulics/src/search/cure-answer.js";
import type { CureOptions } from "../../../packages/hydraulics/src/search/cure-options.js";
import { findCures } from "../../../packages/hydraulics/src/search/find-cures.js";

const barrel = (more: Record<string, unknown> = {}) => ({
  id: "barrel",
  vessel: "drum-55gal-plastic",
  stand: "40 cm",
  level: { full: "70 cm", lowest: "10 cm" },
  ...more,
});
const nipples = (count: number, more: Record<string, unknown> = {}) => ({
  kind: "nipple-side-action",
  count,
  ...more,
});
const at = (id: string, above: string) => ({ id, ground: "0 cm", above });
const four = nipples(4, { first: "4 m", every: "30 cm" });
/** One run of 5 m to a point 10 cm up, with four nipples at its end. */
const oneRun = (source: Record<string, unknown>, run: Record<string, unknown> = {}) => ({
  headfall: 1,
  sources: [barrel(source)],
  points: [at("end", "10 cm")],
  runs: [{ id: "line", to: "end", length: "5 m", drinkers: four, ...run }],
});

const PLANS = {
  shutTap: oneRun({}, { tap: "shut" }),
  sealed: oneRun({ vent: "sealed" }),
  highStand: oneRun({ stand: "80 cm" }),
  hump: oneRun(
    { stand: "62 cm", level: { full: "30 cm", lowest: "15 cm" } },
    {
      length: "12 m",
      pipe: "hose-1/2",
      survey: [
        { along: "4 m", fall: "0 cm" },
        { along: "7 m", fall: "-62 cm" },
      ],
      drinkers: nipples(4, { first: "10.5 m", every: "30 cm" }),
    },
  ),
  steep: {
    headfall: 1,
    sources: [barrel({ ground: "1 m" })],
    points: [at("top", "110 cm"), at("low", "10 cm")],
    runs: [
      { id: "upper", to: "top", length: "6 m", drinkers: nipples(3, { first: "5 m", every: "40 cm" }) },
      { id: "down", to: "low", length: "8 m", drinkers: nipples(3, { first: "7 m", every: "40 cm" }) },
    ],
  },
  /** The last of twelve hang too high for the water when it is low. */
  rising: {
    headfall: 1,
    sources: [barrel({ level: { full: "60 cm", lowest: "10 cm" } })],
    points: [at("low", "10 cm"), at("end", "38 cm")],
    runs: [
      { id: "down", to: "low", length: "1 m" },
      { id: "lane", to: "end", length: "6 m", drinkers: nipples(12, { first: "50 cm", every: "50 cm" }) },
    ],
  },
  thin: {
    headfall: 1,
    sources: [barrel()],
    points: [at("end", "0 cm")],
    runs: [
      {
        id: "line",
        to: "end",
        length: "40 m",
        pipe: "hose-1/2",
        drinkers: { kind: "bell", count: 8, first: "17 m", every: "3 m", busiest: 8 },
      },
    ],
    shelf: [{ pipe: "hose-1/2" }],
  },
} as const;

function planOf(document: unknown): Plan {
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

function answerTo(document: unknown, options: CureOptions = {}): CureAnswer {
  const finding = findCures(planOf(document), options);
  if (!finding.ok) throw new Error(JSON.stringify(finding.problems));
  return finding.answer;
}

const cureOf = ({ cures }: CureAnswer, kind: CureKind) => cures.find((cure) => cure.kind === kind);

/** A cure's plan is one, and works by the check itself. */
function expectCured({ cures }: CureAnswer): void {
  for (const { kind, plan, after } of cures) {
    const checking = checkPlan(planOf(JSON.parse(JSON.stringify(plan))), { samples: 0 });
    expect([kind, checking.ok && checking.checked.verdict, after.meets]).toEqual([kind, "good", true]);
  }
}

describe("findCures", () => {
  it("opens a tap that is shut", () => {
    const answer = answerTo(PLANS.shutTap);
    expect(cureOf(answer, "tap")?.changes).toEqual([{ code: "openTap", run: "line", was: "shut" }]);
    expect(answer.cures[0]?.kind).toBe("tap");
    expectCured(answer);
  });

  it("opens a vessel that is sealed", () => {
    const answer = answerTo(PLANS.sealed);
    expect(answer.cures[0]?.changes[0]).toEqual({ code: "openVent", source: "barrel", opening: 0.02 });
    expectCured(answer);
  });

  it("lowers a stand whose drinkers drip, or holds back, or takes drinkers that hold more", () => {
    const answer = answerTo(PLANS.highStand);
    expect(answer.cures.map(({ kind }) => kind)).toEqual(["stand", "regulator", "drinkers"]);
    expect(answer.cures[0]?.changes).toEqual([{ code: "stand", source: "barrel", from: 0.8, to: 0.4 }]);
    expect(answer.proven).toBe(true);
    expectCured(answer);
  });

  it("bleeds the hump that keeps its air", () => {
    const answer = answerTo(PLANS.hump);
    expect(cureOf(answer, "bleed")?.changes).toEqual([
      { code: "bleed", run: "line", point: "line at 7.00 m", along: 7 },
    ]);
    expectCured(answer);
  });

  it("holds the low end of a steep line back by a regulator, or by a header tank", () => {
    const answer = answerTo(PLANS.steep);
    expect(cureOf(answer, "regulator")?.changes[0]).toMatchObject({ code: "regulator", run: "down" });
    expect(cureOf(answer, "headerTank")?.changes[0]).toMatchObject({
      code: "headerTank",
      run: "down",
      at: "top",
    });
    expectCured(answer);
  });

  it("feeds a thin line again, at its far end or in its middle", () => {
    const answer = answerTo(PLANS.thin, { standMost: 0.4 });
    const [far, middle] = [cureOf(answer, "secondFeed"), cureOf(answer, "feedMiddle")];
    expect(far?.changes[0]).toMatchObject({ code: "newRun", to: "end", length: 40, into: undefined });
    expect(middle?.changes[0]).toMatchObject({ code: "newRun", into: "line", along: 20 });
    const split = cureOf(answer, "split");
    expect(split?.changes[0]).toMatchObject({ code: "newRun", into: "line", along: 20, isCut: true });
    // What lies beyond the cut hangs on the new run alone.
    const ends = split?.plan.runs.map(({ from, to }) => `${from} - ${to}`);
    expect(ends).toEqual(["barrel - line middle", "line second half - end", "barrel - line second half"]);
    expectCured(answer);
  });

  it("leaves drinkers off that hang too high, where those that stay are enough for the birds", () => {
    const only = { standMost: 0.4, never: ["pipe", "drinkers"] } as const;
    const hens = (count: number) =>
      answerTo({ ...PLANS.rising, pens: [{ id: "hens", birds: { kind: "hen", count } }] }, only);
    const answer = hens(20);
    expect(cureOf(answer, "fewerDrinkers")?.changes).toEqual([
      {
        code: "leaveOff",
        group: "lane",
        off: 2,
        of: 12,
        end: "far",
        pen: "hens",
        birds: 20,
        has: 10,
        needed: 4,
      },
    ]);
    expectCured(answer);
    // A hundred hens may do with ten; more of them need every one. And nobody says who drinks where no bird is told.
    expect(cureOf(hens(100), "fewerDrinkers")).toBeDefined();
    expect(cureOf(hens(110), "fewerDrinkers")).toBeUndefined();
    expect(cureOf(answerTo(PLANS.rising, only), "fewerDrinkers")).toBeUndefined();
  });

  it("makes an outlet as wide as its pipe that was too narrow", () => {
    const answer = answerTo(
      oneRun(
        { outletBore: "3 mm", level: { full: "60 cm", lowest: "7 cm" } },
        { drinkers: nipples(12, { first: "3 m", every: "15 cm", busiest: 12 }) },
      ),
      { never: ["pipe", "drinkers", "secondFeed", "feedMiddle", "split"] },
    );
    expect(cureOf(answer, "outlet")?.changes).toEqual([{ code: "outlet", source: "barrel", from: 0.003 }]);
    expect(cureOf(answer, "outlet")?.plan.sources[0]).not.toHaveProperty("outletBore");
    expectCured(answer);
  });

  it("puts the barrel where the ground is higher, if its first run has no drinkers", () => {
    const answer = answerTo(
      {
        headfall: 1,
        sources: [barrel({ stand: "0 cm", level: { full: "40 cm", lowest: "10 cm" } })],
        points: [
          { id: "bank", ground: "80 cm" },
          { id: "pen", ground: "0 cm", above: "30 cm" },
        ],
        runs: [
          { id: "up", to: "bank", length: "6 m" },
          { id: "lane", to: "pen", length: "8 m", drinkers: nipples(3, { first: "7 m", every: "40 cm" }) },
        ],
      },
      { standMost: 0.3 },
    );
    expect(cureOf(answer, "moveSource")?.changes[0]).toEqual({
      code: "moveSource",
      source: "barrel",
      to: "bank",
    });
    expectCured(answer);
  });

  it("takes two remedies together where none does alone, and says so", () => {
    const both = oneRun({ vent: "sealed" }, { tap: "shut" });
    const answer = answerTo(both);
    expect(
      answer.cures.map(({ kind, changes, proven }) => [kind, changes.map(({ code }) => code), proven]),
    ).toEqual([["two", ["openTap", "openVent"], true]]);
    expect(answer.relaxations).toEqual([]);
    expectCured(answer);
    expect(answerTo(both, { never: ["two"] }).cures).toEqual([]);
  });

  it("has nothing to cure where every drinker is good", () => {
    const answer = answerTo(oneRun({}));
    expect(answer).toMatchObject({ cures: [], searches: [], proven: true, before: { meets: true } });
  });

  it("says what would have to give where nothing works: drinkers, or a higher stand", () => {
    const answer = answerTo(
      { ...PLANS.thin, runs: [{ ...PLANS.thin.runs[0], pipe: "drip-1/4" }], shelf: [{ pipe: "drip-1/4" }] },
      { standMost: 0.4 },
    );
    expect(answer.cures).toEqual([]);
    expect(answer.relaxations.at(-1)).toMatchObject({ give: "drinkers", of: 8 });
    const trough = { kind: "trough-float", first: "5 m" };
    const high = { ...oneRun({ stand: "0 cm" }, { drinkers: trough }), points: [at("end", "40 cm")] };
    const low = answerTo(high, { standMost: 0.15 });
    expect(low.relaxations[0]).toMatchObject({ give: "standMost", allowed: 0.15, needed: 0.35 });
  });

  it("gives less margin where so much cannot be had", () => {
    const answer = answerTo(oneRun({}), { margin: 0.3 });
    const give = answer.relaxations.find((one) => one.give === "margin");
    expect(give).toMatchObject({ asked: 0.3 });
    expect(give?.give === "margin" && give.best < 0.3 && give.best >= 0).toBe(true);
  });

  it("ends when it is told to, and says that nothing is proven", () => {
    const finding = findCures(planOf(PLANS.thin), { isStopped: () => true });
    expect(finding.ok && finding.answer).toMatchObject({ stopped: true, proven: false });
  });
});

describe("findCures with something out of the question", () => {
  const reading = checkDocument(oneRun({ stand: "10 cm" }));
  if (!reading.ok) throw new Error("not a plan");
  const codesOf = (never: readonly CureKind[]) => {
    const found = findCures(reading.plan, { never });
    if (!found.ok) throw new Error("not solved");
    const { cures, searches } = found.answer;
    return {
      codes: new Set(cures.flatMap(({ changes }) => changes.map(({ code }) => code))),
      kinds: searches.map(({ kind }) => kind),
    };
  };

  it("moves no stand without stands, whatever else is done", () => {
    expect(codesOf([]).codes).toContain("stand");
    expect(codesOf(["stand"]).codes).not.toContain("stand");
    expect(codesOf(["stand"]).kinds).not.toContain("standAndPipe");
  });

  it("searches no kind that is named", () => {
    const { codes, kinds } = codesOf(["drinkers", "headerTank", "pipe"]);
    expect([...codes]).toEqual(["stand"]);
    expect(kinds.filter((kind) => /drinkers|headerTank|pipe/i.test(kind))).toEqual([]);
  });
});
