import type { Line } from "../../../packages/hydraulics/src/model/line.js";
import { velocityInBore } from "../../../packages/hydraulics/src/physics/darcy-weisbach.js";
import { headLossOfCoefficient } from "../../../packages/hydraulics/src/physics/fittings.js";
import { prepareLine } from "../../../packages/hydraulics/src/solve/prepare-line.js";
import {
  FRICTION_LAWS,
  type FrictionLaw,
  type LineSolution,
} from "../../../packages/hydraulics/src/solve/solution.js";
import { solveLine } from "../../../packages/hydraulics/src/solve/solve-line.js";
import { type LineParts, makeLine, makeMoment, type PipePart } from "../../arbitraries/make-line.js";
import type { Figure, Givens } from "../figures.js";
import { headOf, type Question } from "./question.js";

type State = LineSolution;

/**
 * A network of a book: points by name, `heads` of reservoirs, `heights` and fixed `draws` of others, pipes by their
 * ends. A pipe of loss r Q² is one without length whose fittings lose that.
 */
const network: Question = (given) => {
  const names = [
    ...new Set(given.list("pipes").flatMap((pipe) => [pipe.text("from"), pipe.text("to")])),
  ].sort();
  const heights = names.map((name) => lengthOf(given.of("heights"), name));
  const pipes = given.list("pipes").map((pipe) => pipePart(pipe, names));
  const sources = given.members("heads").map((name) => names.indexOf(name));
  const parts: LineParts = { heights, pipes, drinkers: [], sources };
  const friction = FRICTION_LAWS.find((law) => law === given.text("friction"));
  if (friction === undefined) throw new Error(`friction: ${given.text("friction")} is no law`);
  const state = given.has("draws")
    ? solveWithDraws(parts, given, friction, names)
    : solveFree(withViscosity(makeLine(parts), given), friction, headsOf(given));
  return nameState(state, names, heights, pipes, given.members("heads"));
};

/** How far below its point a fixed draw is taken [m], and rounds in which its coefficient must have been found. */
const DROP = 1000;
const MOST_ROUNDS = 30;

const headsOf = (given: Givens) => given.members("heads").map((name) => lengthOf(given.of("heads"), name));

const lengthOf = (given: Givens, name: string): number =>
  given.has(name) ? given.measure(name, "length") : 0;

function pipePart(pipe: Givens, names: readonly string[]): PipePart {
  const ends = { from: names.indexOf(pipe.text("from")), to: names.indexOf(pipe.text("to")) };
  if (pipe.has("quadratic")) {
    const kInfinity = pipe.number("quadratic") / headLossOfCoefficient(1, velocityInBore(1, 1));
    return { ...ends, length: 0, bore: 1, kInfinity };
  }
  return {
    ...ends,
    length: pipe.measure("length", "length"),
    bore: pipe.measure("bore", "length"),
    ...(pipe.has("roughness") ? { roughness: pipe.measure("roughness", "length") } : {}),
    ...(pipe.has("coefficient") ? { hazenWilliams: pipe.number("coefficient") } : {}),
  };
}

function withViscosity(line: Line, given: Givens): Line {
  if (!given.has("viscosity")) return line;
  return { ...line, water: { ...line.water, viscosity: given.measure("viscosity", "viscosity") } };
}

function solveFree(line: Line, friction: FrictionLaw, heads: readonly number[]): State {
  const solution = solveLine(prepareLine(line, friction), makeMoment(line, heads));
  if (solution.outcome !== "solved") throw new Error("the network was not solved");
  return solution;
}

/**
 * Fixed draws are no part of a drinker line. Each is a drinker far below its point, whose coefficient is mended until
 * it draws what the book says: its flow hardly answers to the head at the point, so a few rounds do.
 */
function solveWithDraws(
  parts: LineParts,
  given: Givens,
  friction: FrictionLaw,
  names: readonly string[],
): State {
  const drawn = given.members("draws");
  const draws = drawn.map((name) => given.of("draws").measure(name, "flow"));
  const points = drawn.map((name) => names.indexOf(name));
  const heads = headsOf(given);
  let coefficients = draws.map((draw) => draw / Math.sqrt(DROP));
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const drinkers = points.map((point, d) => ({ point, coefficient: coefficients[d]!, drop: DROP }));
    const line = withViscosity(makeLine({ ...parts, drinkers }), given);
    const solution = solveFree(line, friction, heads);
    const ratios = draws.map((draw, d) => draw / solution.drinkerFlow[d]!);
    if (ratios.every((ratio) => Math.abs(ratio - 1) < 1e-10)) return solution;
    coefficients = coefficients.map((coefficient, d) => coefficient * ratios[d]!);
  }
  throw new Error("the draws were not met");
}

/** "head J", "pressure 5" (head over height), "flow A-J", "pipe 2" (by place in the list), "draw A". */
function nameState(
  state: State,
  names: readonly string[],
  heights: readonly number[],
  pipes: readonly PipePart[],
  sources: readonly string[],
): Record<string, Figure> {
  const figures: Record<string, Figure> = {};
  for (const [p, name] of names.entries()) {
    figures[`head ${name}`] = headOf(state.head[p]!);
    figures[`pressure ${name}`] = headOf(state.head[p]! - heights[p]!);
  }
  for (const [s, { from, to }] of pipes.entries()) {
    const flow: Figure = { kind: "flow", si: state.flow[s]! };
    figures[`flow ${names[from]}-${names[to]}`] = flow;
    figures[`pipe ${s + 1}`] = flow;
  }
  for (const [i, name] of sources.entries())
    figures[`draw ${name}`] = { kind: "flow", si: state.sourceFlow[i]! };
  return figures;
}

export const NETWORK_QUESTIONS: Readonly<Record<string, Question>> = { network };
