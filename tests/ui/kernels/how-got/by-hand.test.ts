import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import {
  type Checked,
  checkDocument,
  checkPlan,
  HAZEN_WILLIAMS_RANGE,
  type Plan,
  readPlan,
} from "../../../../packages/hydraulics/src/index.js";
import { howGotOf } from "../../../../packages/ui/src/kernels/how-got/how-got-of.js";
import type { HowSubject } from "../../../../packages/ui/src/kernels/how-got/subject.js";

/** A barrel 1 m over four drinkers, with every number chosen so that it can be followed by hand. */
const BY_HAND = {
  headfall: 1,
  water: "20 degC",
  sources: [
    {
      id: "barrel",
      vessel: { shape: "upright", diameter: "50 cm", height: "100 cm" },
      stand: "60 cm",
      outlet: "10 cm",
      level: { full: "80 cm", lowest: "20 cm" },
    },
  ],
  points: [{ id: "gate", ground: "20 cm", above: "5 cm" }],
  runs: [
    {
      id: "feed",
      from: "barrel",
      to: "gate",
      length: "4 m",
      pipe: "pvc-sch40-1/2",
      fittings: ["elbow-90 x 2"],
    },
    {
      id: "pen",
      from: "gate",
      length: "2 m",
      fall: "1 cm",
      drinkers: { kind: "nipple-side-action", count: 4, drop: "2 cm", busiest: 4 },
    },
  ],
};

function checkedOf(document: unknown, samples = 0): { plan: Plan; checked: Checked } {
  const reading = checkDocument(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const checking = checkPlan(reading.plan, { samples });
  if (!checking.ok) throw new Error(JSON.stringify(checking.problems));
  return { plan: reading.plan, checked: checking.checked };
}

const { plan, checked } = checkedOf(BY_HAND, 40);
const how = (subject: HowSubject, system: "metric" | "us" = "metric") =>
  howGotOf(subject, checked, plan, system)!;

describe("howGotOf(heights)", () => {
  test("of a source's outlet adds ground, stand and outlet", () => {
    expect(how({ of: "pointHeight", point: 0 }).steps[0]!.filled).toBe("0 cm + 60 cm + 10 cm = 70 cm");
  });
  test("of a stated point adds its ground and what it lies above it", () => {
    expect(how({ of: "pointHeight", point: 1 }).steps[0]!.filled).toBe("20 cm + 5 cm = 25 cm");
  });
  test("of a run's end takes the fall from its start", () => {
    const end = how({ of: "pointHeight", point: 2 });
    expect(end.steps[0]!.filled).toBe("25 cm − 1 cm = 24 cm");
    expect(end.notes[0]).toBe("The plan tells the fall of this run: “1 cm”.");
  });
  test("of a drinker takes its drop from the pipe's height", () => {
    expect(how({ of: "drinkerHeight", drinker: 3 }).steps[0]!.filled).toBe("24 cm − 2 cm = 22 cm");
  });
});

describe("howGotOf(source)", () => {
  test("when full holds π D² h / 4", () => {
    const full = how({ of: "sourceVolume", source: 0, which: "full" });
    expect(full.steps[0]!.formula).toBe("V = π × D^2 × h / 4");
    expect(full.steps[0]!.filled).toBe("π × (50 cm)^2 × 80 cm / 4 = 157.1 L");
    expect(full.valid[0]!.holds).toContain("0 to 1 m");
  });
  test("has its surface at ground + stand + level", () => {
    expect(how({ of: "sourceSurface", source: 0, moment: "lowestBusiest" }).steps[0]!.filled).toBe(
      "0 cm + 60 cm + 20 cm = 80 cm",
    );
  });
});

describe("howGotOf(drinker)", () => {
  test("has for static head the surface less its height, and both can be asked in turn", () => {
    const { steps } = how({ of: "drinkerStaticHead", drinker: 3, moment: "fullIdle" });
    expect(steps[0]!.filled).toBe("140 cm − 22 cm = 118 cm");
    expect(steps[0]!.terms.map(({ from }) => from?.of)).toEqual(["sourceSurface", "drinkerHeight"]);
  });
  test("gives its flow by its law, whose own flow at 1 m comes from the table's 75 mL/min at 30 cm", () => {
    const { steps, secondOpinion } = how({ of: "drinkerFlow", drinker: 3, moment: "fullBusiest" });
    expect(steps[0]!.formula).toBe("flow = flow at 1 m × ((head − head that opens it) / 1 m)^x");
    expect(steps[1]!.filled).toBe("75 mL/min / ((30 cm − 4 cm) / 1 m)^0.5 = 147.1 mL/min");
    expect(secondOpinion!.by).toBe("Darcy-Weisbach");
  });
  test("is sure or not by so many samples, with seed and all that was varied", () => {
    const certainty = how({ of: "drinkerCertainty", drinker: 0 });
    expect(certainty.steps[0]!.filled).toMatch(/^\d+ \/ 40 = \d+ %$/);
    expect(certainty.parts!.caption).toContain("seed 1");
    expect(certainty.parts!.rows.map(({ cells }) => cells.join(": "))).toEqual(
      expect.arrayContaining(["each measured height: ± 10 mm", "water levels of a source: ± 20 mm"]),
    );
  });
});

describe("howGotOf(run)", () => {
  test("loses head piece by piece and fitting by fitting, each with its K and its source", () => {
    const { parts, sources } = how({ of: "runLoss", run: 0, law: "darcyWeisbach" });
    expect(parts!.rows.map(({ cells }) => cells[0])).toEqual([
      "pipe, 0 mm to 4 m",
      "2 of “90 degree elbow, threaded or cemented”, K = 800/Re + 1.05",
      "“Outlet of a vessel, sharp edge, flush inside”, K = 160/Re + 0.5",
    ]);
    expect(parts!.rows.map(({ source }) => source)).toEqual([undefined, "hooper-1981", "hooper-1981"]);
    expect(sources).toContain("churchill-1977");
  });
  test("says where each law holds, with the figures of the library's own range", () => {
    const { valid } = how({ of: "runLoss", run: 0, law: "hazenWilliams" });
    expect(valid[0]!.isInside).toBe(false);
    expect(valid[0]!.holds).toContain(`Re ${HAZEN_WILLIAMS_RANGE.reynolds.least.toLocaleString("en")}`);
    expect(valid[0]!.here).toMatch(
      /^Re [\d,]+ \(laminar\), a bore of 15\.6 mm: outside the range it was made for/,
    );
  });
  test("fills Hazen-Williams in with the units that its constant belongs to", () => {
    const [, metric] = how({ of: "runLoss", run: 0, law: "hazenWilliams" }).steps;
    expect(metric!.formula).toMatch(
      /× L × Q\^1\.852 \/ \(C\^1\.852 × d\^4\.8704\), L and h in m, Q in L\/min, d in mm$/,
    );
    const [, us] = how({ of: "runLoss", run: 0, law: "hazenWilliams" }, "us").steps;
    expect(us!.formula).toMatch(/= 10\.44 × L × Q.* L and h in ft, Q in gal\/min, d in in$/);
    // The same constants as the method page tells.
    const method = readFileSync("docs/method/friction.md", "utf8");
    expect(metric!.formula).toContain("= 6.169 × 10^6 × L");
    expect(method).toContain("6.17 million");
    expect(method).toContain("10.44 with L and h in ft");
  });
  test("carries what goes on beyond it", () => {
    const { parts } = how({ of: "runFlow", run: 0 });
    expect(parts!.rows.map(({ cells }) => cells[0])).toEqual(["goes into “pen”"]);
  });
  test("has the bore of its size, with the range and the standard it is sold by", () => {
    const bore = how({ of: "runBore", run: 0 });
    expect(bore.valid[0]!.holds).toMatch(/mm to [\d.]+ mm$/);
    expect(bore.sources.length).toBe(1);
  });
});

test("howGotOf(default) tells what was taken and why", () => {
  const vent = checked.defaults.findIndex(({ path }) => path === "sources[0].vent");
  const taken = how({ of: "default", used: vent });
  expect(taken.result).toBe("“open”");
  expect(taken.notes[0]).toContain("a vessel that gives water must take in air");
});

test("howGotOf(sealed barrel) tells of the thinned air and what it gives before it stalls", () => {
  const sealed = structuredClone(BY_HAND) as unknown as { sources: { vent?: string }[] };
  sealed.sources[0]!.vent = "sealed";
  const one = checkedOf(sealed);
  const stall = howGotOf({ of: "sourceStall", source: 0 }, one.checked, one.plan, "metric")!;
  expect(stall.steps[0]!.formula).toBe("given = air when full × head left / (p₀/(ρ g) − head left)");
  expect(stall.steps[0]!.value).toBeCloseTo(one.checked.sources[0]!.volumeBeforeStall!, 8);
});

test("howGotOf(run of many drinkers) gathers the pieces that are too many to tell", () => {
  const reading = readPlan(readFileSync("docs/examples/alder-bank-hen-house.json", "utf8"));
  if (!reading.ok) throw new Error("the example cannot be read");
  const first = reading.plan.runs.findIndex(({ drinkers }) => drinkers !== undefined);
  const runs = reading.plan.runs.map((run, at) =>
    at === first
      ? {
          ...run,
          length: "30 m",
          drinkers: { kind: "nipple-side-action", count: 60, every: "40 cm", first: "40 cm" },
        }
      : run,
  );
  const one = checkedOf({ ...reading.plan, runs });
  const { parts, steps } = howGotOf(
    { of: "runLoss", run: first, law: "hazenWilliams" },
    one.checked,
    one.plan,
    "metric",
  )!;
  expect(parts!.rows.length).toBeLessThan(30);
  expect(parts!.rows.at(-1)!.cells[0]).toMatch(/^the other \d+ pieces of pipe$/);
  expect(parts!.rows.reduce((all, { value }) => all + value, 0)).toBeCloseTo(steps[0]!.value, 9);
});
