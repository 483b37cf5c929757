import { expect, test } from "vitest";
import { layRun, placeDrinkers } from "../../../packages/hydraulics/src/model/lay-run.js";

const rounded = (list: readonly number[]) => list.map((x) => Number(x.toFixed(9)));

test("placeDrinkers(every) puts the first one spacing from the start", () => {
  expect(rounded(placeDrinkers({ count: 3, runLength: 10, first: undefined, every: 0.3 }))).toEqual([
    0.3, 0.6, 0.9,
  ]);
});

test("placeDrinkers(first and every) begins at the first", () => {
  expect(rounded(placeDrinkers({ count: 3, runLength: 10, first: 1, every: 0.5 }))).toEqual([1, 1.5, 2]);
});

test("placeDrinkers(nothing said) spreads them evenly, the last at the end", () => {
  expect(rounded(placeDrinkers({ count: 4, runLength: 2, first: undefined, every: undefined }))).toEqual([
    0.5, 1, 1.5, 2,
  ]);
});

test("placeDrinkers(first alone) spreads the others from there to the end", () => {
  expect(rounded(placeDrinkers({ count: 3, runLength: 2, first: 1, every: undefined }))).toEqual([1, 1.5, 2]);
  expect(placeDrinkers({ count: 1, runLength: 2, first: 1, every: undefined })).toEqual([1]);
});

const straight = { length: 10, startHeight: 1, surveyedFrom: 1, endHeight: 0, survey: [], drinkersAt: [] };

test("layRun(no survey) puts drinkers on the straight between the ends", () => {
  const stations = layRun({ ...straight, drinkersAt: [2.5, 5] });
  expect(stations.map(({ along, height }) => [along, height])).toEqual([
    [2.5, 0.75],
    [5, 0.5],
  ]);
});

test("layRun makes no station of drinkers at the very ends: the joints are there", () => {
  expect(layRun({ ...straight, drinkersAt: [0, 10] })).toEqual([]);
});

test("layRun follows the survey between its readings, in order with the drinkers", () => {
  const stations = layRun({
    ...straight,
    survey: [
      { along: 4, fall: -0.4, bleed: true },
      { along: 8, fall: 1.4, bleed: false },
    ],
    drinkersAt: [2, 6],
  });
  expect(
    stations.map(({ along, height, bleed, surveyed }) => [along, Number(height.toFixed(9)), bleed, surveyed]),
  ).toEqual([
    [2, 1.2, false, false],
    [4, 1.4, true, true],
    [6, 0.5, false, false],
    [8, -0.4, false, true],
  ]);
});

test("layRun puts a drinker at a surveyed place on that place, and two drinkers at one place on one station", () => {
  const survey = [{ along: 4, fall: 0.1, bleed: false }];
  expect(layRun({ ...straight, survey, drinkersAt: [4, 6, 6] }).map(({ along }) => along)).toEqual([4, 6]);
});
