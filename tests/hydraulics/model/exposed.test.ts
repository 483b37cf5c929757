import { expect, test } from "vitest";
import { COLOURS } from "../../../packages/hydraulics/src/document/colours.js";
import { readPlan } from "../../../packages/hydraulics/src/document/read-plan.js";
import { buildLine } from "../../../packages/hydraulics/src/model/build-line.js";
import { exposedRuns, exposedVessels } from "../../../packages/hydraulics/src/model/exposed.js";
import { createTypedValues } from "../../../packages/hydraulics/src/model/typed-values.js";
import { allColours } from "../../../packages/hydraulics/src/tables/colours.js";
import { frostMaterialOfPipe } from "../../../packages/hydraulics/src/tables/frost-materials.js";
import { allPipes } from "../../../packages/hydraulics/src/tables/pipes.js";

test("every colour a plan can name is a row of the table, and every material of pipe has its limits", () => {
  expect(allColours.map(({ id }) => id).sort()).toEqual([...COLOURS].sort());
  for (const { material } of allPipes)
    expect([material, frostMaterialOfPipe(material)?.id]).toEqual([material, expect.any(String)]);
});

test("a run and a source have what the plan says keeps the weather off, and cautious figures where it is silent", () => {
  const reading = readPlan(
    JSON.stringify({
      headfall: 1,
      sources: [{ vessel: { shape: "upright", diameter: "50 cm", height: "1 m" }, shade: "25 %" }],
      runs: [
        {
          length: "3 m",
          pipe: "pvc-sch40-3/4",
          colour: "white",
          shade: "80 %",
          buried: "30 cm",
          lagging: "13 mm",
        },
        { length: "3 m", pipe: { bore: "12 mm" } },
      ],
    }),
  );
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const built = buildLine(reading.plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  const [covered, bare] = exposedRuns(reading.plan, built.line, createTypedValues());
  expect(covered).toMatchObject({ shade: 0.8, buried: 0.3, lagging: 0.013, isColourSaid: true });
  expect(covered!.outside).toBeCloseTo(1.05 * 0.0254, 9);
  expect(covered!.colour.absorptance).toBe(0.3);
  expect(bare).toMatchObject({ shade: 0, buried: 0, lagging: 0, isColourSaid: false, material: undefined });
  expect(bare!.outside).toBeCloseTo(0.016, 12);
  expect(bare!.colour.id).toBe("dark");
  expect(bare!.volume / ((Math.PI / 4) * 0.012 ** 2 * 3)).toBeCloseTo(1, 12);
  const [vessel] = exposedVessels(reading.plan, built.line);
  const { full } = vessel!;
  // Full to 95 cm: bottom, surface and wall of a plain cylinder, and its silhouette.
  expect(full.wall).toBeCloseTo(2 * (Math.PI / 4) * 0.25 + Math.PI * 0.5 * 0.95, 9);
  expect(full.silhouette).toBeCloseTo(0.5 * 0.95, 9);
  expect(vessel!.shade).toBe(0.25);
});

test("a vessel that is drunk down to its floor shows the weather no side", () => {
  const reading = readPlan(
    JSON.stringify({
      headfall: 1,
      sources: [
        {
          vessel: { shape: "upright", diameter: "50 cm", height: "1 m" },
          ...{ outlet: "0 cm", level: { lowest: "0 cm" } },
        },
      ],
      runs: [{ length: "3 m" }],
    }),
  );
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const built = buildLine(reading.plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  const [{ lowest }] = exposedVessels(reading.plan, built.line) as [ReturnType<typeof exposedVessels>[0]];
  expect([lowest.volume, lowest.silhouette]).toEqual([0, 0]);
});

test("a vessel of steel is one, and any other is taken as plastic", () => {
  const materialOf = (vessel: string) => {
    const { plan, line } = planWith(vessel);
    return exposedVessels(plan, line)[0]!.material?.id;
  };
  expect([materialOf("drum-55gal-steel"), materialOf("drum-55gal-plastic")]).toEqual(["steel", "hdpe"]);
});

function planWith(vessel: string) {
  const reading = readPlan(JSON.stringify({ headfall: 1, sources: [{ vessel }], runs: [{ length: "3 m" }] }));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const built = buildLine(reading.plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  return { plan: reading.plan, line: built.line };
}
