import {
  type MishapResult,
  type Mishaps,
  writeClock,
  writeDuration,
  writeGuard,
  writeHarm,
  writeRowName,
} from "@headfall/hydraulics";
import { difference, quotient, sum, term } from "./expression.js";
import { type HowGot, type Step, soundSteps, stepOf, untold } from "./how-got.js";
import type { HowRequest } from "./request.js";
import type { HowSubject, MishapFigure } from "./subject.js";
import { alwaysValid } from "./validity.js";

type MishapSubject = Extract<HowSubject, { of: "mishap" | "mishapGuard" }>;
type Told = Omit<HowGot, "title" | "valid" | "sources">;

const HOUR = 3600;

const WHAT: Readonly<Record<MishapFigure, string>> = {
  harm: "Until harm",
  lost: "To the ground",
  empty: "Until nothing is left",
  pours: "Pours out when full",
  night: "Lost in a night",
};

const POURS = alwaysValid(
  "Torricelli's law and the laws of the line",
  "what pours out follows the height of its water, and the pipe on the way",
);

/** A figure of one mishap: read from its run through line and time. */
export function howMishap(request: HowRequest, subject: MishapSubject): HowGot {
  const { mishaps } = request.room;
  const row = mishaps?.rows[subject.row];
  if (mishaps === undefined || row === undefined) return UNTOLD;
  const name = writeRowName(row, mishaps);
  const rest = { valid: [POURS], sources: ["torricelli-draining", "common-practice"] };
  if (subject.of === "mishap")
    return {
      ...rest,
      ...toldOf(request, mishaps, row.worst, subject.what),
      title: `${WHAT[subject.what]}: ${name}`,
    };
  const guard = row.guards?.[subject.guard];
  if (guard === undefined) return UNTOLD;
  return {
    ...rest,
    ...guardTold(request, row.worst, guard),
    title: `${writeGuard(guard.guard, mishaps, request.figures.system)}: ${name}`,
  };
}

function toldOf(request: HowRequest, mishaps: Mishaps, worst: MishapResult, what: MishapFigure): Told {
  const { figures } = request;
  const begins = `Everything full at ${writeClock(mishaps.begins)} when it happens. Hoses run on; nobody looks, and nobody fills by hand.`;
  switch (what) {
    case "harm":
      return harmTold(worst, begins);
    case "lost":
      return lostTold(request, worst, begins);
    case "empty":
      return {
        result:
          worst.empty === undefined ? `not in ${writeDuration(worst.followed)}` : writeDuration(worst.empty),
        steps: [],
        notes: [begins, "Empty is when nothing more leaves any source: what is under the outlets stays."],
      };
    case "pours":
      return {
        result: figures.flow(worst.leakRate),
        steps: [],
        notes: [
          "The line is solved with the opening as one more law: flow grows with the root of the head over it, through its area. Everything is full and nobody drinks: the most that can pour.",
        ],
      };
    case "night":
      return {
        result: figures.volume(worst.night.lost),
        steps: [],
        notes: [
          "From full at dusk to dawn, nobody drinking and nobody filling: what is looked for in the morning.",
        ],
      };
  }
}

const harmTold = (worst: MishapResult, begins: string): Told => ({
  result: writeHarm(worst),
  steps: [],
  notes: [
    begins,
    worst.hasBirds
      ? "A bird goes without when the drinkers of its pen, all worked at once, pass less than the pen drinks in its busiest hour; at once where nothing comes to them; at the latest when nothing is left."
      : "The plan has no birds: harm is told by the time at which half of its drinkers give nothing.",
    "The moment is found exactly, on the run of level against time, birds drinking on the figure to size on.",
  ],
});

/** Each volume is its own sum over the run: that they balance is a test of it. */
function lostTold({ figures }: HowRequest, { balance }: MishapResult, begins: string): Told {
  const volume = (symbol: string, value: number) => term(symbol, value, figures.volumeIn(value));
  return {
    result: figures.volume(balance.lost),
    steps: soundSteps(
      stepOf(
        "to the ground",
        difference(
          sum(volume("at the start", balance.start), volume("poured in", balance.poured)),
          sum(volume("drunk", balance.drunk), volume("left", balance.left)),
        ),
        figures.volumeIn,
      ),
    ),
    notes: [begins, "What birds spill counts as drunk; what drips anyway counts as lost."],
  };
}

type Guarded = NonNullable<Mishaps["rows"][number]["guards"]>[number];

const guardTold = (request: HowRequest, worst: MishapResult, guarded: Guarded): Told => ({
  result:
    guarded.harmAfter === undefined
      ? "harm no longer comes"
      : `harm after ${writeDuration(guarded.harmAfter)}`,
  steps: soundSteps(...guardSteps(request, worst, guarded)),
  notes: [
    "The same mishap is run again on the plan with the guard in it; nothing is taken from a list.",
    MENDED_IN_TIME.has(guarded.guard.kind)
      ? "Four hours are left to mend it when it is found: common practice, no source."
      : "What it costs is not reckoned; guards stand in the order of what they usually cost: common practice, no source.",
    guarded.isEnough
      ? "With it a look every day is soon enough."
      : "Even with it a look every day may come too late.",
  ],
});

/** Guards that find a mishap and leave it to be mended. */
const MENDED_IN_TIME: ReadonlySet<string> = new Set(["look", "tap", "alarm"]);

/** Time bought, water kept, and what still pours where the guard slows it. */
function guardSteps({ figures }: HowRequest, worst: MishapResult, guarded: Guarded): Step[] {
  const { harmAfter, lost, leakRate } = guarded;
  const before = worst.hasBirds ? worst.firstWithout?.after : worst.halfDry;
  const hours = (seconds: number) => `${Number((seconds / HOUR).toPrecision(4))} h`;
  const bought =
    before === undefined || harmAfter === undefined
      ? []
      : [stepOf("time bought", difference(...withAndWithout(harmAfter, before, hours)), hours)];
  const [kept, spilt] = withAndWithout(lost, worst.balance.lost, figures.volumeIn);
  const [slowed, full] = withAndWithout(leakRate, worst.leakRate, figures.flowIn);
  const share = (value: number) => `${Math.round(value * 100)} %`;
  return [
    ...bought,
    stepOf("less to the ground", difference(spilt, kept), figures.volumeIn),
    ...(leakRate < SLOWED * worst.leakRate
      ? [stepOf("share that still pours", quotient(slowed, full), share)]
      : []),
  ];
}

/** A guard that lets less than this share pour is told to slow it. */
const SLOWED = 0.98;

const withAndWithout = (guarded: number, bare: number, write: (value: number) => string) =>
  [term("with it", guarded, write(guarded)), term("without it", bare, write(bare))] as const;

const UNTOLD = untold(
  "A figure of a mishap",
  "The mishaps have been run anew since; press the number again.",
);
