import { describe, expect, it } from "vitest";
import type {
  Heat,
  HeatCurve,
  HeatPart,
} from "../../../../packages/hydraulics/src/judge/weather/heat-result.js";
import {
  writeDegrees,
  writeHeatAnswer,
  writeHeatCautions,
  writeHeatDay,
  writeHeatFlush,
  writeHeatLevers,
  writeHeatWaterer,
  writeRenewal,
  writeSoftening,
} from "../../../../packages/hydraulics/src/report/weather/heat-sentences.js";
import { writeHeatText } from "../../../../packages/hydraulics/src/report/weather/heat-text.js";

const HOUR = 3600;
const STEP = HOUR / 2;

const curve = (peak: number, more: Partial<HeatCurve> = {}): HeatCurve => ({
  // The water of each half hour is as warm as its number.
  water: Array.from({ length: 48 }, (_, k) => k),
  ...{ peak, at: 15 * HOUR, less: 0, refused: 0 },
  ...more,
});
const part = (more: Partial<HeatPart> = {}): HeatPart => ({
  ...{ id: "lane", kind: "pipe", path: "", drinkers: 4, volume: 0.002, colour: "black", isColourSaid: true },
  ...{ shade: 0.25, timeConstant: 600, hottest: curve(30), expected: curve(28), levers: [] },
  ...more,
});
const heat = (more: Partial<Heat> = {}) =>
  ({
    day: { high: 35, low: 20, sun: 900, wind: 1.5, dawn: 5 * HOUR, light: 16 * HOUR } as Heat["day"],
    ...{ step: STEP, air: Array.from({ length: 48 }, () => 25), parts: [part()], flushes: [] },
    ...{ draw: 0, renewedEvery: undefined, defaults: [] },
    ...more,
  }) as unknown as Heat;

describe("writeHeatAnswer", () => {
  const answer = (...parts: HeatPart[]) => writeHeatAnswer(heat({ parts }), "metric");

  it("speaks of the hottest water that birds drink from, and of nothing that they do not", () => {
    const hot = part({ id: "hot lane", hottest: curve(41, { less: 3 * HOUR }), expected: curve(36) });
    const text = answer(part(), hot, part({ id: "feed", drinkers: 0, hottest: curve(60) }));
    expect(text).toMatch(
      /^Water standing in hot lane comes to 36 °C, at worst 41 °C, at 15:00; for 3 h birds may drink less/,
    );
    expect(answer(part({ drinkers: 0 }))).toMatch(/^Nothing of this plan is drunk from/);
  });

  it("says no where it stays cool, and tells apart what is drunk less and what is refused", () => {
    expect(answer(part())).toBe("No: the warmest water before birds is in lane, 28 °C, at worst 30 °C.");
    const refused = part({ hottest: curve(45, { less: 4 * HOUR, refused: HOUR }) });
    expect(answer(refused)).toMatch(/for 1 h birds may refuse it \(above \d+ °C\), for 4 h they drink less/);
  });
});

describe("temperatures and the day", () => {
  it("are told to a degree", () => {
    expect([31.6, 31.4, -0.4].map((one) => writeDegrees(one, "metric"))).toEqual(["32 °C", "31 °C", "0 °C"]);
    expect([31.6, 30].map((one) => writeDegrees(one, "us"))).toEqual(["89 °F", "86 °F"]);
  });

  it("tells light until dusk, past midnight as the clock has it", () => {
    expect(writeHeatDay(heat(), "metric")).toMatch(
      /^20 °C to 35 °C, .*900 W\/m² .* 1\.5 m\/s, light from 05:00 to 21:00$/,
    );
    const late = { ...heat().day, dawn: 10 * HOUR };
    expect(writeHeatDay(heat({ day: late }), "metric")).toMatch(/from 10:00 to 02:00$/);
  });
});

describe("writeHeatFlush", () => {
  const flush = {
    run: "lane",
    path: "",
    volume: 0.003,
    from: 11 * HOUR,
    to: 17 * HOUR,
    times: 3,
    againAfter: HOUR,
  };

  it("tells what runs away, when, and how often", () => {
    expect(writeHeatFlush(flush, "metric")).toMatch(
      /^lane: 3 L of hot water .* from 11:00 to 17:00\. Let that much run away before each look: 3 times keep it .* within 1 h at its hottest\.$/,
    );
    expect(writeHeatFlush({ ...flush, times: 1 }, "metric")).toContain("1 time keeps it under");
  });

  it("says where flushing does not help, or does not keep up", () => {
    expect(writeHeatFlush({ ...flush, times: undefined }, "metric")).toMatch(/flushing does not help\.$/);
    expect(writeHeatFlush({ ...flush, againAfter: undefined }, "metric")).toMatch(
      /flushing does not help\.$/,
    );
    expect(writeHeatFlush({ ...flush, times: 13 }, "metric")).toMatch(
      /No flushing keeps up with it.* within 1 h\.$/,
    );
    expect(writeHeatFlush({ ...flush, times: 12 }, "metric")).toContain("12 times keep");
  });
});

describe("writeHeatWaterer", () => {
  const waterer = (times: number | undefined, againAfter: number | undefined, open = 0.1) =>
    writeHeatWaterer(
      part({
        ...{ id: "pan", volume: 0.01 },
        waterer: {
          open,
          dried: { hottest: 4e-4, expected: 6e-4 },
          refresh: { water: 18, times, againAfter },
        },
      }),
      "metric",
    )!;

  it("tells what dries, of how much, and nothing of what is not open", () => {
    expect(waterer(0, undefined)).toMatch(
      /^pan: 600 mL of its 10 L dry away in such a day, 400 mL in still air\. It stays under/,
    );
    expect(waterer(0, undefined, 0)).toMatch(/^pan: It stays under \d+ °C all day\.$/);
    expect(writeHeatWaterer(part(), "metric")).toBeUndefined();
  });

  it("tells how often to fill it anew, or that this does not keep up, or does not help", () => {
    expect(waterer(1, 3 * HOUR)).toMatch(
      /water of 18 °C whenever it is too warm, once keeps it under .*, the soonest after 3 h\.$/,
    );
    expect(waterer(4, 2 * HOUR)).toMatch(/4 times keep it under .*, the soonest after 2 h\.$/);
    expect(waterer(4, undefined)).toMatch(/4 times keep it under \d+ °C\.$/);
    expect(waterer(12, HOUR)).toContain("12 times keep");
    expect(waterer(13, HOUR / 2)).toMatch(
      /No filling keeps up with it: with water of 18 °C it is too warm again within 30 min\.$/,
    );
    expect(waterer(undefined, undefined)).toMatch(/too warm at once\.$/);
  });
});

describe("what would change it, softens, or renews it", () => {
  const levers = [
    { change: "white", peak: 33, less: HOUR, refused: 0 },
    { change: "shade", peak: 27, less: 0, refused: 0 },
  ] as const;

  it("tells each change with what is left of the heat; nothing of what is cool, or cannot be changed", () => {
    const hot = part({ hottest: curve(41, { less: 5 * HOUR }), levers });
    expect(writeHeatLevers(hot, "metric")).toMatch(
      /^lane, 41 °C at worst and 5 h too warm\. white.*: 33 °C, 1 h too warm; wholly in shade: 27 °C\.$/,
    );
    const lagged = [{ change: "lagging", peak: 30, less: 0, refused: 0 }] as const;
    expect(writeHeatLevers({ ...hot, levers: lagged }, "metric")).toContain("lagged with 25 mm of foam");
    expect(writeHeatLevers({ ...hot, levers: lagged }, "us")).toMatch(/lagged with 1 in of foam/);
    expect(writeHeatLevers({ ...hot, levers: [] }, "metric")).toBeUndefined();
    expect(writeHeatLevers(part({ levers }), "metric")).toBeUndefined();
  });

  it("warns of pipe that softens from its own limit on", () => {
    const material = { name: "PE pipe", softensAbove: 40, citation: { seen: "seen" } } as NonNullable<
      HeatPart["material"]
    >;
    const softens = (peak: number) =>
      writeSoftening(heat({ parts: [part({ material, hottest: curve(peak) })] }), "metric");
    expect(softens(40)[0]).toMatch(/^lane \(PE pipe\) softens above 40 °C \(seen\)/);
    expect(softens(39.9)).toEqual([]);
    expect(writeSoftening(heat(), "metric")).toEqual([]);
  });

  it("tells by the hour what birds draw", () => {
    expect(writeRenewal(heat({ draw: 1e-3 / HOUR, renewedEvery: 2 * HOUR }), "metric")).toMatch(
      /about 1 L an hour .* every 2 h:/,
    );
    expect(writeRenewal(heat({ draw: 1 }), "metric")).toBeUndefined();
  });

  it("adds cautions of loose waterers where there is one among the rest", () => {
    const pan = part({
      waterer: {
        open: 0,
        dried: { hottest: 0, expected: 0 },
        refresh: { water: 18, times: 0, againAfter: undefined },
      },
    });
    const without = writeHeatCautions(heat(), "metric");
    const withOne = writeHeatCautions(heat({ parts: [part(), pan] }), "metric");
    expect(withOne.slice(0, without.length)).toEqual(without);
    expect(withOne.slice(without.length).join()).toMatch(/Loose waterers/);
  });
});

describe("writeHeatText", () => {
  const text = (more: Partial<Heat> = {}) => writeHeatText("Bank", heat(more), "metric", (words) => words);

  it("has a row for each part, with a mark where its colour is taken and blanks where nothing is too warm", () => {
    expect(text()).toMatch(/\nlane +4 +2 L +black +25 % +28 °C +30 °C +15:00\n/);
    expect(
      text({
        parts: [part({ isColourSaid: false, drinkers: 0, hottest: curve(41, { less: HOUR, refused: 60 }) })],
      }),
    ).toMatch(/\nlane +2 L +black\? +25 % +28 °C +41 °C +15:00 +1 h +1 min\n/);
  });

  it("tells every second hour's air and water, each from its own place of the curve", () => {
    expect(text()).toMatch(/\nair +25 °C( +25 °C){7}\n/);
    expect(text()).toMatch(/\nlane +12 °C +16 °C +20 °C +24 °C +28 °C +32 °C +36 °C +40 °C\n/);
  });

  it("has no part without lines, and paints by whether birds' water is too warm", () => {
    expect(text()).not.toMatch(/\n\n\n|To flush|Loose waterers\n|What would change it|Not in the plan/);
    const marked = (more: Partial<Heat>) =>
      writeHeatText("", heat(more), "metric", (words, as) => `<${as}>${words}`);
    expect(marked({})).toContain("<good>No:");
    expect(marked({ parts: [part({ drinkers: 1, hottest: curve(41, { less: 60 }) })] })).toContain(
      "<starves>Water",
    );
    expect(marked({ parts: [part(), part({ drinkers: 0, hottest: curve(61, { less: 60 }) })] })).toContain(
      "<good>No:",
    );
    expect(marked({})).toContain("<title>This plan: a hot day");
  });
});
