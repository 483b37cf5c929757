import {
  capacityOfVessel,
  GRAVITY,
  type MomentName,
  type Source,
  STANDARD_ATMOSPHERE,
  volumeAtLevel,
} from "@headfall/hydraulics";
import { applied, difference, product, quotient, sum, term } from "./expression.js";
import { AT_MOMENT } from "./figures.js";
import { type HowGot, type Step, soundSteps, stepOf } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import { alwaysValid, validityOfVessel } from "./validity.js";

const LEVEL_AT: Readonly<Record<MomentName, keyof Source["levels"]>> = {
  fullIdle: "full",
  fullBusiest: "full",
  lowestBusiest: "lowest",
  ordinary: "ordinary",
};
const LEVEL_WORDS = {
  full: "water when full",
  lowest: "lowest usable water",
  ordinary: "water in an ordinary hour",
};

/** Height of the water's pressure surface in a source at a moment: what its line feels. */
export function howSourceSurface(request: HowRequest, source: number, moment: MomentName): HowGot {
  const { checked, figures } = request;
  const { id, vent, shape, levels } = checked.line.sources[source]!;
  return {
    title: `Surface of ${quoted(id)}, ${AT_MOMENT[moment]}`,
    result: figures.length(checked.sources[source]!.surface[moment]),
    steps: soundSteps(...surfaceSteps(request, source, moment)),
    valid: [validityOfVessel(shape, levels[LEVEL_AT[moment]], figures), VENT_VALID[vent.kind]],
    notes: [
      ...(vent.kind === "airTube"
        ? ["At the foot of the air tube the pressure is the air's, whatever stands above it."]
        : []),
      ...(vent.kind === "sealed"
        ? [
            "Sealed: as water leaves, the air above it thins and holds it back. Once nothing reaches the lowest drinker it thins no further.",
          ]
        : []),
      "Above the ground at the first source.",
    ],
    sources: vent.kind === "airTube" ? ["mccarthy-1934"] : ["closed-form"],
  };
}

const VENT_VALID = {
  open: alwaysValid("An open surface", "with a vent that passes the draw"),
  airTube: alwaysValid(
    "An air tube",
    "with no other way in for air; its bubbles make the head pulse a little",
  ),
  sealed: alwaysValid("Boyle's law", "for a draw so slow that the air keeps its temperature"),
} as const;

function surfaceSteps(request: HowRequest, source: number, moment: MomentName): Step[] {
  const { checked, figures } = request;
  const { ground, stand, levels, vent } = checked.line.sources[source]!;
  const level = levels[LEVEL_AT[moment]];
  const foot = vent.kind === "airTube" ? vent.foot : 0;
  const write = figures.alike(ground, stand, level, foot);
  const water = term(LEVEL_WORDS[LEVEL_AT[moment]], level, write(level));
  const under = [term("ground", ground, write(ground)), term("stand", stand, write(stand))];
  if (vent.kind === "airTube")
    return [
      stepOf(
        "surface",
        sum(...under, applied("min", water, term("foot of the air tube", foot, write(foot)))),
        write,
      ),
    ];
  if (vent.kind === "sealed" && LEVEL_AT[moment] !== "full") return sealedSteps(request, source, moment);
  return [stepOf("surface", sum(...under, water), write)];
}

/** The level less what the thinned air holds back, but no lower than the lowest drinker. */
function sealedSteps({ checked, figures }: HowRequest, source: number, moment: MomentName): Step[] {
  const { line } = checked;
  const { base, levels, shape } = line.sources[source]!;
  const level = levels[LEVEL_AT[moment]];
  const full = volumeAtLevel(shape, levels.full);
  const air = capacityOfVessel(shape) - full;
  const drawn = Math.max(0, full - volumeAtLevel(shape, level));
  const atmosphere = STANDARD_ATMOSPHERE / (line.water.density * GRAVITY);
  const held = air <= 0 ? Number.POSITIVE_INFINITY : (atmosphere * drawn) / (air + drawn);
  const floor = Math.min(
    base + level,
    line.drinkers.height.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY),
  );
  const write = figures.alike(base, level, floor, Number.isFinite(held) ? held : 0);
  const lowest = term("lowest drinker", floor, write(floor));
  if (!Number.isFinite(held)) return [stepOf("surface", lowest, write)];
  const volume = figures.volumeIn;
  const surface = difference(
    sum(term("inside bottom", base, write(base)), term(LEVEL_WORDS[LEVEL_AT[moment]], level, write(level))),
    term("held back by thin air", held, write(held)),
  );
  const atmosphereTerm = term("p₀/(ρ g)", atmosphere, figures.lengthIn(atmosphere));
  const [drawnTerm, airTerm] = [
    term("water drawn", drawn, volume(drawn)),
    term("air when full", air, volume(air)),
  ];
  return [
    stepOf("surface", Number.isFinite(floor) ? applied("max", surface, lowest) : surface, write),
    stepOf("held back", quotient(product(atmosphereTerm, drawnTerm), sum(airTerm, drawnTerm)), write),
  ];
}
