import { describe, expect, it } from "vitest";
import { askAboutTrouble } from "../../../../packages/hydraulics/src/judge/trouble/ask-about-trouble.js";
import { causesOf } from "../../../../packages/hydraulics/src/judge/trouble/causes-of.js";
import { ANSWERS, type Look } from "../../../../packages/hydraulics/src/judge/trouble/signs.js";
import {
  chancesUnder,
  groupAlike,
  likeliestState,
  weighCauses,
} from "../../../../packages/hydraulics/src/judge/trouble/weigh.js";
import { ASKED_ON, example, sight, worked } from "./ask.js";

const asking = askAboutTrouble(example("alder-bank-brooder"), { day: ASKED_ON });
if (!asking.ok) throw new Error(JSON.stringify(asking.problems));
const { bench, usual, seen } = asking.question;
const { candidates } = causesOf(bench, usual, []);
const signs = [...worked("chick nipples", [1, 4], "weak"), sight("night", "source", "bucket", "holds")];

describe("weighCauses", () => {
  // Bayes' rule, by another way: what an answer changes is the ratio of the chances it has under each.
  it("moves every cause against every other by the ratio of the chances they give an answer", () => {
    const before = weighCauses(candidates, signs, seen).filter(
      ({ candidate }) => candidate.states.length > 0,
    );
    const looks: readonly Look[] = [
      { look: "day", at: "source", id: "bucket" },
      { look: "water", at: "source", id: "bucket" },
      { look: "gives", at: "drinker", id: "chick nipples 5" },
    ];
    for (const look of looks) {
      for (const [k, sees] of ANSWERS[look.look].entries()) {
        const after = weighCauses(candidates, [...signs, { ...look, sees }], seen);
        const moved = before.map(({ candidate, share }) => {
          const then = after.find((one) => one.candidate === candidate)!;
          return then.share / share;
        });
        const chances = before.map((one) => chancesUnder(one, look, seen)[k]!);
        for (let c = 1; c < before.length; c += 1) {
          const ratio = moved[c]! / moved[0]! / (chances[c]! / chances[0]!);
          // States of next to no weight are left out of the chances of a look.
          expect(Math.abs(Math.log(ratio))).toBeLessThan(0.05);
        }
      }
    }
  });

  it("gives shares that add up to one, none of them negative, and keeps them when no sign is told", () => {
    for (const told of [signs, []]) {
      const shares = weighCauses(candidates, told, seen).map(({ share }) => share);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
      expect(Math.min(...shares)).toBeGreaterThanOrEqual(0);
    }
    const prior = candidates.reduce((sum, one) => sum + one.prior, 0);
    for (const { candidate, share } of weighCauses(candidates, [], seen))
      expect(share).toBeCloseTo(candidate.prior / prior, 9);
  });
});

describe("groupAlike", () => {
  it("puts every cause into one group, of one kind each, likeliest first", () => {
    const weighed = weighCauses(candidates, signs, seen);
    const groups = groupAlike(weighed);
    expect(groups.flatMap(({ members }) => members)).toHaveLength(weighed.length);
    for (const { members } of groups)
      expect(new Set(members.map(({ candidate }) => candidate.cause.code)).size).toBe(1);
    for (const [k, { share }] of groups.slice(1).entries())
      expect(share).toBeLessThanOrEqual(groups[k]!.share);
  });
});

describe("likeliestState", () => {
  it("is the one that holds most, wherever it stands", () => {
    const states = ["a", "b", "c"];
    const of = (...stateShares: number[]) => likeliestState({ candidate: { states }, stateShares } as never);
    expect([of(0.5, 0.3, 0.2), of(0.2, 0.5, 0.3), of(0.2, 0.3, 0.5)]).toEqual(["a", "b", "c"]);
  });
});
