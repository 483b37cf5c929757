import { velocityInBore } from "../../../packages/hydraulics/src/physics/darcy-weisbach.js";
import {
  headLossOfCoefficient,
  lossCoefficientFromEquivalentLength,
  lossCoefficientFromKv,
  lossCoefficientTwoK,
} from "../../../packages/hydraulics/src/physics/fittings.js";
import { flowAtHead, flowThroughOrifice } from "../../../packages/hydraulics/src/physics/orifice.js";
import type { Givens } from "../figures.js";
import { headOf, plain, type Question, velocityOf } from "./question.js";

const velocityGiven = (given: Givens): number =>
  given.has("velocity")
    ? given.measure("velocity", "velocity")
    : velocityInBore(given.measure("bore", "length"), given.measure("flow", "flow"));

const twoK: Question = (given) => {
  const fitting = {
    k1: given.number("k1"),
    kInfinity: given.number("kInfinity"),
    bore: given.measure("bore", "length"),
  };
  return { coefficient: plain(lossCoefficientTwoK(fitting, given.number("reynolds"))) };
};

const coefficientFromKv: Question = (given) => ({
  coefficient: plain(
    lossCoefficientFromKv({ kv: given.number("kv"), bore: given.measure("bore", "length") }),
  ),
});

const coefficientFromLength: Question = (given) => ({
  coefficient: plain(
    lossCoefficientFromEquivalentLength({
      equivalentLength: given.measure("equivalentLength", "length"),
      bore: given.measure("bore", "length"),
      frictionFactor: given.number("frictionFactor"),
    }),
  ),
});

/** Pipe and fittings together, both as coefficients upon one velocity head. */
const lossPerVelocity: Question = (given) => {
  const pipe = lossCoefficientFromEquivalentLength({
    equivalentLength: given.measure("length", "length"),
    bore: given.measure("bore", "length"),
    frictionFactor: given.number("frictionFactor"),
  });
  return {
    headLoss: headOf(headLossOfCoefficient(pipe + given.number("coefficient"), velocityGiven(given))),
  };
};

const fittingLosses: Question = (given) => {
  const coefficients = given.of("coefficients");
  return Object.fromEntries(
    given
      .members("coefficients")
      .map((name) => [name, headOf(headLossOfCoefficient(coefficients.number(name), velocityGiven(given)))]),
  );
};

/** Velocity out of an opening of resistance K, as a share of that of a free fall: v at which (1 + K) v²/2g is the head. */
const velocityShare: Question = (given) => {
  const headAtFreeFall = headLossOfCoefficient(1 + given.number("coefficient"), Math.sqrt(2));
  return { share: plain(Math.sqrt(headLossOfCoefficient(1, Math.sqrt(2)) / headAtFreeFall)) };
};

const areaOf = (given: Givens): number =>
  given.has("area")
    ? given.measure("area", "area")
    : 1 / velocityInBore(given.measure("diameter", "length"), 1);

/** An opening as the draining formulas take it. */
export const outletOf = (given: Givens) => ({
  area: areaOf(given),
  dischargeCoefficient: given.number("dischargeCoefficient"),
});

const orifice: Question = (given) => {
  const outlet = outletOf(given);
  const flow = flowThroughOrifice(outlet, given.measure("head", "head"));
  return { flow: { kind: "flow", si: flow }, velocity: velocityOf(flow / outlet.area) };
};

const dischargeCoefficient: Question = (given) => {
  const ideal = flowThroughOrifice(
    { area: areaOf(given), dischargeCoefficient: 1 },
    given.measure("head", "head"),
  );
  return { coefficient: plain(given.measure("flow", "flow") / ideal) };
};

const fillThroughTube: Question = (given) => {
  const area = areaOf(given);
  const flow = flowThroughOrifice({ area, dischargeCoefficient: 1 }, given.measure("head", "head"));
  return {
    velocity: velocityOf(flow / area),
    flow: { kind: "flow", si: flow },
    time: { kind: "time", si: given.measure("volume", "volume") / flow },
  };
};

const lawAtHead: Question = (given) => {
  const law = {
    coefficient: given.number("coefficient"),
    exponent: given.number("exponent"),
    openingHead: 0,
  };
  return { flow: { kind: "flow", si: flowAtHead(law, given.measure("head", "head")) } };
};

export const FITTING_QUESTIONS: Readonly<Record<string, Question>> = {
  twoK,
  coefficientFromKv,
  coefficientFromLength,
  lossPerVelocity,
  fittingLosses,
  velocityShare,
  orifice,
  dischargeCoefficient,
  fillThroughTube,
  lawAtHead,
};
