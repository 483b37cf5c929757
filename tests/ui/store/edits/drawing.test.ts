import type { Plan } from "@headfall/hydraulics";
import { describe, expect, test } from "vitest";
import { metresOf } from "../../../../packages/ui/src/kernels/typed-metres.js";
import { frozen } from "../plan-cases.js";
import { at, drawn, heightOf, made, refused, typed } from "./alder-bank.js";

describe("editPlan(set)", () => {
  test("types a key as it is typed, and takes one out", () => {
    const stand = { kind: "set", path: ["sources", 0, "stand"], what: "stand" } as const;
    expect(made(drawn, { ...stand, value: "2 ft 6 in" }).plan.sources[0]!.stand).toBe("2 ft 6 in");
    expect(made(drawn, { ...stand, value: undefined }).plan.sources[0]).not.toHaveProperty("stand");
  });

  test("refuses what is no length, and a fall that contradicts the other heights", () => {
    expect(
      refused(drawn, { kind: "set", path: ["runs", 0, "length"], value: "long", what: "length" }),
    ).toMatch(/^run feed, length: found "long"/);
    const above = made(drawn, {
      kind: "set",
      path: ["points", 1, "above"],
      value: "20 cm",
      what: "height",
    }).plan;
    expect(refused(above, { kind: "set", path: ["runs", 1, "fall"], value: "1 m", what: "fall" })).toMatch(
      /By the other heights/,
    );
  });
});

describe("editPlan(addSource)", () => {
  test("puts a vessel at a place and writes down where the rest is drawn", () => {
    const { plan, selected } = made(typed, {
      kind: "addSource",
      vessel: "bucket-20l",
      place: { x: 2, y: 5.25 },
    });
    expect(plan.sources[1]).toEqual({
      id: "source 2",
      vessel: "bucket-20l",
      place: { x: "2 m", y: "5.25 m" },
    });
    expect(plan.sources[0]!.place).toEqual({ x: "0 cm", y: "0 cm" });
    expect(plan.points).toEqual([
      { id: "run 1 end", place: { x: "12 m", y: "0 cm" } },
      { id: "run 2 end", place: { x: "18 m", y: "0 cm" } },
    ]);
    expect(selected).toEqual({ kind: "source", source: 1 });
  });
});

describe("editPlan(drawRun)", () => {
  test("to a new place lists it as a point and measures the run off the drawing, round its corners", () => {
    const { plan, words, selected } = made(drawn, {
      kind: "drawRun",
      from: { kind: "joint", joint: "coop" },
      to: { kind: "place", place: { x: 20, y: 3 } },
      corners: [{ x: 20, y: 0 }],
    });
    expect(plan.points!.at(-1)).toEqual({ id: "point 4", place: { x: "20 m", y: "3 m" } });
    expect(plan.runs.at(-1)).toEqual({
      id: "run 4",
      from: "coop",
      to: "point 4",
      length: "5 m",
      corners: [{ x: "20 m", y: "0 cm" }],
    });
    expect([words, selected]).toEqual(["run 4 drawn, 5 m", { kind: "run", run: 3 }]);
  });

  test("on another run cuts it there and puts a tee", () => {
    const { plan } = made(drawn, {
      kind: "drawRun",
      from: { kind: "onRun", run: 1, along: 3.1 },
      to: { kind: "place", place: { x: 15.1, y: -2 } },
      corners: [],
    });
    expect(plan.runs.map(({ id, from, to, length }) => [id, from, to, length])).toEqual([
      ["feed", "barrel", "gate", "12 m"],
      ["house", "gate", "point 4", "3.1 m"],
      ["chicks", "gate", "brooder", "4 m"],
      ["run 4", "point 4", "coop", "2.9 m"],
      ["run 5", "point 4", "point 5", "2 m"],
    ]);
    expect(plan.runs[1]!.drinkers).toEqual({
      kind: "nipple-bucket",
      count: 10,
      every: "30 cm",
      busiest: 0,
      ordinary: 1,
    });
    expect(plan.runs[3]!.drinkers).toEqual({
      kind: "nipple-bucket",
      count: 10,
      first: "20 cm",
      every: "30 cm",
      busiest: 10,
      ordinary: 1,
    });
  });

  test("drawn towards the water is told from where the water comes", () => {
    const { plan } = made(drawn, {
      kind: "drawRun",
      from: { kind: "place", place: { x: 18, y: 2 } },
      to: { kind: "joint", joint: "coop" },
      corners: [],
    });
    expect(plan.runs.at(-1)).toMatchObject({ from: "coop", to: "point 4", length: "2 m" });
  });

  test("between two joints closes a ring and moves no pipe: where it would be left open its fall is told", () => {
    const sloped = made(drawn, { kind: "setHeight", joint: "coop", height: -0.3 }).plan;
    const { plan } = made(sloped, {
      kind: "drawRun",
      from: { kind: "joint", joint: "brooder" },
      to: { kind: "joint", joint: "coop" },
      corners: [],
    });
    expect(plan.runs.at(-1)).toMatchObject({ from: "brooder", to: "coop", length: "7.21 m", fall: "20 cm" });
    expect(heightOf(plan, "brooder")).toBeCloseTo(-0.1, 9);
    expect(heightOf(plan, "coop")).toBeCloseTo(-0.3, 9);
  });

  test("straight down from a high source is as long as it comes down, whatever the drawing shows", () => {
    const beneath: Plan = frozen({
      ...drawn,
      points: [{ id: "gate", place: at(0.5, 0) }, ...drawn.points!.slice(1)],
    });
    const { plan } = made(beneath, {
      kind: "drawRun",
      from: { kind: "joint", joint: "barrel" },
      to: { kind: "joint", joint: "gate" },
      corners: [],
    });
    const apart = heightOf(plan, "barrel") - heightOf(plan, "gate");
    expect(apart).toBeGreaterThan(0.7);
    expect(metresOf(plan.runs.at(-1)!.length)).toBeCloseTo(apart + 0.01, 3);
  });

  test("of a length that was given keeps it, and is refused where no pipe that short joins its ends", () => {
    const run = {
      kind: "drawRun",
      from: { kind: "joint", joint: "barrel" },
      to: { kind: "joint", joint: "gate" },
      corners: [],
    } as const;
    expect(made(drawn, { ...run, length: 14 }).plan.runs.at(-1)).toMatchObject({ length: "14 m" });
    expect(refused(drawn, { ...run, length: 0.3 })).toMatch(/no pipe that short/);
  });

  test("from nowhere to nowhere, and to itself, is refused", () => {
    const place = { kind: "place", place: { x: 1, y: 1 } } as const;
    const joint = { kind: "joint", joint: "gate" } as const;
    const lost = {
      kind: "drawRun",
      from: place,
      to: { ...place, place: { x: 2, y: 2 } },
      corners: [],
    } as const;
    expect(refused(drawn, lost)).toMatch(/No water comes here/);
    expect(refused(drawn, { ...lost, from: joint, to: joint })).toMatch(/from one place to another/);
  });
});

describe("editPlan(moveJoint)", () => {
  test("writes all places down, and measures anew the runs that were drawn to scale", () => {
    const { plan } = made(typed, { kind: "moveJoint", joint: "run 1 end", place: { x: 12, y: 2.5 } });
    expect(plan.points).toEqual([
      { id: "run 1 end", place: { x: "12 m", y: "2.5 m" } },
      { id: "run 2 end", place: { x: "18 m", y: "0 cm" } },
    ]);
    expect(plan.runs.map(({ from, to, length }) => [from, to, length])).toEqual([
      ["barrel", "run 1 end", "12.26 m"],
      ["run 1 end", "run 2 end", "6.5 m"],
    ]);
  });

  test("leaves the length of a run that was not drawn to scale", () => {
    const schematic: Plan = frozen({
      ...drawn,
      runs: [{ ...drawn.runs[0]!, length: "30 m" }, ...drawn.runs.slice(1)],
    });
    const { plan } = made(schematic, { kind: "moveJoint", joint: "barrel", place: { x: -1, y: 0 } });
    expect(plan.runs[0]!.length).toBe("30 m");
    expect(plan.runs[1]).toBe(schematic.runs[1]);
  });

  test("writes in feet and inches for those who read them", () => {
    const { plan } = made(drawn, { kind: "moveJoint", joint: "brooder", place: { x: 12, y: 3.048 } }, "us");
    expect(plan.runs[2]!.length).toBe("10 ft");
    expect(plan.points![2]!.place).toEqual({ x: "39 ft 4.5 in", y: "10 ft" });
  });
});

describe("editPlan of corners", () => {
  const cornered = made(drawn, { kind: "addCorner", run: 2, before: 0, place: { x: 15, y: 0 } }).plan;

  test("puts one in, and measures the run anew", () => {
    expect(cornered.runs[2]).toMatchObject({ length: "8 m", corners: [{ x: "15 m", y: "0 cm" }] });
  });

  test("moves it and takes it out again", () => {
    const moved = made(cornered, { kind: "moveCorner", run: 2, corner: 0, place: { x: 12, y: -3 } }).plan;
    expect(moved.runs[2]).toMatchObject({ length: "10 m", corners: [{ x: "12 m", y: "-3 m" }] });
    expect(made(cornered, { kind: "deleteCorner", run: 2, corner: 0 }).plan).toEqual(drawn);
  });
});
