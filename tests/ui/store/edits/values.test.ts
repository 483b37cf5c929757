import { describe, expect, test } from "vitest";
import { diffPlans } from "../../../../packages/ui/src/store/plan-diff.js";
import { at, drawn, heightOf, made, refused, typed } from "./alder-bank.js";

describe("editPlan of drinkers", () => {
  const ten = { kind: "nipple-bucket", count: 10, every: "30 cm" };

  test("hangs the first group alone and the next in a list", () => {
    const one = made(drawn, { kind: "addDrinkers", run: 2, drinkers: ten }).plan;
    expect(one.runs[2]!.drinkers).toEqual(ten);
    const { plan, selected } = made(one, { kind: "addDrinkers", run: 2, drinkers: ten });
    expect(plan.runs[2]!.drinkers).toEqual([ten, ten]);
    expect(selected).toEqual({ kind: "drinkers", run: 2, group: 1 });
  });

  test("hangs them closer together where the run is too short, and says so", () => {
    const { plan, words } = made(drawn, { kind: "addDrinkers", run: 2, drinkers: { ...ten, count: 20 } });
    expect(plan.runs[2]!.drinkers).toMatchObject({ count: 20, every: "20 cm" });
    expect(words).toBe("20 drinkers added to chicks, closer together to fit");
  });

  test("moves a row whole, as far as its last drinker lets it", () => {
    const hung = made(drawn, { kind: "addDrinkers", run: 2, drinkers: ten }).plan;
    const first = (to: number) =>
      made(hung, { kind: "moveDrinkers", run: 2, group: 0, first: to }).plan.runs[2]!.drinkers;
    expect([first(0.5), first(3), first(-1)]).toMatchObject([
      { first: "50 cm" },
      { first: "1.3 m" },
      { first: "0 cm" },
    ]);
  });
});

describe("editPlan(setHeight)", () => {
  test.each([
    ["barrel", 0.8, { sources: [{ stand: "75 cm" }] }],
    ["gate", -0.25, { runs: [{ fall: "25 cm" }, {}, {}] }],
    ["coop", 0.1, { runs: [{}, { fall: "-20 cm" }, {}] }],
  ])("of %s types the key that decides it", (joint, height, expected) => {
    const outlet = heightOf(drawn, "barrel") - 0.6;
    const wanted = joint === "barrel" ? 0.75 + outlet : height;
    const { plan } = made(drawn, { kind: "setHeight", joint, height: wanted });
    expect(plan).toMatchObject(expected);
    expect(heightOf(plan, joint)).toBeCloseTo(wanted, 3);
  });

  test("of a point that tells its own moves that, and never puts a vessel under the ground", () => {
    const told = made(drawn, {
      kind: "set",
      path: ["points", 1, "above"],
      value: "5 cm",
      what: "height",
    }).plan;
    expect(made(told, { kind: "setHeight", joint: "coop", height: 0.2 }).plan.points![1]!.above).toBe(
      "20 cm",
    );
    expect(made(drawn, { kind: "setHeight", joint: "barrel", height: -3 }).plan.sources[0]!.stand).toBe(
      "0 cm",
    );
  });

  test("in a ring moves the joint alone, and lets its runs slope", () => {
    const ring = made(drawn, {
      kind: "drawRun",
      from: { kind: "joint", joint: "brooder" },
      to: { kind: "joint", joint: "coop" },
      corners: [],
    }).plan;
    const { plan } = made(ring, { kind: "setHeight", joint: "brooder", height: 0.2 });
    expect(heightOf(plan, "brooder")).toBeCloseTo(0.2, 9);
    expect(heightOf(plan, "coop")).toBeCloseTo(-0.1, 9);
  });

  test("higher than the pipe can reach is refused", () => {
    expect(refused(drawn, { kind: "setHeight", joint: "brooder", height: 9 })).toMatch(/no pipe that short/);
  });
});

describe("editPlan of a survey", () => {
  const surveyed = made(drawn, { kind: "addReading", run: 0, along: 5, fall: 0.25 }).plan;

  test("puts readings in by their distance, and moves one", () => {
    const two = made(surveyed, { kind: "addReading", run: 0, along: 2, fall: -0.1 }).plan;
    expect(two.runs[0]!.survey).toEqual([
      { along: "2 m", fall: "-10 cm" },
      { along: "5 m", fall: "25 cm" },
    ]);
    const moved = made(two, { kind: "moveReading", run: 0, reading: 1, fall: 0.3 }).plan;
    expect(moved.runs[0]!.survey![1]).toEqual({ along: "5 m", fall: "30 cm" });
  });

  test("at the end says the fall of the run, and keeps saying it when taken out", () => {
    const ended = made(surveyed, { kind: "addReading", run: 0, along: 12, fall: 0.3 }).plan;
    expect(ended.runs[0]).toMatchObject({ fall: "30 cm", survey: [{}, { along: "12 m", fall: "30 cm" }] });
    const untold = made(ended, {
      kind: "set",
      path: ["runs", 0, "fall"],
      value: undefined,
      what: "fall",
    }).plan;
    const back = made(untold, { kind: "deleteReading", run: 0, reading: 1 }).plan;
    expect(back.runs[0]).toMatchObject({ fall: "30 cm", survey: [{ along: "5 m" }] });
  });

  test("is gone with its last reading", () => {
    expect(made(surveyed, { kind: "deleteReading", run: 0, reading: 0 }).plan).toEqual(drawn);
  });
});

describe("editPlan(splitRun)", () => {
  test("gives each part its length, fall, readings, corners and drinkers", () => {
    const run = {
      ...drawn.runs[0]!,
      survey: [
        { along: "3 m", fall: "4 cm" },
        { along: "9 m", fall: "7 cm" },
      ],
      corners: [at(6, 0)],
      tap: "half" as const,
      fittings: ["elbow-90 x 2"],
      pipe: "pvc-sch40-3/4",
    };
    const { plan, selected } = made(
      { ...drawn, runs: [run, ...drawn.runs.slice(1)] },
      { kind: "splitRun", run: 0, along: 8 },
    );
    expect(plan.runs[0]).toEqual({
      ...run,
      to: "point 4",
      length: "8 m",
      fall: "6.5 cm",
      survey: [{ along: "3 m", fall: "4 cm" }],
    });
    expect(plan.runs[3]).toEqual({
      id: "run 4",
      from: "point 4",
      to: "gate",
      length: "4 m",
      fall: "3.5 cm",
      survey: [{ along: "1 m", fall: "5 mm" }].map(({ along }) => ({ along, fall: "0.5 cm" })),
      pipe: "pvc-sch40-3/4",
    });
    expect(plan.points!.at(-1)).toEqual({ id: "point 4", place: { x: "8 m", y: "0 cm" } });
    expect(selected).toEqual({ kind: "joint", joint: "point 4" });
  });

  test("leaves level pipe level without telling falls, and no place where the drawing says none", () => {
    const { plan } = made(typed, { kind: "splitRun", run: 1, along: 3 });
    expect(plan.points).toEqual([{ id: "point 1" }]);
    expect(plan.runs[1]).not.toHaveProperty("fall");
    expect(plan.runs[2]).not.toHaveProperty("fall");
  });

  test("at an end is refused", () => {
    expect(refused(drawn, { kind: "splitRun", run: 0, along: 12 })).toBe("A run is cut between its ends.");
  });
});

describe("editPlan(bringIn)", () => {
  const cured = {
    ...drawn,
    sources: [{ ...drawn.sources[0]!, stand: "75 cm" }],
    runs: [...drawn.runs, { id: "second feed", from: "barrel", to: "yard", length: "19 m" }],
  };
  const change = {
    kind: "bringIn",
    diff: structuredClone(diffPlans(drawn, cured)),
    what: "a second feed",
  } as const;

  test("changes what was found to change and nothing else, also in a plan that has another name by now", () => {
    const { plan, words } = made({ ...drawn, name: "Alder Bank" }, change);
    expect(plan).toEqual({ ...cured, name: "Alder Bank" });
    expect(words).toBe("a second feed");
    plan.runs.slice(0, 3).forEach((run, k) => {
      expect(run).toBe(drawn.runs[k]);
    });
  });

  test("is refused where the plan is no longer as it was", () => {
    const lower = { ...drawn, sources: [{ ...drawn.sources[0]!, stand: "50 cm" }] };
    expect(refused(lower, change)).toMatch(/^The plan has changed there since/);
  });
});

test("editPlan tells why an edit is refused of the parts by their names, not by their places in the file", () => {
  const path = ["runs", 0, "length"];
  expect(refused(drawn, { kind: "set", path, value: "12 furlongs", what: "length of feed" })).toMatch(
    /^run feed, length: found "12 furlongs"\. /,
  );
  expect(refused(typed, { kind: "set", path: ["runs", 1, "fall"], value: "7 m", what: "fall" })).toMatch(
    /^run 2, (length|fall): found /,
  );
});
