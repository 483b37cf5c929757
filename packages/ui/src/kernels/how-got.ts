import {
  type Checked,
  type DrinkerVerdict,
  drinkerById,
  LAW_WORDS,
  MOMENT_WORDS,
  type MomentName,
  writeMargin as writeSigned,
} from "@headfall/hydraulics";
import { otherLaw } from "./other-law.js";
import { showFlow, showHead, showHeadInFormula } from "./shown.js";
import { trimmed, type UnitSystem } from "./typed-quantity.js";

/** How one number came about: the law in letters, the same with this plan's numbers, and who says so. */
export interface HowGot {
  readonly title: string;
  readonly result: string;
  readonly formula: string;
  readonly filled: string;
  readonly notes: readonly string[];
  /** Keys of reference-tables/sources.json. */
  readonly sources: readonly string[];
}

/** Where the formulas stand; the key of a drinker's own figures comes from its table. */
export const FORMULA_SOURCES = {
  statics: ["closed-form"],
  hazenWilliams: ["hazen-williams-si"],
  darcyWeisbach: ["churchill-1977"],
} as const;

export interface HowGotRequest {
  readonly checked: Checked;
  /** Index into `line.drinkers`. */
  readonly drinker: number;
  readonly moment: MomentName;
  readonly system: UnitSystem;
}

/** Head, flow and margin of one drinker, each with how it was got. */
export function howGot(request: HowGotRequest): readonly HowGot[] {
  return [headOf(request), flowOf(request), marginOf(request)];
}

function headOf({ checked, drinker, moment, system }: HowGotRequest): HowGot {
  const reading = checked.drinkers[drinker]!.moments[moment];
  const own = reading[checked.friction];
  const second = reading[otherLaw(checked.friction)];
  const height = checked.line.drinkers.height[drinker]!;
  const length = (value: number) => showHeadInFormula(value, system);
  const keepsAir = checked.filling.some(({ code }) => code === "humpTrapsAir" || code === "humpAboveWater");
  const law = LAW_WORDS[checked.friction];
  return {
    title: `Head at the drinker, ${MOMENT_WORDS[moment]}`,
    result: showHead(own.flowingHead, system),
    formula: `head = water surface − drinker's height − head taken on the way${keepsAir ? " by pipe and air" : ""}`,
    filled: `${length(height + own.staticHead)} − ${length(height)} − ${length(own.staticHead - own.flowingHead)} = ${length(own.flowingHead)}`,
    notes: [
      `Heights are above the ground at the source. With nothing flowing and no air in the pipe the head would be ${length(own.staticHead)}.`,
      `Taken by the pipe: summed over each piece of it and each fitting, by ${law}, h = ${FRICTION_FORMULAS[checked.friction]}; with the flow of this drinker added where it is not among those at work.`,
      ...(keepsAir
        ? [
            "Taken by air: the height of each column of air the pipe keeps on the way to this drinker when filled from empty, and all of it behind a hump above the water. See Filling from empty.",
          ]
        : []),
      `Second opinion: ${LAW_WORDS[otherLaw(checked.friction)]} leaves ${length(second.flowingHead)}.`,
    ],
    sources: [...FORMULA_SOURCES.statics, ...FORMULA_SOURCES.hazenWilliams, ...FORMULA_SOURCES.darcyWeisbach],
  };
}

const FRICTION_FORMULAS = {
  hazenWilliams: "10.67 L Q^1.852 / (C^1.852 d^4.8704)",
  darcyWeisbach: "f (L/d) v² / 2g",
} as const;

function flowOf({ checked, drinker, moment, system }: HowGotRequest): HowGot {
  const { drinkers } = checked.line;
  const own = checked.drinkers[drinker]!.moments[moment][checked.friction];
  const second = checked.drinkers[drinker]!.moments[moment][otherLaw(checked.friction)];
  const flow = (value: number) => showFlow(value, system);
  const length = (value: number) => showHeadInFormula(value, system);
  const coefficient = drinkers.coefficient[drinker]!;
  const exponent = trimmed(drinkers.exponent[drinker]!, 3);
  const opening = drinkers.openingHead[drinker]!;
  const group = drinkers.groups[drinkers.group[drinker]!]!;
  const isIdle = own.flow === 0;
  return {
    title: `Flow while worked, ${MOMENT_WORDS[moment]}`,
    result: flow(own.flow),
    formula: "flow = flow at 1 m × ((head − head that opens it) / 1 m)^x",
    filled: isIdle
      ? `It gives nothing at this moment; x = ${exponent}, opens at ${length(opening)}, flow at 1 m ${flow(coefficient)}`
      : `${flow(coefficient)} × ((${length(own.flowingHead)} − ${length(opening)}) / ${length(1)})^${exponent} = ${flow(own.flow)}`,
    notes: [
      `${group.kindName}: one such drinker may give ${trimmed(group.flowLow, 2)} to ${trimmed(group.flowHigh, 2)} times this. It needs ${flow(drinkers.need[drinker]!)}.`,
      ...(isIdle
        ? []
        : [`Second opinion: with ${LAW_WORDS[otherLaw(checked.friction)]} ${flow(second.flow)}.`]),
    ],
    sources: sourceOfKind(group.kindId),
  };
}

/** Where the figures of a drinker's kind were read; none for one the user has measured. */
function sourceOfKind(kindId: string): readonly string[] {
  const kind = drinkerById(kindId);
  return kind === undefined ? [] : [kind.citation.source];
}

function marginOf({ checked, drinker, system }: HowGotRequest): HowGot {
  const verdict = checked.drinkers[drinker]!;
  const head = (value: number) => showHeadInFormula(value, system);
  return {
    title: `Margin, ${MOMENT_WORDS[verdict.moment]}`,
    result: writeSigned(verdict.margin, system),
    ...writeMargin(verdict, headNeededBy(checked, drinker), head),
    notes: [
      `Taken with ${LAW_WORDS[verdict.friction]}, the more cautious of the two laws here. ${
        verdict.lawsAgree
          ? "Both laws give the same verdict."
          : "The two laws differ; the worse verdict stands."
      }`,
    ],
    sources: FORMULA_SOURCES.statics,
  };
}

/** Head at which a drinker gives just what it needs: its law, solved for the head [m]. */
function headNeededBy({ line: { drinkers } }: Checked, d: number): number {
  const need = drinkers.need[d]!;
  const opening = drinkers.openingHead[d]!;
  return need === 0 ? opening : opening + (need / drinkers.coefficient[d]!) ** (1 / drinkers.exponent[d]!);
}

function writeMargin(
  { because, margin }: DrinkerVerdict,
  headNeeded: number,
  head: (value: number) => string,
): { formula: string; filled: string } {
  if (because.code === "idleHeadTooHigh") {
    return {
      formula: "margin = head it holds − head when full and idle",
      filled: `${head(because.holdsUpTo)} − ${head(because.head)} = ${head(margin)}`,
    };
  }
  if (because.code === "idleHeadTooLow") {
    return {
      formula: "margin = head with nobody drinking − head from which it seals",
      filled: `${head(because.head)} − ${head(because.sealsFrom)} = ${head(margin)}`,
    };
  }
  return {
    formula: "margin = head at the drinker while it gives its need − head it needs for that",
    filled: `${head(margin + headNeeded)} − ${head(headNeeded)} = ${head(margin)}`,
  };
}
