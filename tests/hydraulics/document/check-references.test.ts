import { expect, test } from "vitest";
import { planWith, problemsOf } from "./problem-cases.js";

const told = (document: unknown) => problemsOf(document).map(({ path, code }) => `${path}: ${code}`);
const runWith = (more: Record<string, unknown>) => planWith({ runs: [{ length: "3 m", ...more }] });
const sourceWith = (more: Record<string, unknown>) =>
  planWith({ sources: [{ vessel: "drum-55gal-plastic", ...more }] });

test.each([
  [{ sources: [{ vessel: "barel of fun" }] }, ["sources[0].vessel: unknownName"]],
  [
    { runs: [{ length: "3 m", fittings: ["elbow-90 x 4", "elbov x 2"] }] },
    ["runs[0].fittings[1]: unknownName"],
  ],
  [{ runs: [{ length: "3 m", drinkers: { kind: "toString" } }] }, ["runs[0].drinkers.kind: unknownName"]],
  [{ shelf: [{ pipe: "pvc-sch40-1/2" }, { pipe: "lead" }] }, ["shelf[1].pipe: unknownName"]],
])("a name that no table has is told: %o", (more, paths) => {
  expect(told(planWith(more))).toEqual(paths);
});

test("a name given to two places, or two runs, is told once for each after the first", () => {
  const sources = [{ vessel: "drum-55gal-plastic" }, { id: "barrel", vessel: "drum-55gal-plastic" }];
  expect(told(planWith({ sources }))).toEqual(["sources[1].id: nameTwice"]);
  const runs = [{ id: "run 2", length: "3 m" }, { length: "1 m" }];
  expect(told(planWith({ runs }))).toEqual(["runs[1].id: nameTwice"]);
});

test("a run may end at a place of its own naming, and the next may start there", () => {
  const runs = [
    { length: "3 m", to: "tee" },
    { from: "tee", length: "1 m" },
    { from: "tee", length: "2 m" },
    { from: "run 3 end", length: "2 m" },
  ];
  expect(told(planWith({ runs }))).toEqual([]);
});

test("a header tank filled from nowhere, by nothing known, is told both", () => {
  expect(told(sourceWith({ feed: { from: "well", valve: "magic" } }))).toEqual([
    "sources[0].feed.from: unknownPoint",
    "sources[0].feed.valve: unknownName",
  ]);
});

test("levels out of order are told", () => {
  expect(told(sourceWith({ level: { full: "20 cm", lowest: "30 cm" } }))).toEqual([
    "sources[0].level.lowest: doesNotFit",
  ]);
  expect(told(sourceWith({ level: { full: "70 cm", ordinary: "72 cm" } }))).toEqual([
    "sources[0].level.ordinary: doesNotFit",
  ]);
});

test("a table of volumes begins at nothing and rises", () => {
  const table = (...rows: [string, string][]) =>
    told(
      planWith({
        sources: [
          {
            vessel: { shape: "table", readings: rows.map(([level, volume]) => ({ level, volume })) },
            outlet: "0 cm",
          },
        ],
      }),
    );
  const at = (i: number, key: string) => `sources[0].vessel.readings[${i}].${key}: doesNotFit`;
  expect(table(["0 cm", "0 L"], ["20 cm", "40 L"], ["60 cm", "100 L"])).toEqual([]);
  expect(table(["5 cm", "0 L"], ["60 cm", "100 L"])).toEqual([at(0, "level")]);
  expect(table(["0 cm", "0 L"], ["60 cm", "100 L"], ["50 cm", "90 L"])).toEqual([
    at(2, "level"),
    at(2, "volume"),
  ]);
});

test("a survey lies on its run, in order, and begins with no fall but at a source", () => {
  const survey = (...rows: [string, string][]) => surveyOf(1, rows);
  const surveyOf = (run: number, rows: [string, string][]) => {
    const surveyed = { length: "3 m", survey: rows.map(([along, fall]) => ({ along, fall })) };
    return told(planWith({ runs: run === 0 ? [surveyed] : [{ length: "1 m" }, surveyed] }));
  };
  const at = (i: number, key: string) => `runs[1].survey[${i}].${key}: doesNotFit`;
  expect(survey(["0 m", "0 cm"], ["1 m", "-5 cm"], ["3 m", "10 cm"])).toEqual([]);
  expect(survey(["1 m", "5 cm"], ["3.1 m", "10 cm"])).toEqual([at(1, "along")]);
  expect(survey(["2 m", "5 cm"], ["1 m", "10 cm"])).toEqual([at(1, "along")]);
  expect(survey(["0 m", "5 cm"])).toEqual([at(0, "fall")]);
  expect(surveyOf(0, [["0 m", "-5 cm"]])).toEqual([]);
});

test("drinkers at work are no more than there are, and a share no more than all", () => {
  const group = (more: Record<string, unknown>) =>
    told(runWith({ drinkers: { kind: "cup-float", count: 4, ...more } }));
  expect(group({ busiest: 4, ordinary: "100 %" })).toEqual([]);
  expect(group({ busiest: 5, ordinary: "101 %" })).toEqual([
    "runs[0].drinkers.busiest: doesNotFit",
    "runs[0].drinkers.ordinary: doesNotFit",
  ]);
});

test("drinkers fit on their run to the last one", () => {
  const group = (more: Record<string, unknown>) =>
    told(runWith({ drinkers: { kind: "cup-float", ...more } }));
  expect(group({ count: 10, every: "30 cm" })).toEqual([]);
  expect(group({ count: 4, first: "0 m", every: "1 m" })).toEqual([]);
  expect(group({ first: "3.5 m" })).toEqual(["runs[0].drinkers.first: doesNotFit"]);
});
