import { describe, expect, it } from "vitest";
import {
  spareOfDrinker,
  verdictOfDrinker,
  type WeighingCase,
  weighDrinker,
  weighTroubles,
} from "../../../packages/hydraulics/src/judge/weigh-drinker.js";

/** A drinker at 1 m that passes the root of its head over 5 cm, and needs what 20 cm over that give. */
interface Heads {
  /** Of the running line, and with nobody drinking at the lowest and at the full level [m above datum]. */
  readonly running: number;
  readonly idle: number;
  readonly full: number;
  /** What one more at work takes. */
  readonly oneMore?: number;
  readonly isAtWork?: boolean;
  readonly airHead?: number;
  readonly above?: number;
  readonly isReached?: boolean;
  readonly stuck?: number;
  readonly stalledBelow?: boolean;
  readonly outcome?: "solved" | "stalled";
  readonly holdsUpTo?: number;
  readonly sealsFrom?: number;
}

const caseOf = (heads: Heads): WeighingCase =>
  ({
    line: {
      drinkers: {
        ...{ count: 1, point: [0], height: [1], group: [0], need: [Math.sqrt(0.2)], coefficient: [1] },
        ...{ exponent: [0.5], openingHead: [0.05] },
        groups: [{ holdsUpTo: heads.holdsUpTo ?? 5, sealsFrom: heads.sealsFrom ?? 0 }],
        ...(heads.stuck === undefined ? {} : { stuck: [heads.stuck] }),
      },
    },
    moments: { named: { lowestBusiest: { atWork: [heads.isAtWork ? 1 : 0] } } },
    fullIdle: { idle: { head: [heads.full] } },
    lowestBusiest: {
      solution: {
        head: [heads.running],
        reached: [heads.isReached === false ? 0 : 1],
        outcome: heads.outcome ?? "solved",
      },
      idle: { head: [heads.idle] },
      oneMore: { atNeed: [heads.oneMore ?? 0] },
    },
    filling: { airHead: [heads.airHead ?? 0], above: [heads.above ?? -1] },
    stalledBelow: heads.stalledBelow ?? false,
  }) as unknown as WeighingCase;

const PLENTY: Heads = { running: 1.8, idle: 2, full: 2.5 };
const verdict = (heads: Partial<Heads>) => verdictOfDrinker(caseOf({ ...PLENTY, ...heads }), 0);

describe("weighDrinker", () => {
  it("takes off the running head what one more at work takes, but not of one that is at work, and the air on the way", () => {
    const head = (heads: Partial<Heads>) => weighDrinker(caseOf({ ...PLENTY, ...heads }), 0).head;
    expect(head({})).toBeCloseTo(0.8, 12);
    expect(head({ oneMore: 0.1, airHead: 0.2 })).toBeCloseTo(0.5, 12);
    expect(head({ oneMore: 0.1, airHead: 0.2, isAtWork: true })).toBeCloseTo(0.6, 12);
  });

  it("tells heads over the drinker, full and lowest, and what of the lowest presses on its seal", () => {
    expect(weighDrinker(caseOf({ ...PLENTY, airHead: 0.2 }), 0)).toMatchObject({
      ...{ headNeeded: expect.closeTo(0.25, 12), opening: 0.05, airHead: 0.2, isReached: true },
      ...{ idleFull: 1.5, idleLowest: 1, idleOnSeal: expect.closeTo(0.8, 12), isCutOff: false },
    });
  });

  it("is cut off stuck shut, unreached, behind a hump that stands above the water, or where a sealed source has stalled", () => {
    const isCutOff = (heads: Partial<Heads>) => weighDrinker(caseOf({ ...PLENTY, ...heads }), 0).isCutOff;
    expect([isCutOff({ stuck: 2 }), isCutOff({ stuck: 1 }), isCutOff({ isReached: false })]).toEqual([
      true,
      false,
      true,
    ]);
    expect([isCutOff({ above: 0.001 }), isCutOff({ above: 0 })]).toEqual([true, false]);
    expect([isCutOff({ stalledBelow: true }), isCutOff({ stalledBelow: true, idle: 1.05 })]).toEqual([
      false,
      true,
    ]);
  });
});

describe("verdictOfDrinker", () => {
  it("is dry up to its opening head, starves under the head it needs, and is good from that on", () => {
    // It opens at 5 cm and needs 25.
    expect(verdict({ running: 1.049 })).toBe("dry");
    expect(verdict({ running: 1.051 })).toBe("starves");
    expect(verdict({ running: 1.249 })).toBe("starves");
    expect(verdict({ running: 1.251 })).toBe("good");
    expect(verdict({ outcome: "stalled" })).toBe("dry");
    expect(verdict({ isReached: false })).toBe("dry");
  });

  it("drips over what it holds when full, or where too little presses its seal shut, and not where nothing does", () => {
    expect(verdict({ holdsUpTo: 1.5 })).toBe("good");
    expect(verdict({ holdsUpTo: 1.499 })).toBe("drips");
    expect(verdict({ sealsFrom: 1 })).toBe("good");
    expect(verdict({ sealsFrom: 1.001 })).toBe("drips");
    expect(verdict({ sealsFrom: 1.001, airHead: 1 })).toBe("dry");
    expect(verdict({ running: 1.1, holdsUpTo: 1 })).toBe("starves");
  });
});

describe("weighTroubles", () => {
  it("tells the worst first: supply, then each way in which it drips, the farther beyond first", () => {
    const troubles = (heads: Partial<Heads>) => weighTroubles(caseOf({ ...PLENTY, ...heads }), 0);
    expect(troubles({})).toEqual([{ verdict: "good", margin: expect.closeTo(0.55, 12), of: "supply" }]);
    expect(troubles({ holdsUpTo: 1.4, sealsFrom: 1.3 })).toEqual([
      { verdict: "drips", margin: expect.closeTo(-0.3, 12), of: "lowSeal" },
      { verdict: "drips", margin: expect.closeTo(-0.1, 12), of: "fullSeal" },
      { verdict: "good", margin: expect.closeTo(0.55, 12), of: "supply" },
    ]);
    expect(troubles({ running: 1.15, holdsUpTo: 1.4 }).map(({ verdict: one, of }) => [one, of])).toEqual([
      ["starves", "supply"],
      ["drips", "fullSeal"],
    ]);
    expect(troubles({ isReached: false, holdsUpTo: 1.4 }).map(({ of }) => of)).toEqual(["supply"]);
  });
});

describe("spareOfDrinker", () => {
  const spare = (heads: Partial<Heads>) => spareOfDrinker(caseOf({ ...PLENTY, ...heads }), 0);

  it("is on the one side the least of what is over its need and over what shuts it, on the other what it still holds", () => {
    expect(spare({ holdsUpTo: 2 })).toEqual({
      below: expect.closeTo(0.55, 12),
      above: expect.closeTo(0.5, 12),
    });
    expect(spare({ sealsFrom: 0.7 }).below).toBeCloseTo(0.3, 12);
    expect(spare({ holdsUpTo: 1.2 }).above).toBeCloseTo(-0.3, 12);
  });

  it("is as far below as a hump stands above the water, and all of it where no head brings any", () => {
    expect(spare({ above: 0.15 }).below).toBeCloseTo(-0.15, 12);
    expect(spare({ above: 0 }).below).toBeCloseTo(0.55, 12);
    expect(spare({ isReached: false }).below).toBe(Number.NEGATIVE_INFINITY);
    expect(spare({ outcome: "stalled" })).toEqual({
      below: Number.NEGATIVE_INFINITY,
      above: expect.closeTo(3.5, 12),
    });
  });
});
