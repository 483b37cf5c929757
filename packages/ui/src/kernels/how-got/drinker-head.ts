import { LAW_WORDS, type MomentName } from "@headfall/hydraulics";
import { otherLaw } from "../other-law.js";
import { pathToDrinker } from "../profile-path.js";
import { difference, term } from "./expression.js";
import { AT_MOMENT } from "./figures.js";
import { type HowGot, type Parts, soundSteps, stepOf } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import { busiestState } from "./run-state.js";
import { alwaysValid, validityOfFriction } from "./validity.js";

/** Two heads closer than this are the same water [m]. */
const SAME_HEAD = 1e-6;

/** The head on a drinker if nothing flowed anywhere: the water that feeds it, less its own height. */
export function howStaticHead(request: HowRequest, drinker: number, moment: MomentName): HowGot {
  const { checked, figures } = request;
  const { staticHead } = checked.drinkers[drinker]!.moments[moment][checked.friction];
  const height = checked.line.drinkers.height[drinker]!;
  const isReached = reached(request, drinker, moment);
  const write = figures.alike(height, height + staticHead);
  return {
    title: `Static head at ${quoted(checked.drinkers[drinker]!.drinker)}, ${AT_MOMENT[moment]}`,
    result: figures.head(staticHead),
    steps: soundSteps(
      stepOf(
        "static head",
        difference(feedingTerm(request, drinker, moment, write), heightTerm(request, drinker, write)),
        write,
      ),
    ),
    valid: [alwaysValid("Hydrostatics", "heights above the ground at the first source")],
    notes: isReached
      ? []
      : ["No open pipe leads here from any source: what stands in the pipe is all there is."],
    sources: ["closed-form"],
  };
}

const heightTerm = ({ checked }: HowRequest, drinker: number, write: (value: number) => string) => {
  const height = checked.line.drinkers.height[drinker]!;
  return term("drinker's height", height, write(height), { of: "drinkerHeight", drinker });
};

/** Height of the water that feeds a drinker, traced to a source where one stands at that height. */
function feedingTerm(
  { checked }: HowRequest,
  drinker: number,
  moment: MomentName,
  write: (value: number) => string,
) {
  const feeding =
    checked.line.drinkers.height[drinker]! +
    checked.drinkers[drinker]!.moments[moment][checked.friction].staticHead;
  const source = checked.sources.findIndex(({ surface }) => Math.abs(surface[moment] - feeding) < SAME_HEAD);
  return source < 0
    ? term("height of the water that feeds it, past regulators and valves", feeding, write(feeding))
    : term("water surface", feeding, write(feeding), { of: "sourceSurface", source, moment });
}

function reached({ checked }: HowRequest, drinker: number, moment: MomentName): boolean {
  const solution = checked.solutions[moment][checked.friction];
  return solution.reached[checked.line.drinkers.point[drinker]!] === 1;
}

/** The head at a drinker while worked: from the water's surface down, everything that is taken on the way. */
export function howHead(request: HowRequest, drinker: number, moment: MomentName): HowGot {
  const { checked, figures } = request;
  const reading = checked.drinkers[drinker]!.moments[moment];
  const own = reading[checked.friction];
  const law = otherLaw(checked.friction);
  const second = reading[law].flowingHead;
  const taken = takenOnTheWay(request, drinker, moment);
  const height = checked.line.drinkers.height[drinker]!;
  const write = figures.alike(height, height + own.staticHead, ...taken.map(({ value }) => value));
  const parts = partsOfWay(request, drinker, moment, taken[0]?.value ?? 0);
  return {
    title: `Head at ${quoted(checked.drinkers[drinker]!.drinker)}, ${AT_MOMENT[moment]}`,
    result: figures.head(own.flowingHead),
    steps: soundSteps(
      stepOf(
        "head",
        difference(
          feedingTerm(request, drinker, moment, write),
          heightTerm(request, drinker, write),
          ...taken.map(({ symbol, value }) => term(symbol, value, write(value))),
        ),
        write,
      ),
    ),
    ...(parts === undefined ? {} : { parts }),
    valid: validOnTheWay(request, drinker, moment),
    secondOpinion: {
      by: LAW_WORDS[law],
      result: figures.head(second),
      difference: figures.headDifference(second - own.flowingHead),
    },
    notes: [
      `Heights count from the ground at the first source. Losses are by ${LAW_WORDS[checked.friction]}.`,
      ...notesOnTaken(taken),
    ],
    sources: ["closed-form", "hazen-williams-si", "churchill-1977", "hooper-1981"],
  };
}

const IN_PIPE = "lost in the pipe";
const OWN_DRAW = "taken by its own draw";
const AIR = "kept back by air";
const HUMP = "kept back by a hump above the water";

interface Taken {
  readonly symbol: string;
  readonly value: number;
}

function notesOnTaken(taken: readonly Taken[]): string[] {
  const takes = (...symbols: string[]) => taken.some(({ symbol }) => symbols.includes(symbol));
  return [
    ...(takes(OWN_DRAW)
      ? [
          "This drinker is not among those at work at this moment; what its own draw would take is counted besides.",
        ]
      : []),
    ...(takes(AIR, HUMP)
      ? ["Filled from empty, the pipe on the way keeps air. See Filling from empty."]
      : []),
  ];
}

/** What lies between the static head and the head while worked, by who takes it; nothings are left out. */
function takenOnTheWay({ checked }: HowRequest, drinker: number, moment: MomentName): readonly Taken[] {
  const { line, friction, solutions } = checked;
  const height = line.drinkers.height[drinker]!;
  const point = line.drinkers.point[drinker]!;
  const readings = checked.drinkers[drinker]!.moments;
  const own = readings[moment][friction];
  const bare = (name: MomentName) => solutions[name][friction].head[point]! - height;
  const lost = own.staticHead - bare(moment);
  const rest = bare(moment) - own.flowingHead;
  const isBehindHump = isHumpAbove(checked.filling) && own.flow === 0 && own.flowingHead === 0;
  const air = isBehindHump ? 0 : Math.min(rest, bare("fullIdle") - readings.fullIdle[friction].flowingHead);
  const entries = [
    { symbol: IN_PIPE, value: lost },
    { symbol: OWN_DRAW, value: isBehindHump ? 0 : rest - air },
    { symbol: AIR, value: air },
    { symbol: HUMP, value: isBehindHump ? rest : 0 },
  ];
  return entries.filter(({ symbol, value }) => symbol === IN_PIPE || Math.abs(value) > 1e-9);
}

const isHumpAbove = (filling: HowRequest["checked"]["filling"]): boolean =>
  filling.some(({ code }) => code === "humpAboveWater");

/** The loss in the pipe run by run, along the way from the source; the rows add up to what is lost in the pipe. */
function partsOfWay(
  request: HowRequest,
  drinker: number,
  moment: MomentName,
  lost: number,
): Parts | undefined {
  const { checked, figures } = request;
  const byRun = lossByRun(request, drinker, moment);
  const total = [...byRun.values()].reduce((all, value) => all + value, 0);
  if (!Number.isFinite(total) || [...byRun.values()].every((value) => Math.abs(value) < 1e-9))
    return undefined;
  const already = lost - total;
  const write = figures.alike(already, ...byRun.values());
  const row = (name: string, value: number) => ({ cells: [name, write(value)], value });
  return {
    caption: "Lost in the pipe, run by run on the way from the source",
    columns: ["Run", "Lost"],
    rows: [
      ...[...byRun].map(([run, value]) => row(quoted(checked.line.runs[run]!.id), value)),
      ...(Math.abs(already) > 1e-7
        ? [row("less what regulators and valves take with nobody drinking", already)]
        : []),
    ],
  };
}

/** Fall of the grade line along each run on the way to a drinker, devices included. */
function lossByRun({ checked }: HowRequest, drinker: number, moment: MomentName): Map<number, number> {
  const { line, friction, solutions } = checked;
  const byRun = new Map<number, number>();
  const path = pathToDrinker(line, drinker);
  if (path === undefined) return byRun;
  const { head } = solutions[moment][friction];
  const end = path.points.indexOf(line.drinkers.point[drinker]!);
  for (let k = 1; k <= end; k++) {
    const run = line.segments.run[path.segments[k]!]!;
    const lost = head[path.points[k - 1]!]! - head[path.points[k]!]!;
    byRun.set(run, (byRun.get(run) ?? 0) + lost);
  }
  return byRun;
}

/** Where the friction laws stand on the run that the drinker hangs on. */
function validOnTheWay(request: HowRequest, drinker: number, moment: MomentName) {
  const { checked, figures } = request;
  const state = busiestState(request, checked.line.drinkers.run[drinker]!, moment);
  return [
    alwaysValid("Hydrostatics", "heights above the ground at the first source"),
    ...(state === undefined || state.reynolds === 0
      ? []
      : [
          validityOfFriction("hazenWilliams", state, figures),
          validityOfFriction("darcyWeisbach", state, figures),
        ]),
  ];
}
