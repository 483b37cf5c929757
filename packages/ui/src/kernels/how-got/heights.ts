import { LAW_WORDS, type MomentName, runEnds } from "@headfall/hydraulics";
import { otherLaw } from "../other-law.js";
import { metresOf } from "../typed-metres.js";
import { difference, product, quotient, sum, term } from "./expression.js";
import { AT_MOMENT } from "./figures.js";
import { type HowGot, type Step, soundSteps, stepOf } from "./how-got.js";
import { type HowRequest, placeName, quoted } from "./request.js";
import { alwaysValid } from "./validity.js";

/** Two heights closer than this are one [m]. */
const SAME_HEIGHT = 1e-6;

const PLUMB = alwaysValid("Heights", "added and taken away, above the ground at the first source");

interface HeightTraced {
  readonly steps: readonly Step[];
  readonly note: string;
}

/** Height of a place of the pipe, from what the plan says of it or of the runs that lead there. */
export function howPointHeight(request: HowRequest, point: number): HowGot {
  const { checked, figures } = request;
  const height = checked.line.points.height[point]!;
  const { steps, note } = traceHeight(request, point);
  return {
    title: `Height of the pipe at ${placeName(request, point)}`,
    result: figures.length(height),
    steps: soundSteps(...steps),
    valid: [PLUMB],
    notes: note === "" ? [] : [note],
    sources: ["closed-form"],
  };
}

/** Height of a drinker's own valve: that of the pipe it hangs from, less its drop. */
export function howDrinkerHeight(request: HowRequest, drinker: number): HowGot {
  const { checked, figures } = request;
  const { drinkers, points } = checked.line;
  const point = drinkers.point[drinker]!;
  const pipe = points.height[point]!;
  const height = drinkers.height[drinker]!;
  const write = figures.alike(pipe, height);
  return {
    title: `Height of ${quoted(drinkers.id[drinker]!)}`,
    result: figures.length(height),
    steps: soundSteps(
      stepOf(
        "drinker's height",
        difference(
          term("height of the pipe there", pipe, write(pipe), { of: "pointHeight", point }),
          term("drop", pipe - height, write(pipe - height)),
        ),
        write,
      ),
    ),
    valid: [PLUMB],
    notes: [`It hangs ${figures.length(drinkers.along[drinker]!)} along its run.`],
    sources: ["closed-form"],
  };
}

function traceHeight(request: HowRequest, point: number): HeightTraced {
  return (
    ofSource(request, point) ??
    ofStatedPoint(request, point) ??
    ofStation(request, point) ??
    ofRunEnd(request, point) ?? {
      steps: [],
      note: "As high as the start of its run: a device has no length.",
    }
  );
}

function ofSource({ checked, figures }: HowRequest, point: number): HeightTraced | undefined {
  const source = checked.line.sources.find((candidate) => candidate.point === point);
  if (source === undefined) return undefined;
  const { ground, stand, outlet } = source;
  const write = figures.alike(ground, stand, outlet);
  const parts = sum(
    term("ground", ground, write(ground)),
    term("stand", stand, write(stand)),
    term("outlet above the inside bottom", outlet, write(outlet)),
  );
  return { steps: [stepOf("height", parts, write)], note: "" };
}

function ofStatedPoint({ checked, plan, figures }: HowRequest, point: number): HeightTraced | undefined {
  const { id, height } = checked.line.points;
  const stated = plan?.points?.find((candidate) => candidate.id === id[point]);
  if (stated === undefined || (stated.ground === undefined && stated.above === undefined)) return undefined;
  const [ground, above] = [metresOf(stated.ground), metresOf(stated.above)];
  if (Math.abs(ground + above - height[point]!) > SAME_HEIGHT) return undefined;
  const write = figures.alike(ground, above);
  const parts = sum(term("ground", ground, write(ground)), term("above the ground", above, write(above)));
  return {
    steps: [stepOf("height", parts, write)],
    note: "Both as the plan says; what it leaves out counts as nothing.",
  };
}

/** A place between the ends of a run: surveyed, or on the straight between two places whose heights are known. */
function ofStation(request: HowRequest, point: number): HeightTraced | undefined {
  const { line } = request.checked;
  for (let run = 0; run < line.runs.length; run++) {
    const { points } = line.runs[run]!;
    const at = points.indexOf(point, 1);
    if (at < 1 || at === points.length - 1) continue;
    return line.points.measured[point] === 1 ? ofSurvey(request, run, point) : onStraight(request, run, at);
  }
  return undefined;
}

/** What the falls along a run are counted from, and in what words. */
function reference(request: HowRequest, run: number) {
  const { line } = request.checked;
  const start = line.runs[run]!.points[0]!;
  const source = line.sources.find((candidate) => candidate.point === start);
  if (source !== undefined)
    return { symbol: "ground under the source", value: source.ground, from: undefined };
  const from = { of: "pointHeight", point: start } as const;
  return { symbol: "height where the run starts", value: line.points.height[start]!, from };
}

function ofSurvey(request: HowRequest, run: number, point: number): HeightTraced {
  return {
    steps: [fallStep(request, run, point)],
    note: "The fall was surveyed there, from a string or a hose level.",
  };
}

function fallStep(request: HowRequest, run: number, point: number): Step {
  const { symbol, value, from } = reference(request, run);
  const fall = value - request.checked.line.points.height[point]!;
  const write = request.figures.alike(value, fall);
  return stepOf(
    "height",
    difference(term(symbol, value, write(value), from), term("fall", fall, write(fall))),
    write,
  );
}

function onStraight(request: HowRequest, run: number, at: number): HeightTraced {
  const { checked, figures } = request;
  const { points, along } = checked.line.runs[run]!;
  const { height, measured } = checked.line.points;
  const last = points.length - 1;
  let before = at - 1;
  while (before > 0 && measured[points[before]!] !== 1) before--;
  let after = at + 1;
  while (after < last && measured[points[after]!] !== 1) after++;
  const [a, b] = [height[points[before]!]!, height[points[after]!]!];
  const [span, part] = [along[after]! - along[before]!, along[at]! - along[before]!];
  const [write, walked] = [figures.alike(a, b), figures.alike(span)];
  const start = term("height before it", a, write(a), { of: "pointHeight", point: points[before]! });
  const end = term("height after it", b, write(b), { of: "pointHeight", point: points[after]! });
  const share = quotient(term("way to it", part, walked(part)), term("way between them", span, walked(span)));
  return {
    steps: [stepOf("height", sum(start, product(difference(end, start), share)), write)],
    note: "Between measured places the pipe is taken to be straight.",
  };
}

/** The end of a run: what its falls are counted from, less the fall; or the other way, from its end up to its start. */
function ofRunEnd(request: HowRequest, point: number): HeightTraced | undefined {
  const { line } = request.checked;
  const arriving = line.runs.findIndex(
    ({ points }) => points[points.length - 1] === point && points[0] !== point,
  );
  if (arriving >= 0)
    return { steps: [fallStep(request, arriving, point)], note: fallNote(request, arriving) };
  const leaving = line.runs.findIndex(({ points }) => points[0] === point);
  if (leaving < 0) return undefined;
  const { points } = line.runs[leaving]!;
  const end = points[points.length - 1]!;
  const [here, there] = [line.points.height[point]!, line.points.height[end]!];
  const write = request.figures.alike(here, there);
  const known = term("height where the run ends", there, write(there), { of: "pointHeight", point: end });
  return {
    steps: [stepOf("height", sum(known, term("fall", here - there, write(here - there))), write)],
    note: fallNote(request, leaving),
  };
}

/** Whether the fall of a run was told, and where it was told. */
export function fallNote({ plan, checked }: HowRequest, run: number): string {
  const planned = plan?.runs[checked.line.runs[run]!.index];
  if (planned === undefined) return "";
  if (planned.fall !== undefined) return `The plan tells the fall of this run: ${quoted(planned.fall)}.`;
  const ends = plan === undefined ? undefined : runEnds(plan)[run];
  const isStated = (id: string | undefined) =>
    plan?.points?.some((point) => point.id === id && (point.ground ?? point.above) !== undefined) === true;
  if (isStated(ends?.to)) return "The fall follows from the heights that the plan states at its ends.";
  if (planned.survey !== undefined)
    return "The fall follows from the run's survey, or from the heights of its ends.";
  return "The plan tells no fall here: it follows from the heights around, or the run is taken as level.";
}

/** Head of the water at a place of the pipe: the grade line less the pipe's own height. */
export function howPointHead(request: HowRequest, point: number, moment: MomentName): HowGot {
  const { checked, figures } = request;
  const law = otherLaw(checked.friction);
  const headBy = (friction: typeof law) => checked.solutions[moment][friction].head[point]!;
  const grade = headBy(checked.friction);
  const height = checked.line.points.height[point]!;
  const write = figures.alike(grade, height);
  return {
    title: `Head in the pipe at ${placeName(request, point)}, ${AT_MOMENT[moment]}`,
    result: figures.head(grade - height),
    steps: soundSteps(
      stepOf(
        "head",
        difference(
          term("grade line", grade, write(grade)),
          term("height of the pipe", height, write(height), { of: "pointHeight", point }),
        ),
        write,
      ),
    ),
    valid: [PLUMB],
    secondOpinion: {
      by: LAW_WORDS[law],
      result: figures.head(headBy(law) - height),
      difference: figures.headDifference(headBy(law) - grade),
    },
    notes: [
      "The grade line is how high the water would stand in an open pipe set up here: the source's surface less all that is lost up to here.",
    ],
    sources: ["closed-form", "hazen-williams-si", "churchill-1977"],
  };
}
