import { describe, expect, test } from "vitest";
import { layProfile } from "../../../packages/ui/src/kernels/profile-layout.js";
import { pathToDrinker } from "../../../packages/ui/src/kernels/profile-path.js";
import type { ProfileRequest } from "../../../packages/ui/src/kernels/profile-request.js";
import { smallChecked } from "../fixtures/small-line.js";

const checked = smallChecked({ verdicts: ["good", "good", "starves", "drips"] });
const request: ProfileRequest = {
  checked,
  path: pathToDrinker(checked.line, 2)!,
  moment: "fullBusiest",
  drinker: 2,
  width: 360,
  height: 318,
  tickUnit: 1,
};
const layout = layProfile(request);
const pxPerMetreUp = layout.vessel.bottom - layout.vessel.top;

describe("layProfile", () => {
  test("puts the barrel on its stand, to the same scale as all other heights", () => {
    // 0.8 m of barrel on 0.5 m of stand.
    expect((layout.vessel.ground - layout.vessel.bottom) / pxPerMetreUp).toBeCloseTo(0.5 / 0.8, 9);
    expect(layout.vessel.water).toBeCloseTo(layout.vessel.full, 9);
    expect(layout.vessel.lowest - layout.vessel.full).toBeCloseTo((pxPerMetreUp / 0.8) * 0.6, 9);
  });

  test("states how much larger heights are than lengths, as drawn", () => {
    const perMetreUp = pxPerMetreUp / 0.8;
    const perMetreAlong = layout.pipe[1]!.x - layout.pipe[0]!.x;
    expect(layout.exaggeration).toBeCloseTo(perMetreUp / perMetreAlong, 9);
  });

  test("keeps everything inside the drawing", () => {
    const spots = [
      ...layout.pipe,
      ...layout.ground,
      ...layout.grade.chosen,
      ...layout.drinkers,
      ...layout.loss.other,
    ];
    for (const { x, y } of spots) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(360);
      expect(y).toBeGreaterThanOrEqual(0);
      expect(y).toBeLessThanOrEqual(318);
    }
  });

  test("draws the grade line level when nobody drinks, and falling when they do", () => {
    expect(new Set(layout.grade.highest.map(({ y }) => y)).size).toBe(1);
    const falling = layout.grade.chosen.map(({ y }) => y);
    expect(falling).toEqual([...falling].sort((a, b) => a - b));
    expect(falling[4]!).toBeGreaterThan(falling[0]!);
  });

  test("measures the head of the drinker looked at from the drinker up to the grade line", () => {
    // Drinker 3: 3 m out, so 3 cm lost; it hangs at 0.55 - 0.03 - 0.1 = 0.42 m.
    expect(layout.arrow!.head).toBeCloseTo(1.2 - 0.03 - 0.42, 12);
    expect(layout.arrow!.from).toBeCloseTo(layout.drinkers[2]!.y, 9);
    expect(layout.arrow!.to).toBeCloseTo(layout.grade.chosen[3]!.y, 9);
  });

  test("draws losses to a scale of their own, both laws by the same one", () => {
    expect(layout.loss.shownLoss).toBeCloseTo(0.04, 12);
    expect(layout.loss.otherLoss).toBeCloseTo(0.08, 12);
    const fallen = (spots: readonly { y: number }[]) => spots[4]!.y - layout.loss.top;
    expect(fallen(layout.loss.other) / fallen(layout.loss.shown)).toBeCloseTo(2, 9);
    const perMetre = fallen(layout.loss.other) / 0.08;
    expect(layout.loss.exaggeration).toBeCloseTo(perMetre / (layout.pipe[1]!.x - layout.pipe[0]!.x), 9);
  });

  test("draws no loss when nothing flows", () => {
    const idle = layProfile({ ...request, moment: "fullIdle" }).loss;
    expect(idle.exaggeration).toBe(0);
    expect(new Set(idle.shown.map(({ y }) => y))).toEqual(new Set([idle.top]));
  });

  test("marks heights in the unit asked for", () => {
    const feet = layProfile({ ...request, tickUnit: 0.3048 });
    const [first, second] = feet.heightTicks as [
      { at: number; value: number },
      { at: number; value: number },
    ];
    const perFoot = (first.at - second.at) / (second.value - first.value);
    expect(perFoot).toBeCloseTo((pxPerMetreUp / 0.8) * 0.3048, 9);
  });

  test("keeps its scale when the stand moves by less than a step", () => {
    const source = checked.line.sources[0]!;
    const raised = {
      ...checked,
      line: { ...checked.line, sources: [{ ...source, stand: 0.51, base: 0.51 }] },
    };
    expect(layProfile({ ...request, checked: raised }).exaggeration).toBeCloseTo(layout.exaggeration, 12);
  });

  test("drawn closer, shows only what lies on the stretch, cut at its edges", () => {
    const closer = layProfile({ ...request, window: [0.5, 2.5] });
    expect(closer.window).toEqual([0.5, 2.5]);
    expect(closer.pipe.map(({ x }) => x)).toEqual(
      [0.5, 1, 2, 2.5].map((along) =>
        expect.closeTo(layout.plot.left + ((along - 0.5) / 2) * (layout.plot.right - layout.plot.left), 9),
      ),
    );
    // The pipe falls straight, so half way between two points it is at half of their heights.
    expect(closer.pipe[0]!.y).toBeCloseTo((layout.pipe[0]!.y + layout.pipe[1]!.y) / 2, 9);
    expect(closer.drinkers.map(({ index }) => index)).toEqual([0, 1]);
    expect(closer.rail.marks.flatMap(({ drinkers }) => drinkers)).toEqual([0, 1]);
    expect(closer.exaggeration).toBeCloseTo(layout.exaggeration / 2, 9);
  });

  test("keeps the heights it is told to keep on the drawing", () => {
    const held = layProfile({ ...request, heldHeights: [-1, 3] });
    expect(held.heights).toEqual([-1, 3]);
    const narrower = layProfile({ ...request, heldHeights: [0.4, 0.6] });
    expect(narrower.heights).toEqual(layout.heights);
  });
});
