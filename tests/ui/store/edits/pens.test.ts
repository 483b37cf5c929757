import type { Plan, PlanPen } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import { penNameEntry } from "../../../../packages/ui/src/birds/pen-entries.js";
import { editPlan } from "../../../../packages/ui/src/store/edit-plan.js";
import type { PlanChange } from "../../../../packages/ui/src/store/plan-change.js";
import { frozen } from "../plan-cases.js";

const HENS = { kind: "hen", count: 20 };

/** A feed to a tee, nipples beyond it, and a branch with two groups, one without a name. */
const yard = (pens?: readonly PlanPen[]): Plan =>
  frozen({
    headfall: 1,
    sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "60 cm" }],
    points: [{ id: "tee", ground: "0 cm", above: "30 cm" }],
    runs: [
      { id: "feed", to: "tee", length: "4 m" },
      {
        id: "hens",
        from: "tee",
        length: "6 m",
        fall: "0 cm",
        drinkers: { id: "nipples", kind: "nipple-side-action", count: 12, every: "30 cm" },
      },
      {
        id: "branch",
        from: "tee",
        length: "3 m",
        fall: "0 cm",
        drinkers: [
          { kind: "cup-float", count: 2 },
          { id: "far cups", kind: "cup-float", count: 2, first: "2.5 m", every: "10 cm" },
        ],
      },
    ],
    ...(pens === undefined ? {} : { pens: [...pens] }),
  });

function made(plan: Plan, ...changes: readonly PlanChange[]): Plan {
  return changes.reduce((each, change) => {
    const edited = editPlan(each, change, "metric");
    if (!edited.ok) throw new Error(edited.because);
    return frozen(edited.plan);
  }, plan);
}

const namesOf = (plan: Plan) => plan.pens?.map(({ drinkers }) => drinkers);
const drinkers = (run: number, group: number) => ({ kind: "drinkers", run, group }) as const;
const run = (index: number) => ({ kind: "run", run: index }) as const;

test("a pen that means a run or a group means it by its new name", () => {
  const plan = yard([
    { id: "a", birds: HENS, drinkers: ["nipples"] },
    { id: "b", birds: HENS, drinkers: ["branch group 1", "far cups"] },
  ]);
  const renamed = made(
    plan,
    { kind: "rename", part: drinkers(1, 0), name: "long line" },
    { kind: "rename", part: run(2), name: "side" },
    { kind: "rename", part: drinkers(2, 1), name: "cups beyond" },
  );
  expect(namesOf(renamed)).toEqual([["long line"], ["side group 1", "cups beyond"]]);
});

test("who reaches a run or a group reaches both its parts once it is cut", () => {
  const byRun = made(yard([{ birds: HENS, drinkers: ["hens"] }]), { kind: "splitRun", run: 1, along: 2 });
  expect(namesOf(byRun)).toEqual([["hens", "run 4"]]);
  const byGroup = made(yard([{ birds: HENS, drinkers: ["nipples"] }]), {
    kind: "splitRun",
    run: 1,
    along: 2,
  });
  expect(namesOf(byGroup)).toEqual([["nipples", "nipples 2"]]);
});

test("a cut through a group leaves the numbers at work to the birds, as they were", () => {
  const { runs } = made(yard([{ birds: HENS }]), { kind: "splitRun", run: 1, along: 2 });
  expect(runs[1]!.drinkers).not.toHaveProperty("busiest");
  expect(runs[3]!.drinkers).not.toHaveProperty("ordinary");
});

test("a run that was cut is joined again under one name", () => {
  const plan = made(yard([{ birds: HENS, drinkers: ["hens"] }]), { kind: "splitRun", run: 1, along: 2 });
  const joint = plan.runs[1]!.to!;
  expect(namesOf(made(plan, { kind: "joinRuns", joint }))).toEqual([["hens"]]);
});

test("runs of two pens that are made one stay apart, group by group", () => {
  const cut = made(yard([{ id: "a", birds: HENS, drinkers: ["nipples"] }]), {
    kind: "splitRun",
    run: 1,
    along: 2,
  });
  const apart = made(
    cut,
    { kind: "addPen" },
    { kind: "reachDrinkers", pen: 1, drinkers: "nipples 2", reaches: true },
  );
  expect(namesOf(apart)![0]).toEqual(["nipples"]);
  const joined = made(apart, { kind: "joinRuns", joint: cut.runs[1]!.to! });
  expect(namesOf(joined)![0]).toEqual(["nipples"]);
  expect(joined.runs[1]!.drinkers).toHaveLength(2);
});

test("names of what is deleted go; groups that were meant by number are still meant", () => {
  const plan = yard([
    { id: "a", birds: HENS, drinkers: ["nipples", "branch group 1"] },
    { id: "b", birds: HENS, drinkers: ["far cups"] },
  ]);
  expect(namesOf(made(plan, { kind: "delete", part: run(1) }))).toEqual([["branch group 1"], ["far cups"]]);
  const fewer = made(plan, { kind: "delete", part: drinkers(2, 1) });
  expect(namesOf(fewer)).toEqual([["nipples", "branch group 1"], undefined]);
});

test("a deletion that would leave two pens to the same drinkers is refused with a reason", () => {
  const plan = yard([
    { id: "a", birds: HENS, drinkers: ["nipples"] },
    { id: "b", birds: HENS },
  ]);
  const edited = editPlan(plan, { kind: "delete", part: run(1) }, "metric");
  expect(edited).toMatchObject({ ok: false });
  expect(edited.ok ? "" : edited.because).toContain("Only one pen may leave out which drinkers it reaches");
});

test("a copy is the pen's that has what it was copied from", () => {
  const plan = yard([{ birds: HENS, drinkers: ["far cups"] }]);
  expect(namesOf(made(plan, { kind: "duplicate", part: drinkers(2, 1) }))).toEqual([
    ["far cups", "far cups 2"],
  ]);
});

test("a second pen takes the last group of the first, which is told by name what it keeps", () => {
  const plan = made(yard(), { kind: "addPen" }, { kind: "addPen" });
  expect(plan.pens).toEqual([
    { id: "pen 1", birds: { kind: "hen", count: 6 }, drinkers: ["nipples", "branch group 1"] },
    { id: "pen 2", birds: { kind: "hen", count: 6 }, drinkers: ["far cups"] },
  ]);
});

test("batches and pens come and go, and an empty list of pens goes too", () => {
  const plan = made(yard(), { kind: "addPen" }, { kind: "addBirds", pen: 0 });
  expect(plan.pens![0]!.birds).toHaveLength(2);
  const fewer = made(plan, { kind: "deleteBirds", pen: 0, batch: 0 });
  expect(fewer.pens![0]!.birds).toEqual({ kind: "hen", count: 6 });
  expect(made(fewer, { kind: "deleteBirds", pen: 0, batch: 0 }).pens).toBeUndefined();
});

test("an edit of pens that are gone is refused", () => {
  for (const change of [
    { kind: "deletePen", pen: 3 },
    { kind: "addBirds", pen: 3 },
    { kind: "deleteBirds", pen: 0, batch: 9 },
    { kind: "reachDrinkers", pen: 0, drinkers: "nowhere", reaches: true },
  ] as const)
    expect(editPlan(yard([{ birds: HENS }]), change, "metric")).toMatchObject({ ok: false });
});

const FOUNT = { drinkers: [], waterers: [{ kind: "fount-1gal" }] };
const MOVES = [
  { on: "2026-06-01", to: "grass" },
  { on: "2026-07-01", to: "house" },
];
const moving = yard([
  { id: "brooder", birds: { kind: "pullet", count: 9, moves: MOVES }, ...FOUNT },
  { id: "grass", birds: HENS, ...FOUNT },
  { id: "house", birds: HENS },
]);
const movesIn = (plan: Plan) => [plan.pens?.[0]?.birds].flat()[0]?.moves;

test("birds stay where they are when the pen they would move to is deleted", () => {
  expect(movesIn(made(moving, { kind: "deletePen", pen: 2 }))).toEqual(MOVES.slice(0, 1));
  expect(movesIn(made(moving, { kind: "deletePen", pen: 1 }))).toBeUndefined();
});

test("birds move to a pen by its new name", () => {
  const renamed = made(moving, penNameEntry(moving, 1).change("meadow"));
  expect(movesIn(renamed)?.map(({ to }) => to)).toEqual(["meadow", "house"]);
});
