import { expect, test } from "vitest";
import { checkSigns, placesByName } from "../../../../packages/hydraulics/src/judge/trouble/check-signs.js";
import type { Sign } from "../../../../packages/hydraulics/src/judge/trouble/signs.js";
import { lineOf } from "../../model/built.js";
import { sight } from "./ask.js";

const places = placesByName(
  lineOf([{ id: "lane", length: "3 m", drinkers: { id: "nipples", kind: "nipple-side-action", count: 2 } }]),
);
const faults = (...signs: readonly unknown[]) =>
  checkSigns(signs as Sign[], places).map(({ code, path }) => [code, path]);
const jug = (flow: number): Sign => ({ look: "jug", at: "drinker", id: "nipples 1", flow });

test("checkSigns lets signs by that fit the plan, and says of each other what does not", () => {
  expect(
    faults(sight("gives", "drinker", "nipples 1", "weak"), jug(0), sight("end", "run", "lane", "little")),
  ).toEqual([
    // A jug answers what another look does: both may be told.
  ]);
  expect(faults(sight("gives", "drinker", "nipples 3", "weak"))).toEqual([["unknownName", "signs[0].id"]]);
  expect(faults(sight("gives", "run", "lane", "weak"))).toEqual([["notAChoice", "signs[0].at"]]);
  expect(faults(sight("gives", "drinker", "nipples 1", "drips"))).toEqual([["notAChoice", "signs[0].sees"]]);
  expect(faults({ look: "smells", at: "drinker", id: "nipples 1" })).toEqual([
    ["notAChoice", "signs[0].look"],
  ]);
});

test("checkSigns takes a jug's flow for a number of 0 or more, and nothing else", () => {
  expect(faults(jug(1e-6))).toEqual([]);
  for (const flow of [-1e-9, Number.NaN, Number.POSITIVE_INFINITY])
    expect([flow, faults(jug(flow))]).toEqual([flow, [["outOfRange", "signs[0].flow"]]]);
});

test("checkSigns tells the second of two at one place", () => {
  const weak = sight("gives", "drinker", "nipples 1", "weak");
  expect(faults(weak, sight("drips", "drinker", "nipples 1", "holds"), weak).map(([, path]) => path)).toEqual(
    ["signs[2]"],
  );
});
