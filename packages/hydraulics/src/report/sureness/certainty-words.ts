import type { Agreement, Certainty } from "../../judge/check-result.js";
import { DOUBT_UNIT, type InputKind, type InputName } from "../../judge/sureness/doubted-inputs.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";

/** A thing in doubt, in words: "the height of wall". */
export function writeInput(input: InputName): string {
  switch (input.kind) {
    case "height":
      return `the height of ${input.place}`;
    case "level":
      return `the water level of ${input.source}`;
    case "flow":
      return `the flow of ${input.drinkers} (jug and watch)`;
    case "bore":
      return `the bore of ${input.run}`;
    case "intake":
      return `what the birds of ${input.pen} drink`;
    case "takenIn":
      return "how long a bird drinks at a nipple";
    case "roughness":
      return "the roughness of the pipe";
    case "fittings":
      return "the losses of the fittings";
  }
}

/** How far it may be off, either way. */
export function writeDoubt(kind: InputKind, doubt: number, system: UnitSystem): string {
  if (DOUBT_UNIT[kind] === "length") return writeQuantity(doubt, "length", system, 2);
  return `${Number((100 * doubt).toPrecision(2))} %`;
}

/**
 * How sure, and what to measure again if it is close; empty when that was not asked.
 *
 * @example writeCertainty({ kind: "sure", share: 0.98, samples: 200, isDecided: true })   // "Sure: so in 98 % of 200 plans that fit the measurements as well."
 */
export function writeCertainty(certainty: Certainty): string {
  if (certainty.kind === "notSampled") return "";
  if (certainty.kind === "sure")
    return `Sure${certainty.isDecided ? "" : ", though not beyond doubt"}: so in ${writeAgreement(certainty)}.`;
  const again =
    certainty.measureAgain === undefined
      ? "No single measurement decides it: the drinkers differ from one to the next."
      : `Measure ${writeInput(certainty.measureAgain.input)} again.`;
  return `A close call: so in only ${writeAgreement(certainty)} (else mostly ${certainty.otherwise}). ${again}`;
}

/** Rounded down, so that nothing short of all is called 100 %, nor a close call 95 %. */
const writeAgreement = ({ share, samples }: Agreement): string =>
  `${Math.floor(share * 100 + 1e-9)} % of ${samples} plans that fit the measurements as well`;
