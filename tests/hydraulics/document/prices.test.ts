import { expect, test } from "vitest";
import { writeProblem } from "../../../packages/hydraulics/src/document/write-problem.js";
import { planWith, problemsOf } from "./problem-cases.js";

const told = (more: Record<string, unknown>) => problemsOf(planWith(more)).map(writeProblem);

test("prices and pipe on hand are part of a plan", () => {
  const prices = { stand: 4, drinker: 0, regulator: 19.5, headerTank: 40, joint: 2, bleed: 6 };
  const shelf = [{ pipe: "pvc-sch40-1/2", price: 3, per: "10 ft", onHand: "7 ft 6 in" }];
  expect(told({ prices, shelf, money: "EUR" })).toEqual([]);
});

test("a price below nothing, an unknown thing, and pipe on hand without a unit are told, all at once", () => {
  const sentences = told({
    prices: { stand: -1, drill: 30 },
    shelf: [{ pipe: "pvc-sch40-1/2", onHand: "12" }],
  });
  expect(sentences).toEqual([
    "prices.stand (line 14): found -1. This number is at least 0. Check the figure.",
    'prices.drill (line 15): found the key "drill". The plan format has no such key here. Check the spelling, or remove it.',
    'shelf[0].onHand (line 20): found "12". A length is a number with its unit: m, cm, mm, km, ft, in or yd. Add the unit, for instance "12 m" or "12 ft".',
  ]);
});
