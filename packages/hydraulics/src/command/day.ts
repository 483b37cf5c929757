import { Worker } from "node:worker_threads";
import { settingOfPlan, simulateDay } from "../judge/time/simulate-day.js";
import { writeDayDocument, writeDaysDocument } from "../report/time/day-documents.js";
import { writeDaysText, writeDayText } from "../report/time/day-text.js";
import { type DayRow, summariseDays } from "../simulate/day-summary.js";
import type { Answer, Asked, Question } from "./answer-plan.js";
import { readCount } from "./arguments.js";
import { type DayShare, rowsOf } from "./day-share.js";

/** `headfall day PLAN --seed 1 --days 100 --jobs 2`: exit status 1 when some bird came short. */
export const DAY: Question = { options: ["seed", "days", "jobs", "figure", "weather"], ofLine: true, answer };

async function answer({ plan, name, day, system, paint, own }: Asked): Promise<Answer> {
  const seed = readCount("seed", own["seed"], 1, 4_294_967_295);
  const days = readCount("days", own["days"], 1, 100_000);
  const jobs = readCount("jobs", own["jobs"], 1, 64);
  for (const read of [seed, days, jobs]) if (typeof read !== "number") return read;
  if (days === 0) return { fault: "--days is a whole number from 1 to 100000." };
  if (jobs === 0) return { fault: "--jobs is a whole number from 1 to 64." };
  const figure = own["figure"] ?? "expect";
  if (figure !== "expect" && figure !== "size") return { fault: "--figure is expect or size." };
  const weather = own["weather"] ?? "plan";
  if (weather !== "plan" && weather !== "hot") return { fault: "--weather is plan or hot." };
  const options = { day, figure, hot: weather === "hot" } as const;
  if ((days as number) <= 1) {
    const simulated = simulateDay(plan, { ...options, seed: seed as number });
    if (!simulated.ok) return simulated;
    const { result } = simulated;
    return {
      text: () => writeDayText(name, result, system, paint),
      document: () => writeDayDocument(name, result),
      status: result.pens.some(({ short }) => short > 0) ? 1 : 0,
    };
  }
  const seeds = Array.from({ length: days as number }, (_, k) => (seed as number) + k);
  const rows = await runSeeds({ plan, options, seeds }, jobs as number);
  if (!Array.isArray(rows)) return rows as Answer;
  const summary = summariseDays(rows);
  return {
    text: () => writeDaysText(name, summary, system, paint),
    document: () => writeDaysDocument(name, summary),
    status: summary.pens.some(({ short }) => short.most > 0) ? 1 : 0,
  };
}

async function runSeeds(share: DayShare, jobs: number): Promise<DayRow[] | Answer> {
  const setting = settingOfPlan(share.plan, share.options);
  if (!setting.ok) return setting;
  if (jobs <= 1) return rowsOf(share) ?? [];
  const parts = Array.from({ length: jobs }, (_, j) => share.seeds.filter((_seed, k) => k % jobs === j));
  const rows = await Promise.all(
    parts.filter((seeds) => seeds.length > 0).map((seeds) => inWorker({ ...share, seeds })),
  );
  return rows.flat();
}

function inWorker(share: DayShare): Promise<DayRow[]> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL("./day-worker.js", import.meta.url), { workerData: share });
    worker.once("message", (rows: DayRow[]) => resolve(rows));
    worker.once("error", reject);
  });
}
