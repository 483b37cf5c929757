import { describe, expect, it } from "vitest";
import type { Plan } from "../../../../packages/hydraulics/src/document/plan-schema.js";
import { askAboutTrouble } from "../../../../packages/hydraulics/src/judge/trouble/ask-about-trouble.js";
import type { CauseCode } from "../../../../packages/hydraulics/src/judge/trouble/cause.js";
import { causesOf } from "../../../../packages/hydraulics/src/judge/trouble/causes-of.js";
import { fallingLevel } from "../../../../packages/hydraulics/src/judge/trouble/falling-level.js";
import type { Source } from "../../../../packages/hydraulics/src/model/line.js";
import { GRAVITY } from "../../../../packages/hydraulics/src/physics/constants.js";
import { timeToDrainUpright } from "../../../../packages/hydraulics/src/physics/draining.js";
import { example } from "./ask.js";

function expectationsOf(plan: Plan) {
  const asking = askAboutTrouble(plan, { day: "2026-07-04" });
  if (!asking.ok) throw new Error(JSON.stringify(asking.problems));
  const { question } = asking;
  const { candidates } = causesOf(question.bench, question.usual, []);
  const at = (code: CauseCode, id: string) =>
    candidates.find(({ cause }) => cause.code === code && cause.id === id)!.states;
  return { question, at };
}

describe("signatures of causes, from the solver", () => {
  const { question, at } = expectationsOf(example("alder-bank-hen-house"));
  const { usual, bench } = question;
  const indexOf = (id: string) => bench.line.drinkers.id.indexOf(id);

  it("a drinker stuck open runs, wets its place and lowers the level by what it passes in the dark", () => {
    const [state] = at("drinkerStuckOpen", "hen line 12");
    const { overSeal, leaks, sources } = state!.expectation;
    expect(overSeal[indexOf("hen line 12")]).toBe(Number.POSITIVE_INFINITY);
    expect(leaks).toHaveLength(1);
    const leak = leaks[0]!;
    // The drum's own curve at this level, about a third of a square metre: volume over fall.
    const surface = (leak.flow * bench.dark) / sources[0]!.nightFall;
    expect(surface).toBeGreaterThan(0.2);
    expect(surface).toBeLessThan(0.35);
    expect(sources[0]!.timeToEmpty).toBeLessThan(usual.sources[0]!.timeToEmpty);
  });

  it("a run that lets nothing through leaves all behind it dry, and those before it as they were", () => {
    const states = at("runBlocked", "hen line").filter(({ severity }) => severity.openShare === 0);
    for (const { severity, expectation } of states) {
      bench.line.drinkers.along.forEach((along, d) => {
        const isBehind = along > severity.along! + 1e-9;
        expect(expectation.flow[d]! > 0).toBe(!isBehind);
        if (!isBehind) expect(expectation.flow[d]).toBeGreaterThanOrEqual(usual.flow[d]! * 0.999);
      });
    }
    expect(states.length).toBeGreaterThan(4);
  });

  it("the narrower the place that is left open, the less comes through", () => {
    const atStart = at("runBlocked", "feed").filter(({ severity }) => severity.along === 0);
    const flows = atStart
      .sort((a, b) => a.severity.openShare! - b.severity.openShare!)
      .map(({ expectation }) => expectation.flow[23]!);
    for (const [k, flow] of flows.slice(1).entries()) expect(flow).toBeGreaterThan(flows[k]!);
    expect(flows[0]).toBe(0);
    expect(flows.at(-1)).toBeLessThan(usual.flow[23]!);
  });

  it("a blocked vent stops every drinker, and only the lid brings them back", () => {
    const [stalled] = at("ventBlocked", "barrel");
    expect(Math.max(...stalled!.expectation.flow)).toBe(0);
    expect(stalled!.expectation.sources[0]!.nightFall).toBe(0);
    expect(stalled!.expectation.lidGain(0)).toBeGreaterThan(10);
    expect(usual.lidGain(0)).toBe(1);
  });

  it("an open end of a run that is whole gives what it gives in the plan; of a blocked one, nothing", () => {
    const states = at("runBlocked", "riser");
    const shut = states.find(({ severity }) => severity.openShare === 0)!.expectation;
    const runs = bench.line.runs.map(({ id }) => id);
    expect(shut.endShare(runs.indexOf("feed"))).toBeCloseTo(1, 6);
    expect(shut.endShare(runs.indexOf("hen line"))).toBe(0);
  });

  it("birds that drink more lower the level by as much more in a day, and by night hardly", () => {
    const { expectation } = at("moreDrunk", "")[0]!;
    const ratio = expectation.sources[0]!.dayFall / usual.sources[0]!.dayFall;
    expect(ratio).toBeGreaterThan(1.9);
    expect(ratio).toBeLessThan(2.1);
  });

  it("sources that are empty give nothing", () => {
    const empty = at("waterLow", "barrel").at(-1)!;
    expect(Math.max(...empty.expectation.flow)).toBe(0);
    expect(empty.expectation.sources[0]).toMatchObject({ below: Number.POSITIVE_INFINITY, timeToEmpty: 0 });
  });
});

describe("fallingLevel", () => {
  const source = {
    shape: { kind: "upright", diameter: 0.6, height: 1 },
    outlet: 0,
  } as unknown as Source;
  const outlet = { area: 2e-6, dischargeCoefficient: 0.61 };
  const leakAt = (level: number) =>
    outlet.dischargeCoefficient * outlet.area * Math.sqrt(2 * GRAVITY * level);

  it("comes down within two parts in a hundred of the time Torricelli's law gives", () => {
    const falling = fallingLevel(source, 0.8, leakAt);
    const exact = timeToDrainUpright({ diameter: 0.6 }, outlet, { from: 0.8, to: 0.4 });
    expect(falling.fallIn(exact, 0)).toBeCloseTo(0.4, 2);
    expect(Math.abs(falling.fallIn(exact, 0) / 0.4 - 1)).toBeLessThan(0.02);
  });

  it("of what is drawn evenly comes down by volume over time, and by what flows in not at all", () => {
    const falling = fallingLevel(source, 0.8, () => 0);
    const area = (Math.PI * 0.6 * 0.6) / 4;
    expect(falling.fallIn(3600, 1e-5)).toBeCloseTo((3600 * 1e-5) / area, 9);
    expect(falling.timeToEmpty(1e-5)).toBeCloseTo((0.8 * area) / 1e-5, 3);
    expect(falling.fallIn(3600, -1e-5)).toBe(0);
    expect(falling.timeToEmpty(0)).toBe(Number.POSITIVE_INFINITY);
  });
});

describe("a cup that hangs askew, and one whose float hangs low", () => {
  const { question, at } = expectationsOf(example("alder-bank-rain-barrel"));
  const { bench } = question;

  it("are the same to the line and to the ground, and differ in what stands in that cup alone", () => {
    const [[tipped], [low]] = [at("cupTipped", "duck trough"), at("floatStuckOpen", "duck trough")];
    const d = bench.line.drinkers.id.indexOf("duck trough");
    const [one, other] = [tipped!.expectation, low!.expectation];
    expect(one.leaks.map(({ index }) => index)).toEqual(other.leaks.map(({ index }) => index));
    one.leaks.forEach(({ flow }, k) => {
      expect(flow / other.leaks[k]!.flow).toBeCloseTo(1, 6);
    });
    expect(one.sources[0]!.nightFall / other.sources[0]!.nightFall).toBeCloseTo(1, 6);
    expect(low!.expectation.flow[d]).toBeGreaterThan(0);
    low!.expectation.flow.forEach((flow, k) => {
      expect(tipped!.expectation.flow[k]).toBeCloseTo(k === d ? flow / 10 : flow, 12);
    });
  });
});
