import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { askAboutTrouble } from "../../../../packages/hydraulics/src/judge/trouble/ask-about-trouble.js";
import { causesOf } from "../../../../packages/hydraulics/src/judge/trouble/causes-of.js";
import { chancesOf } from "../../../../packages/hydraulics/src/judge/trouble/chances.js";
import { looksAt } from "../../../../packages/hydraulics/src/judge/trouble/looks-at.js";
import { rankCauses } from "../../../../packages/hydraulics/src/judge/trouble/rank-causes.js";
import {
  type Rehearsed,
  rehearseTrouble,
} from "../../../../packages/hydraulics/src/judge/trouble/rehearse.js";
import { ANSWERS } from "../../../../packages/hydraulics/src/judge/trouble/signs.js";
import { randomPlan } from "../../../arbitraries/plans.js";
import { cases } from "../../../runner/cases.js";
import { ASKED_ON, example } from "./ask.js";

function rehearsed(name: string, seed: number, count: number): readonly Rehearsed[] {
  const rehearsal = rehearseTrouble(example(name), { seed, count, day: ASKED_ON });
  if (!rehearsal.ok) throw new Error(JSON.stringify(rehearsal.problems));
  return rehearsal.cases.filter(({ signs }) => signs > 0);
}

const share = (all: readonly Rehearsed[], is: (one: Rehearsed) => boolean) =>
  all.filter(is).length / all.length;

describe("rehearseTrouble", () => {
  // Rates of the full run stand in docs/reference/validation.md; these floors leave room for a small count.
  it("finds most faults at once, nearly all among the first three, and more after the one look", () => {
    const all = [...rehearsed("alder-bank-brooder", 1, 40), ...rehearsed("alder-bank-five-days-away", 2, 40)];
    expect(all.length).toBeGreaterThan(40);
    expect(share(all, ({ rank }) => rank === 0)).toBeGreaterThan(0.5);
    expect(share(all, ({ rank }) => rank >= 0 && rank < 3)).toBeGreaterThan(0.8);
    expect(share(all, ({ rankAfterLook }) => rankAfterLook === 0)).toBeGreaterThan(
      share(all, ({ rank }) => rank === 0),
    );
  });

  it("is the same for the same seed, and another for another", () => {
    const [one, again, other] = [3, 3, 4].map((seed) => rehearsed("alder-bank-brooder", seed, 6));
    expect(again).toEqual(one);
    expect(other).not.toEqual(one);
  });
});

describe("causes of any plan", { timeout: 60_000 }, () => {
  it("give every look chances that add up to one, and shares that do", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 0x7fffffff }), (seed) => {
        const reading = checkDocument(randomPlan(seed));
        const asking = reading.ok ? askAboutTrouble(reading.plan, { day: ASKED_ON }) : undefined;
        if (asking?.ok !== true) throw new Error(`plan ${seed} cannot be asked about`);
        const { question } = asking;
        const causes = causesOf(question.bench, question.usual, []);
        const looks = looksAt(question.bench.line, []).filter((_, k) => k % 7 === seed % 7);
        // An opened end costs a solve for each cause: a few of them do.
        const some = causes.candidates.filter((_, k) => k % 9 === seed % 9);
        for (const look of looks) {
          for (const { states } of some) {
            const [state] = states;
            if (state === undefined) continue;
            const chances = chancesOf(look, state.expectation, question.seen);
            expect(chances).toHaveLength(ANSWERS[look.look].length);
            expect(Math.min(...chances)).toBeGreaterThan(0);
            expect(chances.reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 9);
          }
        }
        const { likely, otherShare } = rankCauses(question, causes, []);
        expect(likely.reduce((sum, one) => sum + one.share, otherShare)).toBeCloseTo(1, 9);
      }),
      cases(5),
    );
  });
});
