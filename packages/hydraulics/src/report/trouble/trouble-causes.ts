import type { CauseCode } from "../../judge/trouble/cause.js";
import type { Severity } from "../../judge/trouble/trial.js";
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

const causeWords = (cause: NamedCause, system: UnitSystem): string =>
  WORDS[cause.code]({ ...cause.severity, where: placeWords(cause), cause, system });

/** What a cause is told with: its severity, where it sits, and in which units. */
interface Told extends Severity {
  readonly where: string;
  readonly cause: NamedCause;
  readonly system: UnitSystem;
}

/** By cause, what is wrong. */
const WORDS: Readonly<Record<CauseCode, (told: Told) => string>> = {
  asDesigned: () => "Nothing is broken: the plan itself does this",
  waterLow: ({ where, below, system }) =>
    `${where} holds less water than thought${below === undefined ? "" : `, perhaps ${lengthWords(below, system)} less`}`,
  moreDrunk: () => "The birds drink more than the plan says: it is hotter, or there are more of them",
  lessDrunk: () =>
    "The birds drink less than the plan says: it is cooler, they are fewer, ill, or drink elsewhere",
  givesLessThanThought: ({ where, openShare }) =>
    `The drinkers of ${where} give less than the plan takes them to${share(openShare)}`,
  sealsWorn: ({ where }) => `The seals of ${where} no longer hold: worn, or grit under them`,
  drinkerStuckOpen: ({ where }) => `${where} is stuck open and runs`,
  drinkerBlocked: ({ where, openShare }) =>
    `${where} is blocked${openShare === undefined || openShare === 0 ? "" : " in part"}: slime, grit or a bent pin`,
  runBlocked: ({ where, openShare, along, cause, system }) =>
    `Something sits in the pipe of ${where}${alongWords(cause, along, system)}${openShare === undefined || openShare === 0 ? ", and lets nothing through" : ", and lets little through"}`,
  tapShut: ({ where }) => `The tap of ${where} is shut`,
  tapOpen: ({ where }) => `The tap of ${where} stands open, where the plan has it shut`,
  jointApart: ({ where }) => `The pipe is apart, or a cap is off, at ${where}`,
  airLocked: ({ where, airHead, system }) =>
    `Air is caught beyond ${where}${airHead === undefined ? "" : `: a column of ${writeHead(airHead, system)}`}`,
  sagHoldsAir: ({ where, airHead, system }) =>
    `The pipe of ${where} hangs through and keeps air${airHead === undefined ? "" : `, about ${writeHead(airHead, system)} of it`}`,
  ventBlocked: ({ where }) => `No air gets into ${where}: its vent is blocked`,
  lidOff: ({ where }) => `The lid of ${where} is off, or leaks air`,
  floatStuckOpen: ({ where }) => `The float of ${where} hangs low: it stands to the brim and runs over`,
  cupTipped: ({ where }) => `The cup of ${where} hangs askew: its water runs away over one side`,
  floatStuckShut: ({ where }) => `The float of ${where} hangs high, or its valve is blocked`,
  feedStuckOpen: ({ where }) => `The float valve that fills ${where} stands open: it runs over`,
  feedStuckShut: ({ where }) => `The float valve that fills ${where} lets nothing in`,
  regulatorGone: ({ where }) =>
    `The regulator of ${where} no longer holds back: its outlet has the whole head`,
  regulatorShut: ({ where }) => `The regulator of ${where} lets nothing through`,
  oneWayShut: ({ where }) => `The one-way valve of ${where} lets nothing through`,
  notRefilled: ({ where }) => `${where} was not filled: a round missed, a hose shut off`,
  somethingElse: () => "Something else: none of those tried, or more of them at once",
};

/** One place by its name; of several, that it is one of them. */
function placeWords({ places }: NamedCause): string {
  return places.length < 2 ? places.join("") : `one of ${writeNames(places)}`;
}

const lengthWords = (metres: number, system: UnitSystem) => writeQuantity(metres, "length", system, 3);

const share = (openShare: number | undefined) =>
  openShare === undefined ? "" : `, perhaps ${Math.round(openShare * 100)} % of it`;

function alongWords({ places }: NamedCause, along: number | undefined, system: UnitSystem): string {
  if (along === undefined || places.length > 1) return "";
  return along <= 0 ? ", at its start" : ` about ${lengthWords(along, system)} along`;
}
