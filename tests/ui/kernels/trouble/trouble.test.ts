import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import {
  ANSWERS,
  buildLine,
  type Look,
  type Plan,
  readPlan,
  type Sign,
} from "../../../../packages/hydraulics/src/index.js";
import { ANSWER_WORDS } from "../../../../packages/ui/src/kernels/trouble/answer-words.js";
import { pensToLookAt } from "../../../../packages/ui/src/kernels/trouble/drinkers-by-pen.js";
import { runsToLookAt, toldOf } from "../../../../packages/ui/src/kernels/trouble/drinkers-by-run.js";
import { readJug } from "../../../../packages/ui/src/kernels/trouble/read-jug.js";
import { readStand } from "../../../../packages/ui/src/kernels/trouble/read-stand.js";
import { marksTold, wayOfRun } from "../../../../packages/ui/src/kernels/trouble/told-drawing.js";
import {
  isFoundEmpty,
  seenAt,
  signsOn,
  withAnswerAtAll,
  withoutSign,
  withSign,
} from "../../../../packages/ui/src/kernels/trouble/told-signs.js";

const gives = (id: string): Look => ({ look: "gives", at: "drinker", id });
const water: Look = { look: "water", at: "source", id: "barrel" };
const THREE = ["a", "b", "c"].map(gives);

describe("what was told", () => {
  test("a later answer to a look takes the place of the one before; a jug at the same drinker stays", () => {
    const jug: Sign = { look: "jug", at: "drinker", id: "a", flow: 1e-6 };
    let signs: readonly Sign[] = [jug];
    signs = withSign(signs, { ...gives("a"), sees: "dry" });
    signs = withSign(signs, { ...gives("a"), sees: "weak" });
    expect(signs).toEqual([jug, { ...gives("a"), sees: "weak" }]);
    expect(seenAt(signs, gives("a"))).toBe("weak");
    expect(withoutSign(signs, gives("a"))).toEqual([jug]);
    expect(withoutSign(withoutSign(signs, jug), gives("a"))).toEqual([]);
  });

  test("many at once are told, then taken back by the same press; some told before are told anew", () => {
    const some = withSign([{ ...water, sees: "low" }], { ...gives("b"), sees: "fine" });
    const all = withAnswerAtAll(some, THREE, "dry");
    expect(THREE.map((look) => seenAt(all, look))).toEqual(["dry", "dry", "dry"]);
    expect(all).toHaveLength(4);
    expect(withAnswerAtAll(all, THREE, "dry")).toEqual([{ ...water, sees: "low" }]);
    expect(THREE.map((look) => seenAt(withAnswerAtAll(all, THREE, "fine"), look))).toEqual([
      "fine",
      "fine",
      "fine",
    ]);
  });

  test("isFoundEmpty holds for a source found empty only", () => {
    expect(isFoundEmpty([{ ...water, sees: "empty" }])).toBe(true);
    expect(isFoundEmpty([{ ...water, sees: "low" }])).toBe(false);
  });
});

test("every answer the library knows has one button, and no button says anything else", () => {
  for (const [look, answers] of Object.entries(ANSWERS)) {
    const buttons = ANSWER_WORDS[look as keyof typeof ANSWERS];
    expect(buttons.map(({ sees }) => sees).sort()).toEqual([...answers].sort());
    expect(new Set(buttons.map(({ words }) => words)).size).toBe(buttons.length);
  }
});

describe("on a line", () => {
  const reading = readPlan(readFileSync("docs/examples/alder-bank-two-pens.json", "utf8"));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const { plan } = reading;
  const built = buildLine(plan);
  if (!built.ok) throw new Error(JSON.stringify(built.problems));
  const { line } = built;
  const [first] = line.drinkers.id;

  test("runs have their drinkers and those who drink there, and each sign is counted at one run", () => {
    const runs = runsToLookAt(line, plan);
    expect(runs.flatMap(({ drinkers }) => drinkers)).toEqual([...line.drinkers.id]);
    expect(runs.map(({ run }) => run)).toEqual(line.runs.map(({ id }) => id));
    const at = runs.findLastIndex(({ drinkers }) => drinkers.length > 0);
    const hens = {
      ...plan,
      pens: [{ id: "hens", birds: { kind: "hen", count: 20 }, drinkers: [runs[at]!.run] }],
    };
    expect(runsToLookAt(line, hens as Plan).map(({ pens }) => pens.length)).toEqual(
      runs.map((_, k) => (k === at ? 1 : 0)),
    );
    const signs: Sign[] = [
      { ...gives(first!), sees: "dry" },
      { look: "ground", at: "run", id: line.runs[0]!.id, sees: "wet" },
      { ...water, sees: "low" },
    ];
    expect(runs.reduce((sum, run) => sum + toldOf(run, signs), 0)).toBe(2);
  });

  test("pensToLookAt names the drinkers of each pen, of runs and of what no other pen has", () => {
    const [hung] = runsToLookAt(line, plan).filter(({ drinkers }) => drinkers.length > 0);
    const birds = { kind: "hen", count: 20 };
    const penned = { ...plan, pens: [{ id: "one", birds, drinkers: [hung!.run] }, { birds }] } as Plan;
    const [one, rest] = pensToLookAt(line, penned);
    expect(one).toEqual({ pen: "one", drinkers: hung!.drinkers });
    expect([...one!.drinkers, ...(rest?.drinkers ?? [])].sort()).toEqual([...line.drinkers.id].sort());
    expect(pensToLookAt(line, { ...plan, pens: undefined } as unknown as Plan)).toEqual([]);
  });

  test("marksTold shows the worst that is told of a drinker; of runs and jugs nothing", () => {
    const signs: Sign[] = [
      { ...gives(first!), sees: "fine" },
      { look: "drips", at: "drinker", id: first!, sees: "drips" },
      { look: "ground", at: "run", id: line.runs[0]!.id, sees: "dry" },
      { look: "jug", at: "drinker", id: line.drinkers.id[1]!, flow: 1e-6 },
    ];
    expect([...marksTold(line, signs)]).toEqual([[0, "drips"]]);
    expect([...marksTold(line, [...signs, { ...gives(first!), sees: "dry" }])]).toEqual([[0, "dry"]]);
    expect([...marksTold(line, [{ ...gives(first!), sees: "weak" }])]).toEqual([[0, "starves"]]);
  });

  test("wayOfRun leads past every drinker of the run", () => {
    const run = line.runs[line.drinkers.run[0]!]!.id;
    const mine = line.drinkers.id.flatMap((_, d) =>
      line.drinkers.run[d] === line.drinkers.run[0] ? [d] : [],
    );
    expect(wayOfRun(line, run)?.drinkers).toEqual(expect.arrayContaining(mine));
    expect(wayOfRun(line, "no such run")).toBeUndefined();
  });

  test("signsOn drops what has left the plan, and gives the same list where nothing has", () => {
    const signs: Sign[] = [{ ...gives(first!), sees: "dry" }];
    expect(signsOn(line, signs)).toBe(signs);
    expect(signsOn(line, [...signs, { ...gives("gone 3"), sees: "dry" }])).toEqual(signs);
  });
});

describe("readJug", () => {
  test("250 mL in 4 min are 62.5 mL/min, in whatever units", () => {
    const flow = (volume: string, time: string) => {
      const read = readJug({ volume, time });
      return read.ok ? read.flow * 60e6 : read.wrong;
    };
    expect(flow("250 mL", "4 min")).toBeCloseTo(62.5, 9);
    expect(flow("0.25 L", "240 s")).toBeCloseTo(62.5, 9);
    expect(flow("0 mL", "1 min")).toBe(0);
    expect([flow("much", "1 min"), flow("250 mL", "soon"), flow("250 mL", "0 min")]).toEqual([
      "volume",
      "time",
      "time",
    ]);
  });

  test("what is wrong is told with an example", () => {
    const read = readJug({ volume: "much", time: "1 min" });
    expect(read).toMatchObject({ ok: false, wrong: "volume" });
    expect(JSON.stringify(read)).toMatch(/Write/);
  });
});

test("readStand takes a level up to the full one in any unit; nothing typed is nothing said", () => {
  expect(readStand("  ", 0.65, "metric")).toEqual({ ok: true, level: undefined });
  expect(readStand("40 cm", 0.65, "metric")).toEqual({ ok: true, level: 0.4 });
  expect(readStand("10 in", 0.65, "us")).toMatchObject({ ok: true, level: expect.closeTo(0.254, 9) });
  expect(readStand("66 cm", 0.65, "metric")).toEqual({
    ok: false,
    because: "From 0 to the full level, 65 cm above the inside bottom.",
  });
  expect([readStand("-1 cm", 0.65, "metric").ok, readStand("half", 0.65, "metric").ok]).toEqual([
    false,
    false,
  ]);
});
