import { type RainSupply, writeDay } from "@headfall/hydraulics";
import { deepestStretch } from "../rain/dry-stretch.js";
import { difference, term } from "./expression.js";
import { type HowGot, soundSteps, stepOf } from "./how-got.js";
import type { HowRequest } from "./request.js";

export const DRAWN_FIRST =
  "Drawn before the day's rain: Y = min(D, V), then V' = min(V + Q − Y, S − Y). What is given is understated a little.";
export const LETTERS =
  "Y what birds get in a day, D what they want, V what is in the vessel, Q what the roof brings, S what the vessel can give when full.";

/** Daily steps; the published rules of release. */
export const DAILY = {
  law: "A balance day by day",
  holds:
    "vessels that hold more than a day or two of what is drunk; snow is taken as rain, evaporation and leaks are left out",
  here: "",
  isInside: true,
};
/** The sequent peak, by the dry stretch it comes from. */
export function howNeverFails({ figures }: HowRequest, supply: RainSupply): HowGot {
  const stretch = deepestStretch(supply.inflow, supply.demand);
  const on = (t: number) => writeDay(supply.firstDay + t);
  return {
    title: "Size that never fails, the day's rain counted",
    result: supply.neverFails === undefined ? "no size lasts" : figures.volume(supply.neverFails),
    steps:
      supply.neverFails === undefined || stretch === undefined
        ? []
        : soundSteps(
            stepOf(
              "S",
              difference(
                term("drunk", stretch.drawn, figures.volumeIn(stretch.drawn)),
                term("came in", stretch.cameIn, figures.volumeIn(stretch.cameIn)),
              ),
              figures.volumeIn,
            ),
          ),
    valid: [
      {
        law: "The sequent peak",
        holds: "vessels that begin full, through rain as it fell in this record",
        here: "",
        isInside: true,
      },
    ],
    notes: [
      ...(stretch === undefined
        ? ["An endless vessel would never be drawn down."]
        : [`The hardest stretch: ${stretch.days} days from ${on(stretch.from)} to ${on(stretch.to)}.`]),
      "K' = max(0, K + D − Q) from day to day, through the record twice; S is the greatest K. K is how far an endless vessel is drawn down.",
      ...(supply.neverFails === undefined
        ? ["More is drunk over the whole record than the roof brings."]
        : []),
    ],
    sources: ["rippl-1883"],
  };
}

/** What was found by going through the record again and again. */
export function howHalved({ figures }: HowRequest, supply: RainSupply, title: string): HowGot {
  const isRoof = title.startsWith("Roof");
  const { neverFailsDrawnFirst: size, roofNeeded } = supply;
  const result = isRoof
    ? roofNeeded === undefined
      ? "no roof is large enough"
      : figures.area(roofNeeded)
    : size === undefined
      ? "no size lasts"
      : figures.volume(size);
  return {
    title,
    result,
    steps: [],
    valid: [DAILY],
    notes: [
      `Found by halving: the whole record is gone through with one ${isRoof ? "roof" : "size"} after another, begun full, until the least without a short day is known to ${isRoof ? "a thousandth" : "a hundredth of a litre"}.`,
      DRAWN_FIRST,
      LETTERS,
    ],
    sources: ["jenkins-1978"],
  };
}
