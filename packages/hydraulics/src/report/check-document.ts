import { type Checked, type DrinkerVerdict, VERDICTS } from "../judge/check-result.js";
import { MOMENTS } from "../model/moment.js";
import type { LineSolution } from "../solve/solution.js";
import type { UnitSystem } from "../units/quantity.js";
import { flockOfCheck } from "./birds/flock-entry.js";
import { writeCaution } from "./caution-sentences.js";
import { writeFinding } from "./finding-sentences.js";
import { writeCertainty } from "./sureness/certainty-words.js";
import { writeVerdict } from "./verdict-sentences.js";

/** Name and version of the result document; the version rises when a key changes its meaning or goes. */
const CHECK_FORMAT = { format: "headfall check", version: 1 } as const;

/**
 * A check as a plain document, for `--json` and files: SI throughout (m, m3/s, kg), sentences in the units asked for.
 * Described in docs/reference/check-result.md.
 *
 * @example writeCheckDocument(checked, "metric").verdict   // "good"
 */
export function writeCheckDocument(checked: Checked, system: UnitSystem) {
  const { line } = checked;
  return {
    ...CHECK_FORMAT,
    plan: { name: line.name, digest: checked.madeFrom.planDigest },
    verdict: checked.verdict,
    counts: Object.fromEntries(VERDICTS.map((name) => [name, checked.counts[name]])),
    friction: checked.friction,
    water: { ...line.water },
    drinkers: checked.drinkers.map((verdict) => drinkerEntry(checked, verdict, system)),
    runs: checked.runs.map(({ index: _, ...report }) => report),
    sources: checked.sources.map(({ index: _, ...report }) => report),
    filling: checked.filling.map((finding) => {
      const { pointIndex: _, ...told } = finding;
      return { ...told, sentence: writeFinding(finding, system) };
    }),
    cautions: checked.cautions.map((caution) => ({
      ...caution,
      sentence: writeCaution(caution, system),
    })),
    ...(checked.flock === undefined ? {} : { flock: flockOfCheck(checked.flock, system) }),
    defaults: checked.defaults,
    checks: MOMENTS.map((moment) => ({
      moment,
      hazenWilliams: solvedEntry(checked.solutions[moment].hazenWilliams),
      darcyWeisbach: solvedEntry(checked.solutions[moment].darcyWeisbach),
    })),
    madeFrom: checked.madeFrom,
  };
}

function solvedEntry({ outcome, checks, effort }: LineSolution) {
  return {
    outcome,
    continuity: checks.continuity.worst,
    energy: checks.energy.worst,
    steps: effort.steps,
  };
}

function drinkerEntry(checked: Checked, verdict: DrinkerVerdict, system: UnitSystem) {
  const { line } = checked;
  const { drinkers } = line;
  const { index, certainty } = verdict;
  const group = drinkers.groups[drinkers.group[index]];
  return {
    ...judgedOf(verdict),
    run: line.runs[drinkers.run[index]].id,
    kind: group.kindId,
    along: drinkers.along[index],
    height: drinkers.height[index],
    certainty: { ...certainty, sentence: writeCertainty(certainty) },
    sentence: writeVerdict(verdict, line, system),
  };
}

/** Key by key: to leave two out of a copy of all takes several times as long. */
const judgedOf = (verdict: DrinkerVerdict): Omit<DrinkerVerdict, "index" | "certainty"> => ({
  drinker: verdict.drinker,
  verdict: verdict.verdict,
  margin: verdict.margin,
  moment: verdict.moment,
  friction: verdict.friction,
  because: verdict.because,
  also: verdict.also,
  lawsAgree: verdict.lawsAgree,
  moments: verdict.moments,
});
