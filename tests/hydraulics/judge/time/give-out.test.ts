import { expect, test } from "vitest";
import { runMishap } from "../../../../packages/hydraulics/src/judge/mishaps/run-mishap.js";
import { asked } from "../../../laws/asked-plans.js";

test("a joint apart at the source empties it though a one-way valve stands behind it, which lets nothing back", () => {
  const found = asked({
    headfall: 1,
    sources: [
      { vessel: { shape: "upright", diameter: "50 cm", height: "1 m" }, stand: "50 cm", outlet: "2 cm" },
    ],
    runs: [
      {
        id: "lane",
        length: "4 m",
        fall: "20 cm",
        oneWay: true,
        drinkers: { kind: "nipple-side-action", count: 4 },
      },
    ],
    pens: [{ id: "hens", birds: { kind: "hen", count: 20 } }],
  });
  const [source] = found.judged.line.sources;
  const { leakRate, balance } = runMishap(found, { kind: "jointApart", point: source!.point });
  expect(leakRate).toBeGreaterThan(0);
  expect(balance.lost).toBeGreaterThan(0.5 * balance.start);
});
