import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { headLossFitting } from "../../packages/hydraulics/src/physics/fittings.js";
import { capacityOfVessel } from "../../packages/hydraulics/src/physics/vessel.js";
import { allDrinkers, drinkerById } from "../../packages/hydraulics/src/tables/drinkers.js";
import { allFittings, fittingAtBore, fittingById } from "../../packages/hydraulics/src/tables/fittings.js";
import { allPipes, pipeById, pipesOfFamily } from "../../packages/hydraulics/src/tables/pipes.js";
import { allSources, sourceByKey } from "../../packages/hydraulics/src/tables/sources.js";
import { allVessels, vesselById } from "../../packages/hydraulics/src/tables/vessels.js";
import { compileTables } from "../../reference-tables/compile-tables.mjs";
import { loadTable } from "../../reference-tables/load-tables.mjs";

const folder = new URL("../../packages/hydraulics/src/tables/", import.meta.url);

describe("compileTables", () => {
  it.each([...compileTables()])("gives %s byte for byte as committed", (file, text) => {
    expect(readFileSync(new URL(file, folder), "utf8")).toBe(text);
  });

  it("gives the same bytes twice", () => {
    expect([...compileTables()]).toEqual([...compileTables()]);
  });
});

describe("compiled tables", () => {
  it("are in SI: half-inch Schedule 40 has the average bore 0.615 in of the data book", () => {
    expect(pipeById("pvc-sch40-1/2")?.bore).toBeCloseTo(0.615 * 0.0254, 6);
    expect(pipeById("pvc-sch40-1/2")?.outside).toBeCloseTo(0.84 * 0.0254, 9);
    expect(drinkerById("nipple-side-action")?.flow).toBeCloseTo(75e-6 / 60, 15);
    expect(drinkerById("nipple-side-action")?.head).toBe(0.3);
    expect(fittingById("elbow-90")).toMatchObject({ k1: 800, kInfinity: 0.4, sizeCorrection: 0.0254 });
    expect(vesselById("bucket-5gal")?.shape).toEqual({
      kind: "tapered",
      bottomDiameter: 0.259,
      topDiameter: 0.287,
      height: 0.358,
    });
  });

  it("hold each default row once, in the order of the table", () => {
    const idsOf = (name: string) =>
      loadTable(name)
        .rows.filter((row) => row["default"] === "yes")
        .map((row) => row["id"]);
    expect(allPipes.map((pipe) => pipe.id)).toEqual(idsOf("pipes"));
    expect(allFittings.map((fitting) => fitting.id)).toEqual(idsOf("fittings"));
    expect(allDrinkers.map((drinker) => drinker.id)).toEqual(idsOf("drinkers"));
    expect(allVessels.map((vessel) => vessel.id)).toEqual(idsOf("vessels"));
  });

  it("cite sources that sourceByKey knows", () => {
    for (const { id, citation } of [...allPipes, ...allFittings, ...allDrinkers, ...allVessels]) {
      expect(sourceByKey(citation.source)?.title, id).toBeTruthy();
    }
    expect(new Set(allSources.map((source) => source.key)).size).toBe(allSources.length);
  });

  it("answer undefined for an id that is not there", () => {
    expect([pipeById("pvc"), fittingById(""), drinkerById("x"), vesselById("x"), sourceByKey("x")]).toEqual(
      Array(5).fill(undefined),
    );
  });
});

describe("pipesOfFamily", () => {
  it("lists the sizes of a family from small to large, and none for a family that is not there", () => {
    expect(pipesOfFamily("pvc-sch40").map((pipe) => pipe.nominal)).toEqual([
      "1/2",
      "3/4",
      "1",
      "1-1/4",
      "1-1/2",
      "2",
    ]);
    expect(pipesOfFamily("pvc-sch40").map((pipe) => pipe.order)).toEqual([1, 2, 3, 4, 5, 6]);
    expect(pipesOfFamily("lead")).toEqual([]);
  });
});

describe("fittingAtBore", () => {
  const elbow = fittingById("elbow-90")!;
  const nu = 1.0034e-6;

  it("doubles K at infinity in a one-inch bore, and leaves alone what has no size correction", () => {
    expect(fittingAtBore(elbow, 0.0254)).toEqual({ k1: 800, kInfinity: 0.8, bore: 0.0254 });
    expect(fittingAtBore(fittingById("entry-sharp")!, 0.0254).kInfinity).toBe(0.5);
  });

  it("with headLossFitting gives the published rise of a 1/2 in elbow: K 1.44 at Re 2000, 1.84 at 1000, 2.6 at 500", () => {
    // K of the two-K form evaluated in a 0.622 in bore: 800/Re + 0.4 (1 + 1/0.622), closed form.
    const fitting = { ...fittingAtBore(elbow, 0.622 * 0.0254), viscosity: nu };
    for (const [reynolds, k] of [
      [2000, 1.44],
      [1000, 1.84],
      [500, 2.64],
    ] as const) {
      const velocity = (reynolds * nu) / fitting.bore;
      const flow = (velocity * Math.PI * fitting.bore ** 2) / 4;
      expect((headLossFitting(fitting, flow) * 2 * 9.80665) / velocity ** 2).toBeCloseTo(k, 2);
    }
  });

  it("refuses a bore that is not positive", () => {
    expect(() => fittingAtBore(elbow, 0)).toThrow(RangeError);
  });
});

describe("vessels", () => {
  it("hold at the brim what their table says, by the volume formula of the shape", () => {
    for (const row of loadTable("vessels").rows) {
      const capacity = capacityOfVessel(vesselById(row["id"]!)!.shape);
      expect(capacity * 1000, row["id"]).toBeCloseTo(
        Number(row["brim_l"]),
        row["shape"] === "box" ? -0.5 : 0,
      );
    }
  });
});
