import { describe, expect, it } from "vitest";
import { writeFrontDocument } from "../../../../packages/hydraulics/src/report/cure/cure-document.js";
import {
  writeCureHeadline,
  writeScene,
  writeSearch,
} from "../../../../packages/hydraulics/src/report/cure/cure-sentences.js";
import { writeCureText } from "../../../../packages/hydraulics/src/report/cure/cure-text.js";
import { writeFrontText } from "../../../../packages/hydraulics/src/report/cure/front-text.js";
import { writeSizesText } from "../../../../packages/hydraulics/src/report/cure/sizes-text.js";
import {
  bestVariants,
  nameOfVariant,
  VARIANT_ROWS,
  writeConclusion,
  writeDifference,
  writeVariantsText,
} from "../../../../packages/hydraulics/src/report/cure/variants-text.js";
import type { SizeComparison } from "../../../../packages/hydraulics/src/search/compare-sizes.js";
import type { Variant } from "../../../../packages/hydraulics/src/search/compare-variants.js";
import { NO_COST } from "../../../../packages/hydraulics/src/search/cost.js";
import type { CureAnswer } from "../../../../packages/hydraulics/src/search/cure-answer.js";
import type { FrontAnswer } from "../../../../packages/hydraulics/src/search/find-front.js";

const plain = (text: string) => text;
const counts = { good: 4, drips: 0, starves: 0, dry: 0 };

describe("writeSizesText", () => {
  const law = (flow: number, flowingHead: number) => ({ flow, flowingHead });
  const row = (pipe: string, more: object = {}) => ({
    ...{
      pipe,
      bore: 0.0127,
      busiest: { velocity: 0.1, regime: "laminar" },
      volume: 0.002,
      cost: undefined,
      verdict: "good",
      counts,
      isPresent: false,
    },
    worst: { moments: { lowestBusiest: { hazenWilliams: law(2e-6, 0.2), darcyWeisbach: law(1e-6, 0.1) } } },
    ...more,
  });
  const sizes = (rows: object[], more: object = {}) =>
    writeSizesText(
      {
        runs: ["lane"],
        rows,
        smallestThatWorks: undefined,
        smallestThatFeeds: undefined,
        money: "EUR",
        ...more,
      } as unknown as SizeComparison,
      "metric",
      plain,
    );

  it("marks the smallest that works and the one there is, and tells the lower of both laws", () => {
    const text = sizes([row("narrow", { isPresent: true }), row("wide")], { smallestThatWorks: "wide" });
    expect(text).toMatch(/\n >? *> +narrow +12\.7 mm +10 cm +60 mL\/min +10 cm\/s +laminar +2 L +all good\n/);
    expect(text).toMatch(/\n\* +wide /);
    expect(text).toContain("The smallest that works is wide.");
    expect(text).toMatch(/^Each size in lane\n/);
    expect(sizes([row("a")], { runs: ["x", "y"] })).toMatch(/^Each size in all of x, y\n/);
  });

  it("has a column of costs where any size has one", () => {
    const text = sizes([row("a", { cost: 12.5 }), row("b")]);
    expect(text).toMatch(/ 12\.50 EUR +all good\n/);
    expect(text).toMatch(/ \? +all good\n/);
    expect(sizes([row("b")])).not.toContain("cost");
    expect(sizes([row("b", { worst: undefined, counts: { ...counts, dry: 2 } })])).toMatch(/2 L +2 dry\n/);
  });

  it("says what pipe does not cure", () => {
    expect(sizes([row("a")], { smallestThatFeeds: "a" })).toMatch(
      /some drip, which pipe does not cure\. .* starves none is a\./,
    );
    expect(sizes([row("a")])).toContain("level or air decides here, not pipe");
  });
});

const figures = (more: object = {}): Variant["figures"] =>
  ({
    ...{
      verdict: "good",
      drinkers: 4,
      counts,
      sure: undefined,
      worst: { drinker: "lane 4", margin: 0.05 },
      leastFlow: 1e-6,
    },
    ...{
      idleHead: 0.9,
      stand: 0.4,
      mass: 200,
      usable: 0.1,
      pipe: 10,
      standing: 0.002,
      price: undefined,
      draw: undefined,
      lasts: undefined,
      lastsHot: undefined,
    },
    ...more,
  }) as Variant["figures"];
const variant = (name: string, more: object = {}): Variant => ({
  name,
  money: "EUR",
  figures: figures(more),
  differences: [],
});

describe("variants beside each other", () => {
  const rowOf = (words: string) => VARIANT_ROWS.find((row) => row.words === words)!;

  it("mark the best of a row: the most or the least, several where alike, none where all are or nothing is better", () => {
    const [a, b, c] = [
      variant("a", { stand: 0.4, leastFlow: 2e-6 }),
      variant("b", { stand: 0.6, leastFlow: 2e-6 }),
      variant("c", { stand: 0.6, leastFlow: 1e-6 }),
    ];
    const best = (words: string, of = [a!, b!, c!]) => bestVariants(rowOf(words), of);
    expect(best("highest stand")).toEqual([true, false, false]);
    expect(best("least flow, lowest and busiest")).toEqual([true, true, false]);
    const bare = variant("none", { drinkers: 0, counts: { ...counts, good: 0 } });
    expect(
      best("drinkers that are good", [bare, variant("a", { counts: { ...counts, good: 2 } }), variant("b")]),
    ).toEqual([false, false, true]);
    expect(best("pipe")).toEqual([false, false, false]);
    expect(best("greatest head, full and idle", [variant("a", { idleHead: 1 }), variant("b")])).toEqual([
      false,
      false,
    ]);
    expect(best("price of the pipe", [variant("a", { price: 3 }), variant("b")])).toEqual([false, false]);
  });

  it("are told with a row for each figure that any has, the worst drinker by name, and what differs", () => {
    const second = {
      ...variant("", { counts: { ...counts, good: 3, starves: 1 }, price: 7 }),
      differences: [{ path: "runs[0].pipe", part: "lane", first: "a", other: "b" }],
    };
    const text = writeVariantsText([variant("Bank"), second], "metric", plain);
    expect(text).toMatch(/drinkers that are good +4 of 4 \* +3 of 4/);
    expect(text).toMatch(/least head to spare +\+50 mm at lane 4 /);
    expect(text).toMatch(/price of the pipe +- +7\.00 EUR/);
    expect(text).not.toContain("verdicts that are sure");
    expect(text).toMatch(/\nplan 2, against Bank\n {2}runs\[0\]\.pipe \(lane\): "b", the first has "a"\n/);
    expect(writeVariantsText([variant("a"), variant("b")], "metric", plain)).toContain(
      "b, against a\n  says the same",
    );
  });

  it("have their place for a name where they have none of their own", () => {
    const names = [variant("a"), variant(""), variant("a")];
    expect(names.map((_, v) => nameOfVariant(names, v))).toEqual(["a (plan 1)", "plan 2", "a (plan 3)"]);
    expect(writeDifference({ path: "p", part: undefined, first: undefined, other: "b" })).toBe(
      'p: "b", which the first does not have',
    );
    expect(writeDifference({ path: "p", part: undefined, first: "a", other: undefined })).toBe(
      'p: nothing, the first has "a"',
    );
  });

  it("end with which of them work", () => {
    const bad = variant("c", { verdict: "starves" });
    expect(writeConclusion([variant("a"), variant("b")])).toContain("in all of them");
    expect(writeConclusion([bad, bad])).toMatch(/^In none/);
    expect(writeConclusion([variant("a"), bad])).toBe('Every drinker is good in "a" only.');
  });
});

describe("writeFrontText", () => {
  const point = {
    cost: { ...NO_COST, money: 3 },
    margin: 0.05,
    stand: 0.4,
    changes: [{ code: "stand", source: "barrel", from: 0.2, to: 0.4 }],
  };
  const front = (more: object = {}) =>
    ({
      by: "money",
      money: "EUR",
      costAgainstMargin: [point],
      heightAgainstSize: [{ ...point, stand: 0.6, changes: [] }],
      proven: true,
      ...more,
    }) as unknown as FrontAnswer;
  const text = (which: "margin" | "height", more: object = {}) =>
    writeFrontText("", front(more), which, "metric", plain);

  it("has for each point what is to spare, or how high the stand is, its cost and what to do", () => {
    expect(text("margin")).toMatch(
      /^This plan\. What more head .*\n.*\n *50 mm +3\.00 EUR +Raise the stand of "barrel" by 20 cm, to 40 cm\.\n/,
    );
    expect(text("height")).toMatch(/\n *60 cm +3\.00 EUR +Leave it as it is\.\n/);
    expect(text("margin")).toContain("the cheapest of its kind");
    const document = writeFrontDocument("Bank", front({ money: undefined }), "metric");
    expect(document).toMatchObject({ plan: { name: "Bank" }, money: null, proven: true });
    expect(document.costAgainstMargin[0]!.changes[0]!.words).toBe(
      'Raise the stand of "barrel" by 20 cm, to 40 cm.',
    );
    expect(writeFrontDocument("", front(), "metric").money).toBe("EUR");
    expect(text("margin", { proven: false })).toContain("ended early");
    expect(text("margin", { costAgainstMargin: [] })).toContain("Nothing that was searched makes it work.");
    expect(text("margin", { costAgainstMargin: [{ ...point, margin: Number.POSITIVE_INFINITY }] })).toMatch(
      /\n +3\.00 EUR/,
    );
  });
});

describe("writeCureText", () => {
  const scene = (meets: boolean, more: object = {}) => ({ week: 0, hot: false, meets, counts, ...more });
  const outcome = (more: object = {}) => ({
    counts: { ...counts, good: 3, starves: 1 },
    scenes: [scene(false)],
    drinkers: [1, 2, 3, 4],
    meets: false,
    ...more,
  });
  const cure = (more: object = {}) => ({
    ...{
      kind: "stand",
      cost: { ...NO_COST, stand: 0.2 },
      changes: [{ code: "stand", source: "barrel", from: 0.2, to: 0.4 }],
      proven: true,
      close: undefined,
    },
    after: outcome({ scenes: [scene(true)] }),
    ...more,
  });
  const answer = (more: object = {}) =>
    ({
      by: "stand",
      money: undefined,
      before: outcome(),
      cures: [cure()],
      searches: [],
      proven: true,
      relaxations: [],
      ...more,
    }) as unknown as CureAnswer;
  const text = (more: object = {}) => writeCureText("", answer(more), "metric", plain);

  it("tells how it does as it is, and from which week on it fails", () => {
    expect(text()).toMatch(/^This plan: 3 good, 1 starves\.\n/);
    const later = outcome({
      counts,
      scenes: [
        scene(true),
        scene(true, { week: 1 }),
        scene(false, { week: 2, counts: { ...counts, good: 2, dry: 2 } }),
      ],
    });
    expect(text({ before: later })).toMatch(/^This plan: 4 good; in 2 weeks 2 good, 2 dry\.\n/);
    expect(text({ before: outcome({ counts: { ...counts, good: 0 } }) })).toMatch(
      /^This plan: no drinkers\.\n/,
    );
  });

  it("numbers its cures, each with its cost, how far it holds, and what is proven of it", () => {
    expect(text()).toContain(
      '\n1. Raise the stand of "barrel" by 20 cm, to 40 cm.\n   Cost: 20 cm of stand.\n   4 good.\n',
    );
    expect(text({ cures: [cure(), cure({ proven: false })] })).toMatch(/\n2\. .*\n.*not ruled out\)\.\n/);
    const weeks = outcome({ scenes: [scene(true), scene(true)] });
    const close = { drinker: "lane 4", spare: 0.05, week: 1, hot: false, against: "starving" };
    expect(text({ cures: [cure({ after: weeks, close })] })).toContain(
      "4 good, in each of 2 states of affairs. Closest is lane 4, with 50 mm to spare before it starves, in a week.",
    );
    expect(text()).not.toMatch(/What could give|Searched|\n\n\n/);
  });

  it("begins with what it comes to, in each case in words of its own", () => {
    const meets = outcome({ meets: true });
    const heads = [
      {},
      { proven: false },
      { cures: [] },
      { cures: [], proven: false },
      { cures: [], before: meets },
    ].map((more) => writeCureHeadline(answer(more)));
    expect(new Set(heads).size).toBe(5);
    expect(heads[0]).toContain("nothing cheaper");
    expect(heads[1]).toContain("is not proven");
    expect(heads[2]).toBe("Nothing that was searched makes it work.");
    expect(heads[3]).toContain("did not come to its end");
    expect(heads[4]).toMatch(/^Nothing to cure/);
  });

  it("tells scenes and numbers of plans as people do", () => {
    expect([0, 1, 2].map((week) => writeScene({ week, hot: false }))).toEqual([
      "on the plan's day",
      "in a week",
      "in 2 weeks",
    ]);
    const search = {
      kind: "pipe",
      judged: 1,
      parts: 1,
      bound: undefined,
      proven: true,
      found: false,
    } as const;
    const plans = (count: number) => writeSearch({ ...search, plans: count }, undefined, "metric");
    expect(plans(1)).toContain("1 plan, 1 of them");
    expect(plans(9_999_999)).toContain("9999999 plans");
    expect(plans(10_000_000)).toContain("1e7 plans");
    expect(plans(2)).toMatch(/; none works\.$/);
  });
});
