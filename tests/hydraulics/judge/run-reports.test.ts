import { describe, expect, it } from "vitest";
import { headLossDarcyWeisbach } from "../../../packages/hydraulics/src/physics/darcy-weisbach.js";
import { headLossHazenWilliams } from "../../../packages/hydraulics/src/physics/hazen-williams.js";
import { VENT_SHARE, ventDiameterFor } from "../../../packages/hydraulics/src/physics/vent.js";
import { checkOf, yard } from "./yard/yard.js";

const BORE = 0.008;
const AREA = (Math.PI / 4) * BORE ** 2;
const lane = (more: Record<string, unknown> = {}) =>
  checkOf(
    yard({
      runs: [
        { length: "1 m", pipe: { bore: "10 cm" } },
        {
          id: "lane",
          length: "12 m",
          pipe: { bore: "8 mm", hazenWilliams: 150, roughness: "0.0015 mm" },
          drinkers: { kind: "plain", count: 6, busiest: 6 },
          ...more,
        },
      ],
    }),
  );

describe("checkPlan reports of a run, full and busiest", () => {
  it("the flow at its busiest end, its velocity, Reynolds number and regime", () => {
    const checked = lane();
    const report = checked.runs[1]!;
    const { drinkerFlow } = checked.solutions.fullBusiest.hazenWilliams;
    const flow = drinkerFlow.reduce((sum, q) => sum + q, 0);
    expect(report.busiest.flow / flow).toBeCloseTo(1, 12);
    expect(report.busiest.velocity).toBeCloseTo(flow / AREA, 12);
    expect(report.busiest.reynolds).toBeCloseTo(
      (4 * flow) / (Math.PI * BORE * checked.line.water.viscosity),
      6,
    );
    expect(report.busiest.regime).toBe("laminar");
    expect(report.busiest.hazenWilliamsInRange).toBe(false);
    expect(report).toMatchObject({ run: "lane", length: 12, bore: BORE });
    expect(report.volume).toBeCloseTo(AREA * 12, 12);
  });

  it("what either law loses along it, the sum over its six pieces each with its own flow", () => {
    const checked = lane();
    const pieces = (law: "hazenWilliams" | "darcyWeisbach") => {
      const { drinkerFlow } = checked.solutions.fullBusiest[law];
      return [0, 1, 2, 3, 4, 5].map((k) => drinkerFlow.slice(k).reduce((sum, q) => sum + q, 0));
    };
    const sum = (losses: readonly number[]) => losses.reduce((a, b) => a + b, 0);
    const { loss } = checked.runs[1]!.busiest;
    expect(loss.hazenWilliams).toBeCloseTo(
      sum(
        pieces("hazenWilliams").map((q) =>
          headLossHazenWilliams({ length: 2, bore: BORE, coefficient: 150 }, q),
        ),
      ),
      10,
    );
    const run = { length: 2, bore: BORE, roughness: 1.5e-6, viscosity: checked.line.water.viscosity };
    expect(loss.darcyWeisbach).toBeCloseTo(
      sum(pieces("darcyWeisbach").map((q) => headLossDarcyWeisbach(run, q))),
      10,
    );
    // The same from the heads at its ends.
    const { head } = checked.solutions.fullBusiest.darcyWeisbach;
    const { points } = checked.line.runs[1]!;
    expect(loss.darcyWeisbach).toBeCloseTo(head[points[0]!]! - head[points.at(-1)!]!, 6);
  });

  it("stillness where nobody drinks beyond", () => {
    const still = lane({ drinkers: { kind: "plain", count: 6, busiest: 0 } }).runs[1]!.busiest;
    expect(still).toEqual({
      flow: 0,
      velocity: 0,
      reynolds: 0,
      regime: "still",
      loss: { hazenWilliams: 0, darcyWeisbach: 0 },
      hazenWilliamsInRange: false,
    });
  });
});

describe("checkPlan reports of a source", () => {
  it("what it holds, what of that can be used, and what it gives at the busiest", () => {
    const checked = lane();
    const [source] = checked.sources;
    const area = (Math.PI / 4) * 0.57 ** 2;
    expect(source?.volumeFull).toBeCloseTo(area * 0.7, 9);
    expect(source?.volumeUsable).toBeCloseTo(area * 0.6, 9);
    expect(source?.volumeDead).toBeCloseTo(area * 0.1, 9);
    expect(source?.surface).toEqual({ fullIdle: 1.1, fullBusiest: 1.1, lowestBusiest: 0.5, ordinary: 0.8 });
    expect(source?.drawBusiest).toBe(checked.solutions.fullBusiest.darcyWeisbach.sourceFlow[0]);
  });

  it("the vent it needs: one that takes a hundredth of the head over its lowest valve, the water at its lowest", () => {
    const checked = lane({ fall: "60 cm" });
    const [source] = checked.sources;
    const lowest = Math.min(...checked.line.drinkers.height);
    expect(lowest).toBeLessThan(-0.4);
    expect(source!.ventDiameterNeeded).toBeCloseTo(
      ventDiameterFor({
        flow: source!.drawBusiest,
        headAllowed: VENT_SHARE * (0.5 - lowest),
        density: checked.line.water.density,
      }),
      12,
    );
  });
});
