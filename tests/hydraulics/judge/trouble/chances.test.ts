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

describe("chancesOf, by the same curve of 1.7 over its spread", () => {
  const { usual, seen } = asked();
  const curve = (x: number) => 1 / (1 + Math.exp(-1.7 * x));
  const slipped = (chance: number, slip: number) => 0.97 * chance + 0.03 * slip;

  it("low water is even at six centimetres under what was thought, and 1 / (1 + exp(-1.7)) two more", () => {
    const low = (below: number) => {
      const sources = [{ ...usual.sources[0]!, below, timeToEmpty: 1e12 }];
      return chancesOf({ look: "water", at: "source", id: "bucket" }, { ...usual, sources }, seen);
    };
    expect(low(0.06)[1]).toBeCloseTo(slipped(0.5, 0.3), 6);
    expect(low(0.08)[1]).toBeCloseTo(slipped(curve(1), 0.3), 6);
    expect(low(0)[2]).toBeCloseTo(slipped(1 - curve(-3), 0.6), 6);
  });

  it("an empty source is even where it lasts just since it was seen; certain where it stands at its outlet", () => {
    const empty = (timeToEmpty: number, below = 0) => {
      const sources = [{ ...usual.sources[0]!, below, timeToEmpty }];
      return chancesOf({ look: "water", at: "source", id: "bucket" }, { ...usual, sources }, seen)[0];
    };
    expect(empty(seen.usual.lastSeen)).toBeCloseTo(slipped(0.5, 0.1), 9);
    // Half a logarithm is one spread.
    expect(empty(seen.usual.lastSeen * Math.exp(-0.5))).toBeCloseTo(slipped(curve(1), 0.1), 9);
    expect(empty(1e12, Number.POSITIVE_INFINITY)).toBeCloseTo(slipped(1, 0.1), 12);
  });

  it("a drinker's drip is even at the limit of its seal, one spread an eighth beyond, and sure where it runs", () => {
    const drips = (over: number) =>
      chancesOf(
        { look: "drips", at: "drinker", id: "chick nipples 1" },
        { ...usual, overSeal: Float64Array.of(over, 0, 0, 0, 0) },
        seen,
      )[0];
    expect(drips(0)).toBeCloseTo(slipped(0.5, 0.15), 12);
    expect(drips(0.12)).toBeCloseTo(slipped(curve(1), 0.15), 12);
    expect(drips(Number.POSITIVE_INFINITY)).toBeCloseTo(slipped(1, 0.15), 12);
  });

  it("an opened end is plenty or not evenly at three fifths, and tells nothing where there is none to open", () => {
    const end = (share: number) =>
      chancesOf({ look: "end", at: "run", id: "hose" }, { ...usual, endShare: () => share }, seen);
    expect(end(0.6)[2]).toBeCloseTo(slipped(0.5, 0.3), 12);
    expect(end(0.05)[0]).toBeCloseTo(slipped(0.5, 0.2), 9);
    expect(end(Number.NaN)).toEqual([0.2, 0.5, 0.3].map((slip) => expect.closeTo(slipped(1 / 3, slip), 12)));
  });

  it("wet ground at the very place is as sure as the leak wets, three fifths of that along its run, none elsewhere", () => {
    const wet = (at: "drinker" | "run", id: string) =>
      chancesOf(
        { look: "ground", at, id },
        { ...usual, leaks: [{ at: "drinker", index: 1, run: 1, flow: 3e-9 }] },
        seen,
      )[0];
    expect(wet("drinker", "chick nipples 2")).toBeCloseTo(slipped(0.5, 0.4), 12);
    expect(wet("run", "chick line")).toBeCloseTo(slipped(0.5 * 0.6, 0.4), 12);
    expect(wet("drinker", "chick nipples 1")).toBeCloseTo(slipped(0, 0.4), 12);
    expect(wet("run", "hose")).toBeCloseTo(slipped(0, 0.4), 12);
  });

  it("a day's fall is still, less, as marked or faster by its ratio to the mark, half of all times begun in the middle", () => {
    const above = (ratio: number, bound: number) => curve(Math.log(ratio / bound) / 0.2);
    const fall = (ratio: number) => {
      const [some, most, more] = [0.12, 0.7, 1.4].map((bound) => above(ratio, bound));
      return [1 - some!, some! - most!, most! - more!, more!];
    };
    for (const ratio of [0.12, 0.4, 0.7, 1, 1.4, 3]) {
      // Each fall is read to a millimetre and a half.
      const sources = [{ ...usual.sources[0]!, dayUsual: 0.0985, dayFall: 0.1 * ratio - 0.0015 }];
      const told = chancesOf({ look: "day", at: "source", id: "bucket" }, { ...usual, sources }, seen);
      const later = fall((1 + ratio) / 2);
      expect(told).toEqual(
        fall(ratio).map((one, k) => expect.closeTo(slipped(0.5 * one + 0.5 * later[k]!, 0.25), 9)),
      );
    }
  });
});
