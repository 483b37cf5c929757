import {
  type CountedFitting,
  type FrictionLaw,
  headLossDarcyWeisbach,
  headLossFitting,
  headLossHazenWilliams,
  LAW_WORDS,
  listFittings,
  type MomentName,
  SEGMENT_KIND,
} from "@headfall/hydraulics";
import { otherLaw } from "../other-law.js";
import { sum, term } from "./expression.js";
import { AT_MOMENT, bare } from "./figures.js";
import { frictionSteps } from "./friction-steps.js";
import { type HowGot, type Part, type Step, soundSteps, stepOf } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import { busiestState } from "./run-state.js";
import { alwaysValid, validityOfFriction } from "./validity.js";

/** One thing the water of a run passes, and the head it takes there. */
interface Loss {
  readonly name: string;
  readonly detail: string;
  readonly flow: number;
  readonly value: number;
  readonly isFitting: boolean;
  readonly source?: string;
}

/** Pieces told one by one; those of a longer run are gathered after so many. */
const MOST_PIECES = 24;

/** Head lost along a run by one law: piece by piece of its pipe, and fitting by fitting. */
export function howRunLoss(request: HowRequest, run: number, law: FrictionLaw, moment: MomentName): HowGot {
  const { checked, figures } = request;
  const losses = lossesOf(request, run, law, moment);
  const total = totalOf(losses);
  const second = totalOf(lossesOf(request, run, otherLaw(law), moment));
  const write = figures.alike(total, ...losses.map(({ value }) => value));
  const state = busiestState(request, run, moment, law);
  const flowing = state !== undefined && state.reynolds > 0 ? state : undefined;
  return {
    title: `Head lost along ${quoted(checked.line.runs[run]!.id)} by ${LAW_WORDS[law]}, ${AT_MOMENT[moment]}`,
    result: figures.head(total),
    steps: soundSteps(
      lossStep(losses, write),
      ...(flowing === undefined ? [] : frictionSteps(request, run, law, flowing, moment)),
    ),
    parts: {
      caption: "Piece by piece, each at its own flow",
      columns: ["What", "Flow", "Lost"],
      rows: gathered(losses).map((loss) => partOf(loss, figures.flowIn, write)),
    },
    valid:
      flowing === undefined
        ? [alwaysValid("No flow", "nothing is lost")]
        : [validityOfFriction(law, flowing, figures)],
    secondOpinion: {
      by: LAW_WORDS[otherLaw(law)],
      result: figures.head(second),
      difference: figures.headDifference(second - total),
    },
    notes: [
      "Each law's loss is at the flows that law itself leads to.",
      ...(inFittings(losses) > 0
        ? ["Published coefficients of fittings scatter by 20 to 50 %; sampling varies them."]
        : []),
      "Fittings of a run are counted on its first piece, where the whole flow still passes.",
    ],
    sources: sourcesOf(losses, law),
  };
}

function lossStep(losses: readonly Loss[], write: (value: number) => string): Step {
  const inPipe = totalOf(losses.filter(isPipe));
  const fittings = inFittings(losses);
  return stepOf(
    "h",
    sum(
      term("lost in the pipe", inPipe, write(inPipe)),
      term("lost in its fittings", fittings, write(fittings)),
    ),
    write,
  );
}

/** Who says so: of the law first, then of fittings in general, then of single ones. */
function sourcesOf(losses: readonly Loss[], law: FrictionLaw): readonly string[] {
  const ofLaw = law === "hazenWilliams" ? "hazen-williams-si" : "churchill-1977";
  const general = inFittings(losses) > 0 ? ["hooper-1981"] : [];
  const single = losses.flatMap(({ source }) =>
    source === undefined || source === "hooper-1981" ? [] : [source],
  );
  return [ofLaw, ...general, ...new Set(single)];
}

const inFittings = (losses: readonly Loss[]): number => totalOf(losses.filter((loss) => !isPipe(loss)));
const isPipe = ({ isFitting }: Loss): boolean => !isFitting;
const totalOf = (losses: readonly Loss[]): number => losses.reduce((all, { value }) => all + value, 0);

function partOf(
  { name, detail, flow, value, source }: Loss,
  writeFlow: (v: number) => string,
  write: (v: number) => string,
): Part {
  const what = detail === "" ? name : `${name}, ${detail}`;
  return { cells: [what, writeFlow(flow), write(value)], value, ...(source === undefined ? {} : { source }) };
}

/** Of many pieces the first ones and the fittings are told, the rest of the pipe in one. */
function gathered(losses: readonly Loss[]): readonly Loss[] {
  const pieces = losses.filter(isPipe);
  if (pieces.length <= MOST_PIECES) return losses;
  const told = new Set(pieces.slice(0, MOST_PIECES - 1));
  const rest = pieces.slice(MOST_PIECES - 1);
  const others: Loss = {
    ...rest[0]!,
    name: `the other ${rest.length} pieces of pipe`,
    detail: "",
    value: totalOf(rest),
  };
  return [...losses.filter((loss) => told.has(loss) || loss.isFitting), others];
}

/** All losses along a run by one law at a moment, in the order the water of its start passes them. */
function lossesOf(request: HowRequest, run: number, law: FrictionLaw, moment: MomentName): Loss[] {
  const { line, solutions } = request.checked;
  const { firstSegment, segmentCount } = line.runs[run]!;
  const { flow } = solutions[moment][law];
  const losses: Loss[] = [];
  const counted = countedFittings(request, run);
  for (let s = firstSegment; s < firstSegment + segmentCount; s++) {
    losses.push(pieceLoss(request, run, s, law, flow[s]!));
    losses.push(...fittingLosses(request, s, flow[s]!, counted));
  }
  return losses;
}

function pieceLoss(
  { checked: { line }, figures }: HowRequest,
  run: number,
  s: number,
  law: FrictionLaw,
  flow: number,
): Loss {
  const { segments, water, runs } = line;
  const [length, bore] = [segments.length[s]!, segments.bore[s]!];
  const loss = !Number.isFinite(flow)
    ? Number.NaN
    : law === "hazenWilliams"
      ? headLossHazenWilliams({ length, bore, coefficient: segments.hazenWilliams[s]! }, flow)
      : headLossDarcyWeisbach(
          { length, bore, roughness: segments.roughness[s]!, viscosity: water.viscosity },
          flow,
        );
  const { firstSegment, segmentCount, along } = runs[run]!;
  const at = s - (firstSegment + segmentCount - (along.length - 1));
  const isDevice = segments.kind[s] !== SEGMENT_KIND.pipe;
  return {
    name: isDevice ? "inside the device at its start" : "pipe",
    detail: isDevice ? "" : `${figures.length(along[at]!)} to ${figures.length(along[at + 1]!)}`,
    flow,
    value: Math.abs(loss),
    isFitting: false,
  };
}

/** What sits on a piece of the run, named one by one where the plan at hand is the plan that was checked. */
function fittingLosses(
  { checked: { line } }: HowRequest,
  s: number,
  flow: number,
  counted: readonly CountedFitting[],
): Loss[] {
  const { segments, water } = line;
  const [k1, kInfinity, bore] = [segments.k1[s]!, segments.kInfinity[s]!, segments.bore[s]!];
  if (k1 === 0 && kInfinity === 0) return [];
  const kind = segments.kind[s]!;
  const lossBy = (one: { readonly k1: number; readonly kInfinity: number }, count: number) =>
    Number.isFinite(flow)
      ? Math.abs(count * headLossFitting({ ...one, bore, viscosity: water.viscosity }, flow))
      : Number.NaN;
  const named = kind === SEGMENT_KIND.pipe && addsUp(counted, k1, kInfinity) ? counted : undefined;
  if (named !== undefined)
    return named.map((fitting) => ({
      name: fitting.count > 1 ? `${fitting.count} of ${quoted(fitting.name)}` : quoted(fitting.name),
      detail: coefficients(fitting),
      flow,
      value: lossBy(fitting, fitting.count),
      isFitting: true,
      ...(fitting.source === undefined ? {} : { source: fitting.source }),
    }));
  const name =
    kind === SEGMENT_KIND.oneWay
      ? "one-way valve"
      : kind === SEGMENT_KIND.regulator
        ? "regulator"
        : "its fittings together";
  return [
    {
      name,
      detail: coefficients({ k1, kInfinity }),
      flow,
      value: lossBy({ k1, kInfinity }, 1),
      isFitting: true,
    },
  ];
}

const coefficients = ({ k1, kInfinity }: { readonly k1: number; readonly kInfinity: number }): string =>
  k1 === 0 ? `K = ${bare(kInfinity, 3)}` : `K = ${bare(k1, 3)}/Re + ${bare(kInfinity, 3)}`;

/** The run's fittings as the plan lists them; none without a plan, or with one that the line was not built from. */
function countedFittings({ checked: { line }, plan }: HowRequest, run: number): readonly CountedFitting[] {
  const { index, bore, points } = line.runs[run]!;
  const planned = plan?.runs[index];
  if (planned === undefined) return [];
  try {
    const source = line.sources.find(({ point }) => point === points[0]);
    return listFittings(planned, bore, source && { bore: source.outletBore });
  } catch {
    // A newer plan may name a fitting that no table has; what was checked is shown together then.
    return [];
  }
}

function addsUp(counted: readonly CountedFitting[], k1: number, kInfinity: number): boolean {
  const total = (key: "k1" | "kInfinity") => counted.reduce((all, one) => all + one.count * one[key], 0);
  return (
    Math.abs(total("k1") - k1) <= 1e-9 * (1 + k1) &&
    Math.abs(total("kInfinity") - kInfinity) <= 1e-9 * (1 + kInfinity)
  );
}
