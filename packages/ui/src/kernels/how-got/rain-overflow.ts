import { DISCHARGE_COEFFICIENT, DOWNPOUR, GRAVITY, type RainSupply, writeRain } from "@headfall/hydraulics";
import { applied, constant, difference, PI, power, product, quotient, term } from "./expression.js";
import { bare, type Figures } from "./figures.js";
import { type HowGot, type Step, soundSteps, stepOf } from "./how-got.js";
import type { HowRequest } from "./request.js";
import type { RainFigure } from "./subject.js";

type OverflowFigure = Extract<RainFigure, "downpour" | "passes" | "overflowNeeded" | "wettestOver">;
type Told = Pick<HowGot, "title" | "result" | "steps">;

/** What a roof sheds in a downpour, what the overflow passes of it, and the wettest day. */
export function howOverflow({ figures }: HowRequest, supply: RainSupply, what: OverflowFigure): HowGot {
  const told = TOLD[what](supply, figures);
  return { ...told, steps: soundSteps(...told.steps), ...(what === "wettestOver" ? WETTEST : DOWNPOURS) };
}

const TOLD: Readonly<Record<OverflowFigure, (supply: RainSupply, figures: Figures) => Told>> = {
  downpour: (supply, figures) => ({
    title: "Shed in a downpour",
    result: figures.flow(supply.overflow.downpour),
    steps: [shedStep(supply, figures)],
  }),
  passes: ({ overflow }, figures) => ({
    title: "What the overflow passes",
    result: figures.flow(overflow.passes),
    steps: [passingStep(overflow.diameter, figures)],
  }),
  overflowNeeded: (supply, figures) => ({
    title: "Least overflow for a downpour",
    result: figures.length(supply.overflow.needed),
    steps: [passingStep(supply.overflow.needed, figures), shedStep(supply, figures)],
  }),
  wettestOver: (supply, figures) => ({
    title: "Through or over on the wettest day",
    result: figures.volume(supply.overflow.wettestOver),
    steps: supply.overflow.wettestOver > 0 ? [wettestStep(supply, figures)] : [],
  }),
};

const areaTerm = ({ roof }: RainSupply, figures: Figures) => term("A", roof.area, figures.area(roof.area));

const shedStep = (supply: RainSupply, figures: Figures): Step =>
  stepOf(
    "downpour",
    product(
      areaTerm(supply, figures),
      term("in an hour", DOWNPOUR, `${writeRain(DOWNPOUR * 3600, figures.system)}/h`),
    ),
    figures.flowIn,
  );

function passingStep(diameter: number, figures: Figures): Step {
  const bore = term("d", diameter, figures.lengthIn(diameter));
  const formula = product(
    term("C", DISCHARGE_COEFFICIENT.sharp, bare(DISCHARGE_COEFFICIENT.sharp)),
    quotient(PI, constant(4)),
    power(bore, 2),
    applied("√", product(term("g", GRAVITY, figures.gravity(GRAVITY)), bore)),
  );
  return stepOf("passes", formula, figures.flowIn);
}

function wettestStep(supply: RainSupply, figures: Figures): Step {
  const { roof, overflow } = supply;
  const depth = (metres: number) => writeRain(metres, figures.system);
  const ran = product(
    term("c", roof.runoff, `${Number((100 * roof.runoff).toPrecision(3))} %`),
    areaTerm(supply, figures),
    difference(
      term("P", overflow.wettest, depth(overflow.wettest)),
      term("w", roof.wetting, depth(roof.wetting)),
    ),
  );
  const kept = term("kept by the diverter", roof.firstFlush, figures.volumeIn(roof.firstFlush));
  return stepOf("at most", difference(ran, kept), figures.volumeIn);
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
