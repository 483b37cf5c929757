import { describe, expect, it } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { buildLine } from "../../../packages/hydraulics/src/model/build-line.js";
import { shelfOf, typedLength } from "../../../packages/hydraulics/src/search/cure-space.js";
import { feedMiddle } from "../../../packages/hydraulics/src/search/remedies/feed-again.js";
import { putHeaderTank } from "../../../packages/hydraulics/src/search/remedies/hold-back.js";
import { leaveOff } from "../../../packages/hydraulics/src/search/remedies/leave-off.js";
import { letAirOut } from "../../../packages/hydraulics/src/search/remedies/let-air-out.js";
import { changeDrinkers } from "../../../packages/hydraulics/src/search/remedies/other-drinkers.js";
import {
  type Ailing,
  ailingIn,
  waysToRuns,
} from "../../../packages/hydraulics/src/search/remedies/remedy.js";
import { buildRequirement } from "../../../packages/hydraulics/src/search/requirement.js";
import { allDrinkers } from "../../../packages/hydraulics/src/tables/drinkers.js";

const barrel = (more: Record<string, unknown> = {}) => ({
  id: "barrel",
  vessel: "drum-55gal-plastic",
  stand: "40 cm",
  level: { full: "60 cm", lowest: "10 cm" },
  ...more,
});
const at = (id: string, above: string) => ({ id, ground: "0 cm", above });
const nipples = (count: number, more: Record<string, unknown> = {}) => ({
  kind: "nipple-side-action",
  count,
  ...more,
});

function planOf(document: object) {
  const reading = checkDocument({ headfall: 1, ...document });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

function ailingOf(document: object): Ailing {
  const plan = planOf(document);
  const built = buildLine(plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  const building = buildRequirement(plan, built.line, {});
  if (!building.ok) throw new Error(JSON.stringify(building.problems));
  const ailing = ailingIn(building.requirement, built.line);
  if (ailing === undefined) throw new Error("nothing ails it");
  return ailing;
}

/** Two runs from a barrel so high that all nipples drip. */
const dripping = {
  sources: [barrel({ stand: "80 cm", level: { full: "70 cm", lowest: "60 cm" } })],
  points: [at("left", "10 cm"), at("right", "10 cm")],
  runs: [
    {
      id: "a",
      from: "barrel",
      to: "left",
      length: "5 m",
      drinkers: nipples(2, { first: "4 m", every: "30 cm" }),
    },
    {
      id: "b",
      from: "barrel",
      to: "right",
      length: "5 m",
      drinkers: nipples(3, { first: "4 m", every: "30 cm" }),
    },
  ],
};

describe("changeDrinkers", () => {
  it("changes all groups that fail to one kind, and each of them alone", () => {
    const sets = new Map<string, string[]>();
    for (const { changes, spent, plan } of changeDrinkers(ailingOf(dripping)))
      for (const change of changes) {
        if (change.code !== "drinkers") throw new Error(change.code);
        // The plan has what the sentence tells.
        const run = plan.runs.find(({ id }) => id === change.group);
        expect(run?.drinkers).toMatchObject({ kind: change.to, count: change.count });
        const groups = changes.map((one) => (one.code === "drinkers" ? one.group : "")).join("+");
        sets.set(change.to, [...new Set([...(sets.get(change.to) ?? []), groups])]);
        expect(spent.parts).toBe(groups.includes("+") ? 5 : change.count);
      }
    expect(sets.size).toBeGreaterThan(0);
    for (const groups of sets.values()) expect(groups).toEqual(["a+b", "a", "b"]);
  });

  it("changes a group of which only some fail", () => {
    expect(changeDrinkers(ailingOf(rising)).length).toBeGreaterThan(0);
  });
});

/** A lane on which the last, or turned round the first, of twelve hang too high for the water when it is low. */
const rising = {
  sources: [barrel()],
  points: [at("start", "10 cm"), at("end", "38 cm")],
  runs: [
    { id: "down", to: "start", length: "1 m" },
    { id: "lane", to: "end", length: "6 m", drinkers: nipples(12, { first: "50 cm", every: "50 cm" }) },
  ],
};
const falling = { ...rising, points: [at("start", "38 cm"), at("end", "10 cm")] };

const hens = { id: "hens", birds: { kind: "hen", count: 20 } };

describe("leaveOff", () => {
  it.each([
    ["far", rising],
    ["near", falling],
  ])("leaves off as few as do at the %s end, where those that fail hang", (end, document) => {
    const [remedy] = leaveOff(ailingOf({ ...document, pens: [hens] }));
    const [change] = remedy!.changes;
    if (change?.code !== "leaveOff") throw new Error(change?.code);
    expect([change.group, change.end, change.of]).toEqual(["lane", end, 12]);
    const built = buildLine(remedy!.plan);
    const before = buildLine(planOf({ ...document, pens: [hens] }));
    if (!built.ok || !before.ok) throw new Error("a plan is none");
    // The others hang where they hung.
    const kept = [...before.line.drinkers.along].slice(
      end === "near" ? change.off : 0,
      end === "near" ? 12 : -change.off,
    );
    expect(built.line.drinkers.count).toBe(12 - change.off);
    kept.forEach((along, d) => void expect(built.line.drinkers.along[d]).toBeCloseTo(along, 9));
  });
});

describe("leaveOff, where some of four stay", () => {
  it.each([{ first: "50 cm", every: "160 cm" }, {}])(
    "has them hang where they hung, spaced by %j",
    (spaced) => {
      const steep = {
        ...rising,
        points: [at("start", "10 cm"), at("end", "45 cm")],
        runs: [rising.runs[0], { id: "lane", to: "end", length: "6 m", drinkers: nipples(4, spaced) }],
        pens: [{ id: "hens", birds: { kind: "hen", count: 4 } }],
      };
      const ailing = ailingOf(steep);
      const [remedy] = leaveOff(ailing);
      const [change] = remedy!.changes;
      if (change?.code !== "leaveOff") throw new Error(change?.code);
      expect([change.of, change.end]).toEqual([4, "far"]);
      const built = buildLine(remedy!.plan);
      if (!built.ok) throw new Error(JSON.stringify(built.problems));
      const kept = [...ailing.line.drinkers.along].slice(0, 4 - change.off);
      expect(kept.length).toBeGreaterThan(1);
      expect([...built.line.drinkers.along]).toEqual(kept.map((along) => expect.closeTo(along, 9)));
    },
  );
});

describe("leaveOff, where the plan says how many are at work in an ordinary hour", () => {
  it("leaves no more at work in an ordinary hour than hang there then", () => {
    const lane = (ordinary: number) => ({
      ...rising,
      runs: [
        rising.runs[0],
        {
          ...{ id: "lane", to: "end", length: "6 m" },
          drinkers: nipples(12, { first: "50 cm", every: "50 cm", ordinary }),
        },
      ],
      pens: [hens],
    });
    const left = (ordinary: number) => {
      const [remedy] = leaveOff(ailingOf(lane(ordinary)));
      const { drinkers } = remedy!.plan.runs[1]!;
      if (drinkers === undefined || Array.isArray(drinkers)) throw new Error("one group hangs there");
      return [drinkers.count, drinkers.ordinary];
    };
    const [count] = left(1);
    expect(count).toBeLessThan(12);
    expect(left(1)).toEqual([count, 1]);
    expect(left(12)).toEqual([count, count]);
  });
});

describe("putHeaderTank", () => {
  /** A steep line: nipples near its top, and others a metre lower that drip. */
  const steep = {
    sources: [barrel({ ground: "1 m" })],
    points: [at("top", "110 cm"), at("low", "10 cm")],
    runs: [
      { id: "upper", to: "top", length: "6 m", drinkers: nipples(3, { first: "5 m", every: "40 cm" }) },
      {
        ...{ id: "down", from: "top", to: "low", length: "8 m" },
        drinkers: nipples(3, { first: "7 m", every: "40 cm" }),
      },
    ],
  };

  it("sets a tank where a run leaves another, never where it leaves the vessel itself", () => {
    const remedies = putHeaderTank(ailingOf(steep));
    expect(remedies.map(({ changes }) => changes)).toEqual([
      [expect.objectContaining({ code: "headerTank", tank: "header tank", run: "down", at: "top" })],
    ]);
    const { plan } = remedies[0]!;
    expect(plan.sources.map(({ id, feed }) => [id, feed?.from])).toEqual([
      ["barrel", undefined],
      ["header tank", "top"],
    ]);
    expect(remedies[0]!.spent).toMatchObject({ parts: 1, unpriced: 1 });
    const [priced] = putHeaderTank(ailingOf({ ...steep, prices: { headerTank: 35 } }));
    expect(priced!.spent).toMatchObject({ parts: 1, money: 35, unpriced: 0 });
    // A small box: 40 by 30 by 25 cm, 18 cm full.
    expect(plan.sources[1]).toMatchObject({
      vessel: { shape: "box", length: "40 cm", width: "30 cm", height: "25 cm" },
      level: { full: "18 cm" },
    });
    expect(plan.runs.map(({ from }) => from)).toEqual(["barrel", "header tank"]);
  });

  it("leaves runs alone that have a valve, a regulator or a survey of their own", () => {
    for (const more of [{ oneWay: true }, { regulator: { sets: "80 cm" } }]) {
      const valved = { ...steep, runs: [steep.runs[0], { ...steep.runs[1], ...more }] };
      expect(putHeaderTank(ailingOf(valved))).toEqual([]);
    }
  });
});

describe("feedMiddle", () => {
  it("joins a second run halfway along, at the height of the pipe there, on ground between that of both ends", () => {
    const thin = {
      sources: [barrel({ ground: "100 cm", level: { full: "70 cm", lowest: "10 cm" } })],
      points: [{ id: "end", ground: "40 cm", above: "0 cm" }],
      runs: [
        {
          ...{ id: "line", from: "barrel", to: "end", length: "40 m", pipe: "hose-1/2" },
          drinkers: { kind: "bell", count: 8, first: "17 m", every: "3 m", busiest: 8 },
        },
      ],
    };
    const ailing = ailingOf(thin);
    const [remedy] = feedMiddle(ailing);
    const added = remedy!.plan.points!.filter(({ id }) => id !== "end");
    const [start] = ailing.line.points.height;
    // Half of a metre and of forty centimetres.
    expect(added).toEqual([
      expect.objectContaining({ ground: "70 cm", above: typedLength((start! + 0.4) / 2 - 0.7, "metric") }),
    ]);
  });
});

describe("changeDrinkers, where chicks drink", () => {
  const kinds = (age: string) =>
    changeDrinkers(ailingOf({ ...dripping, pens: [{ birds: { kind: "pullet", count: 10, age } }] })).flatMap(
      ({ changes }) => changes.flatMap((change) => (change.code === "drinkers" ? [change.to] : [])),
    );

  it("offers only kinds that suit chicks, until four weeks", () => {
    const suitsChicks = (id: string) => allDrinkers.find((one) => one.id === id)!.birds.includes("chicks");
    const young = kinds("2 weeks");
    expect(young.every(suitsChicks)).toBe(true);
    const grown = new Set(kinds("20 weeks"));
    for (const kind of young) expect(grown.has(kind)).toBe(true);
    expect([...grown].some((kind) => !suitsChicks(kind))).toBe(true);
    expect(new Set(kinds("28 days"))).toEqual(grown);
    expect(new Set(kinds("27 days"))).toEqual(new Set(young));
  });
});

describe("letAirOut", () => {
  it("leaves alone an end that holds air, for no water has to pass it", () => {
    expect(letAirOut(ailingOf(rising))).toEqual([]);
  });

  it("bleeds the hump, and leaves what was measured beside it as it was", () => {
    const survey = [
      { along: "4 m", fall: "0 cm" },
      { along: "7 m", fall: "-62 cm" },
    ];
    const [remedy] = letAirOut(
      ailingOf({
        sources: [barrel({ stand: "62 cm", level: { full: "30 cm", lowest: "15 cm" } })],
        points: [at("end", "10 cm")],
        runs: [
          {
            ...{ id: "line", to: "end", length: "12 m", pipe: "hose-1/2", survey },
            drinkers: nipples(4, { first: "10.5 m", every: "30 cm" }),
          },
        ],
      }),
    );
    expect(remedy!.plan.runs[0]!.survey).toEqual([survey[0], { ...survey[1], bleed: true }]);
  });
});

describe("waysToRuns", () => {
  it("tells which runs lead from a source to each, written in any order", () => {
    const plan = planOf({
      sources: [barrel()],
      points: [at("p", "0 cm"), at("q", "0 cm"), at("r", "0 cm"), at("s", "0 cm")],
      runs: [
        { id: "last", from: "q", to: "r", length: "1 m" },
        { id: "middle", from: "q", to: "p", length: "1 m" },
        { id: "first", from: "barrel", to: "p", length: "1 m" },
        { id: "beside", from: "p", to: "s", length: "1 m" },
      ],
    });
    expect(waysToRuns(plan)).toEqual([[2, 1, 0], [2, 1], [2], [2, 3]]);
  });
});

it("shelfOf takes an empty shelf for none", () => {
  const plan = planOf(dripping);
  expect([shelfOf(plan), shelfOf({ ...plan, shelf: [] })]).toEqual([undefined, undefined]);
});
