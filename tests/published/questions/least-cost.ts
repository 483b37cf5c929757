import { searchSpace } from "../../../packages/hydraulics/src/search/branch-and-bound.js";
import { compareBy } from "../../../packages/hydraulics/src/search/cost.js";
import type { Found } from "../../../packages/hydraulics/src/search/searching.js";
import type { Figure, Givens } from "../figures.js";
import { type FedNetwork, headsWith, keepsHeads, spaceOf } from "../least-cost/fed-network.js";
import { boundByFlowBoxes } from "../least-cost/flow-boxes.js";
import { headOf, plain, type Question } from "./question.js";

/**
 * Which sizes of pipe cost least, so that every point of a network keeps a pressure? Found by the search for cures
 * over every choice there is, and refused where it does not end with proof that nothing cheaper works.
 */
const leastCost: Question = (given) => {
  const names = namesOf(given);
  const network = networkOf(given);
  const { picks, cost } = cheapest(network);
  const heads = headsWith(network, picks);
  const figures: Record<string, Figure> = { cost: plain(cost.money) };
  for (const [k, pick] of picks.entries())
    figures[`bore ${k + 1}`] = { kind: "length", si: network.sizes[pick]!.bore };
  for (const name of names.slice(1)) {
    const height = given.of("heights").measure(name, "length");
    figures[`pressure ${name}`] = headOf(heads[names.indexOf(name)]! - height);
  }
  return figures;
};

/** The source first. */
const namesOf = (given: Givens): string[] => [given.members("heads")[0]!, ...given.members("heights")];

export function networkOf(given: Givens): FedNetwork {
  const names = namesOf(given);
  const [source, ...others] = names;
  const least = given.measure("leastPressure", "length");
  return {
    leastHead: [
      given.of("heads").measure(source!, "length"),
      ...others.map((name) => given.of("heights").measure(name, "length") + least),
    ],
    draw: [0, ...others.map((name) => given.of("draws").measure(name, "flow"))],
    pipes: given.list("pipes").map((pipe) => ({
      from: names.indexOf(pipe.text("from")),
      to: names.indexOf(pipe.text("to")),
      length: pipe.measure("length", "length"),
      coefficient: pipe.number("coefficient"),
    })),
    sizes: given.list("sizes").map((size) => ({
      bore: size.measure("bore", "length"),
      price: size.number("price"),
    })),
  };
}

/** Parts of the space that may be bounded; the search must end well before. */
const MOST_PARTS = 2000;

function cheapest(network: FedNetwork): Found {
  const space = spaceOf(network);
  const { found, proven } = searchSpace({
    space,
    bound: boundByFlowBoxes(network, space),
    compare: compareBy("money"),
    works: keepsHeads(network),
    mayGoOn: () => true,
    mostParts: MOST_PARTS,
  });
  if (found === undefined || !proven) throw new Error("no sizes were proven to be the cheapest");
  return found;
}

export const LEAST_COST_QUESTIONS: Readonly<Record<string, Question>> = { leastCost };
