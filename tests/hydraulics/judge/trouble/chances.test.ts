import { describe, expect, it } from "vitest";
import { askAboutTrouble } from "../../../../packages/hydraulics/src/judge/trouble/ask-about-trouble.js";
import { chancesOf, SEEING } from "../../../../packages/hydraulics/src/judge/trouble/chances.js";
import { looksAt } from "../../../../packages/hydraulics/src/judge/trouble/looks-at.js";
import { ASKED_ON, example } from "./ask.js";

function asked() {
  const asking = askAboutTrouble(example("alder-bank-brooder"), { day: ASKED_ON });
  if (!asking.ok) throw new Error(JSON.stringify(asking.problems));
  return asking.question;
}

describe("chancesOf", () => {
  it("add up to one for every look there is", () => {
    const { bench, usual, seen } = asked();
    const looks = looksAt(bench.line, []);
    expect(new Set(looks.map(({ look }) => look)).size).toBeGreaterThan(5);
    for (const look of looks)
      expect(chancesOf(look, usual, seen).reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 12);
  });

  // A logistic curve of 1.7 over its spread, a common stand-in for the normal one; three in a hundred answers are slips.
  it("of a fall at night are even at what can be read, and 1 / (1 + exp(-1.7)) one spread beyond", () => {
    const { usual, seen } = asked();
    const [source] = usual.sources;
    const falls = (over: number) => {
      const nightFall = source!.nightUsual + SEEING.reading + over;
      const sources = [{ ...source!, nightFall, isKeptFull: false }];
      return chancesOf({ look: "night", at: "source", id: "bucket" }, { ...usual, sources }, seen)[0]!;
    };
    const slips = 0.03 * 0.4;
    expect(falls(0)).toBeCloseTo(0.97 * 0.5 + slips, 9);
    expect(falls(SEEING.readingSpread)).toBeCloseTo(0.97 / (1 + Math.exp(-1.7)) + slips, 3);
    expect(falls(-SEEING.readingSpread)).toBeCloseTo(0.97 / (1 + Math.exp(1.7)) + slips, 3);
  });
});
