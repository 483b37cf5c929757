import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { siOf } from "../../../../packages/hydraulics/src/search/cure-space.js";
import { typedPlaces } from "../../../../packages/hydraulics/src/search/remedies/typed-places.js";

const evenly = (count: number, first: number, every: number) =>
  Array.from({ length: count }, (_, k) => first + k * every);

describe("typedPlaces", () => {
  it("types to the nearest tenth of a millimetre where the last lies before the end", () => {
    expect(typedPlaces({ along: evenly(3, 0.10006, 0.30006), end: 1 }, "metric")).toEqual({
      first: "10.01 cm",
      every: "30.01 cm",
    });
  });

  it("types a hair short where the last hangs at the very end and would be carried past it", () => {
    // Six of seven evenly along 4.0112 ft, the last at the end: 17.466 cm apart.
    const end = 4.0112 * 0.3048;
    const along = evenly(6, (2 * end) / 7, end / 7);
    expect(typedPlaces({ along, end }, "metric")).toEqual({ first: "34.93 cm", every: "17.46 cm" });
  });

  it("keeps what is typed, and says no spacing of one alone", () => {
    expect(typedPlaces({ along: [0.5], end: 1 }, "us")).toEqual({ first: "19.69 in" });
    const kept = { first: "1 ft", every: "8 in" };
    expect(typedPlaces({ along: evenly(2, 0.3048, 0.2032), end: 1, kept }, "us")).toEqual(kept);
  });

  it("keeps the last within its run, and each within a fifth of a millimetre a place of where it hangs", () => {
    const metres = fc.double({ min: 0.02, max: 3, noNaN: true });
    fc.assert(
      fc.property(
        metres,
        metres,
        fc.integer({ min: 1, max: 60 }),
        fc.boolean(),
        (first, every, count, isUs) => {
          const along = evenly(count, first, every);
          const end = along.at(-1)!;
          const places = typedPlaces({ along, end }, isUs ? "us" : "metric");
          const at = (k: number) => siOf(places.first) + k * siOf(places.every);
          expect(at(count - 1)).toBeLessThanOrEqual(end + 1e-6);
          for (const k of along.keys()) expect(Math.abs(at(k) - along[k]!)).toBeLessThan(2.6e-4 * (k + 1));
        },
      ),
    );
  });
});
