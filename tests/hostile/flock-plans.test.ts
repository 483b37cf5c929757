import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Plan } from "../../packages/hydraulics/src/document/plan-schema.js";
import { checkDocument, readPlan } from "../../packages/hydraulics/src/document/read-plan.js";
import { writePlan } from "../../packages/hydraulics/src/document/write-plan.js";
import { birdsForPlan } from "../../packages/hydraulics/src/index.js";
import { mutatedPlans } from "../arbitraries/mutate-plan.js";
import { type PlanData, plans, randomPlan } from "../arbitraries/plans.js";
import { shrinkPlan } from "../arbitraries/shrink-plan.js";
import { cases } from "../runner/cases.js";
import { notFinite } from "./plan-faults.js";
import { expectReadable } from "./plan-laws.js";
import { ASKED_DAY, TIME_QUESTIONS } from "./plan-questions.js";

/** Cases of each property; more by hand: HEADFALL_CASES=20000 HEADFALL_SEED=17. */
const MORE_THAN_SECONDS = 3_600_000;

function planFrom(data: PlanData): Plan {
  const reading = checkDocument(data);
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}

/** Every key of a plan with its place, list places left out: `sources.refill.every`. */
const keysOf = (value: unknown, path = ""): string[] => {
  if (Array.isArray(value)) return value.flatMap((one) => keysOf(one, path));
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inside]) => {
    const here = path === "" ? key : `${path}.${key}`;
    return [here, ...keysOf(inside, here)];
  });
};

test("random plans have every key that tells of birds, weather and how water is brought", () => {
  const seen = new Set(
    Array.from({ length: 150 }, (_, seed) => randomPlan(seed)).flatMap((plan) => keysOf(plan)),
  );
  const wanted = [
    ...[
      "id",
      "birds",
      "birds.kind",
      "birds.count",
      "birds.age",
      "birds.hatched",
      "birds.lay",
      "drinkers",
    ].map((key) => `pens.${key}`),
    ...["high", "low", "light", "dawn", "hotSpell.high", "hotSpell.low", "hotSpell.days"].map(
      (key) => `weather.${key}`,
    ),
    ...["refill", "refill.every", "refill.at", "refill.hose", "roof.area", "roof.kind", "roof.runoff"].map(
      (key) => `sources.${key}`,
    ),
    ...["wetting", "firstFlush", "overflow"].map((key) => `sources.roof.${key}`),
    ...["each", "climb", "most"].map((key) => `carry.${key}`),
    ...["day", "region", "runs.hung"],
  ];
  expect(wanted.filter((key) => !seen.has(key))).toEqual([]);
});

test(
  "readPlan(writePlan(any plan)) is the plan, and written again the same text",
  () => {
    fc.assert(
      fc.property(plans(), (data) => {
        const text = writePlan(planFrom(data));
        const reading = readPlan(text);
        expect(reading).toEqual({ ok: true, plan: data });
        if (reading.ok) expect(writePlan(reading.plan)).toBe(text);
      }),
      cases(40),
    );
  },
  MORE_THAN_SECONDS,
);

describe.each(Object.entries(TIME_QUESTIONS))("%s", (_, ask) => {
  test(
    "answers any valid plan in finite numbers, the same each time, without changing it",
    () => {
      fc.assert(
        fc.property(plans(), (data) => {
          const plan = planFrom(data);
          const before = structuredClone(plan);
          const answer = ask(plan);
          expect(plan).toEqual(before);
          expect(notFinite(answer)).toEqual([]);
          expect(answer.ok ? [] : answer.problems).toEqual([]);
          expect(ask(plan)).toEqual(answer);
        }),
        cases(6),
      );
    },
    MORE_THAN_SECONDS,
  );

  test(
    "answers a plan with something changed, or tells readable problems",
    () => {
      fc.assert(
        fc.property(mutatedPlans(), (document) => {
          const reading = checkDocument(document);
          if (!reading.ok) return;
          const answer = ask(reading.plan);
          if (!answer.ok) expectReadable(answer.problems);
          else expect(notFinite(answer)).toEqual([]);
        }),
        cases(8),
      );
    },
    MORE_THAN_SECONDS,
  );
});

/** A pen whose birds move nowhere: the pen they would go to may be gone. */
function staying(pen: PlanData): PlanData {
  const { birds } = pen;
  const stay = ({ moves: _, ...batch }: PlanData): PlanData => batch;
  return { ...pen, birds: Array.isArray(birds) ? birds.map(stay) : stay(birds as PlanData) };
}

test(
  "a plan without one of its pens is a plan still, and takes no drinkers from the others",
  () => {
    fc.assert(
      fc.property(plans(), fc.nat(), (data, which) => {
        const pens = data["pens"] as PlanData[] | undefined;
        if (pens === undefined) return;
        const gone = which % pens.length;
        const penNames = (plan: PlanData) => {
          const asked = birdsForPlan(planFrom(plan), { day: ASKED_DAY, weeks: 0 });
          if (!asked.ok) throw new Error(JSON.stringify(asked.problems));
          return asked.birds.pens.map(({ drinkers }) =>
            drinkers.devices.reduce((sum, { has }) => sum + has, 0),
          );
        };
        const before = penNames(data).filter((_, p) => p !== gone);
        const after = penNames({ ...data, pens: pens.filter((_, p) => p !== gone).map(staying) });
        expect(after).toHaveLength(before.length);
        after.forEach((has, p) => {
          expect(has).toBeGreaterThanOrEqual(before[p]!);
        });
      }),
      cases(25),
    );
  },
  MORE_THAN_SECONDS,
);

test("shrinkPlan keeps of a plan with a pen only what its fault needs", () => {
  const data = Array.from({ length: 50 }, (_, seed) => randomPlan(seed)).find(
    // With loose waterers a plan may do without sources, and keeps them instead.
    (plan) =>
      Array.isArray(plan["pens"]) &&
      plan["weather"] !== undefined &&
      !JSON.stringify(plan["pens"]).includes("waterers"),
  )!;
  const hasPenOfMany = (plan: PlanData) => {
    const reading = checkDocument(plan);
    if (!reading.ok) return false;
    const answer = birdsForPlan(reading.plan, { day: ASKED_DAY, weeks: 0 });
    return answer.ok && answer.birds.pens.some(({ birds }) => birds >= 1);
  };
  const least = shrinkPlan(data, hasPenOfMany);
  expect(keysOf(least).filter((key) => !/^(headfall|sources|runs)/.test(key))).toEqual([
    "pens",
    "pens.birds",
    "pens.birds.kind",
    "pens.birds.count",
  ]);
});
