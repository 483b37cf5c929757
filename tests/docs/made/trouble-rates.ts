import { readFileSync } from "node:fs";
import { readPlan } from "../../../packages/hydraulics/src/document/read-plan.js";
import { type Rehearsed, rehearseTrouble } from "../../../packages/hydraulics/src/judge/trouble/rehearse.js";

const PLANS = ["brooder", "five-days-away", "meat-birds"] as const;
const FAULTS = 60;

function shownIn(name: string): Rehearsed[] {
  const url = new URL(`../../../docs/examples/alder-bank-${name}.json`, import.meta.url);
  const reading = readPlan(readFileSync(url, "utf8"));
  const rehearsal = reading.ok
    ? rehearseTrouble(reading.plan, { seed: 1, count: FAULTS, day: "2026-07-04" })
    : reading;
  if (!rehearsal.ok) throw new Error(JSON.stringify(rehearsal.problems));
  return rehearsal.cases.filter(({ signs }) => signs > 0);
}

const rate = (all: readonly Rehearsed[], is: (one: Rehearsed) => boolean) =>
  `${Math.round((100 * all.filter(is).length) / all.length)} %`;

/** How often what is wrong is found in rehearsals of the examples, and how true the shares are. */
export function writeTroubleRates(): string {
  const plans = PLANS.map((name) => ({ name, shown: shownIn(name) }));
  const all = plans.flatMap(({ shown }) => shown);
  const rows = [...plans, { name: "all", shown: all }].map(({ name, shown }) =>
    [
      name.padEnd(16),
      String(shown.length).padStart(5),
      rate(shown, ({ rank }) => rank === 0).padStart(7),
      rate(shown, ({ rank }) => rank >= 0 && rank < 3).padStart(7),
      rate(shown, ({ rankAfterLook }) => rankAfterLook === 0).padStart(9),
    ].join(" "),
  );
  const bands = [
    [0, 0.4],
    [0.4, 0.6],
    [0.6, 0.8],
    [0.8, 1.01],
  ].map(([from, to]) => {
    const mine = all.filter(({ firstShare }) => firstShare >= from! && firstShare < to!);
    const told = `${Math.round(from! * 100)} to ${Math.min(100, Math.round(to! * 100))} %`;
    return `${told.padEnd(16)} ${String(mine.length).padStart(5)} ${rate(mine, ({ rank }) => rank === 0).padStart(7)}`;
  });
  return [
    "example          shown   first  of three  one look later",
    ...rows.map((row) => row.replace(/^(.{30})(.{8})(.*)$/, "$1  $2$3")),
    "",
    "share of first   times    true",
    ...bands,
    "",
  ].join("\n");
}
