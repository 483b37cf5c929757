import { describe, expect, it, test } from "vitest";
import { CAUSE_CODES, type CausePlace } from "../../../../packages/hydraulics/src/judge/trouble/cause.js";
import {
  ANSWERS,
  type Look,
  type Looked,
  PLACES_OF,
} from "../../../../packages/hydraulics/src/judge/trouble/signs.js";
import type { LikelyCause } from "../../../../packages/hydraulics/src/judge/trouble/trouble-result.js";
import { writeCause } from "../../../../packages/hydraulics/src/report/trouble/trouble-causes.js";
import {
  percent,
  writeAnswers,
  writeLook,
  writeLookAnswer,
  writeSight,
  writeSigns,
} from "../../../../packages/hydraulics/src/report/trouble/trouble-looks.js";
import { writeWhy } from "../../../../packages/hydraulics/src/report/trouble/trouble-text.js";
import { writeTodo } from "../../../../packages/hydraulics/src/report/trouble/trouble-todo.js";
import { writeTwoAtOnce } from "../../../../packages/hydraulics/src/report/trouble/trouble-two.js";

const PLACE: Partial<Record<string, CausePlace>> = {
  asDesigned: "line",
  moreDrunk: "line",
  lessDrunk: "line",
  somethingElse: "line",
  jointApart: "point",
  airLocked: "point",
  givesLessThanThought: "group",
  sealsWorn: "group",
};

const causeOf = (code: LikelyCause["code"], places: readonly string[]): LikelyCause => ({
  code,
  at: PLACE[code] ?? "run",
  places,
  share: 0.5,
  severity: { openShare: 0.3, along: 3.6, airHead: 0.1, below: 0.2 },
  fits: [],
  against: [],
});

describe("words of a cause", () => {
  test.each(CAUSE_CODES)("%s is told with its place, as one of several, and with what to do", (code) => {
    const isLine = PLACE[code] === "line";
    const one = writeCause(causeOf(code, [isLine ? "" : "east bank"]), "metric");
    const some = writeCause(causeOf(code, ["run 1", "run 2", "run 3"]), "us");
    for (const text of [one, some, ...writeTodo(causeOf(code, ["east bank"]))])
      expect(text).not.toMatch(/undefined|NaN| {2}|\.\.|\$\{/);
    if (!isLine) {
      expect(one).toContain("east bank");
      expect(some).toMatch(/[Oo]ne of run 1 to 3/);
    }
    expect(one).not.toMatch(/\.$/);
    expect(writeTodo(causeOf(code, ["east bank"])).length).toBeGreaterThan(0);
  });

  it("tells what lets nothing through from what lets little through", () => {
    const blocked = (openShare: number | undefined) =>
      writeCause(
        { ...causeOf("runBlocked", ["feed"]), severity: { openShare, along: 3.6 } } as LikelyCause,
        "metric",
      );
    expect([0.3, 0, undefined].map((share) => /lets (\w+) through/.exec(blocked(share))?.[1])).toEqual([
      "little",
      "nothing",
      "nothing",
    ]);
  });

  it("tells how high the column of caught air is", () => {
    expect(writeCause(causeOf("airLocked", ["wall"]), "metric")).toMatch(
      /^Air is caught beyond wall: a column of 10 cm/,
    );
  });

  it("tells what sits right at the start of a run from what sits along it", () => {
    const at = (along: number) =>
      writeCause(
        { ...causeOf("runBlocked", ["feed"]), severity: { openShare: 0.3, along } } as LikelyCause,
        "metric",
      );
    expect(at(0)).toContain("feed, at its start");
    expect(at(0.6)).toContain("feed about 60 cm along");
  });

  it("tells how bad it is in the reader's units", () => {
    expect(writeCause(causeOf("waterLow", ["barrel"]), "metric")).toBe(
      "barrel holds less water than thought, perhaps 20 cm less",
    );
    expect(writeCause(causeOf("runBlocked", ["feed"]), "us")).toBe(
      "Something sits in the pipe of feed about 11 ft 10 in along, and lets little through",
    );
  });
});

const looks = Object.keys(ANSWERS) as Looked[];

describe("words of a look", () => {
  test.each(looks)("%s is something to do at its place, and each answer has words of its own", (look) => {
    for (const at of PLACES_OF[look]) {
      const asked: Look = { look, at, id: "east bank" };
      expect(writeLook(asked)).toMatch(/^[A-Z].*east bank.*[.?]$/);
      const told = ANSWERS[look].map((sees) => writeLookAnswer(asked, sees));
      expect(new Set(told).size).toBe(told.length);
      const sights = ANSWERS[look].map((sees) => writeSight({ ...asked, sees }, "metric"));
      expect(new Set(sights).size).toBe(sights.length);
    }
  });

  it("an answer is said to speak for one of the two only where it does", () => {
    const look: Look = { look: "lid", at: "source", id: "barrel" };
    const answers = [
      { sees: "helps", chances: [0.9, 0.1], firstShare: 0.9 },
      { sees: "noChange", chances: [0.5, 0.5], firstShare: 0.5 },
    ] as const;
    const even = [{ sees: "helps", chances: [0.65, 0.35], firstShare: 0.65 }] as const;
    expect(writeAnswers({ look, answers: even, information: 0.3, afterFilling: false })[0]).toMatch(
      /the first \(65 %\)$/,
    );
    expect(writeAnswers({ look, answers, information: 0.3, afterFilling: false })).toEqual([
      "the drinker gives more: the first (90 %)",
      "nothing changes: it could be either",
    ]);
  });

  it("no share is told as none or all", () => {
    expect([0, 0.004, 0.5, 0.996, 1].map(percent)).toEqual([
      "under 1 %",
      "under 1 %",
      "50 %",
      "over 99 %",
      "over 99 %",
    ]);
  });
});

describe("words of signs", () => {
  it("puts places that show the same together, with what a jug gave in the reader's units", () => {
    const signs = [
      { look: "gives", at: "drinker", id: "hen line 1", sees: "dry" },
      { look: "gives", at: "drinker", id: "hen line 2", sees: "dry" },
      { look: "ground", at: "run", id: "feed", sees: "wet" },
      { look: "jug", at: "drinker", id: "hen line 4", flow: 1e-6 },
    ] as const;
    expect(writeSigns(signs, "metric")).toBe(
      "hen line 1 and 2 dry; wet ground at feed; hen line 4 60 mL/min",
    );
  });

  it("tells what speaks for a cause and what does not, or that nothing does", () => {
    const sign = { look: "night", at: "source", id: "barrel", sees: "falls" } as const;
    const cause = causeOf("ventBlocked", ["barrel"]);
    expect(writeWhy({ ...cause, against: [{ sign, ratio: 0.1 }] }, "metric")).toBe(
      "no sign speaks for it; it does not fit barrel falls overnight.",
    );
    expect(writeWhy(cause, "metric")).toBe("no sign says much for it or against it.");
  });
});

test("two things at once are told with what one leaves open, both causes, and what that is worth", () => {
  const dry = { look: "gives", at: "drinker", id: "hen line 17", sees: "dry" } as const;
  const wet = { look: "ground", at: "run", id: "feed", sees: "wet" } as const;
  const two = {
    causes: [causeOf("runBlocked", ["east bank"]), causeOf("sealsWorn", ["cups"])] as const,
    share: 0.54,
    aloneShare: 0.35,
    unexplained: [dry],
    fits: [{ sign: dry, ratio: 2.9 }],
    against: [{ sign: wet, ratio: 0.1 }],
    tried: 60,
  };
  expect(writeTwoAtOnce(two, "metric")).toEqual([
    "The likeliest thing alone leaves badly explained: hen line 17 dry.",
    "Two at once: Something sits in the pipe of east bank about 3.6 m along, and lets little through; and at the same time: The seals of cups no longer hold: worn, or grit under them.",
    "That holds 54 %, against 35 % for the likeliest alone. It does not fit wet ground at feed.",
    "See to one of them, then look again: what is left shows whether there was a second.",
  ]);
  const fits = [dry, wet].map((sign) => ({ sign, ratio: 2 }));
  const [none] = writeTwoAtOnce({ ...two, unexplained: [dry, wet], against: [], fits }, "us");
  expect(none).toBe("No one thing that was tried explains all of this.");
});
