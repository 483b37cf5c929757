import type { CauseCode } from "../../judge/trouble/cause.js";
import type { NamedCause } from "../../judge/trouble/trouble-result.js";

/**
 * What to do about a likely cause, as sentences; cautions among them where the work can hurt.
 *
 * @example writeTodo(trouble.likely[0])[0]   // "Shut the tap at the vessel, push the joint at that place ..."
 */
export const writeTodo = (cause: NamedCause): string[] =>
  WHAT_TO_DO[cause.code](cause.places.length === 1 ? cause.places[0] : THAT[cause.at]);

/** What stands for the place in what is to be done, while it is not known which of several it is. */
const THAT: Readonly<Record<NamedCause["at"], string>> = {
  drinker: "that drinker",
  group: "those drinkers",
  run: "that run",
  point: "that place",
  source: "that vessel",
  pen: "that pen",
  line: "the line",
};

const cleanIt = (where: string) =>
  `Shut the tap before ${where}, take it out, rinse it in clean water, work its pin, and put it back; a spare takes its place meanwhile.`;
const BREAKS = "Nobody works under a full vessel on an unproven stand";

const serveRegulator = (where: string) =>
  `Shut the tap before the regulator of ${where}, clean its strainer and seat, and set it again with a jar and a tape; drinkers behind it hold only so much head.`;

/** By cause, what to do there. */
const WHAT_TO_DO: Readonly<Record<CauseCode, (where: string) => string[]>> = {
  asDesigned: () => [
    "The check of the plan tells which drinkers starve, drip or are dry, when and why; a cure of it, what to change.",
  ],
  waterLow: (where) => [
    `Fill ${where}, or set how full it really is in the plan. How long it lasts, and where its level should be tomorrow, follow from the plan: the days it lasts, and its daily mark.`,
  ],
  moreDrunk: () => [
    "Count the birds and look at the thermometer; put both into the plan, and see again how long the water lasts. Much more or much less drunk than before is a matter for a vet.",
  ],
  lessDrunk: () => [
    "Look at the birds now, and work every drinker: birds that drink much less are ill or get no water. If neither is so, count them, look at the thermometer and for puddles, and put it into the plan. Ill birds are a matter for a vet.",
  ],
  givesLessThanThought: () => [
    `Hold a jug under one of them for a minute, and put what it gives into the plan (see "measure a drinker" in the guides).`,
  ],
  sealsWorn: (where) => [
    `Flush the run of ${where} from its far end, and watch again. If they still drip: new seals, or less head on them (a lower stand, a regulator); the check of the plan tells how much they have.`,
    "Change the wet litter: wet litter harms feet and lungs.",
  ],
  drinkerStuckOpen: (where) => [cleanIt(where), "Change the wet litter: wet litter harms feet and lungs."],
  drinkerBlocked: (where) => [cleanIt(where)],
  runBlocked: (where) => [
    `Look at strainer, tap and couplings at the start of ${where} first, then open its far end into a bucket and let it run; if little comes, open it in the middle and halve again.`,
    "In frost, thaw with warm hands or warm water, never with a flame.",
  ],
  tapShut: (where) => [`Open the tap of ${where}, and work a drinker behind it.`],
  tapOpen: (where) => [`Shut the tap of ${where}.`],
  jointApart: (where) => [
    `Shut the tap at the vessel, push the joint at ${where} together, clamp it, and fill the line again with its bleeds open. ${BREAKS}.`,
  ],
  airLocked: (where) => [
    `Open the bleed at ${where}, or the highest fitting there, until water comes without bubbles; where there is none, put one.`,
  ],
  sagHoldsAir: (where) => [
    `Lift and support the pipe of ${where} so that it falls or rises evenly, then let its far end run until no more bubbles come.`,
  ],
  ventBlocked: (where) => [
    `Take the lid off ${where}: if the drinkers give again, clean the vent and its screen, or give it a larger one. Keep a screen on it: insects and dirt.`,
  ],
  lidOff: (where) => [`Put the lid of ${where} on air-tight, and look at its seal.`],
  floatStuckOpen: (where) => [
    `Lift the float of ${where} by hand: if the water stops, clean the pivot and set the float; if not, clean or change the valve's seat.`,
  ],
  cupTipped: (where) => [
    `Hang ${where} upright and fasten it; change wet litter. If it runs on upright, its float hangs low.`,
  ],
  floatStuckShut: (where) => [
    `Press the float of ${where} down by hand: if water comes, clean its pivot; if not, clean the valve and the strainer before it.`,
  ],
  feedStuckOpen: (where) => [
    `Lift the float in ${where} by hand: if the water stops, clean its pivot; if not, clean or change the valve's seat.`,
  ],
  feedStuckShut: (where) => [
    `Press the float in ${where} down by hand: if water comes, clean its pivot; if not, look at the tap, the strainer and the water of what fills it.`,
  ],
  regulatorGone: (where) => [serveRegulator(where)],
  regulatorShut: (where) => [serveRegulator(where)],
  oneWayShut: (where) => [
    `Take the one-way valve of ${where} out, rinse it, and see which way its arrow points.`,
  ],
  notRefilled: (where) => [
    `Fill ${where} now. If a hose should: look at its tap, its float valve and the supply. Keep an air gap at a drinking supply.`,
  ],
  somethingElse: () => [
    "Take one more look, and tell it here; two faults at once show as signs that no single cause fits.",
  ],
};
