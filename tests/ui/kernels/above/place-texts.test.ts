import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { doMeet, placeTexts, sizeOfText } from "../../../../packages/ui/src/kernels/above/place-texts.js";

const SHEET = { left: 0, right: 300, top: 0, bottom: 200 };
const label = (id: string, weight: number, ...middles: [number, number][]) => ({
  id,
  weight,
  forms: [{ lines: [id], middles: middles.map(([x, y]) => ({ x, y })) }],
});

describe("placeTexts", () => {
  test("gives the heavier label its first choice, and the other its second", () => {
    const placed = placeTexts(
      [label("light", 1, [100, 100], [100, 50]), label("heavy", 2, [100, 100])],
      [],
      SHEET,
    );
    expect(placed.find(({ id }) => id === "heavy")!.at).toEqual({ x: 100, y: 100 });
    expect(placed.find(({ id }) => id === "light")!.at).toEqual({ x: 100, y: 50 });
  });

  test("writes the shorter form where the fuller one has no room", () => {
    const middles = [{ x: 40, y: 100 }];
    const wanted = {
      id: "run",
      weight: 1,
      forms: [
        { lines: ["a name of some length"], middles },
        { lines: ["9 m"], middles },
      ],
    };
    expect(placeTexts([wanted], [], SHEET)[0]!.lines).toEqual(["9 m"]);
  });

  test("leaves a label out that lies on what must stay visible", () => {
    const covered = [{ left: 95, right: 105, top: 95, bottom: 105 }];
    expect(placeTexts([label("name", 1, [100, 100])], covered, SHEET)).toEqual([]);
  });

  test("never lets two labels meet, nor one stick out, whatever is wanted", () => {
    const wanted = fc.record({
      id: fc.string({ minLength: 1, maxLength: 20 }),
      weight: fc.integer({ min: 0, max: 9 }),
      forms: fc.array(
        fc.record({
          lines: fc.array(fc.string({ maxLength: 25 }), { minLength: 1, maxLength: 2 }),
          middles: fc.array(
            fc.record({ x: fc.integer({ min: -20, max: 320 }), y: fc.integer({ min: -20, max: 220 }) }),
          ),
        }),
        { maxLength: 3 },
      ),
    });
    fc.assert(
      fc.property(fc.array(wanted, { maxLength: 14 }), (all) => {
        const placed = placeTexts(all, [], SHEET);
        placed.forEach(({ box, lines }, i) => {
          expect(box.right - box.left).toBeCloseTo(sizeOfText(lines).width, 9);
          expect(box.left >= 0 && box.right <= 300 && box.top >= 0 && box.bottom <= 200).toBe(true);
          expect(placed.slice(i + 1).some((other) => doMeet(box, other.box))).toBe(false);
        });
      }),
    );
  });
});
