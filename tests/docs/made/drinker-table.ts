import { allDrinkers } from "../../../packages/hydraulics/src/tables/drinkers.js";
import { allFittings } from "../../../packages/hydraulics/src/tables/fittings.js";
import { writeColumns } from "./columns.js";

const mL = (flow: number): string => (flow * 6e7).toFixed(0);
const mm = (head: number): string => (1000 * head).toFixed(0);

/** The kinds of drinkers the tables know. */
export function writeDrinkerTable(): string {
  return writeColumns([
    ["kind", "mL/min", "at mm", "range", "x", "opens mm", "seals from mm", "holds mm", "need mL/min"],
    ...allDrinkers.map((kind) => [
      kind.id,
      mL(kind.flow),
      mm(kind.head),
      `${mL(kind.flowLow)}-${mL(kind.flowHigh)}`,
      String(kind.exponent),
      mm(kind.openingHead),
      mm(kind.sealsFrom),
      mm(kind.holdsUpTo),
      mL(kind.need),
    ]),
  ]);
}

/** The two-K constants the solver uses, with the scatter of what is published. */
export function writeFittingTable(): string {
  return writeColumns([
    ["fitting", "K1", "K-infinity", "size corr. mm", "scatter"],
    ...allFittings.map((fitting) => [
      fitting.id,
      String(fitting.k1),
      String(fitting.kInfinity),
      String(Number((1000 * fitting.sizeCorrection).toPrecision(6))),
      `x ${fitting.low} to ${fitting.high}`,
    ]),
  ]);
}
