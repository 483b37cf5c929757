import { DAY_EVENTS, type DayResult } from "@headfall/hydraulics";
import { describe, expect, test } from "vitest";
import { indexDay, momentAt, peaksOf } from "../../../../packages/ui/src/kernels/day/day-index.js";
import { crowdedDay } from "./crowded-day.js";

/** The same told the long way: every bird by itself, from the first event on. */
function plainly({ events, birds, pens, drinkers }: DayResult, time: number) {
  const doing = new Map<number, "drinks" | "waits">();
  const at = new Map<number, number>();
  for (let k = 0; k < events!.count && events!.time[k]! <= time; k += 1) {
    const bird = events!.bird[k]!;
    at.delete(bird);
    doing.delete(bird);
    if (events!.kind[k] === DAY_EVENTS.begins) {
      doing.set(bird, "drinks");
      at.set(bird, events!.drinker[k]!);
    }
    if (events!.kind[k] === DAY_EVENTS.waits) doing.set(bird, "waits");
  }
  const count = (what: string) =>
    pens.map(
      (_, pen) => [...doing].filter(([bird, does]) => does === what && birds[bird]!.pen === pen).length,
    );
  return {
    at: drinkers.map((_, drinker) => [...at.values()].filter((one) => one === drinker).length),
    drinking: count("drinks"),
    waiting: count("waits"),
  };
}

describe("momentAt", () => {
  const day = crowdedDay();
  const index = indexDay(day);

  test("tells who is where as going through every bird from midnight on does", () => {
    expect(day.events!.count).toBeGreaterThan(2000);
    let [waited, drank] = [0, 0];
    for (let time = 0; time <= 86_400; time += 1117) {
      const { at, drinking, waiting } = momentAt(index, time);
      expect({ at: [...at], drinking: [...drinking], waiting: [...waiting] }).toEqual(plainly(day, time));
      waited += waiting[0]!;
      drank += drinking[0]!;
    }
    expect(Math.min(waited, drank)).toBeGreaterThan(0);
  });

  test("counts what happens at that very instant, and nobody is left over at the end of what was noted", () => {
    const { time, kind, drinker } = day.events!;
    const first = kind.indexOf(DAY_EVENTS.begins);
    expect(momentAt(index, time[first]!).at[drinker[first]!]).toBe(1);
    expect(momentAt(index, time[first]! - 1e-6).at[drinker[first]!]).toBe(0);
    expect(momentAt(index, -1).at.every((birds) => birds === 0)).toBe(true);
  });

  test("the busiest moment the day tells of is as busy", () => {
    for (const [p, { mostAt, mostAtOnce }] of day.pens.entries())
      expect(momentAt(index, mostAt).drinking[p]).toBe(mostAtOnce);
  });

  test("a day that was not recorded is refused", () => {
    expect(() => indexDay({ ...day, events: undefined })).toThrow(RangeError);
  });
});

describe("peaksOf", () => {
  test("no crowd falls between two stretches: the most of all of them is the most of the day", () => {
    const day = crowdedDay();
    const index = indexDay(day);
    for (const stretches of [7, 200, 900]) {
      const { drinking, both } = peaksOf(index, 0, stretches);
      expect(Math.max(...drinking)).toBe(day.pens[0]!.mostAtOnce);
      for (let k = 0; k < stretches; k += 1) {
        const middle = momentAt(index, ((k + 0.5) / stretches) * 86_400);
        expect(drinking[k]!).toBeGreaterThanOrEqual(middle.drinking[0]!);
        expect(both[k]!).toBeGreaterThanOrEqual(middle.drinking[0]! + middle.waiting[0]!);
      }
    }
  });
});
