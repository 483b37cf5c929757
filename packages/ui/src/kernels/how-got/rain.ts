import { type RainRun, type RainSupply, writeRain, writeRainRun } from "@headfall/hydraulics";
import { difference, type Expression, product, quotient, sum, term } from "./expression.js";
import { type HowGot, soundSteps, stepOf, untold } from "./how-got.js";
import { howOverflow } from "./rain-overflow.js";
import { DAILY, DRAWN_FIRST, howHalved, howNeverFails, LETTERS } from "./rain-sizes.js";
import { type HowRequest, quoted } from "./request.js";
import type { RainFigure } from "./subject.js";
import { alwaysValid } from "./validity.js";

const RAIN_FIRST =
  "Rain of the day counted: Y = min(D, V + Q), then V' = min(V + Q − Y, S). What is given is overstated a little.";
const BALANCE = alwaysValid(
  "A balance of water",
  "what came in and was there is given, runs over, or is left",
);

/** How a figure of a record of rain was got. */
export function howRain(request: HowRequest, what: RainFigure, index: number): HowGot {
  const supply = request.room.rain;
  const run = supply?.runs[index] ?? supply?.runs[0];
  if (supply === undefined || run === undefined) return UNTOLD;
  switch (what) {
    case "shortDays":
    case "inTime":
    case "inVolume":
      return howServed(request, supply, run, what);
    case "cameIn":
      return howCameIn(request, supply);
    case "balance":
      return howBalance(request, run);
    case "drunk":
      return howDrunk(request, supply);
    case "neverFails":
      return howNeverFails(request, supply);
    case "neverFailsDrawnFirst":
      return howHalved(request, supply, "Size that never fails, drawn before the day's rain");
    case "roofNeeded":
      return howHalved(request, supply, "Roof with which this vessel never fails");
    default:
      return howOverflow(request, supply, what);
  }
}

function howServed(
  { figures }: HowRequest,
  supply: RainSupply,
  run: RainRun,
  what: "shortDays" | "inTime" | "inVolume",
): HowGot {
  const { balance, inTime, inVolume } = run;
  const days = (value: number) => `${value} days`;
  const share = (value: number) => `${(100 * value).toFixed(1)} %`;
  const short = term("short", balance.shortDays, days(balance.shortDays), rainOf("shortDays", supply, run));
  const served: Record<"inTime" | "inVolume", Expression> = {
    inTime: difference(1, quotient(short, term("days", supply.days, days(supply.days)))),
    inVolume: quotient(
      term("given", balance.sums.given, figures.volumeIn(balance.sums.given)),
      term("wanted", balance.sums.wanted, figures.volumeIn(balance.sums.wanted)),
    ),
  };
  const titles = { shortDays: "Days short", inTime: "Days served", inVolume: "Water served" };
  const results = {
    shortDays: `${balance.shortDays} of ${supply.days} days`,
    inTime: share(inTime),
    inVolume: share(inVolume),
  };
  return {
    title: `${titles[what]}, ${writeRainRun(run)}`,
    result: results[what],
    steps: what === "shortDays" ? [] : soundSteps(stepOf(titles[what].toLowerCase(), served[what], share)),
    valid: [DAILY],
    notes: [
      balance.convention === "drawnFirst" ? DRAWN_FIRST : RAIN_FIRST,
      LETTERS,
      "A day is short when more than a millilitre of what is wanted is missing.",
      ...(supply.missingDays > 0
        ? [`${supply.missingDays} days whose rain is not known are taken as dry.`]
        : []),
    ],
    sources: ["jenkins-1978"],
  };
}

/** Q, on the wettest day of the record, and in all. */
function howCameIn({ figures }: HowRequest, supply: RainSupply): HowGot {
  const { roof, inflow, overflow } = supply;
  const all = inflow.reduce((total, one) => total + one, 0);
  const depth = (metres: number) => writeRain(metres, figures.system);
  const ran = product(
    term("c", roof.runoff, `${Number((100 * roof.runoff).toPrecision(3))} %`),
    term("A", roof.area, figures.area(roof.area)),
    difference(
      term("P", overflow.wettest, depth(overflow.wettest)),
      term("w", roof.wetting, depth(roof.wetting)),
    ),
  );
  return {
    title: "Came in off the roof",
    result: figures.volume(all),
    steps: soundSteps(stepOf("Q on the wettest day", ran, figures.volumeIn)),
    valid: [
      {
        law: "A share that runs off",
        holds:
          "daily rain; shares from tables are averages, and a roof sheds more or less of it by slope, wind and heat",
        here: "",
        isInside: true,
      },
    ],
    notes: [
      "c the share that runs off, A the roof seen from above, P the rain of the day, w what only wets it; nothing where P is below w. Reckoned for each day and added up.",
      roof.firstFlush > 0
        ? `Of each run of wet days the diverter keeps the first ${figures.volume(roof.firstFlush)}; it empties itself on a dry day.`
        : "No diverter keeps the first of it back.",
    ],
    sources: ["enhealth-2011"],
  };
}

/** start + in − given − over − left: nothing may be lost. */
function howBalance({ figures }: HowRequest, { balance: { sums }, ...run }: RainRun): HowGot {
  const volume = (symbol: string, value: number) => term(symbol, value, figures.volumeIn(value));
  return {
    title: `The balance of water, ${writeRainRun(run)}`,
    result: figures.volume(Math.abs(sums.start + sums.in - sums.given - sums.over - sums.end)),
    steps: soundSteps(
      stepOf(
        "unaccounted for",
        difference(
          sum(volume("there at the start", sums.start), volume("came in", sums.in)),
          sum(volume("given", sums.given), volume("ran over", sums.over), volume("left", sums.end)),
        ),
        (value) => figures.volumeIn(Math.abs(value)),
      ),
    ),
    valid: [BALANCE],
    notes: ["Each is a sum over all days, shown here to four figures; the table has them to the millilitre."],
    sources: ["closed-form"],
  };
}

function howDrunk({ figures }: HowRequest, supply: RainSupply): HowGot {
  const wanted = supply.demand.reduce((total, one) => total + one, 0);
  return {
    title: "Drunk on an average day",
    result: figures.volume(supply.demandMean),
    steps: soundSteps(
      stepOf(
        "a day",
        quotient(
          term("wanted", wanted, figures.volumeIn(wanted)),
          term("days", supply.days, `${supply.days}`),
        ),
        figures.volumeIn,
      ),
    ),
    valid: [alwaysValid("An average", "what is wanted on each day, added up and shared out")],
    notes: [
      `What the pens on ${quoted(supply.source)} drink, spill included, ${supply.figure === "size" ? "by the figure to size on" : "by the figure to expect"}; the flock stays as it is on the plan's day.`,
      supply.heatFrom === "record"
        ? "Each day has the heat of the record's own temperatures, to half a degree."
        : "Every day has the plan's weather: the record has no temperatures.",
    ],
    sources: ["cautious-defaults"],
  };
}

const rainOf = (what: RainFigure, { runs }: RainSupply, run: RainRun) =>
  ({ of: "rain", what, way: Math.max(0, runs.indexOf(run)) }) as const;

const UNTOLD = untold(
  "A figure of the rain",
  "There is no record of rain, or the plan has changed since; press the number again.",
);
