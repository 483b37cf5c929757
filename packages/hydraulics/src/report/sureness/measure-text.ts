import type { Checked } from "../../judge/check-result.js";
import type { CloseCall, Measuring } from "../../judge/sureness/measuring.js";
import type { UnitSystem } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import { writeMeasuring, writeRemedy, writeSways } from "./measure-words.js";

/** Which measurements to take again, as text for a terminal. */
export function writeMeasureText(
  checked: Checked,
  measuring: Measuring,
  system: UnitSystem,
  paint: Paint,
): string {
  const name = checked.line.name === "" ? "This plan" : checked.line.name;
  const { sure, close } = measuring;
  const head = paint(`${name}: what to measure again`, "title");
  if (close.length === 0) return `${head}\n${writeNothingClose(checked, sure)}\n`;
  const all = sure + close.length;
  const sections = [
    `${head}\n${close.length} of ${all} verdicts ${close.length === 1 ? "is a close call" : "are close calls"}.`,
    `${paint("Worth measuring, the most first", "title")}\n${writeMeasuring(measuring, system)
      .map((line) => `  ${line}`)
      .join("\n")}`,
    closeSection(close, system, paint),
  ];
  return `${sections.join("\n\n")}\n`;
}

const writeNothingClose = ({ drinkers }: Checked, sure: number): string => {
  if (drinkers.length === 0) return "This plan has no drinkers yet.";
  if (sure === 0) return "No plans were tried beside this one: how sure its verdicts are is open.";
  return "Nothing: every verdict is sure with the measurements as they are.";
};

function closeSection(close: readonly CloseCall[], system: UnitSystem, paint: Paint): string {
  const lines = close.map(
    (one) =>
      `  ${one.drinker} (${one.verdict}, else ${one.otherwise}; ${Math.floor(100 * one.share)} % agree): ${writeRemedy(one, system)} ${writeSways(one, system)}`,
  );
  return `${paint("Close calls", "title")}\n${lines.map((line) => line.trimEnd()).join("\n")}`;
}
