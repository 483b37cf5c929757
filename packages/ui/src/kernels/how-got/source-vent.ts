import { AIR_DENSITY, DISCHARGE_COEFFICIENT, GRAVITY, VENT_SHARE } from "@headfall/hydraulics";
import { applied, constant, difference, PI, product, quotient, type Term, term } from "./expression.js";
import { bare, type Figures, percent } from "./figures.js";
import { type HowGot, type Step, soundSteps, stepOf } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import { alwaysValid } from "./validity.js";

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
