import {
  BEHAVIOUR,
  type DayResult,
  SHORT_BELOW,
  writeClock,
  writeDuration,
  writeShare,
  writeWait,
} from "@headfall/hydraulics";
import { shortBatches } from "../day/short-birds.js";
import { waitsOf } from "../day/waits.js";
import { difference, quotient, term } from "./expression.js";
import { bare } from "./figures.js";
import { type HowGot, soundSteps, stepOf, untold } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import type { DayPenFigure, HowSubject } from "./subject.js";
import { alwaysValid } from "./validity.js";

type DaySubject = Extract<HowSubject, { of: "dayPen" | "dayShort" | "dayDrinker" }>;

const DAY = 86_400;
const COUNTED = alwaysValid("Counting", "one day by chance; a hundred days tell how far days differ");

const UNTOLD = untold(
  "A figure of the simulated day",
  "The day has been run anew since; press the number again.",
);

/** A figure of the simulated day: counted from its events, bird by bird. */
export function howDay(request: HowRequest, subject: DaySubject): HowGot {
  const { day } = request.room;
  if (day === undefined) return UNTOLD;
  const told = (how: Omit<HowGot, "valid" | "sources">): HowGot => ({
    ...how,
    valid: [COUNTED],
    notes: [...how.notes, `Day ${day.seed} of this plan, the same on every machine.`],
    sources: ["common-practice"],
  });
  switch (subject.of) {
    case "dayPen":
      return told(howPen(day, subject.inPen, subject.what) ?? UNTOLD);
    case "dayShort":
      return told(howShort(request, day, subject) ?? UNTOLD);
    case "dayDrinker":
      return told(howDrinker(request, day, subject.at, subject.what) ?? UNTOLD);
  }
}

type Told = Omit<HowGot, "valid" | "sources"> | undefined;

/** A figure that was counted, by one sentence; some are quotients besides. */
const counted = (how: { title: string; result: string; by: string; steps?: HowGot["steps"] }): Told => ({
  title: how.title,
  result: how.result,
  steps: how.steps ?? [],
  notes: [how.by],
});

function howPen(day: DayResult, p: number, what: DayPenFigure): Told {
  const pen = day.pens[p];
  if (pen === undefined) return undefined;
  const of = `, ${quoted(pen.pen)}`;
  switch (what) {
    case "meanWait":
    case "wait95":
    case "longestWait":
      return howWait(pen, waitsOf(day, p), what);
    case "allTaken":
      return counted({
        title: `Every place taken, of the light${of}`,
        result: writeShare(pen.allTaken),
        by: "Time in the light at which birds drank and every place at a drinker that gave water was taken, over all hours of light.",
      });
    case "mostAtOnce":
      return counted({
        title: `Most birds drinking at once${of}`,
        result: `${pen.mostAtOnce} (${writeClock(pen.mostAt)})`,
        by: `Birds at drinkers counted at each of the day's ${bare(day.events?.count ?? 0, 7)} events; the first moment of the highest count is told.`,
      });
    case "gaveUp":
      return counted({
        title: `Times a bird gave up${of}`,
        result: String(pen.gaveUp),
        by: `It had waited ${BEHAVIOUR.patience} s with every place taken, went, and came back after ${BEHAVIOUR.retry / 60} minutes on average. One bird may do so many times a day.`,
      });
    case "foundDry":
      return counted({
        title: `Times a bird found no water${of}`,
        result: String(pen.foundDry),
        by: `No drinker of the pen gave water when it came, or its own ran dry under it. It comes back after ${BEHAVIOUR.retry / 60} minutes on average, so that one bird is counted many times while the line is dry.`,
      });
  }
}

function howWait(
  pen: DayResult["pens"][number],
  waits: readonly number[],
  what: "meanWait" | "wait95" | "longestWait",
): Told {
  const of = `, ${quoted(pen.pen)}`;
  const times = bare(waits.length, 7);
  switch (what) {
    case "meanWait":
      return counted({
        title: `Mean wait${of}`,
        result: writeWait(pen.meanWait),
        steps: soundSteps(meanWaitStep(waits)),
        by: `Over every time a bird came to drinkers that gave water: 0 s where a place was free, ${BEHAVIOUR.patience} s where it gave up. Who found no water is no wait, and is counted apart.`,
      });
    case "wait95":
      return counted({
        title: `Wait that 95 in 100 did not pass${of}`,
        result: writeWait(pen.wait95),
        by: `The ${times} waits in order of length; this is the one that ${bare(Math.floor(0.95 * waits.length), 7)} of them come before.`,
      });
    case "longestWait":
      return counted({
        title: `Longest wait${of}`,
        result: writeWait(pen.longestWait),
        by: `The longest of ${times} waits. After ${BEHAVIOUR.patience} s a bird gives up, so that none is longer.`,
      });
  }
}

function meanWaitStep(waits: readonly number[]) {
  const all = waits.reduce((sum, one) => sum + one, 0);
  return stepOf(
    "mean wait",
    quotient(
      term("waited by all", all, `${bare(all)} s`),
      term("times", waits.length, bare(waits.length, 7)),
    ),
    (value) => `${bare(value, 3)} s`,
  );
}

function howShort(
  { figures }: HowRequest,
  day: DayResult,
  { inPen, inBatch }: Extract<HowSubject, { of: "dayShort" }>,
): Told {
  const short = shortBatches(day).find(({ pen, batch }) => pen === inPen && batch === inBatch);
  if (short === undefined) return undefined;
  const those = day.birds.filter(
    ({ pen, batch, drunk, wanted }) => pen === inPen && batch === inBatch && drunk < SHORT_BELOW * wanted,
  );
  const wanted = those.reduce((sum, bird) => sum + bird.wanted, 0);
  const drunk = those.reduce((sum, bird) => sum + bird.drunk, 0);
  return {
    title: `Missing to the birds that came short, ${quoted(day.pens[inPen]?.pen ?? "")}`,
    result: figures.volume(wanted - drunk),
    steps: soundSteps(
      stepOf(
        "missing",
        difference(
          term("they wanted", wanted, figures.volumeIn(wanted)),
          term("they got", drunk, figures.volumeIn(drunk)),
        ),
        figures.volumeIn,
      ),
    ),
    notes: [
      `${short.short} of ${short.birds} birds got less than ${Math.round(SHORT_BELOW * 100)} % of what they wanted that day; the worst got ${writeShare(short.least)}.`,
    ],
  };
}

function howDrinker(
  { figures }: HowRequest,
  day: DayResult,
  d: number,
  what: Extract<HowSubject, { of: "dayDrinker" }>["what"],
): Told {
  const one = day.drinkers[d];
  if (one === undefined) return undefined;
  const of = `, ${quoted(one.drinker)}`;
  switch (what) {
    case "bouts":
      return counted({
        title: `Bouts${of}`,
        result: String(one.bouts),
        by: "Times a bird took a place at it. A bird takes a free place at random, so that drinkers differ by chance only while all give water.",
      });
    case "drawn":
      return counted({
        title: `Drawn in the day${of}`,
        result: figures.volume(one.drawn),
        steps: aBout("drawn", one.drawn, one.bouts, figures.volumeIn),
        by: "What birds drank at it, with what is spilled there.",
      });
    case "busy":
      return counted({
        title: `Time with a bird at it${of}`,
        result: `${writeDuration(one.busy)}, ${writeShare(one.busy / DAY)} of the day`,
        steps: aBout("busy", one.busy, one.bouts, (value, digits) => `${bare(value, digits)} s`),
        by: "A bout lasts as long as the drinker, at the flow it then has, needs to give the bird what it wants.",
      });
    case "leastFlow":
      return counted({
        title: `Least flow${of}`,
        result: figures.flow(one.leastFlow),
        by: `The least of what the line gave it while a bird was at it, over ${day.solver.solves} sets of drinkers at work that were solved at the level the source then had.`,
      });
  }
}

/** The part of one bout in what came of all of them; nothing where there was none. */
function aBout(name: string, all: number, bouts: number, write: (value: number, digits?: number) => string) {
  if (bouts === 0) return [];
  return soundSteps(
    stepOf(
      "a bout, on average",
      quotient(term(name, all, write(all)), term("bouts", bouts, String(bouts))),
      (value) => write(value, 3),
    ),
  );
}
