import { expect, it, test } from "vitest";
import {
  writeChange,
  writeClose,
  writeCost,
  writeRelaxation,
  writeSearch,
} from "../../../../packages/hydraulics/src/report/cure/cure-sentences.js";
import { NO_COST } from "../../../../packages/hydraulics/src/search/cost.js";
import type { Change } from "../../../../packages/hydraulics/src/search/cure-answer.js";

const CHANGES: readonly (readonly [Change, string])[] = [
  [{ code: "stand", source: "drum", from: 0.2, to: 0.55 }, 'Raise the stand of "drum" by 35 cm, to 55 cm.'],
  [{ code: "stand", source: "drum", from: 0.55, to: 0.2 }, 'Lower the stand of "drum" by 35 cm, to 20 cm.'],
  [
    { code: "pipe", run: "lane", length: 8, from: "pvc-sch40-1/2", to: "pvc-sch40-1" },
    'Lay "PVC Schedule 40, 1 in" in "lane" (8 m) in place of "PVC Schedule 40, 1/2 in".',
  ],
  [{ code: "openTap", run: "lane", was: "half" }, 'Open the tap of "lane", which is half open.'],
  [{ code: "openVent", source: "drum", opening: 0.02 }, 'Give "drum" an air hole of 20 mm, or open its lid.'],
  [
    { code: "bleed", run: "lane", point: "lane at 7.00 m", along: 7 },
    'Let the air out at the hump 7 m along "lane": a bleed or a riser vent there.',
  ],
  [
    { code: "drinkers", group: "hens", count: 4, from: "nipple-bucket", to: "cup-float" },
    'Put "Cup that refills by a float" in place of "Bucket nipple, vertical, screw-in or push-in" in "hens" (4).',
  ],
  [
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
    'Put plugs in place of the last 2 drinkers of "lane" (10 of 12 stay): "hens" then has 10 for 20 birds, 2 to each in place of 1.7; 4 are enough.',
  ],
  [
    {
      code: "leaveOff",
      group: "lane",
      off: 1,
      of: 5,
      end: "near",
      pen: "hens",
      birds: 20,
      has: 4,
      needed: 4,
    },
    'Put a plug in place of the first drinker of "lane" (4 of 5 stay): "hens" then has 4 for 20 birds, 5 to each in place of 4; 4 are enough.',
  ],
  [
    { code: "outlet", source: "drum", from: 0.004 },
    'Give "drum" an outlet and tap as wide as its pipe, in place of 4 mm.',
  ],
  [
    {
      code: "newRun",
      run: "feed",
      from: "drum",
      to: "lane middle",
      length: 9,
      pipe: "hose-1/2",
      into: "lane",
      along: 4,
      isCut: false,
    },
    'Lay a new run of 9 m of "Garden hose, 1/2 in" from "drum" to "lane middle", joined into "lane" 4 m from its start.',
  ],
  [
    {
      code: "newRun",
      run: "feed",
      from: "drum",
      to: "lane second half",
      length: 9,
      pipe: "hose-1/2",
      into: "lane",
      along: 4,
      isCut: true,
    },
    'Cut "lane" 4 m from its start, and feed what lies beyond by a run of its own: 9 m of "Garden hose, 1/2 in" from "drum" to "lane second half".',
  ],
  [
    { code: "regulator", run: "lane", sets: 0.4 },
    'Put a low-pressure regulator that holds 40 cm at the start of "lane".',
  ],
  [
    { code: "headerTank", tank: "tank", run: "lane", at: "tee", stand: 0.3 },
    'Let a header tank with a float valve, 30 cm above the ground at "tee", feed "lane".',
  ],
  [{ code: "moveSource", source: "drum", to: "bank" }, 'Put "drum" at "bank".'],
];

test.each(CHANGES)("writeChange %o", (change, sentence) => {
  expect(writeChange(change, "metric")).toBe(sentence);
});

it("writeCost tells money first, and what has no price", () => {
  const cost = { ...NO_COST, money: 12.5, parts: 2, unpriced: 1, pipe: 6, runs: 1, stand: 0.1 };
  expect(writeCost(cost, "EUR", "metric")).toBe(
    "12.50 EUR, 6 m of pipe to buy, 2 new parts (1 without a price), 10 cm of stand",
  );
  expect(writeCost(NO_COST, undefined, "us")).toBe("nothing to buy");
  expect(writeCost({ ...NO_COST, runs: 1 }, undefined, "us")).toBe("pipe from what is on hand");
});

it("writeClose tells how much is left, before what, and when", () => {
  const close = { drinker: "hens 3", spare: 0.012, week: 5, hot: true, against: "dripping" } as const;
  expect(writeClose(close, "metric")).toBe(
    "Closest is hens 3, with 12 mm to spare before it drips, in 5 weeks, in the hot spell. That is a close call: ask for more head to spare.",
  );
});

it("writeClose calls close what is less than two centimetres, and tells nothing below none", () => {
  const close = { drinker: "hens 3", spare: 0.02, week: 0, hot: false, against: "starving" } as const;
  expect(writeClose(close, "metric")).toBe("Closest is hens 3, with 20 mm to spare before it starves.");
  expect(writeClose({ ...close, spare: 0.0199 }, "metric")).toContain("That is a close call");
  expect(writeClose({ ...close, spare: -0.001 }, "metric")).toContain("with 0 mm to spare");
});

it("writeCost speaks of what has no price only beside money", () => {
  const cost = { ...NO_COST, parts: 2, unpriced: 2 };
  expect(writeCost(cost, undefined, "metric")).toBe("2 new parts");
  expect(writeCost({ ...cost, money: 1 }, undefined, "metric")).toBe("1.00, 2 new parts (no price given)");
  expect(writeCost({ ...cost, money: 1, parts: 3, unpriced: 1 }, undefined, "metric")).toContain(
    "(1 without a price)",
  );
});

it("writeSearch tells what is proven, and where it ended early the least that is left", () => {
  const search = { kind: "pipe", plans: 43_535_646_720, judged: 5, parts: 50, bound: undefined } as const;
  expect(writeSearch({ ...search, proven: true, found: true }, undefined, "metric")).toBe(
    "other pipe: 4.4e10 plans, 5 of them judged one by one; nothing cheaper in this space works.",
  );
  const bound = { ...NO_COST, stand: 0.4 };
  expect(writeSearch({ ...search, proven: false, found: false, bound }, undefined, "metric")).toBe(
    "other pipe: 4.4e10 plans, 5 of them judged one by one; not searched to the end; whatever works costs at least 40 cm of stand.",
  );
});

it("writeRelaxation tells by how much each requirement has to give", () => {
  const plan = { headfall: 1, sources: [], runs: [] } as never;
  expect(
    writeRelaxation({ give: "standMost", needed: 1.8, allowed: 1.5, cost: NO_COST, plan }, "metric"),
  ).toBe("Allow a stand of 1.8 m (1.5 m was the most): then it works.");
  expect(writeRelaxation({ give: "margin", best: 0.03, asked: 0.1, cost: NO_COST, plan }, "metric")).toBe(
    "Be content with 30 mm to spare in place of 10 cm: then it works.",
  );
  const lost = {
    give: "drinkers",
    lost: 2,
    of: 24,
    names: ["a", "b"],
    flow: 4e-7,
    need: 8e-7,
    plan,
  } as const;
  expect(writeRelaxation(lost, "metric")).toBe(
    "2 of 24 drinkers cannot be had: a, b; the worst of them gives 24 mL/min of the 48 mL/min it needs.",
  );
});
