import {
  AIR_DENSITY,
  capacityOfVessel,
  DISCHARGE_COEFFICIENT,
  GRAVITY,
  LAW_WORDS,
  levelAtVolume,
  STANDARD_ATMOSPHERE,
  VENT_SHARE,
  volumeAtLevel,
} from "@headfall/hydraulics";
import {
  applied,
  constant,
  difference,
  PI,
  power,
  product,
  quotient,
  type Term,
  term,
} from "./expression.js";
import { bare, type Figures, percent } from "./figures.js";
import { type HowGot, type Step, soundSteps, stepOf } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import { alwaysValid, validityOfVessel } from "./validity.js";

/** The least vent that lets air in as fast as water leaves, at a hundredth of the head. */
export function howSourceVent(request: HowRequest, source: number): HowGot {
  const { checked, figures } = request;
  const { id, vent } = checked.line.sources[source]!;
  const { ventDiameterNeeded, ventDiameter } = checked.sources[source]!;
  return {
    title: `Vent that ${quoted(id)} needs`,
    result: ventDiameterNeeded === undefined ? "none" : figures.length(ventDiameterNeeded),
    steps: ventDiameterNeeded === undefined ? [] : soundSteps(...ventSteps(request, source)),
    valid: [
      alwaysValid(
        "Air through an opening",
        "for suction far below the pressure of the air; a screen or a long tube needs more",
      ),
    ],
    notes: [
      `May cost ${percent(VENT_SHARE)} of the head over the lowest drinker when the water is lowest: common practice, no source.`,
      ...(ventDiameterNeeded === undefined
        ? [
            vent.kind === "sealed"
              ? "It is sealed: no air comes in at all."
              : "Nothing is drawn, or no drinker hangs below its water.",
          ]
        : []),
      ...(ventDiameter === undefined ? [] : [`It has ${figures.length(ventDiameter)}.`]),
    ],
    sources: ["closed-form", "unwin-1911"],
  };
}

/** The vent passes the air at the speed that the head it may cost drives; that head is a share of the least there is. */
function ventSteps({ checked, figures }: HowRequest, source: number): Step[] {
  const { line } = checked;
  const { base, levels, outlet } = line.sources[source]!;
  const lowest = line.drinkers.height.reduce((least, height) => Math.min(least, height), base + outlet);
  const surface = base + levels.lowest;
  const allowed = VENT_SHARE * (surface - lowest);
  const { density } = line.water;
  const speed = Math.sqrt((2 * density * GRAVITY * allowed) / AIR_DENSITY);
  const draw = checked.sources[source]!.drawBusiest;
  const drawn = term("Q", draw, figures.flowIn(draw), { of: "sourceDraw", source, moment: "fullBusiest" });
  return [
    ventDiameterStep(drawn, speed, figures),
    airSpeedStep({ allowed, density }, figures),
    ventHeadStep({ surface, lowest, allowed }, figures),
  ];
}

const ventDiameterStep = (drawn: Term, speed: number, figures: Figures): Step =>
  stepOf(
    "d",
    applied(
      "√",
      quotient(
        product(4, drawn),
        product(
          PI,
          term("C", DISCHARGE_COEFFICIENT.sharp, bare(DISCHARGE_COEFFICIENT.sharp)),
          term("speed of the air", speed, figures.velocityIn(speed)),
        ),
      ),
    ),
    figures.lengthIn,
  );

const airSpeedStep = (
  { allowed, density }: { readonly allowed: number; readonly density: number },
  figures: Figures,
): Step =>
  stepOf(
    "speed of the air",
    applied(
      "√",
      quotient(
        product(
          2,
          term("ρ water", density, figures.density(density)),
          term("g", GRAVITY, figures.gravity(GRAVITY)),
          term("h allowed", allowed, figures.alike(allowed)(allowed)),
        ),
        term("ρ air", AIR_DENSITY, figures.density(AIR_DENSITY)),
      ),
    ),
    figures.velocityIn,
  );

function ventHeadStep(
  { surface, lowest, allowed }: Readonly<Record<"surface" | "lowest" | "allowed", number>>,
  figures: Figures,
): Step {
  const write = figures.alike(surface, lowest);
  const over = difference(
    term("lowest water", surface, write(surface)),
    term("lowest of drinkers and outlet", lowest, write(lowest)),
  );
  return stepOf("h allowed", product(constant(VENT_SHARE), over), figures.alike(allowed));
}

/** Water a sealed source gives before nothing reaches its lowest drinker. */
export function howSourceStall(request: HowRequest, source: number): HowGot {
  const { checked, figures } = request;
  const { id, shape, levels, vent } = checked.line.sources[source]!;
  const given = checked.sources[source]!.volumeBeforeStall;
  return {
    title: `Water that ${quoted(id)} gives before it stalls`,
    result: given === undefined ? "it does not stall" : figures.volume(given),
    steps:
      given === undefined || vent.kind !== "sealed" ? [] : soundSteps(...stallSteps(request, source, given)),
    valid: [
      alwaysValid("Boyle's law", "for a draw so slow that the air keeps its temperature"),
      validityOfVessel(shape, levels.full, figures),
    ],
    notes: [
      ...(given === undefined ? ["Air comes in as water leaves, so nothing holds it back."] : []),
      ...(given === 0
        ? [
            "It stalls at once: its water stands no higher than the lowest drinker, or there is no air in it to thin.",
          ]
        : []),
      ...(given !== undefined && given > 0
        ? [
            "When the water has sunk by what it gave, the thinned air holds back all the head that is left over the lowest drinker; or it is drawn down to its lowest level first.",
          ]
        : []),
    ],
    sources: ["closed-form"],
  };
}

function stallSteps(request: HowRequest, source: number, given: number): Step[] {
  const { checked, figures } = request;
  const { line } = checked;
  const { base, levels, shape } = line.sources[source]!;
  const { volumeUsable, volumeFull } = checked.sources[source]!;
  if (given <= 0) return [];
  const usable = term("water that can be used", volumeUsable, figures.volumeIn(volumeUsable), {
    of: "sourceVolume",
    source,
    which: "usable",
  });
  if (Math.abs(given - volumeUsable) <= 1e-9 * volumeUsable)
    return [stepOf("given", usable, figures.volumeIn)];
  const air = capacityOfVessel(shape) - volumeAtLevel(shape, levels.full);
  const surface = base + levelAtVolume(shape, volumeFull - given);
  const lowest = line.drinkers.height.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const atmosphere = STANDARD_ATMOSPHERE / (line.water.density * GRAVITY);
  const write = figures.alike(surface, lowest);
  const head = term("head left", surface - lowest, write(surface - lowest));
  return [
    stepOf(
      "given",
      quotient(
        product(term("air when full", air, figures.volumeIn(air)), head),
        difference(term("p₀/(ρ g)", atmosphere, figures.lengthIn(atmosphere)), head),
      ),
      figures.volumeIn,
    ),
    stepOf(
      "head left",
      difference(
        term("water by then", surface, write(surface)),
        term("lowest drinker", lowest, write(lowest)),
      ),
      write,
    ),
  ];
}

/** What the float valve of a header tank lets in while its supply is lowest. */
export function howSourceFeed(request: HowRequest, source: number): HowGot {
  const { checked, figures } = request;
  const { id } = checked.line.sources[source]!;
  const { feedFlow, feedKeepsUp, drawBusiest } = checked.sources[source]!;
  const byHazen = checked.solutions.lowestBusiest.hazenWilliams.feedFlow[source]!;
  return {
    title: `Flow that fills ${quoted(id)}`,
    result: feedFlow === undefined ? "nothing fills it" : figures.flow(feedFlow),
    steps: feedFlow === undefined || feedFlow <= 0 ? [] : soundSteps(feedStep(request, source)),
    valid: [alwaysValid("Flow through an opening", "for heads well above the size of the opening")],
    ...(feedFlow === undefined
      ? {}
      : {
          secondOpinion: {
            by: LAW_WORDS.hazenWilliams,
            result: figures.flow(byHazen),
            difference: figures.flowDifference(byHazen - feedFlow),
          },
        }),
    notes:
      feedFlow === undefined
        ? ["It is no header tank: people or rain fill it."]
        : [
            `With its float valve wide open, the water behind it lowest and the birds busiest, by ${LAW_WORDS.darcyWeisbach}.`,
            feedKeepsUp === true
              ? `It keeps up with the ${figures.flow(drawBusiest)} that is drawn.`
              : `It falls behind the ${figures.flow(drawBusiest)} that is drawn.`,
          ],
    sources: ["unwin-1911"],
  };
}

function feedStep({ checked, figures }: HowRequest, source: number): Step {
  const feed = checked.line.sources[source]!.feed!;
  const grade = checked.solutions.lowestBusiest.darcyWeisbach.head[feed.point]!;
  const coefficient = feed.coefficient * Math.sqrt(figures.unitHead);
  const unit = figures.system === "us" ? "1 ft" : "1 m";
  const write = figures.alike(grade, feed.height);
  const spare = difference(
    term("grade line before the valve", grade, write(grade)),
    term("height it comes out at", feed.height, write(feed.height)),
  );
  return stepOf(
    "flow",
    product(
      term(`flow of the open valve at ${unit}`, coefficient, figures.flowIn(coefficient)),
      power(quotient(spare, constant(figures.unitHead, unit)), 0.5),
    ),
    figures.flowIn,
  );
}
