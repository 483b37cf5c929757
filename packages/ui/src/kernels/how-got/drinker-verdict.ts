import {
  DEFAULTS,
  type DrinkerVerdict,
  LAW_WORDS,
  SAMPLED_DOUBTS,
  writeCertainty,
  writeReason,
} from "@headfall/hydraulics";
import { otherLaw } from "../other-law.js";
import { readMetres } from "../typed-metres.js";
import { VERDICT_MARKS } from "../verdict-marks.js";
import { headNeeded, sourcesOfKind, stepOfHeadNeeded, validityOfDrinker } from "./drinker-flow.js";
import { difference, quotient, term } from "./expression.js";
import { AT_MOMENT, bare, type Figures, percent } from "./figures.js";
import { type HowGot, type Step, soundSteps, stepOf, type Validity } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import { busiestState } from "./run-state.js";
import { alwaysValid, validityOfFriction } from "./validity.js";

/** The rule that gave a drinker its mark, with the heads it hangs on. */
export function howVerdict(request: HowRequest, drinker: number): HowGot {
  const verdict = request.checked.drinkers[drinker]!;
  const margin = howMargin(request, drinker);
  const { system } = request.figures;
  return {
    ...margin,
    title: `Verdict on ${quoted(verdict.drinker)}`,
    result: VERDICT_MARKS[verdict.verdict].word,
    notes: [
      sentence(inOwnUnits(writeReason(verdict.because, system), request.figures)),
      ...verdict.also.map(
        (also) =>
          `Besides, it ${VERDICT_MARKS[also.verdict].word}: ${inOwnUnits(writeReason(also.because, system), request.figures)}.`,
      ),
      ...margin.notes,
      ...(verdict.certainty.kind === "notSampled"
        ? []
        : [inOwnUnits(writeCertainty(verdict.certainty), request.figures)]),
    ],
  };
}

/** Places between the ends of a run carry their distance in their names, in metres. */
const inOwnUnits = (text: string, figures: Figures): string =>
  figures.system === "us"
    ? text.replace(/ at (\d+\.\d\d) m\b/g, (_, metres) => ` at ${figures.length(Number(metres))}`)
    : text;

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

/** Head to spare, or missing, by the rule that decided the verdict. */
export function howMargin(request: HowRequest, drinker: number): HowGot {
  const { checked, figures } = request;
  const verdict = checked.drinkers[drinker]!;
  return {
    title: `Margin of ${quoted(verdict.drinker)}, ${AT_MOMENT[verdict.moment]}`,
    result: figures.margin(verdict.margin),
    steps: soundSteps(...stepsOfMargin(request, drinker, verdict)),
    valid: validOfMargin(request, drinker, verdict),
    secondOpinion: {
      by: LAW_WORDS[otherLaw(verdict.friction)],
      result: verdict.lawsAgree ? "the same verdict" : "a better verdict",
      difference: verdict.lawsAgree ? "with more to spare, or as much" : "the worse of the two stands",
    },
    notes: [`Taken with ${LAW_WORDS[verdict.friction]}, the more cautious of the two laws here.`],
    sources: isOfSeal(verdict)
      ? ["closed-form", ...sourcesOfKind(request, drinker).slice(1)]
      : ["closed-form", ...sourcesOfKind(request, drinker)],
  };
}

const isOfSeal = ({ because: { code } }: DrinkerVerdict): boolean =>
  code === "idleHeadTooHigh" || code === "idleHeadTooLow";

function stepsOfMargin(
  request: HowRequest,
  drinker: number,
  { because, margin, friction, moments }: DrinkerVerdict,
): Step[] {
  const { figures, checked } = request;
  if (because.code === "idleHeadTooHigh") {
    const write = figures.alike(because.holdsUpTo, because.head);
    const held = term("head it holds", because.holdsUpTo, write(because.holdsUpTo));
    // Where two barrels are joined water runs between them with nobody drinking, and the laws may differ.
    const { [friction]: taken, [checked.friction]: shown } = moments.fullIdle;
    const from = { of: "drinkerStaticHead", drinker, moment: "fullIdle" } as const;
    const isShown = taken.staticHead === shown.staticHead;
    const idle = term(
      "head when full and idle",
      because.head,
      write(because.head),
      isShown ? from : undefined,
    );
    return [stepOf("margin", difference(held, idle), write)];
  }
  if (because.code === "idleHeadTooLow") {
    const write = figures.alike(because.sealsFrom, because.head);
    const idle = term("head with nobody drinking", because.head, write(because.head));
    const seals = term("head from which it seals", because.sealsFrom, write(because.sealsFrom));
    return [stepOf("margin", difference(idle, seals), write)];
  }
  const needed = headNeeded(request, drinker);
  const write = figures.alike(margin + needed, needed);
  const left = term("head while it gives its need", margin + needed, write(margin + needed));
  return [
    stepOf("margin", difference(left, term("head it needs", needed, write(needed))), write),
    ...(needsFlow(request, drinker) ? [stepOfHeadNeeded(request, drinker)] : []),
  ];
}

const needsFlow = ({ checked }: HowRequest, drinker: number): boolean =>
  checked.line.drinkers.need[drinker]! > 0;

function validOfMargin(request: HowRequest, drinker: number, verdict: DrinkerVerdict): readonly Validity[] {
  const { checked, figures } = request;
  if (isOfSeal(verdict)) return [alwaysValid("Hydrostatics", "heights above the ground at the first source")];
  const state = busiestState(request, checked.line.drinkers.run[drinker]!, verdict.moment, verdict.friction);
  return [
    validityOfDrinker(request, drinker, undefined),
    ...(state === undefined || state.reynolds === 0
      ? []
      : [validityOfFriction(verdict.friction, state, figures)]),
  ];
}

/** How sure a verdict is: of how many plans that fit the measurements as well it holds, and what was varied. */
export function howCertainty(request: HowRequest, drinker: number): HowGot {
  const { certainty, drinker: name } = request.checked.drinkers[drinker]!;
  const title = `How sure the verdict on ${quoted(name)} is`;
  return certainty.kind === "notSampled"
    ? {
        title,
        result: "not asked yet",
        steps: [],
        valid: [],
        notes: ["No plans were tried beside this one yet."],
        sources: [],
      }
    : { title, ...sampledTold(request, drinker, certainty) };
}

type Sampled = Exclude<DrinkerVerdict["certainty"], { kind: "notSampled" }>;

function sampledTold(request: HowRequest, drinker: number, certainty: Sampled): Omit<HowGot, "title"> {
  const { share, isDecided } = certainty;
  const isSure = certainty.kind === "sure";
  return {
    result: `${isSure ? "sure" : "a close call"}: ${percent(share)}`,
    steps: [shareStep(certainty)],
    parts: {
      caption: `Varied evenly over all they may be, seed ${request.checked.madeFrom.seed}; two standard deviations`,
      columns: ["What", "How far"],
      rows: inputsVaried(request, drinker).map((cells) => ({ cells, value: 0 })),
    },
    valid: [
      {
        law: "A verdict is called sure",
        holds: `from ${percent(SAMPLED_DOUBTS.sureShare)} of the plans on`,
        here: `${percent(share)} of them agree`,
        isInside: isSure,
      },
    ],
    notes: [
      inOwnUnits(writeCertainty(certainty), request.figures),
      "Each of these plans is solved anew by both laws. The same seed gives the same answer.",
      isDecided
        ? "So many tell which side of the line it is on: on the other side they would be less likely than one in a hundred."
        : "So many do not yet tell which side of the line it is on.",
    ],
    sources: ["hydraulic-institute-edb", "joe-kuo-2008", "burley-2020", "wichura-1988"],
  };
}

function shareStep({ samples, share }: Sampled): Step {
  const agree = Math.round(share * samples);
  return stepOf(
    "share",
    quotient(
      term("plans with the same verdict", agree, bare(agree)),
      term("plans tried", samples, bare(samples)),
    ),
    percent,
  );
}

function inputsVaried({ checked, plan, figures }: HowRequest, drinker: number): string[][] {
  const { line } = checked;
  const group = line.drinkers.groups[line.drinkers.group[drinker]!]!;
  const run = line.runs[line.drinkers.run[drinker]!]!;
  const { coefficient, fittings, oneToTheNext, criticalLeast } = SAMPLED_DOUBTS;
  const share = (value: number) => `± ${percent(value)}`;
  return [
    [
      "each measured height",
      `± ${lengthTyped(plan?.doubts?.heights ?? DEFAULTS.heightDoubt.typed, figures)}`,
    ],
    [
      "water levels of a source",
      `± ${lengthTyped(plan?.doubts?.level ?? DEFAULTS.levelDoubt.typed, figures)}`,
    ],
    ["Hazen-Williams C, all together", share(coefficient)],
    ["losses of fittings, all together", share(fittings)],
    [`flow of ${quoted(group.kindName)}`, `${bare(group.flowLow, 2)} to ${bare(group.flowHigh, 2)} times`],
    ["one drinker against the next", share(oneToTheNext)],
    [
      `bore of ${quoted(run.id)}`,
      run.boreLow === run.boreHigh
        ? "as it is"
        : `${figures.length(run.boreLow)} to ${figures.length(run.boreHigh)}`,
    ],
    ["loss between laminar and turbulent", `${percent(criticalLeast)} to 100 % of it`],
  ];
}

function lengthTyped(typed: string, figures: Figures): string {
  const metres = readMetres(typed);
  return metres === undefined ? typed : figures.length(metres);
}
