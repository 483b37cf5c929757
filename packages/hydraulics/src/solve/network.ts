import type { Line } from "../model/line.js";
import { buildDrinkerLaws, type DrinkerLaws } from "./laws/drinker-laws.js";
import { buildOneWayLaws, type OneWayLaws } from "./laws/one-way.js";
import { buildDarcyWeisbachLaws } from "./laws/pipe-darcy-weisbach.js";
import { buildHazenWilliamsLaws } from "./laws/pipe-hazen-williams.js";
import type { PipeLaws } from "./laws/pipe-laws.js";
import type { FrictionLaw } from "./solution.js";
import type { Topology } from "./topology.js";

/** One zone of a line ready to be solved again and again: numbered points, and the law of every element. */
export interface Network {
  readonly topology: Topology;
  readonly pipes: PipeLaws;
  readonly oneWays: OneWayLaws;
  readonly drinkers: DrinkerLaws;
}

const PIPE_LAWS: Readonly<Record<FrictionLaw, typeof buildDarcyWeisbachLaws>> = {
  hazenWilliams: buildHazenWilliamsLaws,
  darcyWeisbach: buildDarcyWeisbachLaws,
};

/** @param into  network of a line that differs only in figures: its laws are filled anew, and hold for it no more */
export function buildNetwork(line: Line, topology: Topology, friction: FrictionLaw, into?: Network): Network {
  return {
    topology,
    pipes: PIPE_LAWS[friction](line, topology, into?.pipes),
    oneWays: buildOneWayLaws(line, topology),
    drinkers: buildDrinkerLaws(line, topology, into?.drinkers),
  };
}

/** What is asked of a network: the head at each root, who drinks, and flows taken out by zones further down. */
export interface Demand {
  /** By root [m above datum]. */
  readonly rootHead: Float64Array;
  /** Drinkers of the network that are at work, ascending; the others pass nothing. */
  readonly working: Int32Array;
  /** Fixed draw by node [m3/s]; undefined where there is none. */
  readonly draw: Float64Array | undefined;
}
