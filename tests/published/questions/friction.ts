import {
  frictionFactorChurchill,
  frictionFactorColebrook,
  frictionFactorLaminar,
  frictionFactorSwameeJain,
  headLossDarcyWeisbach,
  headLossLaminar,
  reynoldsNumber,
  velocityInBore,
} from "../../../packages/hydraulics/src/physics/darcy-weisbach.js";
import {
  flowHazenWilliams,
  headLossHazenWilliams,
} from "../../../packages/hydraulics/src/physics/hazen-williams.js";
import {
  multiOutletFactor,
  multiOutletFactorExact,
  multiOutletFactorHalfSpacing,
} from "../../../packages/hydraulics/src/physics/multi-outlet.js";
import { viscosityOfWater } from "../../../packages/hydraulics/src/physics/water.js";
import type { Givens } from "../figures.js";
import { columnOf, headOf, plain, pressureOf, type Question, velocityOf } from "./question.js";

/** Flow of a case that gives flow or mean velocity. */
export function flowOf(given: Givens): number {
  if (given.has("flow")) return given.measure("flow", "flow");
  const bore = given.measure("bore", "length");
  return given.measure("velocity", "velocity") / velocityInBore(bore, 1);
}

/** Kinematic viscosity of a case that gives it, or its two parts, or the temperature of water. */
function viscosityOf(given: Givens): number {
  if (given.has("viscosity")) return given.measure("viscosity", "viscosity");
  if (given.has("temperature")) return viscosityOfWater(given.measure("temperature", "temperature"));
  return given.measure("dynamicViscosity", "viscosityDynamic") / given.measure("density", "density");
}

const frictionHazenWilliams: Question = (given) => {
  const bore = given.measure("bore", "length");
  const run = { length: given.measure("length", "length"), bore, coefficient: given.number("coefficient") };
  const flow = flowOf(given);
  return {
    headLoss: headOf(headLossHazenWilliams(run, flow)),
    velocity: velocityOf(velocityInBore(bore, flow)),
  };
};

const flowByHazenWilliams: Question = (given) => {
  const run = {
    length: given.measure("length", "length"),
    bore: given.measure("bore", "length"),
    coefficient: given.number("coefficient"),
  };
  return { flow: { kind: "flow", si: flowHazenWilliams(run, given.measure("headLoss", "head")) } };
};

function pipeOf(given: Givens) {
  return {
    length: given.measure("length", "length"),
    bore: given.measure("bore", "length"),
    viscosity: viscosityOf(given),
  };
}

/** Head lost, and as pressure of the fluid where its density is given. */
const lossOf = (headLoss: number, given: Givens) => ({
  headLoss: headOf(headLoss),
  ...(given.has("density")
    ? { pressureLoss: pressureOf(headLoss / columnOf(1, given.measure("density", "density"))) }
    : {}),
});

const frictionDarcyWeisbach: Question = (given) => {
  const run = { ...pipeOf(given), roughness: given.measure("roughness", "length") };
  const flow = flowOf(given);
  const reynolds = reynoldsNumber(run, flow);
  return {
    ...lossOf(headLossDarcyWeisbach(run, flow), given),
    velocity: velocityOf(velocityInBore(run.bore, flow)),
    reynolds: plain(reynolds),
    factor: plain(frictionFactorChurchill(reynolds, run.roughness / run.bore)),
  };
};

const frictionLaminar: Question = (given) => {
  const run = pipeOf(given);
  const flow = flowOf(given);
  const reynolds = reynoldsNumber(run, flow);
  return {
    ...lossOf(headLossLaminar(run, flow), given),
    reynolds: plain(reynolds),
    factor: plain(frictionFactorLaminar(reynolds)),
  };
};

/** Laminar loss is linear: the flow is the head there is over the head that one unit of flow takes. */
const inclinedLaminar: Question = (given) => {
  const run = pipeOf(given);
  const density = given.measure("density", "density");
  const rise = run.length * Math.sin(Math.atan(given.measure("slope", "slope")));
  const upstream = columnOf(given.measure("upstream", "pressure"), density);
  const downstream = columnOf(given.measure("downstream", "pressure"), density);
  return { flow: { kind: "flow", si: (upstream - downstream - rise) / headLossLaminar(run, 1) } };
};

const factorBy =
  (factor: (reynolds: number, relativeRoughness: number) => number): Question =>
  (given) => ({ factor: plain(factor(given.number("reynolds"), given.number("relativeRoughness"))) });

const outletsBy =
  (factor: (count: number, exponent: number) => number): Question =>
  (given) => ({ factor: plain(factor(given.number("count"), given.number("exponent"))) });

export const FRICTION_QUESTIONS: Readonly<Record<string, Question>> = {
  frictionHazenWilliams,
  flowHazenWilliams: flowByHazenWilliams,
  frictionDarcyWeisbach,
  frictionLaminar,
  inclinedLaminar,
  factorChurchill: factorBy(frictionFactorChurchill),
  factorColebrook: factorBy(frictionFactorColebrook),
  factorSwameeJain: factorBy(frictionFactorSwameeJain),
  multiOutlet: outletsBy(multiOutletFactor),
  multiOutletExact: outletsBy(multiOutletFactorExact),
  multiOutletHalf: outletsBy(multiOutletFactorHalfSpacing),
};
