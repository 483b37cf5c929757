import { expect, it } from "vitest";
import { checkDocument } from "../../packages/hydraulics/src/document/check-document.js";
import { findCures } from "../../packages/hydraulics/src/search/find-cures.js";

it("findCures(drinkers spaced evenly to the end of a run) leaves some off so that the others still fit on it", () => {
  const read = checkDocument({
    headfall: 1,
    day: "2026-11-30",
    sources: [{ vessel: { shape: "upright", diameter: "4.5521 ft", height: "1.2719 m" } }],
    runs: [
      {
        id: "run 0",
        length: "4.0112 ft",
        fall: "81.43 cm",
        fittings: ["check-valve-ball"],
        drinkers: { kind: "cup-float", count: 7 },
      },
      { length: "57721.1 mm", drinkers: { kind: "cup-trigger" } },
    ],
    pens: [
      {
        birds: [
          { kind: "goose", count: 37, hatched: "2026-02-16" },
          { kind: "guinea-fowl", count: 15 },
        ],
        drinkers: ["run 0"],
      },
    ],
  });
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const found = findCures(read.plan, { weeks: 0 });
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  const { answer } = found;
  const plans = "cures" in answer ? answer.cures.map(({ plan }) => plan) : [];
  expect(plans.map((plan) => checkDocument(plan)).filter(({ ok }) => !ok)).toEqual([]);
});
