import { DISCHARGE_COEFFICIENT, DOWNPOUR, GRAVITY, type RainSupply, writeRain } from "@headfall/hydraulics";
import { applied, constant, difference, PI, power, product, quotient, term } from "./expression.js";
import { bare } from "./figures.js";
import { type HowGot, soundSteps, stepOf } from "./how-got.js";
import type { HowRequest } from "./request.js";
import type { RainFigure } from "./subject.js";

/** What a roof sheds in a downpour, what the overflow passes of it, and the wettest day. */
export function howOverflow({ figures }: HowRequest, supply: RainSupply, what: RainFigure): HowGot {
  const { overflow, roof } = supply;
  const { diameter, passes, downpour, needed, wettest, wettestOver } = overflow;
  const depth = (metres: number) => writeRain(metres, figures.system);
  const area = term("A", roof.area, figures.area(roof.area));
  const bore = (value: number) => term("d", value, figures.lengthIn(value));
  const passing = (value: number) =>
    product(
      term("C", DISCHARGE_COEFFICIENT.sharp, bare(DISCHARGE_COEFFICIENT.sharp)),
      quotient(PI, constant(4)),
      power(bore(value), 2),
      applied("√", product(term("g", GRAVITY, figures.gravity(GRAVITY)), bore(value))),
    );
  const shed = stepOf(
    "downpour",
    product(area, term("in an hour", DOWNPOUR, `${depth(DOWNPOUR * 3600)}/h`)),
    figures.flowIn,
  );
  const through = stepOf("passes", passing(diameter), figures.flowIn);
  const fits = stepOf("passes", passing(needed), figures.flowIn);
  const ran = stepOf(
    "at most",
    difference(
      product(
        term("c", roof.runoff, `${Number((100 * roof.runoff).toPrecision(3))} %`),
        area,
        difference(term("P", wettest, depth(wettest)), term("w", roof.wetting, depth(roof.wetting))),
      ),
      term("kept by the diverter", roof.firstFlush, figures.volumeIn(roof.firstFlush)),
    ),
    figures.volumeIn,
  );
  const told = {
    downpour: { title: "Shed in a downpour", result: figures.flow(downpour), steps: [shed] },
    passes: { title: "What the overflow passes", result: figures.flow(passes), steps: [through] },
    overflowNeeded: {
      title: "Least overflow for a downpour",
      result: figures.length(needed),
      steps: [fits, shed],
    },
    wettestOver: {
      title: "Through or over on the wettest day",
      result: figures.volume(wettestOver),
      steps: wettestOver > 0 ? [ran] : [],
    },
  }[what as "downpour" | "passes" | "overflowNeeded" | "wettestOver"];
  return { ...told, steps: soundSteps(...told.steps), ...(what === "wettestOver" ? WETTEST : DOWNPOURS) };
}

const DOWNPOURS = {
  valid: [
    {
      law: "A sharp-edged opening with half its bore of water over its middle",
      holds: "an overflow straight through the wall; a long, bent or dirty pipe passes less",
      here: "",
      isInside: true,
    },
  ],
  notes: [
    "A downpour of 100 mm in an hour is common practice, no source, and not of your place: local tables of rain decide. All that falls on the roof has to go through the overflow.",
  ],
  sources: ["common-practice", "closed-form"],
};

const WETTEST = {
  valid: [
    {
      law: "A share that runs off",
      holds: "daily rain; shares from tables are averages",
      here: "",
      isInside: true,
    },
  ],
  notes: ["As if the vessel were full in the morning and nobody drank: no more than this can run over."],
  sources: ["enhealth-2011"],
};
