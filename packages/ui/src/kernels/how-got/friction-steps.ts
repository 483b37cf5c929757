import {
  type FrictionLaw,
  frictionFactorChurchill,
  frictionFactorLaminar,
  GRAVITY,
  HAZEN_WILLIAMS_LAW,
  type MomentName,
  regimeAt,
} from "@headfall/hydraulics";
import { FOOT, INCH, US_GALLON } from "../us-units.js";
import { constant, power, product, quotient, type Term, term } from "./expression.js";
import { bare } from "./figures.js";
import { type Step, stepOf } from "./how-got.js";
import type { HowRequest } from "./request.js";
import type { RunState } from "./run-state.js";

/** The friction law filled in for the piece of a run that carries the most. */
export function frictionSteps(
  request: HowRequest,
  run: number,
  law: FrictionLaw,
  state: RunState,
  moment: MomentName,
): readonly Step[] {
  return law === "hazenWilliams"
    ? [hazenWilliamsStep(request, run, state, moment)]
    : darcyWeisbachSteps(request, run, state, moment);
}

const IN_METRES = { length: 1, flow: 1e-3 / 60, bore: 1e-3, units: ["m", "L/min", "mm"] } as const;
const IN_FEET = {
  length: FOOT,
  flow: US_GALLON / 60,
  bore: INCH,
  units: ["ft", "gal/min", "in"],
} as const;
/** Hazen-Williams holds in certain units only: its constant is that of the units a keeper reads. */
function hazenWilliamsStep(request: HowRequest, run: number, state: RunState, moment: MomentName): Step {
  const { segments } = request.checked.line;
  const units = request.figures.system === "us" ? IN_FEET : IN_METRES;
  const [length, coefficient] = [segments.length[state.segment]!, segments.hazenWilliams[state.segment]!];
  const { constant: factorInSi, flowExponent, boreExponent } = HAZEN_WILLIAMS_LAW;
  const factor = (factorInSi * units.flow ** flowExponent) / units.bore ** boreExponent;
  const inUnits = (symbol: string, value: number, from?: Term["from"]) =>
    term(symbol, value, bare(value), from);
  const [ofLength, ofFlow, ofBore] = units.units;
  const over = product(
    constant(factor, bare(factor)),
    inUnits("L", length / units.length),
    power(inUnits("Q", Math.abs(state.flow) / units.flow, { of: "runFlow", run, moment }), flowExponent),
  );
  const under = product(
    power(term("C", coefficient, bare(coefficient)), flowExponent),
    power(inUnits("d", state.bore / units.bore, { of: "runBore", run }), boreExponent),
  );
  const write = (value: number) => request.figures.lengthIn(value);
  const step = stepOf("busiest piece: h", quotient(over, under), write, units.length);
  return { ...step, formula: `${step.formula}, L and h in ${ofLength}, Q in ${ofFlow}, d in ${ofBore}` };
}

function darcyWeisbachSteps(
  request: HowRequest,
  run: number,
  state: RunState,
  moment: MomentName,
): readonly Step[] {
  const { figures, checked } = request;
  const length = checked.line.segments.length[state.segment]!;
  const speed = Math.abs(state.velocity);
  const relative = state.roughness / state.bore;
  const factor = frictionFactorChurchill(state.reynolds, relative);
  const loss = quotient(
    product(
      term("f", factor, bare(factor)),
      quotient(
        term("L", length, figures.lengthIn(length)),
        term("d", state.bore, figures.lengthIn(state.bore), { of: "runBore", run }),
      ),
      power(term("v", speed, figures.velocityIn(speed), { of: "runVelocity", run, moment }), 2),
    ),
    product(2, term("g", GRAVITY, figures.gravity(GRAVITY))),
  );
  return [
    stepOf("busiest piece: h", loss, figures.lengthIn),
    factorStep(request, run, state, moment, factor),
  ];
}

/** f in plain laminar flow is 64/Re; elsewhere it is Churchill's curve, whose letters are long and stand in the method. */
function factorStep(
  { figures }: HowRequest,
  run: number,
  state: RunState,
  moment: MomentName,
  factor: number,
): Step {
  const reynolds = term("Re", state.reynolds, bare(Math.round(state.reynolds), 7), {
    of: "runReynolds",
    run,
    moment,
  });
  const isPlain =
    regimeAt(state.reynolds) === "laminar" &&
    Math.abs(frictionFactorLaminar(state.reynolds) / factor - 1) < 1e-6;
  if (isPlain) return stepOf("f", quotient(64, reynolds), (value) => bare(value));
  const relative = state.roughness / state.bore;
  const terms = [reynolds, term("ε/d", relative, bare(relative, 3))];
  return {
    formula:
      "f = 8 [(8/Re)^12 + (A + B)^(−1.5)]^(1/12), A = {2.457 ln 1/[(7/Re)^0.9 + 0.27 ε/d]}^16, B = (37530/Re)^16",
    filled: `Re = ${reynolds.text}, ε/d = ${figures.length(state.roughness)} / ${figures.length(state.bore)}: f = ${bare(factor)}`,
    value: factor,
    terms,
  };
}
