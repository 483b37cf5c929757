import { describe, expect, it } from "vitest";
import type { Frost, FrostPart } from "../../../../packages/hydraulics/src/judge/weather/frost-result.js";
import {
  writeFrostAnswer,
  writeFrostBand,
  writeFrostHolding,
  writeFrostNight,
  writeFrostRefills,
  writeFrostTime,
  writeFrostTodo,
} from "../../../../packages/hydraulics/src/report/weather/frost-sentences.js";
import { writeFrostText } from "../../../../packages/hydraulics/src/report/weather/frost-text.js";

const HOUR = 3600;

const part = (more: Partial<FrostPart> = {}): FrostPart => ({
  ...{ id: "hen line", kind: "pin", count: 8, path: "", volume: { least: 1e-5, full: 1e-5 } },
  ...{ cold: { soonest: 0, latest: HOUR }, blocked: { soonest: HOUR, latest: 2 * HOUR } },
  ...{ solid: { soonest: 5 * HOUR, latest: 9 * HOUR }, lasts: "no", ice: undefined, watts: 45.2 },
  ...more,
});

const frost = (more: Partial<Frost> = {}): Frost => ({
  night: { low: -8, high: 2, hours: 13 * HOUR, wind: 3 } as Frost["night"],
  ...{ waterTemperature: 10, dusk: 18 * HOUR, parts: [part()], first: 0 },
  drain: { volume: 0, ends: [], sags: [], devices: [], untapped: [] },
  ...{
    refills: [],
    thaw: { from: undefined, to: undefined, melts: 0 },
    headSpace: [],
    brittle: [],
    defaults: [],
  },
  ...more,
});

describe("writeFrostAnswer", () => {
  const answer = (more: Partial<Frost>) => writeFrostAnswer(frost(more));
  const gives = part({
    id: "cups",
    kind: "bowl",
    lasts: "yes",
    blocked: { soonest: 20 * HOUR, latest: 30 * HOUR },
  });

  it("tells what stops first and when, and whether anything gives water until morning", () => {
    expect(answer({})).toBe(
      "hen line (drinker pins) stops first, 1 h after dusk; nothing that birds drink from lasts the night.",
    );
    expect(answer({ parts: [part(), gives] })).toMatch(/; 1 of 2 that birds drink from, .* stop for sure\.$/);
    expect(answer({ parts: [part({ lasts: "perhaps" })] })).toMatch(
      /1 h after dusk; still air and full vessels may/,
    );
    // Of what has no water of its own nothing is counted.
    expect(answer({ parts: [part(), part({ blocked: undefined })] })).toContain(
      "nothing that birds drink from",
    );
  });

  it("says so where nothing freezes, nothing can, or all gives water until the night is over", () => {
    const warm = { ...frost().night, low: 0 };
    expect(answer({ night: warm })).toMatch(/^Nothing freezes/);
    expect(answer({ first: undefined, parts: [] })).toMatch(/^There is nothing in this plan/);
    expect(answer({ parts: [gives] })).toBe(
      "Everything gives water until the night is over; the first to stop would be cups (open water of drinkers), after 20 h.",
    );
    const until = (soonest: number) => part({ lasts: "yes", blocked: { soonest, latest: 60 * HOUR } });
    expect(answer({ parts: [until(13 * HOUR)] })).toMatch(/^Everything gives water/);
    expect(answer({ parts: [until(12.9 * HOUR)] })).not.toMatch(/^Everything gives water/);
  });
});

describe("times of a frost", () => {
  it("are never, over a month, or a span; two that read alike are one", () => {
    const infinite = Number.POSITIVE_INFINITY;
    expect([infinite, 31 * 86_400, 30 * 86_400, 90 * 60].map(writeFrostTime)).toEqual([
      "never",
      "over a month",
      "30 days",
      "1 h 30 min",
    ]);
    expect(writeFrostBand({ soonest: 2 * HOUR, latest: infinite })).toBe("2 h to never");
    expect(writeFrostBand({ soonest: infinite, latest: infinite })).toBe("never");
  });

  it("the night is told with air, length, dusk, wind and water", () => {
    expect(writeFrostNight(frost(), "metric")).toMatch(
      /^-8 °C for 13 h from dusk \(18:00\), wind 3 m\/s, water at 10 °C/,
    );
    expect(writeFrostNight(frost(), "us")).toMatch(/^17\.6 °F .* water at 50 °F/);
  });
});

describe("writeFrostTodo", () => {
  const pipe = part({
    id: "feed",
    kind: "pipe",
    material: { name: "PVC pipe", bursts: true } as FrostPart["material"],
  });
  const todo = (more: Partial<Frost>) => writeFrostTodo(frost(more), "metric");

  it("has nothing to be done where it does not freeze, or nothing is in doubt", () => {
    expect(
      todo({
        night: { ...frost().night, low: 0 },
        headSpace: [{ source: "barrel", empty: 0, takeOut: 0.01 }],
      }),
    ).toEqual([]);
    expect(todo({})).toEqual([]);
  });

  it("drains the pipe at its low ends, with what runs out there and what stays in each sag", () => {
    const drain: Frost["drain"] = {
      volume: 0.0012,
      ends: [
        { point: "barrel", isSource: true, volume: 0.0003 },
        { point: "low end", isSource: false, volume: 0.0009 },
      ],
      sags: [{ point: "sag", run: "feed", along: 4, depth: 0.05, volume: 1e-4 }],
      devices: [{ run: "lane", kind: "oneWay" }],
      untapped: [{ source: "barrel", volume: 0.18 }],
    };
    const [drained, untapped, device, sag, ...rest] = todo({ parts: [pipe], drain });
    expect(drained).toMatch(
      /1\.2 L in all, .*the outlet of barrel, .*\(300 mL\) and low end \(900 mL\)\..* bursts\.$/,
    );
    expect(untapped).toBe(
      "The plan has no tap at barrel (180 L): fit one at the outlet first, or that water runs out with the pipe's.",
    );
    expect(device).toBe("The one-way valve of lane keeps water back: open or undo it while draining.");
    expect(sag).toMatch(/^100 mL stay in a sag of feed, lowest 4 m along it and 50 mm below its way out/);
    expect(rest).toEqual([]);
    expect(todo({ parts: [pipe], drain: { ...drain, sags: [], devices: [] } }).at(-1)).toMatch(
      /^No sag keeps water/,
    );
    // Pipe that lasts the night is left full, and pipe that gives way is not said to burst.
    expect(todo({ parts: [{ ...pipe, lasts: "yes" }], drain })).toEqual([]);
    expect(todo({ parts: [{ ...pipe, material: undefined } as FrostPart], drain })[0]).not.toContain(
      "bursts",
    );
  });

  it("takes water out of what is too full, and tells how much ice the day after melts", () => {
    const [full, ice] = todo({
      ...{
        headSpace: [{ source: "barrel", empty: 0.01, takeOut: 0.012 }],
        parts: [part({ ice: 0.02 }), part({ ice: 0.011 })],
      },
      thaw: { from: 10 * HOUR, to: 16 * HOUR, melts: 0.004 },
    });
    expect(full).toMatch(/^barrel is fuller than nine tenths: let 12 L out/);
    expect(ice).toBe(
      "Standing water bears up to 20 mm of ice by dawn; the air is above freezing from 10:00 to 16:00 and melts 4 mm.",
    );
    expect(todo({ parts: [part({ ice: 0.02 })] })).toEqual([
      "Standing water bears up to 20 mm of ice by dawn; the day after (2 °C at its highest) melts none of it.",
    ]);
  });
});

describe("refills and heat", () => {
  const refills = { id: "jars", path: "", count: 2, thatDay: 3, isHopeless: false, byAir: [] };

  it("tells how often a waterer is filled the day after, or that no filling helps", () => {
    expect(writeFrostRefills(refills)).toBe("each of 2 jars: filled at dawn and 3 more times before dark.");
    expect(writeFrostRefills({ ...refills, count: 1, thatDay: 1 })).toBe(
      "jars: filled at dawn and 1 more time before dark.",
    );
    expect(writeFrostRefills({ ...refills, thatDay: 0 })).toContain("it stays open through the day's light");
    expect(writeFrostRefills({ ...refills, isHopeless: true })).toContain("no filling keeps it open");
  });

  it("tells the heat that holds a part, rounded up, and the flow that would; nothing of what lasts", () => {
    expect(writeFrostHolding(part(), "metric")).toBe("46 W of safe heat hold hen line at 2 °C.");
    expect(writeFrostHolding(part({ holdingFlow: 1e-6 }), "metric")).toContain(
      "so would 60 mL/min let run to waste",
    );
    expect(writeFrostHolding(part({ lasts: "yes" }), "metric")).toBeUndefined();
    expect(writeFrostHolding(part({ watts: 0 }), "metric")).toBeUndefined();
  });
});

describe("writeFrostText", () => {
  const plain = (text: string) => text;
  const marked = (text: string, as: string) => `<${as}>${text}`;

  it("has a part only for what there is to tell, and paints the answer by whether anything stops", () => {
    const text = writeFrostText("", frost(), "metric", plain);
    expect(text).toMatch(/^This plan: a night of frost\n/);
    expect(text).not.toMatch(/\n\n\n|Before the night|The day after|Not in the plan/);
    expect(text).toMatch(/\n\nOr kept open by heat\n- 46 W/);
    expect(text).toMatch(/hen line +drinker pins +8 +10 mL +at once to 1 h +1 h to 2 h +5 h to 9 h +stops\n/);
    expect(writeFrostText("Bank", frost(), "metric", marked)).toContain("<starves>hen line");
    expect(
      writeFrostText("Bank", frost({ parts: [part({ lasts: "perhaps" })] }), "metric", marked),
    ).toContain("<good>hen line");
  });

  it("sets refills against the air of the day", () => {
    const byAir = [-4, -12].map((air, k) => ({ air, refills: 2 + k }));
    const refills = [{ id: "jars", path: "", count: 1, thatDay: 2, isHopeless: false, byAir }];
    const text = writeFrostText("", frost({ refills }), "metric", plain);
    expect(text).toMatch(/refills in a day's light, +-4 °C +-12 °C|at +-4 °C +-12 °C/);
    expect(text).toMatch(/\njars +2 +3\n/);
  });
});
