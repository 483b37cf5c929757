import { DEFAULTS } from "../../document/defaults.js";
import { readShare } from "../../document/read-share.js";
import type { Line } from "../../model/line.js";
import type { Crowd } from "../../simulate/crowd.js";
import { intakeSpread } from "../../simulate/crowd-numbers.js";
import { TAKEN_IN } from "../../simulate/crowd-want.js";
import type { Doubts } from "./doubts.js";

/**
 * What sampling varies besides heights, levels, bores and flows: two standard deviations each, as shares.
 *
 * sureShare       of the samples that must agree for a verdict to be sure
 * coefficient     Hazen-Williams C: one step of the usual values
 * fittings        loss coefficients of fittings: elbows are printed within 20 to 40 %
 * oneToTheNext    flow of one drinker of a batch against the next; common practice, no source
 * criticalLeast   least loss between laminar and turbulent, as a share of the turbulent one
 *
 * @source hydraulic-institute-edb, Table 32c, seen
 */
export const SAMPLED_DOUBTS = {
  sureShare: 0.95,
  coefficient: readShare(DEFAULTS.roughnessDoubt.typed) ?? 0,
  fittings: 0.3,
  oneToTheNext: 0.1,
  criticalLeast: 0.5,
} as const;

/** One thing in doubt, by what it is and the names the plan gives it. */
export type InputName =
  /** The height of a source, a point, an end of a run or a surveyed place. */
  | { readonly kind: "height"; readonly place: string }
  /** The water levels of a source, all together. */
  | { readonly kind: "level"; readonly source: string }
  /** The flow of a kind of drinker. */
  | { readonly kind: "flow"; readonly drinkers: string }
  | { readonly kind: "bore"; readonly run: string }
  /** What the birds of a pen drink. */
  | { readonly kind: "intake"; readonly pen: string }
  /** The share of a nipple's flow that a bird takes in, and with it how long it drinks. */
  | { readonly kind: "takenIn" }
  | { readonly kind: "roughness" }
  | { readonly kind: "fittings" };
export type InputKind = InputName["kind"];

/** In what the doubt of an input is told. */
export const DOUBT_UNIT: Readonly<Record<InputKind, "length" | "share">> = {
  height: "length",
  level: "length",
  bore: "length",
  flow: "share",
  intake: "share",
  takenIn: "share",
  roughness: "share",
  fittings: "share",
};

/** A measurement, and how far it may be off in its own unit. */
export interface DoubtedInput {
  readonly input: InputName;
  /** Two standard deviations: a length [m], or a share of it [-]. */
  readonly doubt: number;
}

/** A thing in doubt, as the sampling holds it. */
export interface Input extends DoubtedInput {
  /** What its draws hang on; no two inputs have the same. */
  readonly key: string;
  /** Position in `line.points`, `line.sources`, `line.runs`, among the crowd's pens; else 0. */
  readonly index: number;
  /** Factors at two standard deviations below and above, for a share. */
  readonly spread: Spread;
}

export interface Spread {
  readonly low: number;
  readonly high: number;
}

/** A factor whose two standard deviations are `low` and `high`. */
export const spreadBy = ({ low, high }: Spread, z: number): number =>
  z < 0 ? low ** (-z / 2) : high ** (z / 2);

const NO_SPREAD: Spread = { low: 1, high: 1 };
/** Those that bear on many drinkers come first: their samples are even together. */
const ORDER: readonly InputKind[] = [
  "level",
  "takenIn",
  "intake",
  "flow",
  "roughness",
  "fittings",
  "bore",
  "height",
];

/** Everything that may be other than the plan says and would change a verdict; what is in no doubt is left out. */
export function listInputs(line: Line, doubts: Doubts, crowd: Crowd | undefined): Input[] {
  const feeds = new Set(line.sources.map(({ point }) => line.points.id[point]));
  const weight = ({ input }: Input) =>
    2 * ORDER.indexOf(input.kind) - (input.kind === "height" && feeds.has(input.place) ? 1 : 0);
  return [
    ...lengthsIn(line, doubts),
    ...flowsIn(line),
    ...(crowd === undefined ? [] : birdsIn(crowd)),
    shareOf({ kind: "roughness" }, "", 0, between(SAMPLED_DOUBTS.coefficient)),
    shareOf({ kind: "fittings" }, "", 0, between(SAMPLED_DOUBTS.fittings)),
  ]
    .filter(({ doubt }) => doubt > 0)
    .sort((a, b) => weight(a) - weight(b) || (a.key < b.key ? -1 : 1));
}

const between = (share: number): Spread => ({ low: 1 / (1 + share), high: 1 + share });

const shareOf = (input: InputName, of: string, index: number, spread: Spread): Input => ({
  input,
  key: `${input.kind} ${of}`,
  index,
  spread,
  // 0.4 and not 0.3999999999999999.
  doubt: Number(Math.max(1 - spread.low, spread.high - 1).toPrecision(12)),
});

function lengthsIn(line: Line, doubts: Doubts): Input[] {
  const lengthOf = (input: InputName, of: string, index: number, doubt: number): Input => ({
    input,
    key: `${input.kind} ${of}`,
    index,
    spread: NO_SPREAD,
    doubt,
  });
  const met = new Map<string, number>();
  return [
    ...line.points.id.map((place, p) => {
      // Two places may share a name that was made from their distance.
      const before = met.get(place) ?? 0;
      met.set(place, before + 1);
      const of = before === 0 ? place : `${place} (${before})`;
      return lengthOf({ kind: "height", place }, of, p, doubts.heights[p]);
    }),
    ...line.sources.map(({ id }, s) => lengthOf({ kind: "level", source: id }, id, s, doubts.levels[s])),
    ...line.runs.map(({ id, boreLow, boreHigh }, r) =>
      lengthOf({ kind: "bore", run: id }, id, r, (boreHigh - boreLow) / 2),
    ),
  ];
}

/** One for each kind of drinker: all of a kind come from one maker's bench. */
function flowsIn({ drinkers }: Line): Input[] {
  const kinds = new Map(drinkers.groups.map((group) => [group.kindId, group]));
  return [...kinds].map(([kind, { kindName, flowLow, flowHigh }]) =>
    shareOf({ kind: "flow", drinkers: kindName }, kind, 0, { low: flowLow, high: flowHigh }),
  );
}

function birdsIn(crowd: Crowd): Input[] {
  const { share, least, most } = TAKEN_IN;
  return [
    ...crowd.pens.map((pen, p) =>
      shareOf({ kind: "intake", pen: pen.pen.id }, pen.pen.id, p, intakeSpread(pen)),
    ),
    shareOf({ kind: "takenIn" }, "", 0, { low: least / share, high: most / share }),
  ];
}
