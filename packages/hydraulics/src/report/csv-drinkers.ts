import type { Certainty, Checked, DrinkerVerdict } from "../judge/check-result.js";
import { MOMENTS } from "../model/moment.js";
import { FRICTION_LAWS } from "../solve/solution.js";
import { type CsvCell, type CsvOptions, writeCsv } from "./csv.js";
import { type CsvUnits, inUnits, systemOfUnits, titled } from "./csv-units.js";
import { writeJudgement } from "./sentences.js";
import { writeInput } from "./sureness/certainty-words.js";
import { writeVerdict } from "./verdict-sentences.js";
import { LAW_WORDS, MOMENT_WORDS } from "./words.js";

/**
 * Every drinker as a row: where it hangs, its verdict with margin and certainty, head and flow at each moment by both
 * friction laws, and the sentence.
 *
 * @param checked  from `checkPlan`
 * @param units    "si", or the units of "metric" or "us"; each column has one unit, said in its title
 * @param options  whether to begin with the mark of UTF-8
 * @returns comma-separated values, see `writeCsv`
 * @example writeDrinkersCsv(checked, "metric").split(",")[0]   // "drinker"
 */
export function writeDrinkersCsv(checked: Checked, units: CsvUnits, options?: CsvOptions): string {
  return writeCsv(
    [titles(units), ...checked.drinkers.map((verdict) => rowOf(checked, verdict, units))],
    options,
  );
}

function titles(units: CsvUnits): string[] {
  return [
    ...["drinker", "group", "kind", "run"],
    titled("along the run", "length", units),
    titled("height above datum", "length", units),
    "verdict",
    titled("margin of head", "head", units),
    ...[
      "at the moment",
      "by the law",
      "both laws agree",
      "certainty",
      "share of samples [%]",
      "measure again",
    ],
    ...MOMENTS.flatMap((moment) => [
      titled(`${MOMENT_WORDS[moment]}: standing head`, "head", units),
      ...FRICTION_LAWS.flatMap((law) => [
        titled(`${MOMENT_WORDS[moment]}: head by ${LAW_WORDS[law]}`, "head", units),
        titled(`${MOMENT_WORDS[moment]}: flow by ${LAW_WORDS[law]}`, "smallFlow", units),
      ]),
    ]),
    ...["also", "sentence"],
  ];
}

function rowOf(checked: Checked, verdict: DrinkerVerdict, units: CsvUnits): CsvCell[] {
  const { drinkers, runs } = checked.line;
  const { index } = verdict;
  const group = drinkers.groups[drinkers.group[index]];
  const system = systemOfUnits(units);
  return [
    ...[verdict.drinker, group.id, group.kindName, runs[drinkers.run[index]].id],
    inUnits(drinkers.along[index], "length", units),
    inUnits(drinkers.height[index], "length", units),
    verdict.verdict,
    inUnits(verdict.margin, "head", units),
    ...[MOMENT_WORDS[verdict.moment], LAW_WORDS[verdict.friction], verdict.lawsAgree ? "yes" : "no"],
    ...certaintyCells(verdict.certainty),
    ...MOMENTS.flatMap((moment) => [
      inUnits(verdict.moments[moment][checked.friction].staticHead, "head", units),
      ...FRICTION_LAWS.flatMap((law) => [
        inUnits(verdict.moments[moment][law].flowingHead, "head", units),
        inUnits(verdict.moments[moment][law].flow, "smallFlow", units),
      ]),
    ]),
    verdict.also.map((other) => writeJudgement(other, system)).join(" "),
    writeVerdict(verdict, checked.line, system),
  ];
}

function certaintyCells(certainty: Certainty): CsvCell[] {
  if (certainty.kind === "notSampled") return ["not sampled", undefined, undefined];
  const percent = 100 * certainty.share;
  return certainty.kind === "sure"
    ? ["sure", percent, undefined]
    : ["close call", percent, certainty.measureAgain && writeInput(certainty.measureAgain.input)];
}
