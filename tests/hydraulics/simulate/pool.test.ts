import { describe, expect, it } from "vitest";
import {
  drawnAt,
  givesAll,
  type Pool,
  surfaceAfter,
  topOf,
  volumesAfter,
} from "../../../packages/hydraulics/src/simulate/pool.js";
import type { Store } from "../../../packages/hydraulics/src/simulate/store.js";

/** A vessel with straight walls that presses from its own level. */
function upright(store: { area: number; base: number; full: number; dead: number }): Store {
  const { area, base, full, dead } = store;
  const surfaceAt = (volume: number) => base + volume / area;
  return {
    ...{ source: 0, full, dead, top: surfaceAt(full), bottom: surfaceAt(dead), surfaceAt },
    volumeAt: (surface) => Math.min(full, Math.max(dead, (surface - base) * area)),
    levelAt: (volume) => volume / area,
  };
}

// One of 1 m2 from 0 m up, of which 0.1 m3 cannot be drawn, and one of half that from 0.2 m up.
const low = upright({ area: 1, base: 0, full: 1, dead: 0.1 });
const high = upright({ area: 0.5, base: 0.2, full: 0.5, dead: 0 });
/** They stand at 0.6 m and at 0.4 m. */
const pool: Pool = { stores: [low, high], start: [0.6, 0.1] };

describe("a pool of two vessels", () => {
  it("gives all above their outlets, and presses from the higher", () => {
    expect(givesAll(pool)).toBeCloseTo(0.6, 12);
    expect(givesAll({ ...pool, start: [0.05, 0.1] })).toBeCloseTo(0.1, 12);
    expect(topOf(pool)).toBeCloseTo(0.6, 12);
  });

  it.each([
    // The first alone down to 0.4 m, then both at once; from 0.2 m the second is empty, from 0.1 m the first.
    [0.7, 0, [0.6, 0.1]],
    [0.6, 0, [0.6, 0.1]],
    [0.5, 0.1, [0.5, 0.1]],
    [0.4, 0.2, [0.4, 0.1]],
    [0.3, 0.35, [0.3, 0.05]],
    [0.2, 0.5, [0.2, 0]],
    [0.15, 0.55, [0.15, 0]],
    [0.1, 0.6, [0.1, 0]],
  ])("has come down to %f m when %f m3 are drawn, and back", (surface, drawn, left) => {
    expect(drawnAt(pool, surface)).toBeCloseTo(drawn, 12);
    expect(surfaceAfter(pool, drawn)).toBeCloseTo(Math.min(surface, 0.6), 9);
    const volumes = volumesAfter(pool, drawn);
    volumes.forEach((volume, i) => void expect(volume).toBeCloseTo(left[i]!, 9));
    expect(volumes[0]! + volumes[1]!).toBeCloseTo(0.7 - drawn, 15);
  });

  it("stands at its lowest when more is asked than it gives, at its top when less than nothing is", () => {
    expect(surfaceAfter(pool, 5)).toBeCloseTo(0.1, 12);
    expect(surfaceAfter(pool, -1)).toBeCloseTo(0.6, 12);
  });

  it("takes what an air tube lets out at one height from the vessel that has it", () => {
    // Presses from 0.5 m whatever is in it, from 0.8 m3 down to 0.2.
    const sealed: Store = {
      ...low,
      dead: 0.2,
      bottom: 0.5,
      surfaceAt: () => 0.5,
      volumeAt: (s) => (s >= 0.5 ? 0.8 : 0.2),
    };
    const both: Pool = { stores: [sealed, high], start: [0.8, 0.1] };
    const volumes = volumesAfter(both, 0.3);
    expect(volumes[0]).toBeCloseTo(0.5, 9);
    expect(volumes[1]).toBeCloseTo(0.1, 9);
  });
});

describe("a pool of one vessel", () => {
  const alone: Pool = { stores: [low], start: [0.6] };
  it("stands where what is left in it stands, no lower than its outlet and no higher than it was", () => {
    expect(surfaceAfter(alone, 0.25)).toBeCloseTo(0.35, 12);
    expect(surfaceAfter(alone, 0.55)).toBeCloseTo(0.1, 12);
    expect(surfaceAfter(alone, -0.3)).toBeCloseTo(0.6, 12);
    expect(volumesAfter(alone, 0.25)[0]).toBeCloseTo(0.35, 15);
    expect(volumesAfter(alone, 0.25)).toHaveLength(1);
  });
});
