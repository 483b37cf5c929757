import { describe, expect, test } from "vitest";
import { flowArrows } from "../../../../packages/ui/src/kernels/above/flow-arrows.js";
import { layAbove } from "../../../../packages/ui/src/kernels/above/lay-above.js";
import { layScene } from "../../../../packages/ui/src/kernels/above/lay-scene.js";
import { doMeet } from "../../../../packages/ui/src/kernels/above/place-texts.js";
import { figuresOf, strokeOfBore } from "../../../../packages/ui/src/kernels/above/run-figures.js";
import type { SceneRequest } from "../../../../packages/ui/src/kernels/above/scene.js";
import { coveredBoxes } from "../../../../packages/ui/src/kernels/above/scene-texts.js";
import { checkedOf, PLACED, planOf } from "../../fixtures/placed-plan.js";
import { EXAMPLES, examplePlan } from "./example-plans.js";

const request = (plan = PLACED, changes: Partial<SceneRequest> = {}): SceneRequest => ({
  plan,
  checked: checkedOf(plan),
  selected: undefined,
  moment: "fullBusiest",
  system: "metric",
  scale: 40,
  seen: { left: -400, right: 1200, top: -600, bottom: 600 },
  ...changes,
});

describe("layScene", () => {
  test("lays the ground out in pixels, y down", () => {
    const scene = layScene(request());
    expect(scene.runs[1]!.pixels).toEqual([
      { x: 400, y: -0 },
      { x: 560, y: -0 },
      { x: 560, y: -120 },
    ]);
    expect(scene.joints.find(({ joint }) => joint.name === "tee")).toMatchObject({
      meeting: 3,
      vessel: undefined,
    });
  });

  test("draws a vessel by its shape and true width, never too small to be pressed", () => {
    expect(layScene(request()).joints[0]!.vessel).toEqual({
      outline: { kind: "round", diameter: 0.56 },
      half: expect.closeTo(11.2, 9),
    });
    expect(layScene(request(PLACED, { scale: 5 })).joints[0]!.vessel!.half).toBe(10);
    const pens = layScene(request(examplePlan("two-pens")));
    expect(pens.joints[0]!.vessel!.outline).toMatchObject({ kind: "box", length: 1.12 });
    expect(pens.feeds).toHaveLength(1);
  });

  test("breaks runs that are not drawn to scale, and only those", () => {
    const runs = PLACED.runs.map((run) => (run.id === "feed" ? { ...run, length: "12 m" } : run));
    const scene = layScene(request(planOf({ ...PLACED, runs })));
    expect(scene.runs.map(({ cut }) => cut?.at)).toEqual([{ x: 200, y: -0 }, undefined, undefined]);
    expect(scene.texts.find(({ id }) => id === "run 0")!.lines.join(" ")).toMatch(/12 m.*not to scale/);
  });

  test.each([...EXAMPLES])("never lets labels of %s lie on each other, on marks or on pipes", (name) => {
    const plan = examplePlan(name);
    for (const scale of [8, 17, 50, 120]) {
      const scene = layScene(
        request(plan, { scale, seen: { left: -100, right: 3000, top: -1500, bottom: 1500 } }),
      );
      const covered = coveredBoxes(scene);
      scene.texts.forEach(({ box }, i) => {
        expect(covered.some((other) => doMeet(box, other))).toBe(false);
        expect(scene.texts.slice(i + 1).some((other) => doMeet(box, other.box))).toBe(false);
      });
    }
  });

  test("labels the chosen run though there is room for few", () => {
    const narrow = { scale: 9, seen: { left: -10, right: 200, top: -120, bottom: 60 } };
    for (const run of [0, 1, 2]) {
      const { texts } = layScene(request(PLACED, { ...narrow, selected: { kind: "run", run } }));
      expect(texts.map(({ id }) => id)).toContain(`run ${run}`);
    }
  });
});

describe("figuresOf", () => {
  const layout = layAbove(PLACED);
  const checked = checkedOf(PLACED);

  test("gives fall, bore and flow of a run at a moment", () => {
    const busy = figuresOf(layout.runs[1]!, checked, "fullBusiest")!;
    expect(busy.flow).toBeGreaterThan(0);
    expect(figuresOf(layout.runs[1]!, checked, "fullIdle")!.flow).toBe(0);
    const { points, runs } = checked.line;
    const ends = [runs[0]!.points[0]!, runs[0]!.points.at(-1)!].map((point) => points.height[point]!);
    expect(figuresOf(layout.runs[0]!, checked, "fullIdle")!.fall).toBeCloseTo(ends[0]! - ends[1]!, 12);
  });

  test("knows that nothing flows behind the last drinker", () => {
    const { flowAt, flow } = figuresOf(layout.runs[1]!, checked, "fullBusiest")!;
    expect(flowAt(0.2)).toBeCloseTo(flow, 12);
    expect(flowAt(6.9)).toBe(0);
  });

  test("says nothing of a run that the check did not have", () => {
    const older = checkedOf({ ...PLACED, runs: PLACED.runs.slice(0, 1) });
    expect(figuresOf(layout.runs[1]!, older, "fullBusiest")).toBeUndefined();
    expect(figuresOf({ ...layout.runs[0]!, name: "another" }, older, "fullBusiest")).toBeUndefined();
  });
});

test("strokeOfBore is thicker for a wider bore, and stays a line", () => {
  const strokes = [0.004, 0.0158, 0.0206, 0.05, 0.5].map(strokeOfBore);
  expect(strokes).toEqual([...strokes].sort((a, b) => a - b));
  expect(strokes[0]).toBeGreaterThanOrEqual(2);
  expect(strokes[4]).toBeLessThanOrEqual(9);
});

describe("flowArrows", () => {
  const spots = [
    { x: 0, y: 0 },
    { x: 100, y: 0 },
    { x: 100, y: 20 },
    { x: 100, y: 120 },
  ];

  test("points with the water, on pieces that are long enough", () => {
    expect(flowArrows(spots, () => 1, [])).toEqual([
      { at: { x: 30, y: 0 }, degrees: 0 },
      { at: { x: 100, y: 50 }, degrees: 90 },
    ]);
    expect(flowArrows(spots, () => -1, []).map(({ degrees }) => degrees)).toEqual([180, 270]);
  });

  test("keeps clear of marks, and shows none where nothing flows", () => {
    const marks = [20, 30, 40].map((x) => ({ x, y: 0 }));
    expect(flowArrows(spots, () => 1, marks)[0]!.at).toEqual({ x: 70, y: 0 });
    expect(flowArrows(spots, () => 0, [])).toEqual([]);
    expect(flowArrows(spots, (share) => (share < 0.2 ? 1 : 0), [])).toEqual([
      { at: { x: 30, y: 0 }, degrees: 0 },
    ]);
    expect(flowArrows(spots, () => Number.NaN, [])).toEqual([]);
  });
});
