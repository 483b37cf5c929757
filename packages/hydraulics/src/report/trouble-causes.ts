import type { LikelyCause } from "../judge/trouble/trouble-result.js";
import { type UnitSystem, writeQuantity } from "../units/quantity.js";
import { writeNames } from "./name-ranges.js";
import { writeHead } from "./words.js";

/** What is likely wrong, in a sentence without its full stop; of several places, that it is one of them. */
export const writeCause = (cause: LikelyCause, system: UnitSystem): string =>
  causeWords(cause, system).replace(/^one of /, "One of ");

function causeWords(cause: LikelyCause, system: UnitSystem): string {
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
      return `The float of ${where} hangs low, or the cup hangs askew: it runs over`;
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
      return "Something else: two things at once, or none of those tried";
  }
}

/** One place by its name; of several, that it is one of them. */
function placeWords({ places }: LikelyCause): string {
  return places.length < 2 ? places.join("") : `one of ${writeNames(places)}`;
}

/** What stands for the place in what is to be done, while it is not known which of several it is. */
const THAT: Readonly<Record<LikelyCause["at"], string>> = {
  drinker: "that drinker",
  group: "those drinkers",
  run: "that run",
  point: "that place",
  source: "that vessel",
  pen: "that pen",
  line: "the line",
};

const share = (openShare: number | undefined) =>
  openShare === undefined ? "" : `, perhaps ${Math.round(openShare * 100)} % of it`;

function alongWords(
  { places }: LikelyCause,
  along: number | undefined,
  length: (metres: number) => string,
): string {
  if (along === undefined || places.length > 1) return "";
  return along <= 0 ? ", at its start" : ` about ${length(along)} along`;
}

const cleanIt = (where: string) =>
  `Shut the tap before ${where}, take it out, rinse it in clean water, work its pin, and put it back; a spare takes its place meanwhile.`;
const BREAKS = "Nobody works under a full vessel on an unproven stand";

/** What to do about a likely cause, as sentences; cautions among them where the work can hurt. */
export function writeTodo(cause: LikelyCause): string[] {
  const where = cause.places.length === 1 ? cause.places[0] : THAT[cause.at];
  switch (cause.code) {
    case "asDesigned":
      return [
        "headfall check tells which drinkers starve, drip or are dry, when and why; headfall sizes what another pipe would do.",
      ];
    case "waterLow":
      return [
        `Fill ${where}, or set how full it really is in the plan. headfall lasts tells how long it lasts, headfall mark where the level should be tomorrow.`,
      ];
    case "moreDrunk":
      return [
        "Count the birds and look at the thermometer; put both into the plan and ask headfall lasts again. Much more or much less drunk than before is a matter for a vet.",
      ];
    case "lessDrunk":
      return [
        "Look at the birds now, and work every drinker: birds that drink much less are ill or get no water. If neither is so, count them, look at the thermometer and for puddles, and put it into the plan. Ill birds are a matter for a vet.",
      ];
    case "givesLessThanThought":
      return [
        `Hold a jug under one of them for a minute, and put what it gives into the plan (see "measure a drinker" in the guides).`,
      ];
    case "sealsWorn":
      return [
        `Flush the run of ${where} from its far end, and watch again. If they still drip: new seals, or less head on them (a lower stand, a regulator); headfall check tells how much they have.`,
        "Change the wet litter: wet litter harms feet and lungs.",
      ];
    case "drinkerStuckOpen":
      return [cleanIt(where), "Change the wet litter: wet litter harms feet and lungs."];
    case "drinkerBlocked":
      return [cleanIt(where)];
    case "runBlocked":
      return [
        `Look at strainer, tap and couplings at the start of ${where} first, then open its far end into a bucket and let it run; if little comes, open it in the middle and halve again.`,
        "In frost, thaw with warm hands or warm water, never with a flame.",
      ];
    case "tapShut":
      return [`Open the tap of ${where}, and work a drinker behind it.`];
    case "tapOpen":
      return [`Shut the tap of ${where}.`];
    case "jointApart":
      return [
        `Shut the tap at the vessel, push the joint at ${where} together, clamp it, and fill the line again with its bleeds open. ${BREAKS}.`,
      ];
    case "airLocked":
    case "sagHoldsAir":
      return [
        cause.code === "airLocked"
          ? `Open the bleed at ${where}, or the highest fitting there, until water comes without bubbles; where there is none, put one.`
          : `Lift and support the pipe of ${where} so that it falls or rises evenly, then let its far end run until no more bubbles come.`,
      ];
    case "ventBlocked":
      return [
        `Take the lid off ${where}: if the drinkers give again, clean the vent and its screen, or give it a larger one. Keep a screen on it: insects and dirt.`,
      ];
    case "lidOff":
      return [`Put the lid of ${where} on air-tight, and look at its seal.`];
    case "floatStuckOpen":
      return [
        `Hang ${where} upright, lift the float by hand: if the water stops, clean the pivot and set the float; if not, clean or change the valve's seat.`,
      ];
    case "floatStuckShut":
      return [
        `Press the float of ${where} down by hand: if water comes, clean its pivot; if not, clean the valve and the strainer before it.`,
      ];
    case "feedStuckOpen":
      return [
        `Lift the float in ${where} by hand: if the water stops, clean its pivot; if not, clean or change the valve's seat.`,
      ];
    case "feedStuckShut":
      return [
        `Press the float in ${where} down by hand: if water comes, clean its pivot; if not, look at the tap, the strainer and the water of what fills it.`,
      ];
    case "regulatorGone":
    case "regulatorShut":
      return [
        `Shut the tap before the regulator of ${where}, clean its strainer and seat, and set it again with a jar and a tape; drinkers behind it hold only so much head.`,
      ];
    case "oneWayShut":
      return [`Take the one-way valve of ${where} out, rinse it, and see which way its arrow points.`];
    case "notRefilled":
      return [
        `Fill ${where} now. If a hose should: look at its tap, its float valve and the supply. Keep an air gap at a drinking supply.`,
      ];
    case "somethingElse":
      return [
        "Take one more look, and tell it here; two faults at once show as signs that no single cause fits.",
      ];
  }
}
