import { describe, expect, test } from "vitest";
import { layAbove } from "../../../../packages/ui/src/kernels/above/lay-above.js";
import type { PlacedDrinker } from "../../../../packages/ui/src/kernels/above/place-drinkers.js";
import {
  fallWords,
  flowWords,
  kindWord,
  spokenDrinkers,
  spokenJoint,
  spokenRun,
  spokenSource,
} from "../../../../packages/ui/src/kernels/above/spoken-parts.js";
import { vesselOutline } from "../../../../packages/ui/src/kernels/above/vessel-outline.js";
import { PLACED } from "../../fixtures/placed-plan.js";

const layout = layAbove(PLACED);
const figures = { pipeName: "20 mm pipe", bore: 0.016, fall: 0.2, flow: 2e-5, flowAt: () => 2e-5 };

describe("parts said aloud", () => {
  test("a run by its name, length, fall, pipe and flow", () => {
    expect(spokenRun(layout.runs[0]!, figures, "metric")).toBe(
      "run feed, 10 m, falls 20 cm, 20 mm pipe, flow 1.2 L/min",
    );
    expect(spokenRun({ ...layout.runs[0]!, name: "run 4", isToScale: false }, undefined, "us")).toBe(
      "run 4, 32 ft 10 in, not drawn to scale, not checked yet",
    );
  });

  test("a group of drinkers by what they do", () => {
    const verdicts = [...Array(17).fill("good"), ...Array(7).fill("drips")] as const;
    const drinkers = verdicts.map((verdict) => ({ verdict }) as PlacedDrinker);
    expect(spokenDrinkers("hen line", "nipple", drinkers)).toBe(
      "hen line drinkers, 24 nipples: 7 drip, 17 good",
    );
    expect(spokenDrinkers("duck", "trough", [{ verdict: undefined } as PlacedDrinker])).toBe(
      "duck drinkers, 1 trough: not checked yet",
    );
  });

  test("joints by how many runs meet there, sources by what they are", () => {
    const tee = layout.jointByName.get("tee")!;
    expect(spokenJoint(tee, 3)).toBe("joint tee, 3 runs meet");
    expect(spokenJoint({ ...tee, name: "run 1 end" }, 1)).toBe("run 1 end");
    expect(spokenSource(PLACED, layout.jointByName.get("barrel")!)).toBe(
      "source barrel, Plastic drum, 55 US gal, on a stand of 60 cm",
    );
  });

  test("falls, rises and still water", () => {
    expect([0.2, -0.6, 0.0001, Number.NaN].map((fall) => fallWords(fall, "metric"))).toEqual([
      "falls 20 cm",
      "rises 60 cm",
      "level",
      "",
    ]);
    expect(flowWords(0, "metric")).toBe("no flow");
    expect(flowWords(-2e-5, "metric")).toBe("flow 1.2 L/min");
    expect(["nipple-side-action", "cup-float", "trough-float", "bell", "my own"].map(kindWord)).toEqual([
      "nipple",
      "cup",
      "trough",
      "bell",
      "drinker",
    ]);
  });
});

test("vesselOutline is round for barrels and buckets, a box for totes and lying drums", () => {
  const upright = { shape: "upright", diameter: "60 cm", height: "1 m" } as const;
  const lying = { shape: "lying", diameter: "60 cm", length: "1 m" } as const;
  const tapered = {
    shape: "tapered",
    topDiameter: "30 cm",
    bottomDiameter: "26 cm",
    height: "35 cm",
  } as const;
  expect(vesselOutline(upright)).toEqual({ kind: "round", diameter: 0.6 });
  expect(vesselOutline(tapered)).toEqual({ kind: "round", diameter: 0.3 });
  expect(vesselOutline(lying)).toEqual({ kind: "box", length: 1, width: 0.6 });
  expect(vesselOutline("blue barrel")).toEqual({ kind: "round", diameter: 0.56 });
  expect(vesselOutline("stock-tank-100gal")).toMatchObject({ kind: "box" });
});
