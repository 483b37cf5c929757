import { type Checked, FRICTION_RANGE, LAW_WORDS, type MomentName, regimeAt } from "@headfall/hydraulics";
import { otherLaw } from "../other-law.js";
import { PI, power, product, quotient, sum, term } from "./expression.js";
import { AT_MOMENT, bare, type Figures } from "./figures.js";
import { type HowGot, type Part, type Step, soundSteps, stepOf } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import { busiestState, type RunState } from "./run-state.js";
import { alwaysValid, validityOfWater, wholeReynolds } from "./validity.js";

/** Flow at the busiest end of a run: all that is drawn beyond it. */
export function howRunFlow(request: HowRequest, run: number, moment: MomentName): HowGot {
  const { checked, figures } = request;
  const { id } = checked.line.runs[run]!;
  const law = otherLaw(checked.friction);
  const state = busiestState(request, run, moment);
  const flow = state?.flow ?? Number.NaN;
  const second = busiestState(request, run, moment, law)?.flow ?? Number.NaN;
  const rows = state === undefined ? [] : balanceAtEnd(request, state, run, moment);
  return {
    title: `Flow in ${quoted(id)}, ${AT_MOMENT[moment]}`,
    result: figures.flow(flow),
    steps: rows.length === 0 ? [] : [stepOf("flow", sum(...termsOfBalance(rows)), figures.flowIn)],
    ...(rows.length === 0 ? {} : { parts: { caption: "Where it goes", columns: ["To", "Flow"], rows } }),
    valid: [alwaysValid("Water in = water out", "at every place where pipes meet")],
    secondOpinion: {
      by: LAW_WORDS[law],
      result: figures.flow(second),
      difference: figures.flowDifference(Math.abs(second) - Math.abs(flow)),
    },
    notes: [
      `At the end of the run that carries the most. What each drinker gives follows from the head it has, and the head from all the flows: both are found together, here by ${LAW_WORDS[checked.friction]}.`,
      ...(flow < 0 ? ["It flows from the end of the run towards its start."] : []),
    ],
    sources: ["closed-form"],
  };
}

const termsOfBalance = (rows: readonly Part[]) =>
  rows.map(({ cells, value }) => term(cells[0]!, value, cells[1]!));

/**
 * Everything that leaves, less what else comes in, along the run from its busiest piece on in the direction of flow:
 * the drinkers there, the runs that go on, and header tanks that are filled.
 */
function balanceAtEnd(
  { checked, figures }: HowRequest,
  state: RunState,
  run: number,
  moment: MomentName,
): Part[] {
  const { line, solutions, friction } = checked;
  const { flow, drinkerFlow, feedFlow, sourceFlow } = solutions[moment][friction];
  const beyond = pointsBeyond(line, run, state);
  const { drinkers, segments } = line;
  let drawn = 0;
  for (let d = 0; d < drinkers.count; d++) if (beyond.has(drinkers.point[d]!)) drawn += drinkerFlow[d]!;
  const onward = new Map<number, number>();
  for (let s = 0; s < segments.count; s++) {
    if (s === state.segment) continue;
    const out = Number(beyond.has(segments.from[s]!)) - Number(beyond.has(segments.to[s]!));
    if (out !== 0) onward.set(segments.run[s]!, (onward.get(segments.run[s]!) ?? 0) + out * flow[s]!);
  }
  const parts: [string, number][] = [
    ["its drinkers", drawn],
    ...[...onward].map(([to, value]): [string, number] => [
      `${value < 0 ? "comes in from" : "goes into"} ${quoted(line.runs[to]!.id)}`,
      value,
    ]),
    ...line.sources.flatMap(({ id, point, feed }, s): [string, number][] => [
      ...(feed !== undefined && beyond.has(feed.point)
        ? [[`fills ${quoted(id)}`, feedFlow[s]!] as [string, number]]
        : []),
      ...(beyond.has(point) ? [[`comes in from ${quoted(id)}`, -sourceFlow[s]!] as [string, number]] : []),
    ]),
  ];
  return parts
    .filter(([, value]) => Math.abs(value) > NO_FLOW)
    .map(([name, value]) => ({ cells: [name, `${value < 0 ? "−" : ""}${figures.flowIn(value)}`], value }));
}

/** Flows smaller than this are rounding, not water [m3/s]. */
const NO_FLOW = 1e-12;

/** Points of a run from its busiest piece on, in the direction of flow. */
function pointsBeyond(line: Checked["line"], run: number, { segment, flow }: RunState): ReadonlySet<number> {
  const { firstSegment, segmentCount } = line.runs[run]!;
  const { from, to } = line.segments;
  const beyond = new Set<number>();
  if (flow < 0) for (let s = segment; s >= firstSegment; s--) beyond.add(from[s]!);
  else for (let s = segment; s < firstSegment + segmentCount; s++) beyond.add(to[s]!);
  return beyond;
}

/** Mean velocity where a run carries the most. */
export function howRunVelocity(request: HowRequest, run: number, moment: MomentName): HowGot {
  const { checked, figures } = request;
  const state = busiestState(request, run, moment);
  const law = otherLaw(checked.friction);
  const second = busiestState(request, run, moment, law);
  return {
    title: `Velocity in ${quoted(checked.line.runs[run]!.id)}, ${AT_MOMENT[moment]}`,
    result: figures.velocity(state?.velocity ?? Number.NaN),
    steps: state === undefined ? [] : [stepOfVelocity(request, state, run, moment)],
    valid: [alwaysValid("Mean velocity", "over the whole bore; in the middle it is up to twice as fast")],
    ...(second === undefined || state === undefined
      ? {}
      : {
          secondOpinion: {
            by: LAW_WORDS[law],
            result: figures.velocity(second.velocity),
            difference: signedVelocity(Math.abs(second.velocity) - Math.abs(state.velocity), figures),
          },
        }),
    notes: ["At the end of the run that carries the most."],
    sources: ["closed-form"],
  };
}

const signedVelocity = (value: number, figures: Figures): string =>
  `${value < 0 ? "-" : "+"}${figures.velocity(value)}`;

function stepOfVelocity({ figures }: HowRequest, state: RunState, run: number, moment: MomentName): Step {
  const flow = Math.abs(state.flow);
  const area = product(
    PI,
    power(term("d", state.bore, figures.lengthIn(state.bore), { of: "runBore", run }), 2),
  );
  return stepOf(
    "v",
    quotient(product(4, term("Q", flow, figures.flowIn(flow), { of: "runFlow", run, moment })), area),
    figures.velocityIn,
  );
}

/** Reynolds number where a run carries the most, and what it says of how the water moves. */
export function howRunReynolds(request: HowRequest, run: number, moment: MomentName): HowGot {
  const { checked, figures } = request;
  const state = busiestState(request, run, moment);
  const { laminar, critical } = FRICTION_RANGE;
  const { temperatureC } = checked.line.water;
  const regime = state === undefined ? undefined : regimeAt(state.reynolds);
  return {
    title: `How the water moves in ${quoted(checked.line.runs[run]!.id)}, ${AT_MOMENT[moment]}`,
    result: state === undefined ? "no figure" : `${regime}, ${wholeReynolds(state.reynolds)}`,
    steps: soundSteps(
      ...(state === undefined ? [] : [reynoldsStep(request, state, run, moment)]),
      viscosityStep(request),
    ),
    valid: [
      {
        law: "Laminar or turbulent",
        holds: `laminar below Re ${bare(laminar.greatest)}, turbulent above ${bare(critical.greatest)}; between them either`,
        here: state === undefined ? "no figure" : `${wholeReynolds(state.reynolds)}: ${regime}`,
        isInside: regime !== "critical",
      },
      validityOfWater(temperatureC, figures),
    ],
    notes: [`The viscosity is that of clean water at ${figures.temperature(temperatureC)}.`],
    sources: ["hydraulic-institute-edb", "iapws-sr6-08"],
  };
}

function reynoldsStep(
  { checked, figures }: HowRequest,
  state: RunState,
  run: number,
  moment: MomentName,
): Step {
  const { viscosity } = checked.line.water;
  const velocity = Math.abs(state.velocity);
  const speedTimesBore = product(
    term("v", velocity, figures.velocityIn(velocity), { of: "runVelocity", run, moment }),
    term("d", state.bore, figures.lengthIn(state.bore), { of: "runBore", run }),
  );
  const formula = quotient(speedTimesBore, term("ν", viscosity, figures.viscosity(viscosity)));
  return stepOf("Re", formula, (value) => bare(Math.round(value), 7));
}

function viscosityStep({ checked, figures }: HowRequest): Step {
  const { viscosityDynamic, density } = checked.line.water;
  const formula = quotient(
    term("μ", viscosityDynamic, figures.viscosityDynamic(viscosityDynamic)),
    term("ρ", density, figures.density(density)),
  );
  return stepOf("ν", formula, figures.viscosity);
}
