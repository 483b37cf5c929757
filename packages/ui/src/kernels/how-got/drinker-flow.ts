import { drinkerById, drinkerLawThrough, LAW_WORDS, type MomentName } from "@headfall/hydraulics";
import { otherLaw } from "../other-law.js";
import { constant, difference, power, product, quotient, sum, term } from "./expression.js";
import { AT_MOMENT, bare } from "./figures.js";
import { type HowGot, type Step, soundSteps, stepOf } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import { validityOfDrinkerLaw } from "./validity.js";

/** Flow of a drinker while it is worked: its law at the head it has. */
export function howFlow(request: HowRequest, drinker: number, moment: MomentName): HowGot {
  const { checked, figures } = request;
  const reading = checked.drinkers[drinker]!.moments[moment];
  const own = reading[checked.friction];
  const law = otherLaw(checked.friction);
  const isIdle = own.flow === 0;
  return {
    title: `Flow of ${quoted(checked.drinkers[drinker]!.drinker)} while worked, ${AT_MOMENT[moment]}`,
    result: isIdle ? "none" : figures.flow(own.flow),
    steps: isIdle
      ? []
      : soundSteps(
          stepOfLaw(request, drinker, moment, own.flowingHead),
          ...stepOfCoefficient(request, drinker),
        ),
    valid: [validityOfDrinker(request, drinker, isIdle ? undefined : own.flowingHead)],
    ...(isIdle
      ? {}
      : {
          secondOpinion: {
            by: LAW_WORDS[law],
            result: figures.flow(reading[law].flow),
            difference: figures.flowDifference(reading[law].flow - own.flow),
          },
        }),
    notes: [...(isIdle ? [whyIdle(request, drinker, moment)] : []), scatterOf(request, drinker)],
    sources: sourcesOfKind(request, drinker),
  };
}

/** Flow it must give: of its kind, or as the plan says. */
export function howNeed(request: HowRequest, drinker: number): HowGot {
  const { checked, figures } = request;
  const { drinkers } = checked.line;
  const need = drinkers.need[drinker]!;
  const group = drinkers.groups[drinkers.group[drinker]!]!;
  const kind = drinkerById(group.kindId);
  const isOfKind = kind !== undefined && Math.abs(kind.need - need) < 1e-12;
  return {
    title: `Flow that ${quoted(checked.drinkers[drinker]!.drinker)} must give while worked`,
    result: figures.flow(need),
    steps: need === 0 ? [] : soundSteps(stepOfHeadNeeded(request, drinker)),
    valid: [validityOfDrinker(request, drinker, undefined)],
    notes: [
      isOfKind
        ? `What the table of drinkers asks of its kind, ${quoted(group.kindName)}.`
        : "As the plan says, for this group or for a drinker of the plan's own.",
    ],
    sources: isOfKind ? [kind.citation.source] : [],
  };
}

/** A drinker's law states its flow at one unit of head: 1 m, or 1 ft. */
function lawOf({ checked, figures }: HowRequest, drinker: number) {
  const { drinkers } = checked.line;
  const exponent = drinkers.exponent[drinker]!;
  const coefficient = drinkers.coefficient[drinker]! * figures.unitHead ** exponent;
  const unit = figures.system === "us" ? "1 ft" : "1 m";
  return {
    exponent: term("x", exponent, bare(exponent, 4)),
    coefficient: term(`flow at ${unit}`, coefficient, figures.flowIn(coefficient)),
    unit: constant(figures.unitHead, unit),
  };
}

function stepOfLaw(request: HowRequest, drinker: number, moment: MomentName, flowingHead: number): Step {
  const { figures, checked } = request;
  const opening = checked.line.drinkers.openingHead[drinker]!;
  const { exponent, coefficient, unit } = lawOf(request, drinker);
  const write = figures.alike(flowingHead, opening);
  const spare = difference(
    term("head", flowingHead, write(flowingHead), { of: "drinkerHead", drinker, moment }),
    term("head that opens it", opening, write(opening)),
  );
  return stepOf("flow", product(coefficient, power(quotient(spare, unit), exponent)), figures.flowIn);
}

/** The flow at one unit of head, from the flow and the head that the table states. */
function stepOfCoefficient({ checked, figures }: HowRequest, drinker: number): Step[] {
  const { drinkers } = checked.line;
  const kind = drinkerById(drinkers.groups[drinkers.group[drinker]!]!.kindId);
  if (kind === undefined) return [];
  const { head, flow, openingHead, exponent } = kind;
  if (Math.abs(drinkerLawThrough(kind).coefficient / drinkers.coefficient[drinker]! - 1) > 1e-9) return [];
  const write = figures.alike(head, openingHead);
  const unit = figures.system === "us" ? "1 ft" : "1 m";
  const spare = difference(
    term("head it is stated at", head, write(head)),
    term("head that opens it", openingHead, write(openingHead)),
  );
  const share = power(quotient(spare, constant(figures.unitHead, unit)), term("x", exponent, bare(exponent)));
  return [
    stepOf(
      `flow at ${unit}`,
      quotient(term("stated flow", flow, figures.flowIn(flow)), share),
      figures.flowIn,
    ),
  ];
}

/** Head at which a drinker gives just what it needs: its law, solved for the head. */
export function stepOfHeadNeeded(request: HowRequest, drinker: number): Step {
  const { checked, figures } = request;
  const { drinkers } = checked.line;
  const need = drinkers.need[drinker]!;
  const opening = drinkers.openingHead[drinker]!;
  const { exponent, coefficient, unit } = lawOf(request, drinker);
  const write = figures.alike(headNeeded(request, drinker), opening);
  const share = quotient(
    term("need", need, figures.flowIn(need), { of: "drinkerNeed", drinker }),
    coefficient,
  );
  return stepOf(
    "head it needs",
    sum(
      term("head that opens it", opening, write(opening)),
      product(unit, power(share, quotient(1, exponent))),
    ),
    write,
  );
}

export function headNeeded({ checked }: HowRequest, drinker: number): number {
  const { drinkers } = checked.line;
  const share = drinkers.need[drinker]! / drinkers.coefficient[drinker]!;
  return drinkers.openingHead[drinker]! + (share === 0 ? 0 : share ** (1 / drinkers.exponent[drinker]!));
}

export function validityOfDrinker(
  { checked, figures }: HowRequest,
  drinker: number,
  head: number | undefined,
) {
  const { drinkers } = checked.line;
  const kind = drinkerById(drinkers.groups[drinkers.group[drinker]!]!.kindId);
  return validityOfDrinkerLaw(
    drinkers.exponent[drinker]!,
    kind === undefined ? "" : ` (${figures.head(kind.head)})`,
    head === undefined ? "" : `, at ${figures.head(head)}`,
  );
}

function scatterOf({ checked, figures }: HowRequest, drinker: number): string {
  const { drinkers } = checked.line;
  const group = drinkers.groups[drinkers.group[drinker]!]!;
  return `${quoted(group.kindName)}: one such drinker may give ${bare(group.flowLow, 2)} to ${bare(group.flowHigh, 2)} times this. It needs ${figures.flow(drinkers.need[drinker]!)}.`;
}

function whyIdle({ checked, figures }: HowRequest, drinker: number, moment: MomentName): string {
  if (moment === "fullIdle") return "At this moment nobody drinks, so nothing flows.";
  const opening = checked.line.drinkers.openingHead[drinker]!;
  const { flowingHead } = checked.drinkers[drinker]!.moments[moment][checked.friction];
  return `It gives nothing: it has ${figures.head(flowingHead)} of head, and opens at ${figures.head(opening)}.`;
}

/** Where the figures of a drinker's kind were read; the user's own are fitted by least squares. */
export function sourcesOfKind({ checked }: HowRequest, drinker: number): readonly string[] {
  const { drinkers } = checked.line;
  const kind = drinkerById(drinkers.groups[drinkers.group[drinker]!]!.kindId);
  return ["emitter-exponents", kind?.citation.source ?? "least-squares"];
}
