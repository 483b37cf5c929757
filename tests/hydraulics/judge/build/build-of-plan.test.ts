import { expect, test } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { buildSheetOf } from "../../../../packages/hydraulics/src/judge/build/build-of-plan.js";
import { fittingsOf } from "../../../../packages/hydraulics/src/judge/build/parts-of.js";

function planOf(more: Record<string, unknown> = {}, run: Record<string, unknown> = {}) {
  const reading = checkDocument({
    headfall: 1,
    sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "60 cm", level: { full: "60 cm" } }],
    runs: [
      {
        id: "hen line",
        length: "8 m",
        pipe: "pvc-sch40-3/4",
        drinkers: { id: "nipples", kind: "nipple-side-action", count: 6 },
        ...run,
      },
    ],
    ...more,
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

function sheetOf(plan: ReturnType<typeof planOf>) {
  const answer = buildSheetOf(plan, { samples: 4, weeks: 0 });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.sheet;
}

test("buildSheetOf sums what is bought, and counts what has no price", () => {
  const { price, parts, pipes } = sheetOf(
    planOf({
      money: "EUR",
      prices: { drinker: 2 },
      shelf: [{ pipe: "pvc-sch40-3/4", price: 3, per: "1 m", sold: "3 m" }],
    }),
  );
  // Six drinkers at 2, and three sticks of 3 m at 9.
  expect(pipes.map(({ price: ofPipe }) => ofPipe)).toEqual([27]);
  expect(price).toMatchObject({ sum: 6 * 2 + 27, money: "EUR" });
  const bought = parts.filter(({ basis }) => basis !== "advised");
  expect(price.unpriced).toBe(bought.length - 1);
  expect(sheetOf(planOf()).price.sum).toBe(0);
});

test("buildSheetOf marks the top of a stand where there is one", () => {
  const marksOf = (stand: string) =>
    sheetOf(planOf({ sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand }] })).heights.filter(
      ({ kind }) => kind === "standTop",
    );
  expect(marksOf("60 cm")).toMatchObject([{ name: "barrel", aboveGround: 0.6 }]);
  expect(marksOf("0 cm")).toEqual([]);
});

test("a line without rings has none to close, and its one drinker is first, last and worst to test with a jug", () => {
  const { steps, jugs } = sheetOf(planOf({}, { drinkers: { kind: "nipple-side-action", count: 1 } }));
  expect(steps.filter(({ code }) => code === "closeRing")).toEqual([]);
  expect(jugs.map(({ roles }) => roles)).toEqual([["first", "last", "worst"]]);
});

test("the sheet for the coop has the marks of six sources at most", () => {
  const ids = Array.from({ length: 7 }, (_, k) => `barrel ${k + 1}`);
  const plan = planOf({
    sources: ids.map((id) => ({ id, vessel: "drum-55gal-plastic", stand: "60 cm" })),
    points: [{ id: "meet", ground: "0 m", above: "30 cm" }],
    runs: [
      ...ids.map((id) => ({ from: id, to: "meet", length: "2 m" })),
      { from: "meet", length: "3 m", drinkers: { kind: "nipple-side-action", count: 4 } },
    ],
    pens: [{ birds: { kind: "hen", count: 6 } }],
  });
  expect(sheetOf(plan).coop.marks.map(({ source }) => source)).toEqual(ids.slice(0, 6));
});

test("fittingsOf calls what a run says in words by the id and name of its table", () => {
  const plan = planOf({}, { fittings: ["eighth bend x 2", { name: "my own bend", k: 3 }] });
  expect(fittingsOf(plan.runs[0]!)).toEqual([
    { id: "elbow-45", name: "45 degree elbow", count: 2 },
    { id: "my own bend", name: "my own bend", count: 1 },
  ]);
});

test("buildSheetOf takes a cut from nothing to two centimetres, and whole weeks from none to 52", () => {
  const plan = planOf();
  const asked = (options: Parameters<typeof buildSheetOf>[1]) => () =>
    buildSheetOf(plan, { samples: 1, weeks: 0, ...options }).ok;
  expect([asked({ kerf: 0 })(), asked({ kerf: 0.02 })()]).toEqual([true, true]);
  for (const kerf of [-1e-6, 0.0201, Number.NaN])
    expect(asked({ kerf })).toThrow("it must be from 0 to 0.02");
  for (const weeks of [-1, 53, 1.5])
    expect(asked({ weeks })).toThrow("it must be a whole number from 0 to 52");
});
