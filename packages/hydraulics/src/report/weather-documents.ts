import type { Frost } from "../judge/frost-result.js";
import type { UnitSystem } from "../units/quantity.js";
import {
  FROST_CAUTIONS,
  writeFrostAnswer,
  writeFrostHolding,
  writeFrostRefills,
  writeFrostTodo,
} from "./frost-sentences.js";

/** A night of frost as a plain document, SI throughout; a time that never comes is null. */
export function writeFrostDocument(name: string, frost: Frost, system: UnitSystem) {
  const { parts, refills, ...rest } = frost;
  return {
    format: "headfall frost",
    version: 1,
    plan: { name },
    answer: writeFrostAnswer(frost),
    ...rest,
    parts: parts.map((part) => ({ ...part, holding: writeFrostHolding(part, system) })),
    refills: refills.map((one) => ({ ...one, sentence: writeFrostRefills(one) })),
    todo: writeFrostTodo(frost, system),
    cautions: FROST_CAUTIONS,
  };
}
