import type { Plan } from "@headfall/hydraulics";
import { describe, expect, test } from "vitest";
import type { PlanChange } from "../../../../packages/ui/src/store/plan-change.js";
import { heightsOf } from "../../../../packages/ui/src/store/plan-heights.js";
import { frozen } from "../plan-cases.js";
import { made, refused } from "./alder-bank.js";

/** Alder Bank: a barrel feeds the coop and the run behind it, and a header tank for the chicks. */
const plan: Plan = frozen({
  headfall: 1,
  sources: [
    { id: "barrel", vessel: "drum-55gal-plastic", stand: "1 m" },
    { id: "header", vessel: "bucket-20l", stand: "20 cm", feed: { from: "coop end" } },
  ],
  runs: [
    { id: "feed", length: "12 m" },
    { id: "coop", length: "6 m", drinkers: { kind: "nipple-bucket", count: 20 } },
    { id: "behind", length: "5 m", fall: "5 cm" },
    {
      id: "chicks",
      from: "header",
      length: "2 m",
      drinkers: [{ id: "west", kind: "nipple-bucket", count: 4 }],
    },
  ],
});

const names = ({ runs }: Plan) => runs.map(({ id }) => id);
const joint = (name: string) => ({ kind: "joint", joint: name }) as const;
const remove = (part: Extract<PlanChange, { kind: "delete" }>["part"]) => ({ kind: "delete", part }) as const;

describe("editPlan(joinRuns)", () => {
  test("makes one run of two, with what hangs on both where it hung", () => {
    const { plan: after, words } = made(plan, { kind: "joinRuns", joint: "feed end" });
    expect(after.runs[0]).toEqual({
      id: "feed",
      from: "barrel",
      to: "coop end",
      length: "18 m",
      survey: [{ along: "12 m", fall: "0 cm" }],
      drinkers: { kind: "nipple-bucket", count: 20, first: "12.3 m", every: "30 cm" },
    });
    expect(words).toBe("feed and coop made one");
  });

  test("turns one of two runs that are told from the joint outwards", () => {
    const outwards = frozen<Plan>({
      headfall: 1,
      sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "1 m" }],
      runs: [
        { id: "feed", to: "gate", length: "12 m" },
        {
          id: "back",
          from: "far",
          to: "gate",
          length: "5 m",
          fall: "-10 cm",
          drinkers: { kind: "nipple-bucket", count: 2, first: "1 m", every: "1 m" },
        },
      ],
    });
    const { plan: after } = made(outwards, { kind: "joinRuns", joint: "gate" });
    expect(after.runs).toEqual([
      {
        id: "feed",
        from: "barrel",
        to: "far",
        length: "17 m",
        fall: "10 cm",
        survey: [{ along: "12 m", fall: "0 cm" }],
        drinkers: { kind: "nipple-bucket", count: 2, first: "15 m", every: "1 m" },
      },
    ]);
    expect(heightsOf(after).joints.get("far")!.height).toBeCloseTo(-0.1, 9);
  });

  test("is refused in plain words where it cannot be", () => {
    const with1 = (run: number, said: object): Plan => ({
      ...plan,
      runs: plan.runs.map((each, i) => (i === run ? { ...each, ...said } : each)),
    });
    const join = (from: Plan, name: string) => refused(from, { kind: "joinRuns", joint: name });
    expect(join(plan, "barrel")).toMatch(/is a source/);
    expect(join(plan, "behind end")).toMatch(/1 runs? meet/);
    expect(join(plan, "coop end")).toMatch(/header tank is filled from/);
    expect(join(with1(1, { pipe: "pex-3/8" }), "feed end")).toMatch(/different pipe/);
    expect(join(with1(1, { tap: "half" }), "feed end")).toMatch(/a tap between them/);
    expect(join(with1(1, { oneWay: true }), "feed end")).toMatch(/a one-way valve between them/);
    expect(join(with1(1, { regulator: { sets: "30 cm" } }), "feed end")).toMatch(/a regulator between them/);
  });
});

describe("editPlan(landJoint)", () => {
  const land = (name: string, run: number, along: number) =>
    ({ kind: "landJoint", joint: name, run, along }) as const;

  test("makes a tee where a loose end is laid upon another run, at the height of that run", () => {
    const loose: Plan = {
      ...plan,
      runs: [...plan.runs, { id: "drop", from: "coop end", to: "yard", length: "9 m", fall: "30 cm" }],
    };
    const height = (name: string, of = plan) => heightsOf(of).joints.get(name)!.height;
    const { plan: after, words, selected } = made(loose, land("yard", 0, 4));
    expect(after.runs.map(({ id, from, to, length }) => [id, from, to, length])).toEqual([
      ["feed", "barrel", "point 1", "4 m"],
      ["coop", "feed end", "coop end", "6 m"],
      ["behind", "coop end", "behind end", "5 m"],
      ["chicks", "header", "chicks end", "2 m"],
      ["drop", "coop end", "point 1", "9 m"],
      ["run 6", "point 1", "feed end", "8 m"],
    ]);
    // A third of the way down from the barrel.
    const there = (2 * height("barrel") + height("feed end")) / 3;
    expect(height("point 1", after)).toBeCloseTo(there, 6);
    expect(words).toBe("yard laid upon feed");
    expect(selected).toEqual({ kind: "joint", joint: "point 1" });
  });

  test("leaves all drinkers on the two parts of the run, and cuts off no piece of a millimetre", () => {
    const { plan: after } = made(plan, land("chicks end", 1, 3.1));
    const hung = (id: string) => {
      const groups = [after.runs.find((run) => run.id === id)!.drinkers ?? []].flat();
      return groups.reduce((sum, { count = 1 }) => sum + count, 0);
    };
    // Every 30 cm from 30 cm on: ten of the twenty hang before 3.1 m.
    expect(["coop", "run 5", "chicks"].map(hung)).toEqual([10, 10, 4]);
    expect(refused(plan, land("chicks end", 1, 0.001))).toBe("A run is cut between its ends.");
  });

  test("is refused upon the joint's own run, and of what is not there", () => {
    expect(refused(plan, land("feed end", 0, 4))).toBe("A joint cannot be laid upon its own run.");
    expect(refused(plan, land("feed end", 1, 4))).toBe("A joint cannot be laid upon its own run.");
    expect(refused(plan, land("nowhere", 1, 4))).toBe("That part is no longer there.");
    expect(refused(plan, land("feed end", 9, 4))).toBe("That part is no longer there.");
  });
});

describe("editPlan(mergeJoints)", () => {
  test("makes a ring of a free end laid upon a joint, and drops the fall that would contradict", () => {
    const { plan: after, words } = made(plan, { kind: "mergeJoints", joint: "behind end", into: "feed end" });
    expect(after.runs[2]).toEqual({ id: "behind", from: "coop end", to: "feed end", length: "5 m" });
    expect(words).toBe("behind end laid upon feed end");
  });

  test("takes out a run between the two, and keeps the name of a source", () => {
    const { plan: after, words } = made(plan, { kind: "mergeJoints", joint: "feed end", into: "coop end" });
    expect(names(after)).toEqual(["feed", "behind", "chicks"]);
    expect(words).toBe("feed end laid upon coop end; the run between them is gone");
    const tied = made(plan, { kind: "mergeJoints", joint: "header", into: "behind end" }).plan;
    expect(tied.runs[2]).toMatchObject({ to: "header" });
  });

  test("leaves surveyed pipe where it is, though it is then counted from another start", () => {
    const survey = [
      { along: "1 m", fall: "-20 cm" },
      { along: "4 m", fall: "10 cm" },
    ];
    const runs = plan.runs.map((run, i) => (i === 2 ? { ...run, survey } : run));
    const { plan: after } = made(
      { ...plan, runs },
      { kind: "mergeJoints", joint: "coop end", into: "header" },
    );
    // The pipe lay on the ground at the coop's end; falls are now counted from the ground under the tank.
    expect(after.runs[2]).toMatchObject({ from: "header", survey: [{ fall: "-20 cm" }, { fall: "10 cm" }] });
    const high = { ...plan, runs, points: [{ id: "coop end", above: "30 cm" }] };
    const sunk = made(high, { kind: "mergeJoints", joint: "coop end", into: "feed end" }).plan;
    expect(sunk.runs.find(({ id }) => id === "behind")).toMatchObject({
      from: "feed end",
      survey: [{ fall: "-50 cm" }, { fall: "-20 cm" }],
    });
  });

  test("of two sources is refused", () => {
    expect(refused(plan, { kind: "mergeJoints", joint: "header", into: "barrel" })).toMatch(/Two sources/);
  });
});

describe("editPlan(duplicate)", () => {
  test("draws a run with a free end beside the old one", () => {
    const { plan: after } = made(plan, { kind: "duplicate", part: { kind: "run", run: 1 } });
    expect(after.runs.at(-1)).toMatchObject({
      id: "run 5",
      from: "feed end",
      length: "6 m",
      drinkers: { count: 20 },
    });
    const free = after.points!.find(({ id }) => id === after.runs.at(-1)!.to)!;
    expect(free.place).toEqual({ x: "18 m", y: "-1 m" });
  });

  test("gives a source and a group names of their own", () => {
    const source = made(plan, { kind: "duplicate", part: { kind: "source", source: 1 } }).plan;
    expect(source.sources.map(({ id }) => id)).toEqual(["barrel", "header", "source 3"]);
    const group = made(plan, { kind: "duplicate", part: { kind: "drinkers", run: 3, group: 0 } }).plan;
    expect(group.runs[3]!.drinkers).toMatchObject([{ id: "west" }, { id: "west 2", first: "75 cm" }]);
  });
});

describe("editPlan(delete)", () => {
  test("of a run takes all with it that then hangs on nothing, and says how much", () => {
    const { plan: after, words } = made(plan, remove({ kind: "run", run: 1 }));
    expect(names(after)).toEqual(["feed", "chicks"]);
    expect(words).toBe("coop deleted, with 1 run that hung on it, header no longer filled by the line");
    expect(after.sources[1]).not.toHaveProperty("feed");
  });

  test("of a run in a ring leaves what water still reaches, at the height it was", () => {
    const ring = frozen<Plan>({
      ...plan,
      runs: [...plan.runs, { id: "short", from: "feed end", to: "behind end", length: "4 m" }],
    });
    const { plan: after } = made(ring, remove({ kind: "run", run: 2 }));
    expect(names(after)).toEqual(["feed", "coop", "chicks", "short"]);
    expect(heightsOf(after).joints.get("behind end")!.height).toBeCloseTo(-0.05, 9);
  });

  test("of a joint that two runs meet at joins them, and of any other takes the runs beyond", () => {
    expect(names(made(plan, remove(joint("feed end"))).plan)).toEqual(["feed", "behind", "chicks"]);
    expect(names(made(plan, remove(joint("coop end"))).plan)).toEqual(["feed", "coop", "chicks"]);
    expect(names(made(plan, remove(joint("behind end"))).plan)).toEqual(["feed", "coop", "chicks"]);
  });

  test("of a source takes its runs, but the last source stays", () => {
    const { plan: after, words } = made(plan, remove({ kind: "source", source: 1 }));
    expect([names(after), words]).toEqual([
      ["feed", "coop", "behind"],
      "header deleted, with 1 run that hung on it",
    ]);
    expect(refused(after, remove({ kind: "source", source: 0 }))).toMatch(/last source/);
  });

  test("of drinkers takes the group, or one of it", () => {
    const one = made(plan, remove({ kind: "drinkers", run: 1, group: 0, number: 3 })).plan;
    expect(one.runs[1]!.drinkers).toEqual({ kind: "nipple-bucket", count: 19 });
    expect(made(plan, remove({ kind: "drinkers", run: 1, group: 0 })).plan.runs[1]).toEqual({
      id: "coop",
      length: "6 m",
    });
    expect(made(plan, remove({ kind: "drinkers", run: 3, group: 0 })).plan.runs[3]).not.toHaveProperty(
      "drinkers",
    );
  });

  test("keeps the names that runs have by their number", () => {
    const unnamed: Plan = frozen({
      ...plan,
      sources: [plan.sources[0]!],
      runs: ["1 m", "2 m", "3 m"].map((length) => ({ from: "barrel", length })),
    });
    const after = made(unnamed, remove({ kind: "run", run: 1 })).plan;
    expect(after.runs).toEqual([
      { from: "barrel", to: "run 1 end", length: "1 m" },
      { id: "run 3", from: "barrel", to: "run 3 end", length: "3 m" },
    ]);
  });
});

describe("editPlan(rename)", () => {
  const rename = (part: Extract<PlanChange, { kind: "rename" }>["part"], name: string) =>
    ({ kind: "rename", part, name }) as const;

  test("of a run renames the end it names after itself, wherever that is mentioned", () => {
    const { plan: after, words } = made(plan, rename({ kind: "run", run: 1 }, "house"));
    expect(after.runs[1]!.id).toBe("house");
    expect(after.sources[1]!.feed).toEqual({ from: "house end" });
    expect(words).toBe("coop called house");
  });

  test("of a source renames where its runs start", () => {
    const after = made(plan, rename({ kind: "source", source: 1 }, "nursery tank")).plan;
    expect([after.sources[1]!.id, after.runs[3]!.from]).toEqual(["nursery tank", "nursery tank"]);
  });

  test("of a joint writes down an end that had its name from its run", () => {
    const { plan: after, selected } = made(plan, rename(joint("coop end"), "tee"));
    expect(after.runs[1]!.to).toBe("tee");
    expect(after.sources[1]!.feed).toEqual({ from: "tee" });
    expect(selected).toEqual(joint("tee"));
  });

  test("of a group, and back again, is as before", () => {
    const part = { kind: "drinkers", run: 3, group: 0 } as const;
    const there = made(plan, rename(part, "east")).plan;
    expect(made(there, rename(part, "west")).plan).toEqual(plan);
  });

  test("to a name that is taken, too long or empty is refused", () => {
    expect(refused(plan, rename({ kind: "run", run: 1 }, "feed"))).toBe("Something is called feed already.");
    expect(refused(plan, rename({ kind: "source", source: 0 }, "coop end"))).toMatch(/already/);
    expect(refused(plan, rename(joint("feed end"), " "))).toBe("A name is needed.");
    expect(refused(plan, rename(joint("feed end"), "x".repeat(81)))).not.toBe("");
  });
});
