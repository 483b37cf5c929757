import type { NamedCause } from "../../judge/trouble/trouble-result.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import { writeNames } from "../name-ranges.js";
import { writeHead } from "../words.js";

/**
 * What is likely wrong, in a sentence without its full stop; of several places, that it is one of them.
 *
 * @example writeCause(trouble.likely[0], "metric")   // "The pipe is apart, or a cap is off, at one of bucket and ..."
 */
export const writeCause = (cause: NamedCause, system: UnitSystem): string =>
  causeWords(cause, system).replace(/^one of /, "One of ");

function causeWords(cause: NamedCause, system: UnitSystem): string {
  const where = placeWords(cause);
  const length = (metres: number) => writeQuantity(metres, "length", system, 3);
  const { openShare, along, airHead, below } = cause.severity;
  switch (cause.code) {
    case "asDesigned":
      return "Nothing is broken: the plan itself does this";
    case "waterLow":
      return `${where} holds less water than thought${below === undefined ? "" : `, perhaps ${length(below)} less`}`;
    case "moreDrunk":
      return "The birds drink more than the plan says: it is hotter, or there are more of them";
    case "lessDrunk":
      return "The birds drink less than the plan says: it is cooler, they are fewer, ill, or drink elsewhere";
    case "givesLessThanThought":
      return `The drinkers of ${where} give less than the plan takes them to${share(openShare)}`;
    case "sealsWorn":
      return `The seals of ${where} no longer hold: worn, or grit under them`;
    case "drinkerStuckOpen":
      return `${where} is stuck open and runs`;
    case "drinkerBlocked":
      return `${where} is blocked${openShare === undefined || openShare === 0 ? "" : " in part"}: slime, grit or a bent pin`;
    case "runBlocked":
      return `Something sits in the pipe of ${where}${alongWords(cause, along, length)}${openShare === undefined || openShare === 0 ? ", and lets nothing through" : ", and lets little through"}`;
    case "tapShut":
      return `The tap of ${where} is shut`;
    case "tapOpen":
      return `The tap of ${where} stands open, where the plan has it shut`;
    case "jointApart":
      return `The pipe is apart, or a cap is off, at ${where}`;
    case "airLocked":
      return `Air is caught beyond ${where}${airHead === undefined ? "" : `: a column of ${writeHead(airHead, system)}`}`;
    case "sagHoldsAir":
      return `The pipe of ${where} hangs through and keeps air${airHead === undefined ? "" : `, about ${writeHead(airHead, system)} of it`}`;
    case "ventBlocked":
      return `No air gets into ${where}: its vent is blocked`;
    case "lidOff":
      return `The lid of ${where} is off, or leaks air`;
    case "floatStuckOpen":
      return `The float of ${where} hangs low: it stands to the brim and runs over`;
    case "cupTipped":
      return `The cup of ${where} hangs askew: its water runs away over one side`;
    case "floatStuckShut":
      return `The float of ${where} hangs high, or its valve is blocked`;
    case "feedStuckOpen":
      return `The float valve that fills ${where} stands open: it runs over`;
    case "feedStuckShut":
      return `The float valve that fills ${where} lets nothing in`;
    case "regulatorGone":
      return `The regulator of ${where} no longer holds back: its outlet has the whole head`;
    case "regulatorShut":
      return `The regulator of ${where} lets nothing through`;
    case "oneWayShut":
      return `The one-way valve of ${where} lets nothing through`;
    case "notRefilled":
      return `${where} was not filled: a round missed, a hose shut off`;
    case "somethingElse":
      return "Something else: none of those tried, or more of them at once";
  }
}

/** One place by its name; of several, that it is one of them. */
function placeWords({ places }: NamedCause): string {
  return places.length < 2 ? places.join("") : `one of ${writeNames(places)}`;
}

const share = (openShare: number | undefined) =>
  openShare === undefined ? "" : `, perhaps ${Math.round(openShare * 100)} % of it`;

function alongWords(
  { places }: NamedCause,
  along: number | undefined,
  length: (metres: number) => string,
): string {
  if (along === undefined || places.length > 1) return "";
  return along <= 0 ? ", at its start" : ` about ${length(along)} along`;
}
