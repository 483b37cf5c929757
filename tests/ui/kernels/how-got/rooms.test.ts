import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import {
  type Checked,
  checkPlan,
  frostOfPlan,
  heatOfPlan,
  judgeWeeks,
  mishapsOfPlan,
  type Plan,
  readPlan,
  simulateDay,
  sourceByKey,
  whatIsWrong,
  writeWait,
  yardForPlan,
  yearForPlan,
} from "../../../../packages/hydraulics/src/index.js";
import { waitsOf } from "../../../../packages/ui/src/kernels/day/waits.js";
import { howGotOf } from "../../../../packages/ui/src/kernels/how-got/how-got-of.js";
import type { RoomTold } from "../../../../packages/ui/src/kernels/how-got/request.js";
import type { HowSubject } from "../../../../packages/ui/src/kernels/how-got/subject.js";
import { roomSubjects } from "./every-subject.js";

const meatBirds = (): Plan => {
  const reading = readPlan(readFileSync("docs/examples/alder-bank-meat-birds.json", "utf8"));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const { weather, pens } = reading.plan;
  return {
    ...reading.plan,
    weather: { high: "26 °C", ...weather, hotSpell: { high: "34 °C" } },
    // A crowd, so that some wait, give up and come short.
    pens: pens!.map((pen) => ({ ...pen, birds: { ...[pen.birds].flat()[0]!, count: 700 } })),
  };
};

function askedOf(plan: Plan): { checked: Checked; room: RoomTold } {
  const checking = checkPlan(plan, { samples: 0 });
  const judged = judgeWeeks(plan, { weeks: 3 });
  const simulated = simulateDay(plan, { seed: 1, figure: "expect", record: true });
  const loose = { ...plan, pens: plan.pens!.map((pen) => ({ ...pen, waterers: [{ kind: "fount-1gal" }] })) };
  const run = mishapsOfPlan(loose, { guardsFor: 3 });
  if (!checking.ok || !judged.ok || !simulated.ok || !run.ok)
    throw new Error("the plan cannot be worked out");
  const [first] = run.mishaps.line.drinkers.id;
  const wrong = whatIsWrong(plan, [{ look: "gives", at: "drinker", id: first!, sees: "dry" }]);
  const frost = frostOfPlan(plan);
  const heat = heatOfPlan(plan);
  const year = yearForPlan({ ...plan, kit: [{ kind: "rubber-pan-3gal", count: 2 }] }, { weeks: 2 });
  const yard = yardForPlan(loose);
  if (!frost.ok || !heat.ok || !wrong.ok || !year.ok || !yard.ok)
    throw new Error("the plan cannot be worked out");
  return {
    checked: checking.checked,
    room: {
      ...judged,
      day: simulated.result,
      mishaps: run.mishaps,
      trouble: wrong.trouble,
      ...frost,
      ...heat,
      year: year.year,
      yard: yard.yard,
    },
  };
}

const plan = meatBirds();
const { checked, room } = askedOf(plan);
const how = (subject: HowSubject) => howGotOf(subject, checked, plan, "metric", room)!;

describe("figures of a room", () => {
  test("each tells how it was got, without holes, from sources of the table", () => {
    for (const subject of roomSubjects()) {
      const told = how(subject);
      expect([subject, told.result]).not.toEqual([subject, "not known"]);
      expect([subject, /NaN|undefined|Infinity|no figure/.exec(JSON.stringify(told))?.[0]]).toEqual([
        subject,
        undefined,
      ]);
      for (const key of told.sources) expect([key, sourceByKey(key) !== undefined]).toEqual([key, true]);
    }
  });

  test("what a mishap loses is what was there less what was drunk and what is left; a guard's saving is the rest", () => {
    const { rows } = room.mishaps!;
    const row = rows.findIndex(({ worst, cheapest }) => worst.balance.lost > 0.001 && cheapest !== undefined);
    const { worst, guards } = rows[row]!;
    expect(how({ of: "mishap", row, what: "lost" }).steps[0]!.value).toBeCloseTo(worst.balance.lost, 9);
    const saving = how({ of: "mishapGuard", row, guard: 0 }).steps.find(({ formula }) =>
      formula.startsWith("less to the ground"),
    )!;
    expect(saving.value).toBeCloseTo(guards![0]!.savesWater, 9);
  });

  test("what a pen drank of its founts is what was there less what ran out, dried and is left", () => {
    const { balance } = room.mishaps!.waterers[0]!.worst;
    expect(how({ of: "mishapWaterer", row: 0 }).steps[0]!.value).toBeCloseTo(balance.drunk, 9);
  });

  test("what all birds drink on the hot day is the sum of their batches in that day's air", () => {
    for (const which of ["size", "expect"] as const) {
      const told = how({ of: "flockIntake", which, heat: true });
      expect(told.steps[0]!.value).toBeCloseTo(room.heat!.intake![which], 12);
      expect(how({ of: "batchIntake", pen: 0, batch: 0, which, heat: true }).notes.join()).toContain("34 °C");
    }
  });

  test("gone with what was reckoned, each says so", () => {
    for (const subject of roomSubjects())
      expect(howGotOf(subject, checked, plan, "metric")!.result).toBe("not known");
  });

  test("where a run hangs in a week lies between two rows of the table of heights, and the formula gives it", () => {
    const { hangAt } = room.weeks![1]!.groups[0]!;
    const told = how({ of: "weekHang", week: 1, group: 0 });
    expect(told.steps[0]!.value).toBeCloseTo(hangAt!.height, 9);
    expect(told.listed!.rows.length).toBeGreaterThan(2);
  });

  test("a run is raised by where it hangs then less where it hangs now, and that comes off the idle head", () => {
    const [raised] = room.weeks![1]!.raised;
    expect(how({ of: "weekRaise", week: 1, raised: 0 }).steps[0]!.value).toBeCloseTo(raised!.raise, 9);
    const told = how({ of: "weekHead", week: 1, which: "idle" });
    expect(told.steps[0]!.value).toBeCloseTo(room.weeks![1]!.idleHead.least, 9);
  });

  test("waits counted from the day's events are those the day came to", () => {
    const [pen] = room.day!.pens;
    const waits = waitsOf(room.day!, 0);
    expect(pen!.longestWait).toBeGreaterThan(0);
    expect(how({ of: "dayPen", inPen: 0, what: "meanWait" }).steps[0]!.value).toBeCloseTo(pen!.meanWait, 9);
    expect(waits[Math.floor(0.95 * waits.length)]).toBe(pen!.wait95);
    expect(waits.at(-1)).toBe(pen!.longestWait);
    expect(how({ of: "dayPen", inPen: 0, what: "longestWait" }).result).toBe(writeWait(pen!.longestWait));
  });

  test("what those that came short miss is what they wanted less what they got", () => {
    const short = room.day!.birds.filter(({ drunk, wanted }) => drunk < 0.8 * wanted);
    const missing = short.reduce((sum, { drunk, wanted }) => sum + wanted - drunk, 0);
    expect(short.length).toBeGreaterThan(0);
    expect(how({ of: "dayShort", inPen: 0, inBatch: 0 }).steps[0]!.value).toBeCloseTo(missing, 9);
  });
});
