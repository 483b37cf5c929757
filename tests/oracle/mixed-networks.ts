import { SEGMENT_KIND } from "../../packages/hydraulics/src/model/line.js";
import { randomFrom } from "../../packages/hydraulics/src/numerics/random.js";
import { FRICTION_LAWS, type FrictionLaw } from "../../packages/hydraulics/src/solve/solution.js";
import { fittingAtBore, fittingById } from "../../packages/hydraulics/src/tables/fittings.js";
import { type DrawnNetwork, drawNetwork } from "./drawn-networks.js";

/** Our kinds of fittings by the names the fluids library gives the same rows of the same paper. */
const FITTINGS: Readonly<Record<string, string>> = {
  "elbow-90": "Elbow, 90°, Standard (R/D = 1), Screwed",
  "elbow-90-long": "Elbow, 90°, Long-radius (R/D = 1.5), All types",
  "elbow-90-mitred": "Elbow, 90°, Mitered (R/D = 1.5), 1 weld (90° angle)",
  "elbow-45": "Elbow, 45°, Standard (R/D = 1), All types",
  "elbow-45-mitred": "Elbow, 45°, Mitered (R/D=1.5), 1 weld (45° angle)",
  "tee-run": "Tee, Run, Screwed",
  "tee-run-tapped": "Tee, Tee, Stub-in type branch",
  "tee-branch": "Elbow, Used as, Standard, Screwed",
  "gate-valve": "Valve, Gate, Full line size, Beta = 1",
  "ball-valve-reduced": "Valve, Ball, Reduced trim, Beta = 0.9",
  "globe-valve": "Valve, Globe, Standard",
  "angle-valve": "Valve, Globe, Angle or Y-type",
  "diaphragm-valve": "Valve, Diaphragm, Dam type",
  "check-valve": "Valve, Check, Swing",
  "check-valve-lift": "Valve, Check, Lift",
  "check-valve-disk": "Valve, Check, Tilting-disc",
};

/** What a network may be made of; each is counted by itself in the table. */
export const MIXED_FEATURES = [
  "a tree",
  "rings",
  "two sources",
  "shut taps",
  "one-way valves",
  "regulators",
  "named fittings",
  "nobody drinks",
  "everybody drinks",
  "some drink",
  ...FRICTION_LAWS,
] as const;
export type MixedFeature = (typeof MIXED_FEATURES)[number];

export interface MixedNetwork {
  readonly seed: number;
  readonly drawn: DrawnNetwork;
  readonly friction: FrictionLaw;
  readonly features: ReadonlySet<MixedFeature>;
  /** Segments with a fitting of the tables, by the name the other library knows it by. */
  readonly fittings: ReadonlyMap<number, string>;
}

/** A line of 6 to 40 drinkers with features mixed by number: same number, same line. */
export function drawMixed(seed: number): MixedNetwork {
  // Away from the stream that draws the line itself.
  const { uniform, integerBelow } = randomFrom(seed + 7_000_000);
  const chance = (share: number) => uniform() < share;
  const between = (low: number, high: number) => low + (high - low) * uniform();
  const friction = FRICTION_LAWS[seed % FRICTION_LAWS.length]!;

  const branches = integerBelow(5);
  const perRun = (branches === 0 ? 6 : 3) + integerBelow(6);
  const chords = chance(0.45) ? 1 + integerBelow(3) : 0;
  const regulators = branches > 0 && chance(0.35) ? 1 + integerBelow(branches) : 0;
  const secondSource = chance(0.35);
  const shutTaps = chance(0.35) ? 1 + integerBelow(3) : 0;
  const oneWay = chance(0.35);
  const idleShare = chance(0.06) ? 1 : chance(0.2) ? 0 : between(0.1, 0.9);
  const drawn = drawNetwork(seed, {
    drinkers: perRun * (branches + 1),
    branches,
    chords,
    secondSource,
    ...(chance(0.3) && { secondBelow: between(0.3, 0.8) }),
    shutTaps,
    oneWay,
    regulators: { count: regulators, setting: between(0.05, 1.2) },
    idleShare,
  });
  const fittings = chance(0.6) ? fitOut(drawn, { chance, integerBelow }) : new Map<number, string>();
  return { seed, drawn, friction, fittings, features: featuresOf(drawn, friction, fittings) };
}

/** Puts fittings of the tables on about a third of the pipes. */
function fitOut(
  { parts }: DrawnNetwork,
  draw: { chance(share: number): boolean; integerBelow(count: number): number },
): Map<number, string> {
  const kinds = Object.entries(FITTINGS);
  const fitted = new Map<number, string>();
  for (const [s, pipe] of parts.pipes.entries()) {
    if ((pipe.kind ?? SEGMENT_KIND.pipe) !== SEGMENT_KIND.pipe || !draw.chance(0.35)) continue;
    const [id, theirs] = kinds[draw.integerBelow(kinds.length)]!;
    const { k1, kInfinity } = fittingAtBore(fittingById(id)!, pipe.bore!);
    Object.assign(pipe, { k1, kInfinity });
    fitted.set(s, theirs);
  }
  return fitted;
}

/** What is in the line as it was drawn: a ring that came to nothing is none. */
function featuresOf(
  { parts, atWork }: DrawnNetwork,
  friction: FrictionLaw,
  fittings: ReadonlyMap<number, string>,
): Set<MixedFeature> {
  const has = (wanted: number) => parts.pipes.some(({ kind }) => kind === wanted);
  const rings = parts.pipes.length - (parts.heights.length - 1);
  const drinking = atWork.filter((one) => one).length;
  const found: [MixedFeature, boolean][] = [
    ["a tree", rings === 0],
    ["rings", rings > 0],
    ["two sources", parts.sources.length > 1],
    ["shut taps", parts.pipes.some(({ shut }) => shut === true)],
    ["one-way valves", has(SEGMENT_KIND.oneWay)],
    ["regulators", has(SEGMENT_KIND.regulator)],
    ["named fittings", fittings.size > 0],
    ["nobody drinks", drinking === 0],
    ["everybody drinks", drinking === atWork.length],
    ["some drink", drinking > 0 && drinking < atWork.length],
    [friction, true],
  ];
  return new Set(found.flatMap(([feature, is]) => (is ? [feature] : [])));
}
