/** How well what is wrong can be told: faults made, told by a keeper who errs, looked for; and what one question costs. */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";
import {
  checkDocument,
  readPlan,
  rehearseTrouble,
  rehearseTwo,
  whatIsWrong,
} from "../../packages/hydraulics/dist/index.js";
import { time } from "./time.mjs";

const PLANS = ["hen-house", "two-pens", "rain-barrel", "brooder", "five-days-away", "meat-birds"];
const DAY = "2026-07-04";
const FAULTS = 200;
/** Random plans, and faults made in each. */
const RANDOM = { plans: 60, faults: 12 };

const planOf = (name) => {
  const url = new URL(`../../docs/examples/alder-bank-${name}.json`, import.meta.url);
  const reading = readPlan(readFileSync(url, "utf8"));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.plan;
};

const shareOf = (cases, is) => cases.filter(is).length / Math.max(1, cases.length);
const isFirst = ({ rank }) => rank === 0;
const isAmongThree = ({ rank }) => rank >= 0 && rank < 3;

/** @param row  prints one row */
export async function measureTrouble(row) {
  const all = [];
  for (const name of PLANS) {
    const rehearsal = rehearseTrouble(planOf(name), { seed: 1, count: FAULTS, day: DAY });
    if (!rehearsal.ok) throw new Error(JSON.stringify(rehearsal.problems));
    const shown = rehearsal.cases.filter(({ signs }) => signs > 0);
    all.push(...shown);
    row(`${name}, ${FAULTS} faults`, ratesOf(shown));
  }
  row("all of them", ratesOf(all));
  const drawn = await casesOfRandomPlans();
  row(`${RANDOM.plans} random plans, ${RANDOM.faults} faults each`, ratesOf(drawn));
  printTwo(row);
  printConfusion(all, row);
  printCalibration(all, row);
  const hens = planOf("hen-house");
  const signs = [13, 18, 24].map((k) => ({ look: "gives", at: "drinker", id: `hen line ${k}`, sees: "dry" }));
  const one = time(() => whatIsWrong(hens, signs, { day: DAY }), 1500);
  row("one question about 24 nipples", { ms: one.median, least: one.least });
}

/** Random plans as the laws meet them: trees and rings, humps, header tanks, devices, birds or none. */
async function casesOfRandomPlans() {
  const file = fileURLToPath(new URL("../arbitraries/plans.ts", import.meta.url));
  const { module } = await runnerImport(file);
  const cases = [];
  for (let seed = 1; seed <= RANDOM.plans; seed += 1) {
    const reading = checkDocument(module.randomPlan(seed));
    const rehearsal = reading.ok
      ? rehearseTrouble(reading.plan, { seed, count: RANDOM.faults, day: DAY })
      : reading;
    if (!rehearsal.ok) throw new Error(`random plan ${seed}: ${JSON.stringify(rehearsal.problems)}`);
    cases.push(...rehearsal.cases.filter(({ signs }) => signs > 0));
  }
  return cases;
}

const ratesOf = (cases) => ({
  "that show": cases.length,
  first: shareOf(cases, isFirst),
  "among three": shareOf(cases, isAmongThree),
  "first or not to be told from it": shareOf(cases, (one) => isFirst(one) || one.isAlikeByNature),
  "first after the one look": shareOf(cases, ({ rankAfterLook }) => rankAfterLook === 0),
});

/** Two faults at once: how often two are told, how often these two, and how often the likeliest alone is one of them. */
function printTwo(row) {
  const all = PLANS.flatMap((name) => {
    const rehearsal = rehearseTwo(planOf(name), { seed: 1, count: FAULTS, day: DAY });
    if (!rehearsal.ok) throw new Error(JSON.stringify(rehearsal.problems));
    return rehearsal.cases.filter(({ shows }) => shows);
  });
  row(`two faults at once, ${FAULTS} pairs in each`, {
    "that show both": all.length,
    "two told": shareOf(all, ({ isTold }) => isTold),
    "both by name": shareOf(all, ({ areBoth }) => areBoth),
    "one of them first": shareOf(all, ({ isOneFirst }) => isOneFirst),
  });
}

/** By what was really wrong: how often it is found, and what is taken for it otherwise. */
function printConfusion(cases, row) {
  console.log("What was wrong, how often it comes first, and what came first instead");
  for (const code of [...new Set(cases.map(({ truth }) => truth.code))].sort()) {
    const mine = cases.filter(({ truth }) => truth.code === code);
    const instead = {};
    for (const one of mine) if (!isFirst(one)) instead[one.first] = (instead[one.first] ?? 0) + 1;
    const others = Object.entries(instead).sort(([, a], [, b]) => b - a);
    row(`  ${code}`, {
      faults: mine.length,
      first: shareOf(mine, isFirst),
      "among three": shareOf(mine, isAmongThree),
      instead: others.map(([other, count]) => `${other} ${count}`).join(", ") || "-",
    });
  }
}

/** Whether a share of so much comes true so often. */
function printCalibration(cases, row) {
  console.log("Share of the first cause, and how often it is the true one");
  for (const [from, to] of [
    [0, 0.3],
    [0.3, 0.5],
    [0.5, 0.7],
    [0.7, 0.9],
    [0.9, 1.01],
  ]) {
    const mine = cases.filter(({ firstShare }) => firstShare >= from && firstShare < to);
    row(`  from ${from} to ${Math.min(1, to)}`, { faults: mine.length, true: shareOf(mine, isFirst) });
  }
}
