import { VERDICTS } from "../../judge/check-result.js";
import type { Cure, CureAnswer, Outcome } from "../../search/cure-answer.js";
import type { UnitSystem } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import {
  writeChanges,
  writeClose,
  writeCost,
  writeCureHeadline,
  writeRelaxation,
  writeScene,
  writeSearch,
} from "./cure-sentences.js";

/** The cures of a plan as text for a terminal. */
export function writeCureText(name: string, answer: CureAnswer, system: UnitSystem, paint: Paint): string {
  const sections = [
    `${paint(name === "" ? "This plan" : name, "title")}: ${writeOutcome(answer.before, paint)}\n${writeCureHeadline(answer)}`,
    ...answer.cures.map((cure, k) => writeOne(cure, k, answer, system, paint)),
    section(
      "What could give",
      answer.relaxations.map((one) => writeRelaxation(one, system)),
      paint,
    ),
    section(
      "Searched",
      answer.searches.map((search) => writeSearch(search, answer.money, system)),
      paint,
    ),
  ];
  return `${sections.filter((text) => text !== "").join("\n\n")}\n`;
}

function writeOne(cure: Cure, k: number, answer: CureAnswer, system: UnitSystem, paint: Paint): string {
  const scenes = cure.after.scenes.length;
  const lines = [
    `${k + 1}. ${paint(writeChanges(cure, system), "title")}`,
    `Cost: ${writeCost(cure.cost, answer.money, system)}${cure.proven ? "" : " (a cheaper one of this kind is not ruled out)"}.`,
    `${cure.after.drinkers.length} good${scenes === 1 ? "" : `, in each of ${scenes} states of affairs`}. ${cure.close === undefined ? "" : writeClose(cure.close, system)}`,
  ];
  return lines.map((line, i) => (i === 0 ? line : `   ${line.trimEnd()}`)).join("\n");
}

/** Counts of verdicts, and of the first coming week that fails where the plan's day does not. */
function writeOutcome({ counts, scenes, meets }: Outcome, paint: Paint): string {
  const words = (of: Outcome["counts"]) =>
    VERDICTS.filter((verdict) => of[verdict] > 0)
      .map((verdict) => paint(`${of[verdict]} ${verdict}`, verdict))
      .join(", ");
  const failing = scenes.find((scene) => !scene.meets);
  const later =
    meets || failing === undefined || failing === scenes[0]
      ? ""
      : `; ${writeScene(failing)} ${words(failing.counts)}`;
  return `${words(counts) || "no drinkers"}${later}.`;
}

function section(title: string, lines: readonly string[], paint: Paint): string {
  return lines.length === 0 ? "" : `${paint(title, "title")}\n${lines.map((line) => `  ${line}`).join("\n")}`;
}
