import { describe, expect, it } from "vitest";
import { checkDocument } from "../../../packages/hydraulics/src/document/read-plan.js";
import { buildFlock } from "../../../packages/hydraulics/src/model/build-flock.js";
import { buildLine } from "../../../packages/hydraulics/src/model/build-line.js";
import { type Flock, isThere } from "../../../packages/hydraulics/src/model/flock.js";
import { intakeOfFlock } from "../../../packages/hydraulics/src/model/flock-intake.js";
import { flockInDays } from "../../../packages/hydraulics/src/model/flock-on.js";
import { readDay, writeDay } from "../../../packages/hydraulics/src/units/day.js";

const reading = (pens: unknown, more: Record<string, unknown> = {}) =>
  checkDocument({
    headfall: 1,
    day: "2026-05-01",
    sources: [{ vessel: "drum-55gal-plastic" }],
    runs: [
      {
        id: "line",
        length: "6 m",
        drinkers: [
          { id: "low", kind: "nipple-side-action", count: 2 },
          { id: "high", kind: "nipple-side-action", count: 2, first: "3 m" },
        ],
      },
    ],
    pens,
    ...more,
  });

function flockOf(pens: unknown, more: Record<string, unknown> = {}, day?: string): Flock {
  const read = reading(pens, more);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const built = buildLine(read.plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  const flocking = buildFlock(read.plan, built.line, day);
  if (!flocking.ok) throw new Error(JSON.stringify(flocking.problems));
  return flocking.flock;
}

const CHICKS = {
  kind: "pullet",
  count: 30,
  age: "1 day",
  arrives: "2026-05-06",
  moves: [{ on: "2026-06-10", to: "house" }],
  leaves: "2026-09-01",
};
const PENS = [
  { id: "brooder", birds: [CHICKS], drinkers: ["low"] },
  { id: "house", birds: { kind: "hen", count: 12 }, drinkers: ["high"] },
];

/** By pen, how many of each batch are there on a day. */
const thereOn = (flock: Flock, day: string) =>
  flockInDays(flock, (readDay(day) ?? 0) - (flock.day ?? 0)).pens.map(({ batches }) =>
    batches.map((batch) => (isThere(batch) ? batch.count : 0)),
  );

describe("a flock on another day", () => {
  const flock = flockOf(PENS);

  it("counts a batch in the pen where it is that day, and nowhere before it comes or once it has left", () => {
    const days = ["2026-05-05", "2026-05-06", "2026-06-09", "2026-06-10", "2026-08-31", "2026-09-01"];
    expect(days.map((day) => thereOn(flock, day))).toEqual([
      [[0], [12, 0]],
      [[30], [12, 0]],
      [[30], [12, 0]],
      [[0], [12, 30]],
      [[0], [12, 30]],
      [[0], [12, 0]],
    ]);
  });

  it("gives a batch the age it was told to have on the day it arrives, and a day more each day", () => {
    const ages = [0, 5, 6, 50].map((days) => flockInDays(flock, days).pens[0]?.batches[0]?.ageDays);
    expect(ages).toEqual([-5, 1, 2, 46]);
  });

  it("keeps the age of hatched birds by their hatch day, but for days on which they have not arrived", () => {
    const [birds] = flockOf([
      { id: "a", birds: { kind: "hen", count: 3, hatched: "2026-01-01", arrives: "2026-05-20" } },
    ]).pens;
    expect(birds?.batches[0]?.ageDays).toBe(-19);
    const later = flockInDays(
      flockOf([{ birds: { kind: "hen", count: 3, hatched: "2026-01-01", arrives: "2026-05-20" } }]),
      19,
    );
    expect(later.pens[0]?.batches[0]?.ageDays).toBe(139);
  });

  it("is the same whichever way it is come by, one leap or many", () => {
    let step = flock;
    for (let week = 0; week < 20; week += 1) step = flockInDays(step, 7);
    expect(step).toEqual(flockInDays(flock, 140));
    expect(flockInDays(step, -140)).toEqual(flock);
  });

  it("drinks what is drunk by the birds that are there, so that a batch is never counted twice", () => {
    for (const days of [0, 10, 39, 40, 41, 122, 123, 200]) {
      const on = flockInDays(flock, days);
      const there = on.pens.flatMap(({ batches }) => batches.filter(isThere));
      const alone = { ...on, pens: [{ ...on.pens[0]!, batches: there }] };
      expect(intakeOfFlock(on).size).toBeCloseTo(intakeOfFlock(alone).size, 12);
    }
  });

  it("has no roster where no bird comes, moves or leaves on a date", () => {
    expect(flockOf([{ birds: { kind: "hen", count: 3 } }]).roster).toBeUndefined();
  });

  it("is asked for a day where birds come on a date and none is named", () => {
    const read = reading(PENS, { day: undefined });
    if (!read.ok) throw new Error("not read");
    const built = buildLine(read.plan);
    if (!built.ok) throw new Error("not built");
    const flocking = buildFlock(read.plan, built.line);
    expect(flocking.ok ? [] : flocking.problems.map(({ code, path }) => [code, path])).toEqual([
      ["missing", "day"],
    ]);
    expect(writeDay(flockOf(PENS, { day: undefined }, "2026-06-10").day ?? 0)).toBe("2026-06-10");
  });
});

describe("days that do not follow each other", () => {
  const problems = (birds: Record<string, unknown>) => {
    const read = reading([
      { id: "a", birds: { kind: "hen", count: 3, ...birds }, drinkers: ["low"] },
      { id: "b", birds: { kind: "hen", count: 3 }, drinkers: ["high"] },
    ]);
    return read.ok ? [] : read.problems.map(({ code, path, found }) => [code, path, found]);
  };

  it.each([
    [{ hatched: "2026-05-01", arrives: "2026-04-30" }, "doesNotFit", "pens[0].birds.arrives", '"2026-04-30"'],
    [{ arrives: "2026-05-01", leaves: "2026-05-01" }, "doesNotFit", "pens[0].birds.leaves", '"2026-05-01"'],
    [
      { arrives: "2026-05-01", moves: [{ on: "2026-04-01", to: "b" }] },
      "doesNotFit",
      "pens[0].birds.moves[0].on",
      '"2026-04-01"',
    ],
    [
      { moves: [{ on: "2026-06-01", to: "b" }], leaves: "2026-05-01" },
      "doesNotFit",
      "pens[0].birds.leaves",
      '"2026-05-01"',
    ],
    [{ moves: [{ on: "2026-06-01", to: "a" }] }, "doesNotFit", "pens[0].birds.moves[0].to", '"a"'],
    [{ moves: [{ on: "2026-06-01", to: "c" }] }, "unknownName", "pens[0].birds.moves[0].to", '"c"'],
  ])("is one problem: %o", (birds, code, path, found) => {
    expect(problems(birds)).toEqual([[code, path, found]]);
  });
});
