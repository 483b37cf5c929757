import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { hangHeight } from "../../../../packages/hydraulics/src/birds/hang-height.js";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { birdsForPlan } from "../../../../packages/hydraulics/src/judge/birds/birds-for-plan.js";
import { kitOf } from "../../../../packages/hydraulics/src/judge/year/kit-shares.js";
import { yearForPlan } from "../../../../packages/hydraulics/src/judge/year/year-for-plan.js";
import type { YearOfPlan } from "../../../../packages/hydraulics/src/judge/year/year-result.js";
import { writeYearCalendar } from "../../../../packages/hydraulics/src/report/year/year-calendar.js";
import { hangPointsOf } from "../../../../packages/hydraulics/src/tables/bird-heights.js";
import { readDay, writeDay } from "../../../../packages/hydraulics/src/units/day.js";

const EXAMPLE = JSON.parse(readFileSync("docs/examples/alder-bank-eighty-five-chicks.json", "utf8"));

const planOf = (more: Record<string, unknown> = {}) => {
  const reading = checkDocument({ ...EXAMPLE, ...more });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
};

function yearOf(more: Record<string, unknown> = {}, weeks = 8): YearOfPlan {
  const answer = yearForPlan(planOf(more), { weeks, mostParts: 40 });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.year;
}

const year = yearOf();
const dated = (day: number) => writeDay(day);

describe("a year of a plan", () => {
  it("is cut into weeks, and on each day a batch comes, moves or leaves", () => {
    const starts = year.periods.map(({ from }) => dated(from));
    expect(starts.slice(0, 3)).toEqual(["2026-05-01", "2026-05-06", "2026-05-08"]);
    expect(starts).toContain("2026-06-17");
    expect(year.periods.map(({ to }) => to).slice(0, -1)).toEqual(
      year.periods.map(({ from }) => from).slice(1),
    );
    expect(year.periods.at(-1)?.to).toBe(year.to);
    expect(year.to - year.from).toBe(56);
  });

  it("tells who comes, moves and leaves, on its day and as old as it then is", () => {
    expect(
      year.events
        .filter(({ code }) => code !== "changeOver")
        .map((event) => [dated(event.day), event.code, event.pen, "ageDays" in event ? event.ageDays : 0]),
    ).toEqual([
      ["2026-05-06", "arrives", "brooder 1", 1],
      ["2026-05-06", "arrives", "brooder 2", 1],
      ["2026-05-06", "arrives", "brooder 3", 1],
      ["2026-06-10", "leaves", "grass pen", 180],
      ["2026-06-17", "moves", "brooder 1", 43],
    ]);
  });

  it("has pins hung as high as birds of a period's first day reach, so that none is left dry till its last", () => {
    for (const { pens } of year.periods)
      for (const { batches, heights } of pens) {
        const reached = batches.flatMap(({ kind, ageFrom }) => {
          const range = hangHeight(hangPointsOf(kind), "nipple", ageFrom);
          return range === undefined ? [] : [range.high];
        });
        expect(heights.nipple?.high).toBe(reached.length === 0 ? undefined : Math.min(...reached));
      }
  });

  it("has each pen drink on a period's last day what the birds of that day are said to drink", () => {
    for (const { to, pens } of year.periods) {
      // Asked on another day, the same plan is of that day: no key of it says when.
      const { day: _, ...undated } = planOf();
      const then = birdsForPlan(undated, { day: dated(to - 1), weeks: 0 });
      if (!then.ok) throw new Error("not answered");
      const birds = then.birds.pens.map(({ birds: count }) => count);
      // The hens' age is that on the plan's own day, and grown hens drink alike.
      expect([to, pens.map((pen) => pen.birds)]).toEqual([to, birds]);
      pens.forEach(({ draw, spilled }, p) => {
        const { now, spilled: ofLine } = then.birds.pens[p]!;
        for (const figure of ["size", "expect", "low", "high"] as const)
          expect(draw[figure]).toBeCloseTo((now[figure] / (1 + ofLine)) * (1 + spilled), 9);
      });
    }
  });

  it("tells on which day those hatch that have not yet", () => {
    const pens = [{ id: "brooder", birds: { kind: "hen", count: 20, hatched: "2026-05-20" } }];
    const events = yearOf({ pens, kit: undefined, sources: [{ vessel: "bucket-5gal" }] }, 4).events.map(
      (event) => [dated(event.day), event.code, "ageDays" in event ? event.ageDays : undefined],
    );
    expect(events).toContainEqual(["2026-05-20", "hatches", 0]);
  });

  it("begins on the day asked for, and needs one where the plan names none", () => {
    const answer = yearForPlan(planOf({ kit: undefined, sources: [{ vessel: "bucket-5gal" }] }), {
      from: "2026-06-12",
      weeks: 1,
    });
    expect(answer.ok && answer.year.periods.map(({ from }) => dated(from))).toEqual([
      "2026-06-12",
      "2026-06-17",
    ]);
    const undated = yearForPlan(planOf({ day: undefined }), { weeks: 1 });
    expect(undated.ok ? [] : undated.problems.map(({ code, path }) => [code, path])).toContainEqual([
      "missing",
      "day",
    ]);
  });

  it("tells how far it is done, never less than before, to the end", () => {
    const told: number[] = [];
    const answer = yearForPlan(planOf(), {
      ...{ weeks: 3, mostParts: 40 },
      progress: (share) => {
        told.push(share);
        return true;
      },
    });
    expect(answer.ok).toBe(true);
    expect(told.length).toBeGreaterThan(2);
    expect(told).toEqual([...told].sort((a, b) => a - b));
    expect(told[0]).toBeGreaterThanOrEqual(0);
    expect(told.at(-1)).toBeLessThanOrEqual(1 + 1e-9);
  });

  it("refuses a number of weeks that is none", () => {
    expect(() => yearForPlan(planOf(), { weeks: 0 })).toThrow(RangeError);
    expect(() => yearForPlan(planOf(), { weeks: 105 })).toThrow("yearForPlan: weeks is 105");
  });
});

describe("the air of the year", () => {
  const months = [
    { month: "january", high: "4 degC", low: "-2 degC" },
    { month: "july", high: "26 degC", low: "14 degC", hot: "34 degC" },
  ];
  const air = (from: string) => {
    const answer = yearForPlan(
      planOf({ weather: { high: "20 degC", months }, kit: undefined, sources: [{ vessel: "bucket-5gal" }] }),
      { from, weeks: 1 },
    );
    if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
    return answer.year.periods.at(-1)!;
  };

  it("is as told in the middle of a month, and straight from one month given to the next", () => {
    // The last day of the week is the 15th.
    expect(air("2027-01-09").air).toEqual({ high: 4, low: -2 });
    expect(air("2026-07-09").air).toEqual({ high: 26, low: 14 });
    const between = air("2027-04-09").air;
    const share = ((readDay("2027-04-15") ?? 0) - (readDay("2027-01-15") ?? 0)) / 181;
    expect(between.high).toBeCloseTo(4 + share * 22, 9);
    expect(between.low).toBeCloseTo(-2 + share * 16, 9);
  });

  it("has hottest days in the months that name them alone", () => {
    expect(air("2026-07-09").hotAir).toEqual({ high: 34, low: 22 });
    expect(air("2027-01-09").hotAir).toBeUndefined();
  });
});

describe("the kit, given out", () => {
  const { kit } = year;
  if (kit === undefined) throw new Error("no kit");

  it("never hands out more than there is, and nothing that does not suit", () => {
    kit.lent.forEach((pens, t) => {
      kit.kinds.forEach(({ count, spare }, k) => {
        expect(pens.reduce((sum, own) => sum + own[k]!, 0)).toBeLessThanOrEqual(count - spare);
        pens.forEach((own, p) => {
          const { birds } = year.periods[t]!.pens[p]!;
          if (birds > 0 && own[k]! > 0) expect(kit.serves[t]![p]![k]).toBeDefined();
        });
      });
    });
  });

  it("says what is short from when till when, that what is kept back would help, and that one more is enough", () => {
    expect(kit.shortages.map(({ pen, from, to, because }) => [pen, dated(from), dated(to), because])).toEqual(
      [["grass pen", "2026-05-29", "2026-06-10", { code: "keptBack", kinds: ["Vacuum fount, 1 US gal"] }]],
    );
    expect(kit.bound.short).toBe(kit.cost.short);
    expect(kit.bound.handed).toBe(kit.cost.handed);
    expect(kit.buy).toMatchObject({ by: "pieces", cost: 1, bound: 1, never: [] });
  });

  it("is short of nothing once that is bought, and of nothing once the spare is given out", () => {
    const [item] = kit.buy?.items ?? [];
    const bought = EXAMPLE.kit.map((entry: { kind: string; count: number }) =>
      entry.kind === item?.id ? { ...entry, count: entry.count + 1 } : entry,
    );
    expect(bought).not.toEqual(EXAMPLE.kit);
    expect(yearOf({ kit: bought }).kit?.shortages).toEqual([]);
    const free = EXAMPLE.kit.map(({ spare: _, ...entry }: { spare?: number }) => entry);
    expect(yearOf({ kit: free }).kit?.shortages).toEqual([]);
  });

  it("tells each other reason: nothing suits, too little of all, all of it elsewhere", () => {
    const reasons = (entries: unknown) =>
      yearOf({ kit: entries }, 2).kit?.shortages.map(({ pen, because }) => [pen, because.code]);
    expect(reasons([{ kind: "rubber-pan-8qt", count: 2 }])).toContainEqual(["brooder 1", "noneSuits"]);
    expect(reasons([{ kind: "fount-1gal", count: 1 }])).toContainEqual(["brooder 1", "tooFewOfAll"]);
    expect(
      reasons([{ kind: "fount-1gal", count: 2 }])?.filter(([, code]) => code === "inOtherPens").length,
    ).toBeGreaterThan(1);
    const elsewhere = yearOf({ kit: [{ kind: "fount-1gal", count: 2 }] }, 2).kit!.shortages.flatMap(
      ({ pen, because }) => (because.code === "inOtherPens" ? [{ pen, ...because }] : []),
    );
    for (const { pen, pens } of elsewhere) {
      expect(pens.length).toBeGreaterThan(0);
      expect(pens).not.toContain(pen);
    }
  });

  it("buys what the tables have where nothing of the kit suits", () => {
    const buy = yearOf({ kit: [{ kind: "rubber-pan-8qt", count: 9 }] }, 1).kit?.buy;
    expect(buy!.items.length).toBeGreaterThan(0);
    expect(buy!.items.map(({ id }) => id)).not.toContain("rubber-pan-8qt");
    expect(buy!.never).toEqual([]);
  });

  it("buys by money among what has a price, the cheaper way round", () => {
    const priced = [
      { kind: "fount-1gal", count: 0, price: 9 },
      { kind: "fount-top-3gal", count: 0, price: 3 },
      { kind: "jar-fount-1qt", count: 0, price: 20 },
    ];
    const hens = [{ id: "hens", birds: { kind: "hen", count: 8 } }];
    expect(yearOf({ pens: hens, kit: priced }, 1).kit?.buy).toMatchObject({
      by: "money",
      cost: 6,
      items: [{ id: "fount-top-3gal", count: 2 }],
    });
  });

  it("adds up entries of one kind, by whatever name", () => {
    expect(
      kitOf(
        planOf({
          kit: [
            { kind: "fount-1gal", count: 2, spare: 1 },
            { kind: "vacuum fount", count: 3 },
          ],
        }),
      ),
    ).toMatchObject([{ id: "fount-1gal", count: 5, spare: 1 }]);
  });
});

describe("a pen with a line", () => {
  const lined = {
    sources: [{ vessel: "bucket-5gal", stand: "60 cm" }],
    runs: [{ id: "line", length: "2 m", drinkers: { kind: "nipple-side-action", count: 1 } }],
    pens: [{ id: "hens", birds: { kind: "hen", count: 8 } }],
  };

  it("needs so much less of the kit, and takes drinkers for it, which no pen without a line does", () => {
    const with_ = yearOf({ ...lined, kit: [{ kind: "nipple-side-action", count: 4 }] }, 1);
    const { needed } = with_.periods[0]!.pens[0]!.drinkers.devices[0]!;
    expect(needed).toBeGreaterThan(1);
    expect(with_.periods[0]?.pens[0]?.byLine).toBe(1 / needed);
    expect(with_.kit?.lent[0]).toEqual([[needed - 1]]);
    const without = yearOf(
      { ...lined, sources: [], runs: [], kit: [{ kind: "nipple-side-action", count: 4 }] },
      1,
    );
    expect(without.kit?.lent[0]).toEqual([[0]]);
    expect(without.kit?.shortages[0]?.because.code).toBe("noneSuits");
  });
});

describe("the year as a calendar file", () => {
  const lines = writeYearCalendar(year, "Alder; Bank, chicks").split("\r\n");

  it("has lines of at most 75 octets, each ended, and every event begun and ended", () => {
    expect(lines.at(-1)).toBe("");
    for (const line of lines) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
    const count = (text: string) => lines.filter((line) => line === text).length;
    expect(count("BEGIN:VEVENT")).toBe(count("END:VEVENT"));
    expect(count("BEGIN:VEVENT")).toBeGreaterThan(year.events.length);
    expect(lines[0]).toBe("BEGIN:VCALENDAR");
    expect(lines).toContain("X-WR-CALNAME:Alder\\; Bank\\, chicks");
  });

  it("has each event on its day, until the day after, under a name of its own", () => {
    const at = lines.indexOf("DTSTART;VALUE=DATE:20260617");
    expect(lines[at + 1]).toBe("DTEND;VALUE=DATE:20260618");
    const names = lines.filter((line) => line.startsWith("UID:"));
    expect(new Set(names).size).toBe(names.length);
  });
});
