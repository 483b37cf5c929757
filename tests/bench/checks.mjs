/** A whole check of 60 drinkers: text to verdict, four moments, both laws; with samples, with birds, week by week. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { checkPlan, judgeWeeks, readPlan } from "../../packages/hydraulics/dist/index.js";
import { time } from "./time.mjs";

const EXAMPLE = new URL("../../docs/examples/alder-bank-hen-house.json", import.meta.url);
/** How much slower a phone is. */
const PHONE = 4;

/** @param bench  where rows and measured bars go (book.mjs) */
export function measureChecks({ row, measured }) {
  const written = lineOfSixty();
  const plan = planOf(written);
  const tell = (what, { processor, median, least }) =>
    row(what, { "processor [ms]": processor, "times four": PHONE * processor, ms: median, least });
  const quick = time(() => checkPlan(plan, { samples: 0 }), 2000);
  tell("verdicts after a drag", quick);
  measured("check", PHONE * quick.processor, { "least by the clock": PHONE * quick.least });
  tell(
    "the same with 200 tolerance samples",
    time(() => checkPlan(plan, { samples: 200 }), 1500),
  );
  const penned = planOf(withHens(written));
  tell(
    "verdicts with 150 hens",
    time(() => checkPlan(penned, { samples: 0 })),
  );
  tell(
    "the same with 200 samples",
    time(() => checkPlan(penned, { samples: 200 }), 1500),
  );
  tell(
    "nine weeks of it",
    time(() => judgeWeeks(penned, { weeks: 8 })),
  );
}

function lineOfSixty() {
  const plan = JSON.parse(readFileSync(fileURLToPath(EXAMPLE), "utf8"));
  const drinkers = { ...plan.runs[2].drinkers, count: 60, busiest: 20, ordinary: 2 };
  Object.assign(plan.runs[2], { length: "18 m", drinkers });
  // As many at work as the bar speaks of, not as its birds would be.
  delete plan.pens;
  return plan;
}

/** The same line with hens at it, their crowd solved with the line. */
function withHens(plan) {
  const { busiest: _, ordinary: __, ...drinkers } = plan.runs[2].drinkers;
  const runs = [...plan.runs.slice(0, 2), { ...plan.runs[2], drinkers, hung: true }];
  return { ...plan, runs, pens: [{ birds: { kind: "hen", count: 150, age: "3 weeks" } }] };
}

function planOf(written) {
  const reading = readPlan(JSON.stringify(written));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
}
