import { describe, expect, it } from "vitest";
import type { StandLoad } from "../../../../packages/hydraulics/src/judge/build/build-sheet.js";
import {
  writeBuildCautions,
  writeLoadLines,
} from "../../../../packages/hydraulics/src/report/build/load-words.js";

const load = (more: object = {}): StandLoad =>
  ({
    ...{
      source: "barrel",
      index: 0,
      stand: 0.5,
      water: 200,
      vessel: 9,
      standMass: 20,
      full: 229,
      feet: 4,
      on: "pads",
    },
    ...{
      area: 0.1,
      pressure: 30_000,
      soil: { id: "clay", name: "Clay", presumed: 75_000, isTyped: true },
      padSide: 0.3,
    },
    ...{ centre: 0.9, tilt: Math.PI / 12, isTied: false, downpour: undefined, vent: undefined },
    wind: { empty: 10, emptyAllowed: 7, lowest: 20, full: 40, withStand: undefined, keep: 0.05 },
    airGap: { bore: 0.0127, us: 0.0254, uk: 0.0254 },
    ...more,
  }) as StandLoad;

describe("writeLoadLines", () => {
  const lines = (more: object = {}, system: "metric" | "us" = "metric") =>
    writeLoadLines(load(more), system).join("\n");

  it("tells weights, height, and the tilt at which it falls", () => {
    expect(lines()).toMatch(
      /^Full, barrel weighs 229 kg \(200 kg of water, 9\.0 kg of vessel, 20 kg of stand\) and stands 50 cm up\./,
    );
    // A twelfth of pi are 15 degrees.
    expect(lines()).toContain("is 90 cm above the ground; the whole falls over at a tilt of 15 degrees");
    expect(lines({ tilt: Math.PI / 3 })).toContain("at a tilt of 60 degrees");
    expect(lines({ tilt: undefined })).not.toContain("falls over");
    expect(lines({ vessel: undefined, standMass: undefined, stand: 0 })).toMatch(
      /weighs 229 kg \(200 kg of water, the vessel's own weight not known\)\. /,
    );
  });

  it("holds the pressure against what the soil is presumed to bear, and names the pad that halves it", () => {
    expect(lines()).toContain(
      "On its 4 pads it presses 30 kPa; Clay is presumed to bear 75 kPa: 40 % of that. Wet",
    );
    expect(lines({ pressure: 45_000 })).toContain("60 % of that: close. A pad of 30 cm square");
    expect(lines({ pressure: 37_500 })).toContain("75 kPa: 50 % of that. Wet");
    expect(lines({ pressure: 45_600 })).toContain("61 % of that: close.");
    expect(lines({ pressure: 150_000, on: "feet" })).toMatch(
      /its 4 bare feet it presses 150 kPa.*: 2 times that: too much\. A pad/,
    );
    expect(lines({ pressure: 60_000, on: "bottom" })).not.toContain("A pad");
    expect(lines({ pressure: 75_000 })).toContain("100 % of that: close.");
    expect(lines({ soil: { ...load().soil, isTyped: false } })).toContain(
      "(no soil is named: the least that is presumed)",
    );
    expect(lines({ pressure: undefined })).toContain("cannot be told");
    // 75 kPa are 1566 pounds a square foot.
    expect(lines({}, "us")).toMatch(/presumed to bear 1,566 lb\/ft/);
  });

  it("tells winds in the reader's units, and what must be in it to stand", () => {
    expect(lines()).toMatch(
      /tips from a wind of 36 km\/h \(by the rule it is let stand to 25 km\/h\); at its lowest level from 72 km\/h, full from 144 km\/h\. With 50 L in it/,
    );
    expect(lines({}, "us")).toContain("a wind of 22 mph");
    expect(lines({ wind: { ...load().wind, keep: undefined, withStand: 15 } })).toMatch(
      /go over from 54 km\/h, empty\. Not even full/,
    );
    expect(lines({ isTied: true })).toContain("barrel is tied down");
    expect(lines({ wind: undefined })).toContain("tie it down");
  });

  it("tells what an overflow passes of a downpour, and how wide it must be, to the half centimetre above", () => {
    const downpour = { flow: 1e-3, passes: 2e-3, overflow: 0.05, needed: 0.061, isTyped: true };
    expect(lines({ downpour })).toMatch(/sheds 60 L\/min; the overflow \(50 mm\) passes 120 L\/min\./);
    expect(lines({ downpour: { ...downpour, passes: 1e-3 } })).not.toContain("only");
    expect(lines({ downpour: { ...downpour, passes: 5e-4, isTyped: false } })).toMatch(
      /not in the plan: the usual one\) passes only 30 L\/min: fit 65 mm or more/,
    );
    expect(lines()).not.toContain("downpour");
    expect(lines({ vent: { bare: 0.004, screened: 0.006, now: 0.003 } })).toMatch(
      /does with 4 mm, and with 6 mm behind.* The plan has 3 mm\.$/,
    );
  });

  it("has cautions for what the plan has alone", () => {
    const cautions = (more: object) =>
      writeBuildCautions({ openWater: [], deepWater: [], hasRoof: false, ...more }, "metric");
    const none = cautions({});
    expect(none.join()).not.toMatch(/Roof water|open water drowns/);
    expect(cautions({ hasRoof: true })).toHaveLength(none.length + 1);
    expect(cautions({ openWater: ["pan", "trough"] }).join()).toContain("pan, trough: open water drowns");
    const deep = [{ pen: "brooder", waterer: "pan", depth: 0.04, birds: "Laying hen", untilDays: 14 }];
    expect(cautions({ deepWater: deep }).join()).toMatch(
      /brooder: 40 mm of water stands? open in "pan", .*until 2 weeks\./,
    );
  });
});
