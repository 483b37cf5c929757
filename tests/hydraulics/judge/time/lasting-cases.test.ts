import { describe, expect, it, test } from "vitest";
import { carryingOf } from "../../../../packages/hydraulics/src/judge/time/carrying.js";
import { goingAway } from "../../../../packages/hydraulics/src/judge/time/going-away.js";
import { howLongItLasts } from "../../../../packages/hydraulics/src/judge/time/lasting.js";
import { AREA, read, tubPlan } from "./tub.js";

const DAY = 86_400;
const SPELL = { high: "21 degC", light: "16 h", hotSpell: { high: "36 degC", days: 5 } };
const lastingOf = (full: string, more: Record<string, unknown> = {}) => {
  const answer = howLongItLasts(read(tubPlan(full, more)));
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.lasting;
};

describe("howLongItLasts, case by case", () => {
  const usual = lastingOf("20 cm").alone;
  const hot = lastingOf("20 cm", { weather: SPELL }).alone;

  it("the least, what is expected and what to size on know nothing of a hot spell", () => {
    for (const name of ["low", "expect", "size"] as const) {
      expect(hot[name].firstDay).toBe(usual[name].firstDay);
      expect(hot[name].empty).toBe(usual[name].empty);
    }
  });

  it("the hot case and the most are of the hot spell, where the plan names one", () => {
    expect(usual.hot.firstDay).toBe(usual.size.firstDay);
    for (const name of ["hot", "high"] as const) {
      expect(hot[name].firstDay).toBeGreaterThan(1.2 * usual[name].firstDay);
      expect(hot[name].empty!).toBeLessThan(usual[name].empty!);
    }
  });

  it("the water is drunk by when it is empty, by the day's litres", () => {
    const { size, expect: expected } = usual;
    // Half a square metre, 20 cm deep, at the litres of the first day each day.
    for (const one of [size, expected]) {
      const days = (AREA * 0.2) / one.firstDay;
      expect(Math.abs(one.empty! / DAY - days)).toBeLessThan(1);
      expect(one.balance.drawn).toBeCloseTo(AREA * 0.2, 6);
    }
    expect(size.followed).toBeGreaterThanOrEqual(size.empty!);
  });

  it("half of one drinker, or of two, is the first that is dry", () => {
    for (const count of [1, 2]) {
      const drinkers = { kind: "nipple-side-action", count };
      const runs = [{ id: "lane", length: "2 m", fall: "-5 cm", drinkers }];
      const { size } = lastingOf("20 cm", { runs }).alone;
      expect(size.firstDry).toBeDefined();
      expect(size.halfDry).toBe(size.firstDry!.after);
    }
  });

  it("of each source it tells what it holds, what of that can be drawn, and how high it stands when full", () => {
    const [tub] = lastingOf("20 cm").sources;
    expect(tub).toMatchObject({ source: "tub", index: 0, fullLevel: 0.2, refill: { kind: "none" } });
    expect([tub!.full, tub!.usable]).toEqual([expect.closeTo(AREA * 0.2, 9), expect.closeTo(AREA * 0.2, 9)]);
  });

  it("is told as filled where somebody fills it, for sixty days, and the same as alone where nobody does", () => {
    const none = lastingOf("20 cm");
    expect(none.cases).toEqual(none.alone);
    expect(none.leavesOut).toEqual([]);
    const plan = tubPlan("20 cm");
    const answer = howLongItLasts(
      read({ ...plan, sources: [{ ...plan.sources[0], refill: { every: "1 day" } }] }),
    );
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    const { cases, alone } = answer.lasting;
    expect(cases.size.followed).toBe(60 * DAY);
    expect(cases.size.refilled[0]).toMatchObject({ after: DAY, source: "tub" });
    expect(cases.size.refilled[0]!.volume).toBeCloseTo(cases.size.firstDay, 9);
    expect(alone.size.empty).toBeDefined();
  });
});

test("carryingOf looks eight weeks ahead, hot days besides where the plan names a spell, and counts whole trips", () => {
  const carried = (more: Record<string, unknown>, weeks?: number) => {
    const answer = carryingOf(read(tubPlan("20 cm", more)), weeks === undefined ? {} : { weeks });
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    return answer.carrying;
  };
  expect(carried({}).days.map(({ week, hot }) => [week, hot])).toEqual(
    Array.from({ length: 9 }, (_, week) => [week, false]),
  );
  const { days, each, climb, isLimited } = carried({ weather: SPELL, carry: { climb: "-2 m" } }, 1);
  expect(days.map(({ week, hot }) => [week, hot])).toEqual([
    [0, false],
    [1, false],
    [0, true],
    [1, true],
  ]);
  expect([each, climb, isLimited]).toEqual([0.01, -2, false]);
  for (const { trips, volume, climb: climbed, work, massPerTrip } of days) {
    expect(trips.size).toBe(Math.ceil(volume.size / 0.01));
    expect(trips.expect).toBe(Math.ceil(volume.expect / 0.01));
    // Downhill nothing is climbed.
    expect([climbed, work]).toEqual([0, 0]);
    expect(massPerTrip).toBeCloseTo(10, 1);
  }
});

test("goingAway counts the hot days in first, and tells what is missing and when the birds go without", () => {
  const away = (days: number, more: Record<string, unknown> = {}) => {
    const answer = goingAway(read(tubPlan("20 cm", more)), { days });
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    return answer.away;
  };
  const [two, seven] = [away(2), away(7)];
  expect(seven.needed).toBeCloseTo(3.5 * two.needed, 9);
  expect([two.short, two.lasts, two.pen]).toEqual([0, undefined, undefined]);
  expect(two.usable).toBeLessThanOrEqual(AREA * 0.2 + 1e-9);
  const long = away(40);
  expect(long.short).toBeCloseTo(long.needed - long.usable, 12);
  expect(long.lasts! / DAY).toBeCloseTo(long.usable / (long.needed / 40), -0.5);
  expect(long.pen).toBe("hens");
  const spell = away(7, { weather: SPELL });
  expect([seven.hotDays, spell.hotDays, away(3, { weather: SPELL }).hotDays]).toEqual([0, 5, 3]);
  // Two of the seven days are usual ones.
  const hotDay = away(3, { weather: SPELL }).needed / 3;
  expect(spell.needed).toBeCloseTo(5 * hotDay + 2 * (two.needed / 2), 6);
  expect(spell.sources).toEqual([{ source: "tub", full: expect.closeTo(AREA * 0.2, 9) }]);
});
