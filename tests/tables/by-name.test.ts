import { describe, expect, it } from "vitest";
import {
  findDrinker,
  findFitting,
  findPipe,
  findVessel,
} from "../../packages/hydraulics/src/tables/by-name.js";
import { allDrinkers } from "../../packages/hydraulics/src/tables/drinkers.js";
import { editDistance } from "../../packages/hydraulics/src/tables/edit-distance.js";
import { allFittings } from "../../packages/hydraulics/src/tables/fittings.js";
import type { Found } from "../../packages/hydraulics/src/tables/found.js";
import { allPipes } from "../../packages/hydraulics/src/tables/pipes.js";
import { allVessels } from "../../packages/hydraulics/src/tables/vessels.js";

const idOf = (found: Found<{ id: string }>) =>
  found.outcome === "found" ? found.kind.id : `near: ${found.near.map((kind) => kind.id).join(", ")}`;

describe("findPipe", () => {
  it.each([
    ["PVC Sch 40 1/2", "pvc-sch40-1/2"],
    ["1/2 in PVC schedule 40", "pvc-sch40-1/2"],
    ['1/2" sch40', "pvc-sch40-1/2"],
    ["½ inch PVC", "pvc-sch40-1/2"],
    ["1½ in PVC sched. 80", "pvc-sch80-1-1/2"],
    ["half inch PVC", "pvc-sch40-1/2"],
    ["three-quarter inch poly", "pe-sidr15-3/4"],
    ["PVC 40 1/2", "pvc-sch40-1/2"],
    ["3/4 pvc 80", "pvc-sch80-3/4"],
    ["PVC 40 mm", "pvcu-metric-40"],
    ["pvc 1 1/4", "pvc-sch40-1-1/4"],
    [".75 in pvc", "pvc-sch40-3/4"],
    ["PVC class 200, 1 in", "pvc-sdr21-1"],
    ["25 mm PE", "pe-metric-sdr11-25"],
    ["MDPE 32", "pe-metric-sdr11-32"],
    ["poly pipe 25mm SDR 13.6", "pe-metric-sdr13.6-25"],
    ["3/4 poly", "pe-sidr15-3/4"],
    ["1 in PE SIDR 7", "pe-sidr7-1"],
    ["uPVC 20 mm", "pvcu-metric-20"],
    ["PVC-U 32 mm PN 10", "pvcu-metric-pn10-32"],
    ["PEX 3/4", "pex-3/4"],
    ["3/4 copper type M", "copper-m-3/4"],
    ["copper 1/2", "copper-l-1/2"],
    ["5/8 garden hose", "hose-5/8"],
    ["50 ft of 3/4 in hose", "hose-3/4"],
    ["drip tube 16 mm", "drip-16"],
    ["1/2 in drip line", "drip-1/2"],
    ["  PVC-SCH40-1/2 ", "pvc-sch40-1/2"],
  ])("reads %s as %s", (words, id) => {
    expect(idOf(findPipe(words))).toBe(id);
  });

  it("finds every pipe by its own id and by its own name", () => {
    for (const pipe of allPipes) {
      expect(idOf(findPipe(pipe.id))).toBe(pipe.id);
      expect(idOf(findPipe(pipe.name)), pipe.name).toBe(pipe.id);
    }
  });

  it("never guesses a material: a size alone gives near misses of that size", () => {
    const found = findPipe("1/2 in");
    expect(found.outcome).toBe("near");
    expect(found.outcome === "near" && found.near.map((pipe) => pipe.nominal)).toEqual([
      "1/2",
      "1/2",
      "1/2",
      "1/2",
    ]);
  });

  it.each([
    "galvanized 1/2",
    "CPVC 3/4 in",
    "25 mm PVC schedule 40",
    "pvc 7 in",
    "PVC class 99 1/2 in",
    "",
    "42",
  ])("does not find %s", (words) => {
    expect(findPipe(words).outcome).toBe("near");
  });

  it("puts the pipe meant first when an id is mistyped", () => {
    expect(idOf(findPipe("pvc-shc40-1/2"))).toMatch(/^(near: )?pvc-sch40-1\/2/);
    expect(idOf(findPipe("copperm-3/4"))).toMatch(/^(near: )?copper-[lm]-3\/4/);
  });
});

describe("findFitting, findDrinker and findVessel", () => {
  it.each([
    ["90 degree elbow", "elbow-90"],
    ["elbows", "elbow-90"],
    ["45° elbow", "elbow-45"],
    ["elbow 90", "elbow-90"],
    ["Ball valve", "ball-valve"],
    ["hose bib", "globe-valve"],
    ["non-return valve", "check-valve"],
    ["bulkhead fitting", "entry-inward"],
    ["barb", "hose-barb"],
  ])("findFitting reads %s as %s", (words, id) => {
    expect(idOf(findFitting(words))).toBe(id);
  });

  it.each([
    ["push-in nipples", "nipple-bucket"],
    ["Horizontal nipple", "nipple-horizontal"],
    ["float cup", "cup-float"],
    ["bell drinkers", "bell"],
    ["trough", "trough-float"],
  ])("findDrinker reads %s as %s", (words, id) => {
    expect(idOf(findDrinker(words))).toBe(id);
  });

  it.each([
    ["5 gallon bucket", "bucket-5gal"],
    ["5-gal pail", "bucket-5gal"],
    ["blue barrel", "drum-55gal-plastic"],
    ["55 gal steel drum", "drum-55gal-steel"],
    ["rain barrel 50 gal", "rain-barrel-50gal"],
    ["1000 L tote", "tote-1000l"],
    ["275 gallon IBC", "tote-275gal"],
  ])("findVessel reads %s as %s", (words, id) => {
    expect(idOf(findVessel(words))).toBe(id);
  });

  it("find every kind by its id, by its name and by each of its other words: no two kinds share one", () => {
    for (const [find, kinds] of [
      [findFitting, allFittings],
      [findDrinker, allDrinkers],
      [findVessel, allVessels],
    ] as const) {
      for (const kind of kinds) {
        for (const words of [kind.id, kind.name, ...kind.also])
          expect(idOf(find(words)), words).toBe(kind.id);
      }
    }
  });

  it("offer the nearest kinds for a slip of the pen, and none for words that name nothing", () => {
    expect(idOf(findFitting("flote valve"))).toMatch(/^near: .*float-valve/);
    expect(idOf(findDrinker("bukcet niple"))).toMatch(/^near: nipple-bucket/);
    expect(findVessel("zeppelin")).toEqual({ outcome: "near", near: [] });
    expect(findVessel("")).toEqual({ outcome: "near", near: [] });
  });
});

describe("editDistance", () => {
  it("meets the textbook pairs: kitten to sitting is 3, flaw to lawn is 2", () => {
    expect(editDistance("kitten", "sitting")).toBe(3);
    expect(editDistance("flaw", "lawn")).toBe(2);
    expect(editDistance("", "abc")).toBe(3);
  });
});
