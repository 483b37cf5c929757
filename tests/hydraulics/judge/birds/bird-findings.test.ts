import { describe, expect, it } from "vitest";
import { checkOf } from "../yard/yard.js";
import { codesOf, findingOf, flockOfPlan, penPlan } from "./pens.js";

const hens = (age: string, count = 8) => ({ kind: "hen", count, age });

describe("checkPlan finds", () => {
  it("nothing to say of a few grown hens whose line hangs right and gives what they can use", () => {
    const { hangAt } = flockOfPlan(penPlan({ birds: hens("52 weeks") })).groups[0]!;
    const above = `${(hangAt!.height * 100).toFixed(1)} cm`;
    expect(codesOf(flockOfPlan(penPlan({ birds: hens("52 weeks"), above })))).toEqual([]);
  });

  it("a line that hangs too high for chicks, and too low for grown hens", () => {
    const { hangAt } = flockOfPlan(penPlan({ birds: hens("52 weeks") })).groups[0]!;
    const above = `${(hangAt!.height * 100).toFixed(1)} cm`;
    const high = findingOf(flockOfPlan(penPlan({ birds: hens("3 days"), above })), "hangsTooHigh");
    expect(high.height).toBeCloseTo(hangAt!.height, 3);
    expect(high.height).toBeGreaterThan(high.high);
    const low = findingOf(flockOfPlan(penPlan({ birds: hens("52 weeks"), above: "10 cm" })), "hangsTooLow");
    expect(low.height).toBeLessThan(low.low);
  });

  it("nothing of heights where the plan says nothing of the ground", () => {
    const plan = { ...penPlan({ above: "0 cm" }) };
    expect(flockOfPlan(plan).groups[0]!.height).toBeUndefined();
    expect(codesOf(flockOfPlan(plan)).filter((code) => code.startsWith("hangs"))).toEqual([]);
  });

  it("one drinker in reach of several birds, none in reach of any, and nothing of one drinker for one bird", () => {
    const one = (count: number) => penPlan({ birds: hens("52 weeks", count), drinkers: { count: 1 } });
    expect(findingOf(flockOfPlan(one(6)), "oneInReach")).toMatchObject({ pen: "hens", birds: 6 });
    expect(codesOf(flockOfPlan(one(1)))).not.toContain("oneInReach");
    const plan = penPlan();
    const other = { id: "yard", birds: hens("52 weeks", 5) };
    const none = { ...plan, pens: [{ ...plan.pens[0], drinkers: ["hen line"] }, other] };
    expect(findingOf(flockOfPlan(none), "noDrinkers")).toMatchObject({ pen: "yard", birds: 5 });
  });

  it("a crowd that wants more in its busiest hour than it can drink", () => {
    const crowded = flockOfPlan(penPlan({ birds: hens("52 weeks", 2000) }));
    const { demand, capacity, short } = findingOf(crowded, "crowdSaturates");
    expect(demand).toBeGreaterThan(capacity);
    expect(short).toBeCloseTo(1 - capacity / demand, 12);
    expect(crowded.pens[0]).toMatchObject({
      saturates: true,
      meanWait: undefined,
      chanceAllTaken: undefined,
    });
    expect(codesOf(flockOfPlan(penPlan()))).not.toContain("crowdSaturates");
  });

  it("chicks at open water, until they no longer drown in it", () => {
    const bell = (age: string) =>
      flockOfPlan(penPlan({ birds: hens(age), drinkers: { kind: "bell", count: 2 } }));
    const { ageDays, untilDays } = findingOf(bell("3 days"), "mayDrown");
    expect(ageDays).toBe(3);
    expect(codesOf(bell(`${untilDays} days`))).not.toContain("mayDrown");
  });

  it("a flow the plan thinks enough and the birds' age does not, and one beyond what any trial found of use", () => {
    const asked = (need: string, stand: string) => {
      const plan = penPlan({ birds: hens("52 weeks"), drinkers: { need } });
      return flockOfPlan({ ...plan, sources: [{ ...plan.sources[0], stand }] });
    };
    // 13.7 mL/min at the root of a centimetre of head: some 30 at 5 cm over its opening, 150 at 1.3 m.
    const { flow, need } = findingOf(asked("10 mL/min", "30 cm"), "flowUnderNeed");
    expect(flow).toBeLessThan(need);
    expect(flow).toBeGreaterThan(0);
    expect(codesOf(asked("10 mL/min", "60 cm"))).not.toContain("flowUnderNeed");
    const strong = findingOf(asked("10 mL/min", "150 cm"), "flowAboveBenefit");
    expect(strong.flow).toBeGreaterThan(strong.most);
    expect(strong.most * 6e7).toBeCloseTo(120, 9);
  });

  it("a flow near the one at which more birds died in a hot summer, on hot days and for birds of some weeks only", () => {
    const at = (high: string, age: string, stand: string) => {
      const plan = penPlan({ birds: hens(age), more: { weather: { high: "21 degC", hotSpell: { high } } } });
      return flockOfPlan({ ...plan, sources: [{ ...plan.sources[0], stand }] });
    };
    // 0.4 and 2.3 mL/s: Poultry Science 71:1450.
    const { flow, high, triedLow, triedHigh } = findingOf(
      at("35 degC", "52 weeks", "30 cm"),
      "lowFlowInHeat",
    );
    expect([triedLow * 1e6, triedHigh * 1e6]).toEqual([expect.closeTo(0.4, 9), expect.closeTo(2.3, 9)]);
    expect(flow).toBeLessThan(Math.sqrt(triedLow * triedHigh));
    expect(high).toBe(35);
    expect(codesOf(at("25 degC", "52 weeks", "30 cm"))).not.toContain("lowFlowInHeat");
    expect(codesOf(at("35 degC", "2 weeks", "30 cm"))).not.toContain("lowFlowInHeat");
    expect(codesOf(at("35 degC", "52 weeks", "90 cm"))).not.toContain("lowFlowInHeat");
  });

  it("birds that have not hatched yet, and counts them for nothing", () => {
    const birds = [hens("52 weeks", 6), { kind: "hen", count: 40, hatched: "2026-07-20" }];
    const flock = flockOfPlan(penPlan({ birds, more: { day: "2026-07-04" } }));
    expect(findingOf(flock, "notYetCome")).toMatchObject({ pen: "hens", days: 16 });
    expect(flock.pens[0]).toMatchObject({ birds: 6 });
    expect(flock.pens[0]!.batches[1]).toMatchObject({ ageDays: -16, intakeSize: 0, flowNeed: 0, rate: 0 });
  });
});

describe("the least flow that birds of some ages should have", () => {
  const flockOf = (birds: unknown[]) => {
    const plan = penPlan({
      birds,
      drinkers: { need: "10 mL/min" },
      more: { day: "2026-07-04", weather: { high: "21 degC" } },
    });
    return flockOfPlan({ ...plan, sources: [{ ...plan.sources[0], stand: "30 cm" }] });
  };
  const young = { kind: "meat-chicken", count: 10, age: "2 weeks" };

  it("is that of the oldest who are there: 20 mL/min, and 7 more for each week", () => {
    const { need, ageDays } = findingOf(flockOf([young, { ...young, age: "5 weeks" }]), "flowUnderNeed");
    expect(need * 6e7).toBeCloseTo(20 + 7 * 5, 6);
    expect(ageDays).toBe(35);
  });

  it("is not that of birds who have left, or come later", () => {
    for (const gone of [{ leaves: "2026-07-01" }, { age: undefined, hatched: "2026-07-20" }]) {
      const flock = flockOf([young, { ...young, age: "8 weeks", ...gone }]);
      const under = flock.findings.filter(({ code }) => code === "flowUnderNeed");
      for (const found of under) expect(found).toMatchObject({ ageDays: 14 });
      const alone = flockOf([young]).findings.filter(({ code }) => code === "flowUnderNeed");
      expect(under).toEqual(alone);
    }
  });
});

describe("a flow beyond what is of use", () => {
  it("is told of the drinker that gives most by either law of friction, when the vessel is full", () => {
    const plan = penPlan({ birds: hens("52 weeks"), run: { pipe: { bore: "4 mm" } } });
    const flock = flockOfPlan({ ...plan, sources: [{ ...plan.sources[0], stand: "180 cm" }] });
    const { flow, drinker } = findingOf(flock, "flowAboveBenefit");
    const checked = checkOf({ ...plan, sources: [{ ...plan.sources[0], stand: "180 cm" }] }, { samples: 0 });
    const most = checked.drinkers.map(({ moments }) =>
      Math.max(...Object.values(moments.fullBusiest).map((reading) => reading.flow)),
    );
    expect(flow).toBe(Math.max(...most));
    expect(drinker).toBe(checked.drinkers[most.indexOf(flow)]!.drinker);
  });
});
