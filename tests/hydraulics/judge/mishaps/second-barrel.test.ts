import { expect, test } from "vitest";
import { withSecondBarrel } from "../../../../packages/hydraulics/src/judge/mishaps/second-barrel.js";
import { volumeAtLevel } from "../../../../packages/hydraulics/src/physics/vessel.js";
import { asked } from "../../../laws/asked-plans.js";

const SHAPES = [
  { shape: "upright", diameter: "50 cm", height: "80 cm" },
  { shape: "lying", diameter: "60 cm", length: "90 cm" },
  { shape: "box", length: "50 cm", width: "40 cm", height: "60 cm" },
  { shape: "tapered", bottomDiameter: "26 cm", topDiameter: "30 cm", height: "36 cm" },
  {
    shape: "table",
    readings: [
      { level: "0 cm", volume: "0 L" },
      { level: "20 cm", volume: "15 L" },
      { level: "50 cm", volume: "60 L" },
    ],
  },
];

test("withSecondBarrel makes one vessel hold twice as much at each height, and leaves the other", () => {
  for (const vessel of SHAPES) {
    const before = asked({
      headfall: 1,
      sources: ["a", "b"].map((id) => ({ id, vessel, stand: "60 cm", ground: "0 cm" })),
      runs: ["a", "b"].map((from) => ({
        ...{ from, length: "2 m", fall: "30 cm" },
        drinkers: { kind: "nipple-side-action", count: 1 },
      })),
    });
    const after = withSecondBarrel(before, 1);
    const [was, is] = [before, after].map(({ judged }) => judged.line.sources.map(({ shape }) => shape));
    const { full } = before.judged.line.sources[1]!.levels;
    for (const level of [0.1 * full, 0.5 * full, full]) {
      expect(volumeAtLevel(is![1]!, level) / volumeAtLevel(was![1]!, level)).toBeCloseTo(2, 12);
      expect(volumeAtLevel(is![0]!, level)).toBe(volumeAtLevel(was![0]!, level));
    }
    expect(after.fullVolumes[0]).toBe(before.fullVolumes[0]);
    expect(after.fullVolumes[1]).toBeCloseTo(2 * before.fullVolumes[1]!, 12);
    expect(after.judged.drinkers.map(({ verdict }) => verdict)).toEqual(
      before.judged.drinkers.map(({ verdict }) => verdict),
    );
  }
});
