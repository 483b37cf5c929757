import { describe, expect, it } from "vitest";
import type {
  KitGiven,
  Shortage,
  YearOfPlan,
} from "../../../../packages/hydraulics/src/judge/year/year-result.js";
import { writeYearCalendar } from "../../../../packages/hydraulics/src/report/year/year-calendar.js";
import {
  writeHandedOut,
  writeKitProof,
  writeLeastToBuy,
  writeShortage,
  writeYearEvent,
} from "../../../../packages/hydraulics/src/report/year/year-sentences.js";

/** The 4th of October 2024. */
const DAY = 20_000;

describe("writeYearEvent", () => {
  const batch = { day: DAY, pen: "brooder", kindName: "Laying hen", count: 12, ageDays: 21 } as const;

  it("tells who comes, goes, and how old; one bird by its kind's own name", () => {
    expect(writeYearEvent({ ...batch, code: "arrives" })).toBe("brooder: 12 laying hens arrive, 3 weeks old");
    expect(writeYearEvent({ ...batch, code: "moves", to: "yard" })).toBe(
      "brooder: 12 laying hens move to yard, 3 weeks old",
    );
    expect(writeYearEvent({ ...batch, code: "leaves" })).toBe("brooder: 12 laying hens leave, 3 weeks old");
    expect(writeYearEvent({ ...batch, code: "hatches", count: 1 })).toMatch(/^brooder: 1 × Laying hen hatch/);
  });

  it("tells a change-over with both, until when, and what another pen wants", () => {
    const change = {
      code: "changeOver",
      day: DAY,
      pen: "brooder",
      from: ["jar"],
      to: ["fount", "cup"],
      until: DAY + 14,
      by: "kit",
      wantedElsewhere: [],
    } as const;
    expect(writeYearEvent(change)).toBe(
      "brooder: change over to fount and cup from the kit; leave jar beside it until 2024-10-18",
    );
    expect(writeYearEvent({ ...change, by: "pen" })).not.toContain("from the kit");
    expect(writeYearEvent({ ...change, wantedElsewhere: ["jar"] })).toContain(
      "but another pen wants jar at once",
    );
    expect(writeYearEvent({ ...change, to: [] })).toBe(
      "brooder: the birds grow out of jar by 2024-10-18, and nothing in the pen comes after it",
    );
  });
});

describe("what is put out, short, or to be bought", () => {
  it("tells all that goes to one pen on one day together", () => {
    const one = (day: number, pen: string, kindName: string, count: number) => ({
      period: 0,
      day,
      pen,
      kind: kindName,
      kindName,
      count,
    });
    expect(
      writeHandedOut([
        one(DAY, "a", "Jar", 2),
        one(DAY, "b", "Jar", 1),
        one(DAY, "a", "Pan", 1),
        one(DAY + 7, "a", "Jar", 1),
      ]),
    ).toEqual([
      { day: DAY, sentence: "a: put out 2 × Jar and 1 × Pan" },
      { day: DAY, sentence: "b: put out 1 × Jar" },
      { day: DAY + 7, sentence: "a: put out 1 × Jar" },
    ]);
  });

  it("tells from which day to which a pen goes short, how far, and why", () => {
    const short: Shortage = {
      pen: "hens",
      from: DAY,
      to: DAY + 7,
      met: 0.5,
      birds: 12,
      because: { code: "noneSuits" },
    };
    expect(writeShortage(short)).toMatch(
      /^hens, 2024-10-04 to 2024-10-10: 12 birds are without a place \(50 % of the need is met\)\. Nothing in the kit/,
    );
    expect(writeShortage({ ...short, birds: 1 })).toContain(": 1 bird is without");
    expect(writeShortage({ ...short, because: { code: "inOtherPens", pens: ["a", "b"] } })).toMatch(
      /is out in a and b\.$/,
    );
    expect(writeShortage({ ...short, because: { code: "keptBack", kinds: ["Jar"] } })).toMatch(
      /would help: Jar\.$/,
    );
  });

  it("tells what to buy, for how much, and what no purchase cures", () => {
    const items = [{ id: "jar", name: "Jar", count: 2 }];
    const buy = (by: "pieces" | "money", cost: number) =>
      writeLeastToBuy({ items, by, cost, bound: cost, never: [] }, "EUR");
    expect(buy("pieces", 2)).toEqual([
      "Buy 2 × Jar: 2 pieces, and no pen goes short for want of kit. Nothing cheaper does that, counted in pieces.",
    ]);
    expect(buy("pieces", 1)[0]).toContain("Jar: 1 piece, and");
    expect(buy("money", 7.504)[0]).toMatch(/Jar: 7\.5 EUR, and .* does that\.$/);
    expect(writeLeastToBuy({ items, by: "money", cost: 3, bound: 3, never: [] }, undefined)[0]).toContain(
      "3 of the plan's money, and",
    );
    expect(buy("money", 1)[0]).toContain("Jar: 1 EUR,");
    expect(
      writeLeastToBuy(
        { items: [], by: "money", cost: 0, bound: 0, never: [{ pen: "hens", from: DAY }] },
        undefined,
      ),
    ).toEqual(["hens goes short from 2024-10-04 whatever is bought: nothing on offer suits its birds then."]);
  });

  it("tells how far what is given out is proven, each in its order", () => {
    const cost = { short: 4, handed: 6, upkeep: 30_000 };
    const proof = (more: object) =>
      writeKitProof({ cost, bound: cost, isHeldDown: false, parts: 3, ...more } as KitGiven, "metric");
    expect(proof({})).toMatch(
      /^Proven: .*none puts out fewer than 6 pieces; and of those none has less to fill in, each once a day, than 3 m³|3000 L|3,000 L/,
    );
    expect(proof({})).toMatch(/3 parts of all ways were looked at\.$/);
    expect(proof({ parts: 1 })).toMatch(/1 part of all ways was looked at\.$/);
    expect(proof({ bound: { ...cost, short: 3 } })).toMatch(/^Whether less could be short is not proven/);
    expect(proof({ bound: { ...cost, handed: 5 } })).toMatch(
      /puts out 6 pieces, and none can do with fewer than 5; [^;]* are filled in in all, each once a day\. /,
    );
    expect(proof({ bound: { ...cost, upkeep: 20_000 } })).toMatch(/none of those can do with less than/);
    expect(proof({ isHeldDown: true })).toContain("were left aside");
    expect(proof({ cost: { short: 0, handed: 0, upkeep: 0 } })).toMatch(/^None of it is needed/);
  });
});

describe("writeYearCalendar", () => {
  const name = `${"Größe 🐔\u{10000}".repeat(12)}, hens; a\\b`;
  const year = {
    ...{ from: DAY, to: DAY + 365 },
    events: [
      {
        code: "changeOver",
        day: DAY + 9,
        pen: name,
        from: ["jar"],
        to: ["fount"],
        until: DAY + 16,
        by: "pen",
        wantedElsewhere: [],
      },
      { code: "hatches", day: DAY + 2, pen: "p", kindName: "Laying hen", count: 2, ageDays: 0 },
    ],
    kit: {
      handed: [],
      shortages: [
        { pen: "p", from: DAY + 4, to: DAY + 11, met: 0.5, birds: 2, because: { code: "noneSuits" } },
      ],
    },
  } as unknown as YearOfPlan;
  const text = writeYearCalendar(year, "Bank; one");
  const lines = text.split("\r\n");

  it("has lines of 75 octets at the most, and puts together again says the same", () => {
    for (const line of lines) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
    expect(lines.some((line) => new TextEncoder().encode(line).length > 70)).toBe(true);
    expect(text.replaceAll("\r\n ", "")).toContain(
      `SUMMARY:${name.replaceAll("\\", "\\\\").replaceAll(",", "\\,").replaceAll(";", "\\;")}: change over`,
    );
    // A line goes on as long as its next sign fits.
    const octets = (part: string) => new TextEncoder().encode(part).length;
    lines.forEach((line, k) => {
      const next = lines[k + 1];
      if (next?.startsWith(" ")) expect(octets(line) + octets([...next.slice(1)][0]!)).toBeGreaterThan(75);
    });
    expect(text).toContain("X-WR-CALNAME:Bank\\; one\r\n");
  });

  it("is as well without a kit", () => {
    expect(writeYearCalendar({ ...year, kit: undefined }, "")).not.toMatch(/Short:|CALNAME/);
  });

  it("has each day in order, for as many days as it takes", () => {
    const of = (key: string) =>
      lines.filter((line) => line.startsWith(key)).map((line) => line.slice(key.length));
    expect(of("DTSTART;VALUE=DATE:")).toEqual(["20241006", "20241008", "20241013"]);
    expect(of("DTEND;VALUE=DATE:")).toEqual(["20241007", "20241015", "20241020"]);
    expect(of("DTSTAMP:")).toEqual(Array.from({ length: 3 }, () => "20241004T000000Z"));
    expect(new Set(of("UID:")).size).toBe(3);
    expect(text).toContain("SUMMARY:Short: p\\, 2024-10-08 to 2024-10-14");
    expect([lines[0], lines.at(-2), lines.at(-1)]).toEqual(["BEGIN:VCALENDAR", "END:VCALENDAR", ""]);
  });
});
