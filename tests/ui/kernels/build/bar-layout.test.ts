import { expect, test } from "vitest";
import { BAR_WIDTH, barLayout } from "../../../../packages/ui/src/kernels/build/bar-layout.js";

const piece = (length: number) => ({ run: "feed", part: 1, parts: 1, length });

test("barLayout: pieces stand one after the other to scale, and what is left ends where the bar does", () => {
  const bar = { from: "sold" as const, length: 3, pieces: [piece(1.2), piece(0.9)], rest: 0.896 };
  const { pieces, rest, width } = barLayout(bar, 6);
  expect(width).toBeCloseTo(BAR_WIDTH / 2, 9);
  expect(pieces[0]).toMatchObject({ x: 1, width: expect.closeTo((1.2 / 6) * BAR_WIDTH, 9) });
  // Two cuts of 2 mm share the 4 mm that are neither piece nor rest.
  expect(pieces[1]!.x).toBeCloseTo(1 + (1.202 / 6) * BAR_WIDTH, 6);
  expect(rest!.x + rest!.width).toBeCloseTo(1 + width, 9);
});

test("barLayout: a bar used to its end has no rest, and nothing of it lies beyond the longest", () => {
  const { pieces, rest } = barLayout({ from: "leftover", length: 2, pieces: [piece(2)], rest: 0 }, 2);
  expect(rest).toBeUndefined();
  expect(pieces[0]!.x + pieces[0]!.width).toBeLessThanOrEqual(1 + BAR_WIDTH + 1e-9);
});
