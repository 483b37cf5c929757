import {
  capacityOfVessel,
  GRAVITY,
  levelAtVolume,
  STANDARD_ATMOSPHERE,
  volumeAtLevel,
} from "@headfall/hydraulics";
import { difference, product, quotient, term } from "./expression.js";
import { type HowGot, type Step, soundSteps, stepOf } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import { alwaysValid, validityOfVessel } from "./validity.js";

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
