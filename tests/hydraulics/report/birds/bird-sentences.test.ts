import { expect, test } from "vitest";
import type { GroupCrowd, PenReport } from "../../../../packages/hydraulics/src/judge/birds/flock-report.js";
import {
  writeAge,
  writeBirdFinding,
  writeGroupCrowd,
  writePen,
  writePercent,
  writeSeconds,
} from "../../../../packages/hydraulics/src/report/birds/bird-sentences.js";
import { BIRD_FINDING_CASES } from "./bird-cases.js";

// The type of the cases makes the list whole: a code without a case does not compile.
test.each(Object.values(BIRD_FINDING_CASES))(
  "writeBirdFinding($code) says what, how much and what to do, in both systems",
  (finding, metric, us) => {
    expect(writeBirdFinding(finding, "metric")).toBe(metric);
    expect(writeBirdFinding(finding, "us")).toBe(us);
  },
);

test.each([
  [0, "0 days"],
  [1, "1 day"],
  [13, "13 days"],
  [14, "2 weeks"],
  [365, "52 weeks"],
  [729, "104 weeks"],
  [730, "2 years"],
  [731, "2 years"],
])("writeAge(%d days) is %s", (days, words) => {
  expect(writeAge(days)).toBe(words);
});

test.each([
  [0, "0 s"],
  [7.36, "7.4 s"],
  [10, "10 s"],
  [43.2, "43 s"],
  [300, "5 min"],
])("writeSeconds(%d) is %s", (seconds, words) => {
  expect(writeSeconds(seconds)).toBe(words);
});

test.each([
  [0, "0 %"],
  [0.004, "under 1 %"],
  [0.133, "13 %"],
  [1, "100 %"],
])("writePercent(%d) is %s", (share, words) => {
  expect(writePercent(share)).toBe(words);
});

const pen: PenReport = {
  pen: "hens",
  index: 0,
  birds: 50,
  batches: [],
  drinkers: 6,
  giving: 6,
  places: 6,
  intakeSize: 0.0142,
  intakeExpect: 0.0103,
  busiestHour: { from: 61_200, share: 2 / 15 },
  demand: 30e-6 / 60,
  capacity: 180e-6 / 60,
  boutVolume: 6.75e-6,
  boutSeconds: 13.5,
  load: 1.0,
  atOnceAlone: 4,
  atOnce: 6,
  busiest: 6,
  ordinary: 1,
  chanceAllTaken: 0.0005,
  meanWait: 0.002,
  saturates: false,
  short: 0,
  rounds: 2,
};

test("writePen tells litres, bouts, how many at once and how long they wait", () => {
  expect(writePen(pen, "metric")).toBe(
    "hens: 50 birds take 14.2 L a day to size on (10.3 L to expect), 13 % of what they drink in the busiest hour; 6.75 mL a bout takes 14 s; 1 drink at once on average, 6 at most but once in a hundred; so 6 of 6 drinkers at work in the busiest minutes, 1 in an ordinary hour; all taken under 1 % of the time, mean wait 0 s.",
  );
});

test("writePen says when nothing flows, when nobody is there, and when more come than can be served", () => {
  expect(writePen({ ...pen, birds: 0 }, "metric")).toBe("hens: no bird is there yet.");
  expect(writePen({ ...pen, boutSeconds: undefined, load: undefined }, "metric")).toContain(
    "none of 6 drinkers gives them any",
  );
  expect(writePen({ ...pen, chanceAllTaken: undefined, meanWait: undefined }, "us")).toContain(
    "more come than can be served",
  );
});

test("writeGroupCrowd tells where each number came from", () => {
  const group: GroupCrowd = {
    group: "hen line",
    index: 0,
    pen: 0,
    busiest: { count: 6, from: "birds" },
    ordinary: { count: 2, from: "typed" },
    need: { flow: 50e-6 / 60, from: "default" },
    height: undefined,
    hangAt: undefined,
  };
  expect(writeGroupCrowd(group, "metric")).toBe(
    "hen line: at work 6 at the busiest (from its birds), 2 in an ordinary hour (as the plan says); needs 50 mL/min each (default).",
  );
});
