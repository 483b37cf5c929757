import { dailyMark, type Mark } from "@headfall/hydraulics";
import { describe, expect, test } from "vitest";
import { checkDocument } from "../../../../packages/hydraulics/src/document/read-plan.js";
import { MARGIN, paperOf } from "../../../../packages/ui/src/kernels/sheet/paper.js";
import type { Shape } from "../../../../packages/ui/src/kernels/sheet/shapes.js";
import { layMarkStrip } from "../../../../packages/ui/src/kernels/time/mark-strip.js";
import { penPlan } from "../../../hydraulics/judge/birds/pens.js";

function markOf(full: string): Mark {
  const plan = penPlan({ birds: { kind: "hen", count: 60 } });
  const reading = checkDocument({
    ...plan,
    sources: [{ ...plan.sources[0], level: { full, lowest: "7 cm" } }],
  });
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const answer = dailyMark(reading.plan, { day: "2026-07-04" });
  if (!answer.ok) throw new Error(JSON.stringify(answer.problems));
  return answer.mark;
}

const strip = (mark: Mark, name: "a4" | "letter" = "a4") =>
  layMarkStrip({
    mark,
    paper: paperOf(name, false),
    system: "metric",
    words: ["One sentence.", "Another."],
    title: "Daily mark",
  });

const textOf = (shapes: readonly Shape[], words: string) =>
  shapes.find((shape) => shape.kind === "text" && shape.text === words) as Extract<Shape, { kind: "text" }>;

describe("layMarkStrip", () => {
  test("a level on the paper is as far above the strip's foot as in the vessel, to a hundredth of a millimetre", () => {
    const mark = markOf("18 cm");
    const { pages, length } = strip(mark);
    expect(pages).toHaveLength(1);
    expect(length).toBeCloseTo(190, 6);
    const { shapes } = pages[0]!;
    const [today, tomorrow] = [textOf(shapes, "today").y, textOf(shapes, "tomorrow").y];
    expect(tomorrow - today).toBeCloseTo(1000 * mark.fall.expect, 2);
    const frame = shapes.find((shape) => shape.kind === "path" && shape.pen === "frame");
    const heights = frame?.kind === "path" ? frame.spots.map(({ y }) => y) : [];
    expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo(length, 6);
    expect(Math.max(...heights) - (today + 0.8)).toBeCloseTo(1000 * mark.from, 2);
  });

  test("a strip longer than the paper is cut into pieces that overlap, and none is lost", () => {
    for (const name of ["a4", "letter"] as const) {
      const mark = markOf("80 cm");
      const { pages, length } = strip(mark, name);
      expect(pages.length).toBeGreaterThan(2);
      const paper = paperOf(name, false);
      let sum = 0;
      for (const { shapes } of pages) {
        const frame = shapes.find(
          (shape) => shape.kind === "path" && shape.pen === "frame" && shape.isClosed === true,
        );
        const spots = frame?.kind === "path" ? frame.spots : [];
        const ys = spots.map(({ y }) => y);
        sum += Math.max(...ys) - Math.min(...ys);
        expect(Math.min(...ys)).toBeGreaterThanOrEqual(MARGIN);
        expect(Math.max(...ys)).toBeLessThanOrEqual(paper.height - MARGIN);
      }
      expect(sum - 12 * (pages.length - 1)).toBeCloseTo(length, 6);
    }
  });

  test("words stand beside the strip and within the paper; a line of 100 mm is there to check the print", () => {
    const { pages } = strip(markOf("18 cm"));
    const { shapes } = pages[0]!;
    expect(textOf(shapes, "One sentence.").x).toBeGreaterThan(60);
    const check = shapes.filter(
      (shape) => shape.kind === "path" && shape.pen === "check" && shape.spots.length === 2,
    );
    const lengths = check.map((shape) =>
      shape.kind === "path"
        ? Math.hypot(shape.spots[1]!.x - shape.spots[0]!.x, shape.spots[1]!.y - shape.spots[0]!.y)
        : 0,
    );
    expect(lengths).toContain(100);
  });
});
