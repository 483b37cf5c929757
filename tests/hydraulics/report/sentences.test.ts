import { expect, test } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { checkPlan } from "../../../packages/hydraulics/src/judge/check-plan.js";
import type { Checked } from "../../../packages/hydraulics/src/judge/check-result.js";
import { writeCaution } from "../../../packages/hydraulics/src/report/caution-sentences.js";
import { writeFinding } from "../../../packages/hydraulics/src/report/finding-sentences.js";
import { writeJudgement, writeReason } from "../../../packages/hydraulics/src/report/sentences.js";
import { writeCertainty } from "../../../packages/hydraulics/src/report/sureness/certainty-words.js";
import { writeVerdict } from "../../../packages/hydraulics/src/report/verdict-sentences.js";
import { CAUTION_CASES, FINDING_CASES, REASON_CASES } from "./sentence-cases.js";

function checkedOf(runs: unknown[]): Checked {
  const reading = checkDocument({
    headfall: 1,
    sources: [{ vessel: "drum-55gal-plastic", stand: "40 cm" }],
    runs,
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const checking = checkPlan(reading.plan, { samples: 0 });
  if (!checking.ok) throw new Error(JSON.stringify(checking.problems));
  return checking.checked;
}

const checked = checkedOf([{ length: "3 m", drinkers: { kind: "cup-float", count: 2 } }]);

// The types of the cases make each list whole: a code without a case does not compile.
test.each(Object.values(REASON_CASES))(
  "writeReason($code) says why with its numbers, in both systems",
  (reason, metric, us) => {
    expect(writeReason(reason, "metric")).toBe(metric);
    expect(writeReason(reason, "us")).toBe(us);
  },
);

test.each(Object.values(FINDING_CASES))(
  "writeFinding($code) says where, how much and what to do",
  (finding, metric, us) => {
    expect(writeFinding(finding, "metric")).toBe(metric);
    expect(writeFinding(finding, "us")).toBe(us);
  },
);

test.each(Object.values(CAUTION_CASES))(
  "writeCaution($code) says what applies, with its numbers",
  (caution, metric, us) => {
    expect(writeCaution(caution, "metric")).toBe(metric);
    expect(writeCaution(caution, "us")).toBe(us);
  },
);

test("writeReason(a drinker above the water) says by how much", () => {
  expect(writeReason({ code: "tooHigh", staticHead: -0.12, openingHead: 0.04 }, "metric")).toBe(
    "it hangs 12 cm above the water that should feed it",
  );
});

test("writeReason(nothing lost, no air) says neither", () => {
  const [reason] = REASON_CASES.flowTooLow;
  expect(writeReason({ ...reason, lostOnTheWay: 0, airHead: 0 }, "metric")).toMatch(
    /10 cm is left of 45 cm$/,
  );
});

test("writeFinding(a hump whose air lets water by, suction that holds) promises no worse", () => {
  const [hump] = FINDING_CASES.humpTrapsAir;
  expect(writeFinding({ ...hump, locks: false }, "metric")).not.toContain("stops the line");
  const [suction] = FINDING_CASES.suction;
  expect(writeFinding({ ...suction, breaks: false }, "metric")).not.toContain("breaks");
});

test("writeCaution(one run outside the range) speaks of one run", () => {
  expect(writeCaution({ code: "outsideHazenWilliams", runs: 1 }, "metric")).toMatch(/^One run is outside/);
});

test.each([
  ["good", "does well"],
  ["starves", "starves"],
  ["dry", "is dry"],
  ["drips", "drips"],
] as const)("writeJudgement(%s) begins with its verb and names the moment", (verdict, verb) => {
  const [because] = REASON_CASES.shutOff;
  const judgement = {
    verdict,
    margin: 0,
    moment: "lowestBusiest",
    friction: "hazenWilliams",
    because,
  } as const;
  expect(writeJudgement(judgement, "metric")).toBe(
    `${verb} with the water lowest and the birds busiest: no open pipe leads to it; see the taps before feed.`,
  );
});

test("writeCertainty says nothing, sure, or what to measure again", () => {
  expect(writeCertainty({ kind: "notSampled" })).toBe("");
  const agreement = { share: 0.985, samples: 200, isDecided: true };
  expect(writeCertainty({ kind: "sure", ...agreement })).toBe(
    "Sure: so in 98 % of 200 plans that fit the measurements as well.",
  );
  expect(writeCertainty({ kind: "sure", share: 0.955, samples: 1000, isDecided: false })).toBe(
    "Sure, though not beyond doubt: so in 95 % of 1000 plans that fit the measurements as well.",
  );
  expect(
    writeCertainty({
      kind: "closeCall",
      ...agreement,
      share: 0.6,
      measureAgain: { input: { kind: "height", place: "wall" }, doubt: 0.01 },
      otherwise: "starves",
    }),
  ).toBe(
    "A close call: so in only 60 % of 200 plans that fit the measurements as well (else mostly starves). Measure the height of wall again.",
  );
});

test("writeVerdict names the drinker and its place, what is also wrong, and where the laws differ", () => {
  const [one] = checked.drinkers;
  if (one === undefined) throw new Error("no drinker");
  const [shut] = [REASON_CASES.shutOff[0]];
  const also = {
    verdict: "drips",
    margin: -0.5,
    moment: "fullIdle",
    friction: "hazenWilliams",
    because: shut,
  } as const;
  const text = writeVerdict(
    { ...one, lawsAgree: false, friction: "darcyWeisbach", also: [also] },
    checked.line,
    "metric",
  );
  expect(text).toMatch(/^run 1 1 \(1\.5 m along\) does well with the water lowest and the birds busiest: /);
  expect(text).toContain("It also drips with the source full and nobody drinking: no open pipe leads to it");
  expect(text).toContain("The two friction laws differ here; Darcy-Weisbach is the cautious one.");
});

test("writeVerdict says nothing of the two laws where they agree", () => {
  expect(writeVerdict({ ...checked.drinkers[0]!, lawsAgree: true }, checked.line, "metric")).not.toContain(
    "friction laws",
  );
});

test("writeVerdict gives no place to a drinker that is alone", () => {
  const alone = checkedOf([{ length: "3 m", drinkers: { kind: "cup-float" } }]);
  expect(writeVerdict(alone.drinkers[0]!, alone.line, "metric")).toMatch(/^run 1 does well/);
});
