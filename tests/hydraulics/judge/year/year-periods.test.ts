import { describe, expect, it, test } from "vitest";
import { yearForPlan } from "../../../../packages/hydraulics/src/judge/year/year-for-plan.js";
import { eventsOf, spansOf } from "../../../../packages/hydraulics/src/judge/year/year-periods.js";
import type { Flock } from "../../../../packages/hydraulics/src/model/flock.js";
import { penPlan } from "../birds/pens.js";
import { planOf } from "../trouble/ask.js";

const on = (...days: number[]) => days.map((day) => ({ day })) as never;

describe("spansOf", () => {
  it("are weeks from a day, cut where something happens within them", () => {
    expect(spansOf(on(), 100, 2)).toEqual([
      { week: 0, from: 100, to: 107 },
      { week: 1, from: 107, to: 114 },
    ]);
    expect(spansOf(on(103, 103, 110), 100, 2)).toEqual([
      { week: 0, from: 100, to: 103 },
      { week: 0, from: 103, to: 107 },
      { week: 1, from: 107, to: 110 },
      { week: 1, from: 110, to: 114 },
    ]);
  });

  it("are not cut on their first day, where a week begins anyway, or outside them", () => {
    expect(spansOf(on(99, 100, 107, 114, 120), 100, 2)).toHaveLength(2);
  });
});

const PENS = ["brooder", "coop"].map((id, index) => ({ id, index, batches: [], drinkers: [] }));
const batch = (ageDays: number) => ({ kind: { name: "hens" }, index: 0, count: 5, ageDays, lay: 0.9 });
type Stays = readonly { pen: number; from?: number; to?: number }[];
const events = (stays: Stays, { age = 50, from = 100, to = 200 } = {}) =>
  eventsOf(
    {
      day: 100,
      pens: PENS,
      roster: [
        {
          batch: batch(age),
          stays: stays.map((stay) => ({ place: 0, from: undefined, to: undefined, ...stay })),
        },
      ],
    } as unknown as Flock,
    from,
    to,
  ).map((event) => [
    ...[event.code, event.day, event.pen, "ageDays" in event ? event.ageDays : undefined],
    ...("to" in event ? [event.to] : []),
  ]);

describe("eventsOf", () => {
  it("tells a batch that arrives, moves and leaves on its day, as old as it then is", () => {
    expect(
      events([
        { pen: 0, from: 110, to: 130 },
        { pen: 1, from: 130, to: 150 },
      ]),
    ).toEqual([
      ["arrives", 110, "brooder", 60],
      ["moves", 130, "brooder", 80, "coop"],
      ["leaves", 150, "coop", 100],
    ]);
  });

  it("tells when eggs hatch where nothing says when the birds arrive, and not of birds that are there", () => {
    expect(events([{ pen: 0 }], { age: -5.5 })).toEqual([["hatches", 106, "brooder", 0.5]]);
    expect(events([{ pen: 0 }], { age: 0 })).toEqual([]);
    expect(events([{ pen: 0, from: 110 }], { age: -5 })).toEqual([["arrives", 110, "brooder", 5]]);
  });

  it("tells what falls from the first day on and before the last", () => {
    const stay = [{ pen: 0, from: 110, to: 130 }];
    expect(events(stay, { from: 110, to: 130 })).toEqual([["arrives", 110, "brooder", 60]]);
    expect(events(stay, { from: 111, to: 131 })).toEqual([["leaves", 130, "brooder", 80]]);
  });

  it("takes batches of a flock without dates to stay where they are", () => {
    const flock = { day: 100, pens: [{ ...PENS[0], batches: [batch(-3), batch(9)] }] } as unknown as Flock;
    expect(eventsOf(flock, 100, 200).map(({ code, day }) => [code, day])).toEqual([["hatches", 103]]);
  });
});

test("a year asks for a day to begin on where neither the plan nor anybody names one", () => {
  const plan = planOf(penPlan());
  const answer = yearForPlan(plan, { weeks: 1 });
  expect(answer.ok ? [] : answer.problems.map(({ code, path }) => [code, path])).toEqual([
    ["missing", "day"],
  ]);
  expect(yearForPlan(plan, { weeks: 1, from: "2026-07-04" }).ok).toBe(true);
});
