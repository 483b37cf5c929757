import {
  type WatererMishapResult,
  writeClock,
  writeWatererHarm,
  writeWatererMishap,
} from "@headfall/hydraulics";
import { difference, sum, term } from "./expression.js";
import { type HowGot, soundSteps, stepOf, untold } from "./how-got.js";
import type { HowRequest } from "./request.js";
import { alwaysValid } from "./validity.js";

const TITLE = "Until a bird goes without";

/** Until harm, of one mishap of a loose waterer: read from its pen's run through the days. */
export function howWatererMishap(request: HowRequest, row: number): HowGot {
  const { mishaps } = request.room;
  const worst = mishaps?.waterers[row]?.worst;
  if (mishaps === undefined || worst === undefined)
    return untold(TITLE, "The mishaps have been run anew since; press the number again.");
  return {
    title: `${TITLE}: ${writeWatererMishap(worst, request.figures.system)}`,
    result: writeWatererHarm(worst),
    steps: stepsOf(request, worst),
    valid: [alwaysValid("Still water", "surface tension holds 2 to 3 mm more, a bump takes more than that")],
    notes: [
      `Everything full at ${writeClock(mishaps.begins)} when it happens; nobody looks. What runs out is taken to be gone at once: minutes beside hours.`,
      worst.goesOnAtLine
        ? "The pen has drinkers of the line as well: its birds go on there, whatever happens to this one."
        : "Birds share out by room at the lip among those of the pen that hold water; they drink on the figure to size on, by the hours of their day. Without is when the last of them is empty.",
      `Counted are ${worst.birds} birds times the hours of light without, until somebody comes.`,
    ],
    sources: ["closed-form", "common-practice"],
  };
}

/** Each volume is its own sum over the run: that they balance is a test of it. */
function stepsOf({ figures }: HowRequest, { balance }: WatererMishapResult) {
  const volume = (symbol: string, value: number) => term(symbol, value, figures.volumeIn(value));
  return soundSteps(
    stepOf(
      "drunk, of all the pen's loose water",
      difference(
        sum(volume("at the start", balance.start), volume("poured in", balance.poured)),
        sum(volume("run out", balance.lost), volume("to the air", balance.air), volume("left", balance.left)),
      ),
      figures.volumeIn,
    ),
  );
}
