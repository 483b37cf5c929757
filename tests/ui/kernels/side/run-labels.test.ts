import { describe, expect, test } from "vitest";
import { crosses, crowdOf, freeRow } from "../../../../packages/ui/src/kernels/side/label-rows.js";
import { placeHandles } from "../../../../packages/ui/src/kernels/side/place-handles.js";
import { runLabels } from "../../../../packages/ui/src/kernels/side/run-labels.js";
import { type DrawingOptions, drawPlan, examplePlan } from "./drawn-plan.js";

const labelsOf = (name: string, options: DrawingOptions = {}) => {
  const drawn = drawPlan(examplePlan(name), options);
  const grips = placeHandles(drawn.handles, drawn.layout).map(({ grip }) => grip);
  return {
    ...drawn,
    grips,
    labels: runLabels({ layout: drawn.layout, request: drawn, system: "metric", grips }),
  };
};

describe("runLabels", () => {
  test("say the length, the fall and the flow of each run at the moment shown", () => {
    const { labels, checked } = labelsOf("alder-bank-hen-house");
    const outlet = checked.line.points.height[checked.line.sources[0]!.point]!;
    expect(labels.map(({ lines }) => lines[0])).toEqual([
      `9 m, falls ${Number(((outlet + 0.1) * 100).toFixed(1))} cm`,
      "60 cm, rises 30 cm",
      "7.2 m, level",
    ]);
    expect(labels[0]!.lines[1]).toMatch(/^\d{3} mL\/min$/);
  });

  test("say that nothing flows when nobody drinks", () => {
    const { labels } = labelsOf("alder-bank-hen-house", { moment: "fullIdle" });
    expect(new Set(labels.map(({ lines }) => lines[1]))).toEqual(new Set(["still"]));
  });

  test.each([360, 600, 1280])("never overlap at %i px", (width) => {
    for (const name of ["alder-bank-hen-house", "alder-bank-rain-barrel", "alder-bank-two-pens"]) {
      const { labels } = labelsOf(name, { width });
      expect(labels.length).toBeGreaterThan(0);
      const byPlace = [...labels].sort((a, b) => a.x - b.x);
      for (let i = 1; i < byPlace.length; i++) {
        const [a, b] = [byPlace[i - 1]!, byPlace[i]!];
        const half = (lines: readonly string[]) => (Math.max(...lines.map(({ length }) => length)) * 6.4) / 2;
        expect(b.x - a.x).toBeGreaterThanOrEqual(half(a.lines) + half(b.lines));
      }
    }
  });

  test("stand clear of grips and pipe where there is room", () => {
    const { labels, grips, layout } = labelsOf("alder-bank-hen-house", { width: 1280 });
    for (const { x, y, lines } of labels) {
      const half = (Math.max(...lines.map(({ length }) => length)) * 6.4) / 2;
      const box = { left: x - half, right: x + half, top: y - 11, bottom: y + 17 };
      expect(crosses(layout.pipe, box)).toBe(false);
      expect(grips.filter((grip) => crosses([grip, { ...grip, x: grip.x + 0.1 }], box))).toEqual([]);
    }
  });

  test("have a plate under them where they lie across pipe or ground, and nowhere else", () => {
    const { labels, layout, grips, ...request } = labelsOf("alder-bank-two-pens", { width: 360 });
    // Held where they stood before, the pipe may come to lie behind them.
    const kept = new Map(labels.map(({ run, tie }) => [run, tie.y]));
    const held = runLabels({ layout, request, system: "metric", grips, kept });
    expect(held.filter(({ plate }) => plate !== undefined)).toHaveLength(held.length);
    for (const { x, y, lines, plate } of [...labels, ...held]) {
      const half = (Math.max(...lines.map(({ length }) => length)) * 6.4) / 2;
      const box = { left: x - half, right: x + half, top: y - 11, bottom: y + 17 };
      const isClear = !crosses(layout.pipe, box) && !crosses(layout.ground, box);
      expect(plate).toEqual(isClear ? undefined : box);
    }
  });

  test("stay on their lines while something is in the hand", () => {
    const { labels, layout, grips, ...request } = labelsOf("alder-bank-hen-house");
    const kept = new Map(labels.map(({ run }) => [run, 123]));
    const held = runLabels({ layout, request, system: "metric", grips, kept });
    expect(held.map(({ y }) => y)).toEqual([123, 123, 123]);
  });
});

test("freeRow stands near the pipe when nothing is in the way", () => {
  const { layout } = labelsOf("alder-bank-hen-house");
  const empty = { ...layout, pipe: [], ground: [], drinkers: [], arrow: undefined };
  const bare = { ...empty, grade: { chosen: [], highest: [], lowest: [] } };
  const shift = freeRow({ left: 100, right: 200, top: -11, bottom: 17 }, 150, bare, crowdOf(bare, []));
  expect(Math.abs(shift + 3 - 150)).toBeLessThanOrEqual(5);
});

test("crosses knows a line that goes through a box, over it, and past it", () => {
  const box = { left: 10, right: 20, top: 10, bottom: 20 };
  const line = (x1: number, y1: number, x2: number, y2: number) => [
    { x: x1, y: y1 },
    { x: x2, y: y2 },
  ];
  expect(crosses(line(0, 0, 30, 30), box)).toBe(true);
  expect(crosses(line(0, 5, 30, 5), box)).toBe(false);
  expect(crosses(line(0, 15, 9, 15), box)).toBe(false);
  expect(crosses(line(15, 0, 15, 30), box)).toBe(true);
});
