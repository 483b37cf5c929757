import { expect, test } from "vitest";
import { jugTests } from "../../../../packages/hydraulics/src/judge/build/jug-test.js";
import { doubtsOf } from "../../../../packages/hydraulics/src/judge/sureness/doubts.js";
import { buildLine } from "../../../../packages/hydraulics/src/model/build-line.js";
import { planOf } from "../trouble/ask.js";
import { yard } from "../yard/yard.js";
import { sheetOf } from "./two-lanes.js";

test("a part's price is that of its own name and size, else of its name, else of its kind; strays are told", () => {
  const { parts, strayPrices } = sheetOf({
    prices: { drinker: 4, joint: 9, parts: { "tee 3/4 in": 2, coupling: 3, nothing: 1 } },
  });
  const priceOf = (kind: string) => parts.find((part) => part.kind === kind)!.price;
  expect([priceOf("tee"), priceOf("joiner"), priceOf("drinker"), priceOf("bulkhead")]).toEqual([
    2,
    3,
    4,
    undefined,
  ]);
  expect(strayPrices).toEqual(["nothing"]);
  const byKind = sheetOf({ prices: { joint: 9 } }).parts.find((part) => part.kind === "tee")!;
  expect(byKind.price).toBe(9);
});

test("a run's tap, one-way valve and regulator are parts where the plan has them, and not where it says it has none", () => {
  const countOf = (far: Record<string, unknown>, kind: string) =>
    sheetOf({}, { far })
      .parts.filter((part) => part.kind === kind && part.basis === "typed")
      .map(({ count }) => count);
  expect([
    countOf({ oneWay: true }, "oneWay"),
    countOf({ oneWay: false }, "oneWay"),
    countOf({}, "oneWay"),
  ]).toEqual([[1], [], []]);
  expect([countOf({ tap: "open" }, "tap"), countOf({}, "tap")]).toEqual([[1], []]);
  expect([countOf({ regulator: { sets: "30 cm" } }, "regulator"), countOf({}, "regulator")]).toEqual([
    [1],
    [],
  ]);
});

test("bleeds that are there are typed, and those that a hump or a dead end lacks are advised", () => {
  const bleedsOf = (sheet: ReturnType<typeof sheetOf>) =>
    sheet.parts
      .filter(({ kind }) => kind === "bleed")
      .map(({ basis, count, where }) => [basis, count, [...where].sort()]);
  // The hump has one.
  expect(bleedsOf(sheetOf())).toEqual([["typed", 1, ["hump"]]]);
  // A lane that goes up to its end keeps air there.
  const up = sheetOf({}, { left: { fall: "-40 cm" } });
  expect(bleedsOf(up)).toContainEqual(["advised", 1, ["left end"]]);
  const bare = sheetOf({
    points: [
      { id: "tee", ground: "0 cm", above: "30 cm" },
      { id: "hump", ground: "0 cm", above: "50 cm" },
    ],
  });
  expect(bleedsOf(bare)).toEqual([["advised", 1, ["hump"]]]);
});

function jugs(verdicts: readonly (readonly [string, number])[], samples = 0) {
  const plan = planOf(
    yard({ runs: [{ length: "3 m", fall: "0 cm", drinkers: { kind: "plain", count: verdicts.length } }] }),
  );
  const built = buildLine(plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  const drinkers = verdicts.map(([verdict, margin], index) => ({
    verdict,
    margin,
    index,
    drinker: `${index}`,
  }));
  return jugTests(built.line, {
    ...{ drinkers: drinkers as never, friction: "hazenWilliams", samples, seed: 1 },
    doubts: doubtsOf(plan, built.line),
  });
}
const worstOf = (verdicts: readonly (readonly [string, number])[]) =>
  jugs(verdicts).find(({ roles }) => roles.includes("worst"))!.drinker;

test("the jug is held under the drinker with the worst verdict, and of these under that with least to spare", () => {
  expect(
    worstOf([
      ["good", 0.1],
      ["starves", -0.1],
      ["good", 0.05],
    ]),
  ).toBe("run 1 2");
  expect(
    worstOf([
      ["starves", -0.1],
      ["good", -0.5],
      ["drips", -0.9],
    ]),
  ).toBe("run 1 1");
  expect(
    worstOf([
      ["good", 0.1],
      ["good", 0.05],
      ["good", 0.2],
    ]),
  ).toBe("run 1 2");
  expect(
    worstOf([
      ["good", 0.1],
      ["good", 0.1],
      ["good", 0.1],
    ]),
  ).toBe("run 1 1");
});

test("what the jug should hold lies within its band, which is one figure where no other plan is tried", () => {
  for (const { volume, low, high, seconds, needed } of jugs(
    [
      ["good", 0.1],
      ["good", 0.2],
    ],
    16,
  )) {
    expect(low).toBeLessThan(volume);
    expect(high).toBeGreaterThan(volume);
    expect(needed / seconds).toBeCloseTo(4e-5 / 60, 12);
  }
  for (const { volume, low, high } of jugs([
    ["good", 0.1],
    ["good", 0.2],
  ]))
    expect([low, high]).toEqual([volume, volume]);
  expect(
    jugs([
      ["good", 0.1],
      ["good", 0.2],
    ]).map(({ roles }) => roles),
  ).toEqual([["first", "worst"], ["last"]]);
});
