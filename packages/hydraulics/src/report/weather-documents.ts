import type { Frost } from "../judge/frost-result.js";
import type { Heat } from "../judge/heat-result.js";
import type { UnitSystem } from "../units/quantity.js";
import {
  FROST_CAUTIONS,
  writeFrostAnswer,
  writeFrostHolding,
  writeFrostRefills,
  writeFrostTodo,
} from "./frost-sentences.js";
import {
  HEAT_CAUTIONS,
  writeHeatAnswer,
  writeHeatFlush,
  writeHeatLevers,
  writeSoftening,
} from "./heat-sentences.js";

/** A hot day as a plain document, SI throughout: °C, s, m³, W/m². */
export function writeHeatDocument(name: string, heat: Heat, system: UnitSystem) {
  const { parts, flushes, ...rest } = heat;
  return {
    format: "headfall heat",
    version: 1,
    plan: { name },
    answer: writeHeatAnswer(heat, system),
    ...rest,
    parts: parts.map((part) => ({ ...part, change: writeHeatLevers(part, system) })),
    flushes: flushes.map((flush) => ({ ...flush, sentence: writeHeatFlush(flush, system) })),
    cautions: [...writeSoftening(heat, system), ...HEAT_CAUTIONS],
  };
}

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
