import { describe, expect, it } from "vitest";
import type { CheckOptions } from "../../../../packages/hydraulics/src/judge/check-plan.js";
import type { Certainty, Checked } from "../../../../packages/hydraulics/src/judge/check-result.js";
import { writeInput } from "../../../../packages/hydraulics/src/report/sureness/certainty-words.js";
import { checkOf, verdictOf, yard } from "../yard/yard.js";

interface Doubted {
  /** Head over the only drinker at the lowest level [cm]; it needs 16. */
  readonly head: number;
  readonly heights?: string;
  readonly level?: string;
  readonly drinker?: Record<string, unknown>;
  readonly options?: CheckOptions;
}

const plan = ({ head, heights = "1 cm", level = "2 cm", drinker = {} }: Doubted) =>
  yard({
    stand: `${(head - 10).toFixed(3)} cm`,
    runs: [{ length: "3 m", pipe: { bore: "10 cm" }, drinkers: { kind: "plain", count: 1 } }],
    drinker,
    more: { doubts: { heights, level } },
  });
const certaintyOf = (doubted: Doubted): Certainty =>
  verdictOf(checkOf(plan(doubted), doubted.options ?? { samples: 400 })).certainty;
const closeCall = (certainty: Certainty) => {
  if (certainty.kind !== "closeCall") throw new Error(JSON.stringify(certainty));
  return certainty;
};

describe("checkPlan is sure", () => {
  it("far from the edge, on either side of it", () => {
    expect(certaintyOf({ head: 60 })).toEqual({ kind: "sure", share: 1, samples: 400, isDecided: true });
    const starving = verdictOf(checkOf(plan({ head: 11 }), { samples: 400 }));
    expect(starving).toMatchObject({ verdict: "starves", certainty: { kind: "sure", isDecided: true } });
  });

  it("of nothing when it has not sampled", () => {
    expect(certaintyOf({ head: 60, options: { samples: 0 } })).toEqual({ kind: "notSampled" });
  });
});

describe("checkPlan calls it close", () => {
  it("on the edge, where as many samples go either way, and says what it would be otherwise", () => {
    const { share, otherwise } = closeCall(certaintyOf({ head: 16.01 }));
    expect(share).toBeGreaterThan(0.4);
    expect(share).toBeLessThan(0.6);
    expect(otherwise).toBe("starves");
  });

  it("between starving and dry as well, for a drinker that hardly opens", () => {
    const opens = {
      opensAt: "6 cm",
      readings: [
        { head: "31 cm", flow: "50 mL/min" },
        { head: "106 cm", flow: "100 mL/min" },
      ],
    };
    expect(closeCall(certaintyOf({ head: 11, level: "8 cm", drinker: opens })).otherwise).toBe("dry");
  });

  it.each([
    ["the water level of barrel", { level: "8 cm", heights: "0.1 cm" }],
    ["the height of run 1 end", { level: "0.1 cm", heights: "8 cm" }],
    [
      "the flow of plain (jug and watch)",
      {
        level: "0.1 cm",
        heights: "0.1 cm",
        drinker: {
          readings: [
            { head: "25 cm", flow: "32 mL/min" },
            { head: "50 cm", flow: "95 mL/min" },
            { head: "1 m", flow: "100 mL/min" },
          ],
        },
      },
    ],
  ] as const)("and says to measure %s again, where that is what decides", (what, doubts) => {
    const isAboutFlow = what.startsWith("the flow");
    const found = certaintyOf({ head: isAboutFlow ? 23 : 16.4, ...doubts, options: { samples: 600 } });
    const measureAgain = writeInput(closeCall(found).measureAgain!.input);
    // The barrel's stand and the drinker's place are doubted alike: either may be named.
    if (what.startsWith("the height")) expect(measureAgain).toMatch(/^the height of (run 1 end|barrel)$/);
    else expect(measureAgain).toBe(what);
  });
});

describe("checkPlan of a hump near the level of the lowest water", () => {
  /** A hump with a bleed, so many centimetres high, under water that stands 30 cm at its lowest. */
  const behind = (high: string) => {
    const survey = [
      { along: "2 m", fall: `-${high}`, bleed: true },
      { along: "4 m", fall: "0 cm" },
    ];
    const runs = [
      { length: "2 m", fall: "0 cm" },
      { id: "lane", length: "12 m", fall: "0 cm", survey, drinkers: { kind: "plain", count: 1 } },
    ];
    return verdictOf(checkOf(yard({ stand: "0 cm", lowest: "30 cm", runs }), { samples: 400 }));
  };

  it("is sure 10 cm under it, and a close call 5 mm under it: half a centimetre decides between good and dry", () => {
    expect(behind("20 cm")).toMatchObject({ verdict: "good", certainty: { kind: "sure" } });
    const close = behind("29.5 cm");
    expect(close.verdict).toBe("good");
    expect(closeCall(close.certainty).otherwise).toBe("dry");
    // 5 mm against 1 cm of level and 5 mm each of hump and stand (one deviation): 0.66 good by the normal law.
    expect(closeCall(close.certainty).share).toBeCloseTo(0.66, 1);
    expect(closeCall(close.certainty).measureAgain).toEqual({
      input: { kind: "level", source: "barrel" },
      doubt: 0.02,
    });
  });
});

describe("checkPlan's samples", () => {
  it("tell on the way what a check with so many of them says, and come to the same whether asked or not", () => {
    const close = plan({ head: 16.5 });
    const told: Checked[] = [];
    const soFar = { after: [16, 100, 300], tell: (checked: Checked) => told.push(checked) };
    const whole = checkOf(close, { samples: 300, soFar });
    expect(told).toEqual([16, 100].map((samples) => checkOf(close, { samples })));
    expect(whole).toEqual(checkOf(close, { samples: 300 }));
  });

  it("are the same for the same seed, and others for another", () => {
    const at = (seed: number) => certaintyOf({ head: 16.5, options: { samples: 300, seed } });
    expect(at(7)).toEqual(at(7));
    const shares = new Set([1, 2, 3, 4, 5].map((seed) => closeCall(at(seed)).share));
    expect(shares.size).toBeGreaterThan(1);
  });

  it("find the chance that quadrature finds: a level within 4 cm, drinkers that differ by a tenth", () => {
    // Good where 2 cm of level off (one deviation) leaves more than the need: 16 cm exp(-0.1 z) for a drinker z off.
    const head = 17.5;
    const normal = (z: number) => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
    const step = 0.01;
    let chance = 0;
    for (let z = -6; z <= 6; z += step) {
      const least = (16 * Math.exp(-0.1 * z) - head) / 2;
      let above = 0;
      for (let y = Math.max(-6, least); y <= 6; y += step) above += normal(y) * step;
      chance += normal(z) * above * step;
    }
    const { share } = closeCall(
      certaintyOf({ head, heights: "0 cm", level: "4 cm", options: { samples: 3000 } }),
    );
    // Three standard deviations of a share from 3,000 samples.
    expect(Math.abs(share - chance)).toBeLessThan(3 * Math.sqrt((chance * (1 - chance)) / 3000));
  });
});
