import { describe, expect, it } from "vitest";
import { yard } from "../yard/yard.js";
import { sampledOf } from "./sampling.js";

/**
 * One drinker under 1.6 m of water, at the end of a pipe of 6 mm. What passes it at work, some 0.85 L/min, flows between
 * laminar and turbulent there: Re = 4 Q/(π d ν) = 3,000. A tenth of that is laminar.
 */
const plan = (length: string, flow: "laminar" | "critical") => {
  const times = flow === "critical" ? 10 : 1;
  return yard({
    stand: "150 cm",
    drinker: {
      readings: [
        { head: "25 cm", flow: `${38 * times} mL/min` },
        { head: "1 m", flow: `${76 * times} mL/min` },
      ],
      need: `${20 * times} mL/min`,
    },
    runs: [
      {
        ...{ length, fall: "0 cm", pipe: { bore: "6 mm" } },
        ...{ drinkers: { kind: "plain", count: 1, busiest: 1, first: length } },
      },
    ],
  });
};

/** The head to spare of the only drinker, nothing off, with the critical loss taken for such a share. */
function spareOf(document: unknown, share?: number) {
  const { sampler, drinkers } = sampledOf(document)!;
  const { judge, inputs } = sampler({ seed: 1 });
  const off = { inputs: new Float64Array(inputs.length), own: new Float64Array(drinkers.length) };
  return judge(off, share).spare(0);
}

describe("a sample whose loss between laminar and turbulent is less than written", () => {
  it("is that of so much less pipe, where the water flows so", () => {
    const [whole, half, short] = [
      spareOf(plan("4 m", "critical")),
      spareOf(plan("4 m", "critical"), 0.5),
      spareOf(plan("2 m", "critical")),
    ];
    expect(half.below).toBeGreaterThan(whole.below + 0.01);
    // By Hazen-Williams nothing is in doubt there; the smaller of the two laws is told.
    expect(half.below).toBeLessThanOrEqual(short.below + 1e-9);
    expect(half.above).toBeCloseTo(whole.above, 12);
  });

  it("is the same as written where the water is laminar, or no share is taken off", () => {
    expect(spareOf(plan("4 m", "laminar"), 0.5)).toEqual(spareOf(plan("4 m", "laminar")));
    expect(spareOf(plan("4 m", "critical"), 1)).toEqual(spareOf(plan("4 m", "critical")));
  });
});

describe("a sample", () => {
  const { sampler, baseline } = sampledOf(plan("4 m", "critical"))!;
  const { take, inputs, drinkers } = sampler({ seed: 7 });

  it("keeps the verdict as written where nothing of the doubt is kept", () => {
    const nothing = { inputs: new Float64Array(inputs.length), rest: 0 };
    for (const k of [0, 5, 11]) {
      const { off, verdicts } = take(k, nothing);
      expect([...off.inputs, ...off.own].every((z) => z === 0)).toBe(true);
      expect([...verdicts]).toEqual(baseline);
    }
    expect(drinkers).toBe(1);
  });

  it("is the same by its number, and half as far off where half of the doubt is kept", () => {
    const [once, again] = [take(3), take(3)];
    expect([...again.off.inputs]).toEqual([...once.off.inputs]);
    const half = take(3, { inputs: new Float64Array(inputs.length).fill(0.5), rest: 0.5 });
    half.off.inputs.forEach((z, i) => {
      expect(z).toBeCloseTo(once.off.inputs[i]! / 2, 12);
    });
    expect(half.off.own[0]).toBeCloseTo(once.off.own[0]! / 2, 12);
  });
});
