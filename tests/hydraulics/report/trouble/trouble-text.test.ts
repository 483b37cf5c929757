import { describe, expect, it } from "vitest";
import type {
  LikelyCause,
  Trouble,
} from "../../../../packages/hydraulics/src/judge/trouble/trouble-result.js";
import { writeTroubleDocument } from "../../../../packages/hydraulics/src/report/trouble/trouble-document.js";
import {
  writeNextLook,
  writeTried,
  writeTroubleText,
  writeWhy,
} from "../../../../packages/hydraulics/src/report/trouble/trouble-text.js";

const dry = { look: "gives", at: "drinker", id: "lane 4", sees: "dry" } as const;
const wet = { look: "ground", at: "run", id: "feed", sees: "wet" } as const;
const cause = (code: LikelyCause["code"], share: number, places: readonly string[]): LikelyCause =>
  ({
    ...{ code, at: "run", places, share, severity: { openShare: 0.3, along: 3.6, airHead: 0.1, below: 0.2 } },
    ...{ fits: [{ sign: dry, ratio: 3 }], against: [] },
  }) as LikelyCause;
const useful = (look: object) => ({
  ...{ look, information: 0.3, afterFilling: false },
  answers: [
    { sees: "helps", chances: [0.9, 0.1], firstShare: 0.9 },
    { sees: "noChange", chances: [0.5, 0.5], firstShare: 0.5 },
  ],
});
const lid = useful({ look: "lid", at: "source", id: "barrel" });
const trouble = (more: object = {}) =>
  ({
    ...{
      plan: { digest: "x" },
      signs: [dry],
      setAside: [],
      otherShare: 0.1,
      fitsBadly: false,
      twoAtOnce: undefined,
    },
    likely: [cause("runBlocked", 0.6, ["feed"]), cause("ventBlocked", 0.3, ["barrel"])],
    ...{ nextLook: lid, moreLooks: [lid], lookAmong: undefined, notToldFromFirst: [] },
    ...{
      tried: { causes: 18, states: 57, drinkers: 4 },
      levels: [
        { source: "barrel", level: 0.5 },
        { source: "tub", level: 0.3 },
      ],
    },
    ...more,
  }) as unknown as Trouble;
const two = {
  causes: [cause("runBlocked", 0.5, ["feed"]), cause("sealsWorn", 0.5, ["lane"])],
  ...{ share: 0.54, aloneShare: 0.35, unexplained: [dry], fits: [], against: [], tried: 9 },
};
const text = (more: object = {}) => writeTroubleText("", trouble(more), "metric", (words) => words);

describe("writeTroubleText", () => {
  it("has the causes in order with their shares, and the rest where it is worth a word", () => {
    expect(text()).toMatch(/^This plan: what is likely wrong\nSeen: lane 4 dry\.\n/);
    expect(text()).toMatch(
      /\n1 +60 % +Something sits in the pipe of feed.*\n2 +30 % +.*barrel.*\n +10 % +all others\n/,
    );
    expect(text({ otherShare: 0.0049 })).not.toContain("all others");
    expect(text({ otherShare: 0.005 })).toContain("all others");
  });

  it("tells two at once only where two were found", () => {
    expect(text()).not.toContain("Two things at once");
    expect(text({ twoAtOnce: two })).toMatch(/\n\nTwo things at once\n- .*lane 4 dry\.\n- Two at once: /);
  });

  it("gives the reasons of three causes at the most", () => {
    const four = ["feed", "a", "b", "c"].map((place, k) => cause("runBlocked", 0.4 - k / 10, [place]));
    expect(text({ likely: four })).toMatch(/\nWhy\n- 1: it fits lane 4 dry\.\n- 2: .*\n- 3: .*\n\n/);
  });
});

describe("the one look", () => {
  const look = (more: object) => writeNextLook(trouble(more), "metric");

  it("tells the first from the second, what its answers mean, and another look", () => {
    const [first, helps, none, ...rest] = look({});
    expect(first).toMatch(/^It tells 1 from 2: /);
    expect([helps, none]).toEqual([
      "- the drinker gives more: the first (90 %)",
      "- nothing changes: it could be either",
    ]);
    expect(rest).toEqual([]);
    const other = useful({ look: "ground", at: "run", id: "feed" });
    expect(look({ moreLooks: [lid, other] }).at(-1)).toMatch(/^Or else: .*feed/);
  });

  it("has water poured in first where the look needs it", () => {
    const [first] = look({ nextLook: { ...lid, afterFilling: true }, moreLooks: [] });
    const [plain] = look({ moreLooks: [] });
    const words = plain!.replace("It tells 1 from 2: ", "");
    expect(first).toBe(
      `It tells 1 from 2: Pour some water in, then ${words.charAt(0).toLowerCase()}${words.slice(1)}`,
    );
  });

  it("says so where no look tells them apart, or there is one cause alone", () => {
    expect(look({ nextLook: undefined })).toEqual(["No look of these tells 1 from 2: see to both."]);
    expect(look({ nextLook: undefined, likely: [cause("runBlocked", 0.9, ["feed"])] })[0]).toMatch(
      /^Nothing else is likely/,
    );
  });

  it("tells which of several places it is, and which causes nothing tells from the first", () => {
    const among = useful({ look: "lid", at: "source", id: "barrel" });
    const several = [
      cause("runBlocked", 0.6, ["feed", "lane", "drain"]),
      cause("ventBlocked", 0.3, ["barrel"]),
    ];
    expect(look({ likely: several, lookAmong: among }).at(-1)).toMatch(/^Which of the 3 it is: /);
    expect(look({ lookAmong: among }).join()).not.toContain("Which of");
    expect(look({ notToldFromFirst: [1] }).at(-1)).toMatch(
      /^Nothing that can be looked at here tells 2 \(.*\) from the first\.$/,
    );
    // That no look tells 1 from 2 has been said already.
    expect(look({ nextLook: undefined, notToldFromFirst: [1] })).toHaveLength(1);
  });
});

describe("why, and what was tried", () => {
  it("tells what fits and what does not", () => {
    const one = cause("runBlocked", 0.5, ["feed"]);
    expect(writeWhy({ ...one, against: [{ sign: wet, ratio: 0.1 }] }, "metric")).toBe(
      "it fits lane 4 dry; it does not fit wet ground at feed.",
    );
    expect(writeWhy({ ...one, code: "somethingElse" }, "metric")).toContain("all that was not tried");
  });

  it("tells how many causes were tried, where the water is taken to stand, and what says nothing more", () => {
    const [tried, levels, ...rest] = writeTried(trouble(), "metric");
    expect(tried).toMatch(/^18 causes in 57 states/);
    expect(levels).toBe("The water is taken to stand at: barrel 50 cm and tub 30 cm.");
    expect(rest).toEqual([]);
    expect(writeTried(trouble({ setAside: [dry] }), "metric")[2]).toContain("1 such sign says nothing");
    expect(writeTried(trouble({ setAside: [dry, dry] }), "metric")[2]).toContain("2 such signs say nothing");
  });
});

describe("writeTroubleDocument", () => {
  it("has two at once and looks only where there are any, each with its sentence", () => {
    const without = writeTroubleDocument("Bank", trouble({ nextLook: undefined, moreLooks: [] }), "metric");
    for (const key of ["twoAtOnce", "nextLook", "lookAmong"]) expect(without).not.toHaveProperty(key);
    const all = writeTroubleDocument("Bank", trouble({ twoAtOnce: two, lookAmong: lid }), "metric");
    expect(all).toMatchObject({
      plan: { name: "Bank", digest: "x" },
      twoAtOnce: { share: 0.54 },
      nextLook: { information: 0.3 },
      lookAmong: { information: 0.3 },
    });
    expect(all.likely[0]!.sentence).toMatch(/^Something sits in the pipe of feed .*\.$/);
  });
});
