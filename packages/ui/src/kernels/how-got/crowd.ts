import { erlangC, type PenReport, TOGETHER, writeSeconds } from "@headfall/hydraulics";
import { applied, constant, difference, product, quotient, term } from "./expression.js";
import { bare, type Figures, percent } from "./figures.js";
import { type HowGot, soundSteps, stepOf } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import { alwaysValid } from "./validity.js";

const IN_BUSIEST = "in its busiest hour, water at the lowest usable level";
const NOTHING_FLOWS_SHORT = "nobody can drink";
const NOTHING_FLOWS = "None of its drinkers gives water, or no bird is there.";

/** What one bird drinks at a time, on average over the pen. */
export function howPenBout({ figures }: HowRequest, pen: PenReport): HowGot {
  const rows = pen.batches.map((batch) => ({
    cells: [batch.kindName, String(batch.count), bare(batch.bouts, 2), figures.volumeIn(batch.boutVolume)],
    value: pen.birds === 0 ? 0 : (batch.count * batch.boutVolume) / pen.birds,
  }));
  const [only] = pen.batches;
  const step =
    pen.batches.length === 1 && only !== undefined && only.bouts > 0
      ? [
          stepOf(
            "a bout",
            quotient(
              term("one bird's day", only.intakeSize, figures.volumeIn(only.intakeSize)),
              term("bouts a day", only.bouts, bare(only.bouts, 2)),
            ),
            figures.volumeIn,
          ),
        ]
      : [];
  return {
    title: `Water in a bout, ${quoted(pen.pen)}`,
    result: figures.volume(pen.boutVolume),
    steps: soundSteps(...step),
    parts: {
      caption: "By batch; the mean is over the birds",
      columns: ["Birds", "How many", "Bouts a day", "A bout"],
      rows,
    },
    valid: [],
    notes: [
      "How often birds drink is common practice, from memory. It sets how long a bout and a wait last, not how many drink at once.",
    ],
    sources: ["common-practice"],
  };
}

/** How long one bird stands at a drinker. */
export function howPenBoutSeconds({ figures }: HowRequest, pen: PenReport): HowGot {
  const { boutSeconds: seconds, boutVolume } = pen;
  const rate = seconds === undefined || seconds === 0 ? 0 : boutVolume / seconds;
  return {
    title: `How long a bout lasts, ${quoted(pen.pen)}`,
    result: secondsOrNone(seconds),
    steps:
      seconds === undefined
        ? []
        : soundSteps(
            stepOf(
              "a bout",
              quotient(boutTerm(pen, figures), term("taken in", rate, figures.flowIn(rate))),
              writeSeconds,
            ),
          ),
    valid: [
      alwaysValid(
        "What a bird takes in",
        "half of what a worked drinker passes (0.3 to 0.8 of it), all of what a float drinker lets in; never more than it can swallow",
      ),
    ],
    notes: [
      seconds === undefined
        ? NOTHING_FLOWS
        : `Mean over the drinkers that give water, ${IN_BUSIEST}. The half is common practice, from memory, and the least sure figure here.`,
    ],
    sources: ["common-practice"],
  };
}

/** Birds drinking at once on average. */
export function howPenLoad({ figures }: HowRequest, pen: PenReport): HowGot {
  return {
    title: `Birds drinking at once on average, ${quoted(pen.pen)}`,
    result: pen.load === undefined ? NOTHING_FLOWS_SHORT : bare(pen.load, 2),
    steps: pen.load === undefined ? [] : soundSteps(stepOfLoad(pen, figures)),
    valid: [alwaysValid("Drunk over taken in", "holds for any order in which birds come")],
    notes: [
      pen.load === undefined
        ? NOTHING_FLOWS
        : `Drunk ${IN_BUSIEST}: ${percent(pen.busiestHour?.share ?? 0)} of the day's water goes in that hour. Birds and line are solved together: weak flow makes longer bouts, longer bouts put more drinkers to work, and those weaken the flow; it settled in ${pen.rounds} rounds.`,
    ],
    sources: ["closed-form"],
  };
}

function stepOfLoad(pen: PenReport, figures: Figures) {
  const rate = pen.load === undefined || pen.load === 0 ? 0 : pen.demand / pen.load;
  return stepOf(
    "at once",
    quotient(
      term("drunk", pen.demand, figures.flowIn(pen.demand)),
      term("taken in by one", rate, figures.flowIn(rate)),
    ),
    (value) => bare(value, 3),
  );
}

/** Drinkers at work in the busiest minutes. */
export function howPenAtOnce(_: HowRequest, pen: PenReport): HowGot {
  const least = pen.demand > 0 ? 1 : 0;
  const most = Math.max(least, Math.min(pen.birds, Math.ceil(TOGETHER.factor * pen.atOnceAlone - 1e-9)));
  return {
    title: `Drinkers at work in the busiest minutes, ${quoted(pen.pen)}`,
    result: `${pen.busiest} of ${pen.drinkers}`,
    steps: soundSteps(
      stepOf(
        "at work",
        applied(
          "min",
          term("birds at once", most, String(most)),
          term("drinkers that give", pen.giving, String(pen.giving)),
        ),
        String,
      ),
    ),
    valid: [],
    notes: [
      `${pen.atOnceAlone} is what only one moment in a hundred exceeds if each of ${pen.birds} birds drank for itself (binomial); half as many again since birds follow one another, and one at least where any drinks: ${most}. The farthest drinkers are taken to be at work. Where the plan states the number for a group, that stands.`,
    ],
    sources: ["cautious-defaults"],
  };
}

/** Chance that every place is taken, and the mean wait. */
export function howPenWaits(
  { figures: _ }: HowRequest,
  pen: PenReport,
  of: "penAllTaken" | "penWait",
): HowGot {
  const { places, load, boutSeconds, chanceAllTaken, meanWait } = pen;
  const isChance = of === "penAllTaken";
  const title = `${isChance ? "Chance that every place is taken" : "Mean wait"}, ${quoted(pen.pen)}`;
  const valid = [
    alwaysValid(
      "Erlang's formulas",
      "birds that come at random; they do not queue in line, so a day played bird by bird tells waits better",
    ),
  ];
  if (load === undefined || chanceAllTaken === undefined || meanWait === undefined)
    return {
      title,
      result: "more come than can drink",
      steps: [],
      valid,
      notes: [NOTHING_FLOWS],
      sources: ["erlang-1917"],
    };
  return {
    title,
    result: isChance ? percentOf(chanceAllTaken) : secondsOrNone(meanWait),
    steps: isChance || load === 0 ? [] : soundSteps(stepOfWait(places, load, boutSeconds ?? 0)),
    valid,
    notes: [
      isChance
        ? `Erlang's loss formula with ${places} places and ${bare(load, 3)} birds drinking at once on average.`
        : `C, the chance to have to wait, is by Erlang's delay formula with ${places} places and ${bare(load, 3)} birds at once on average. It is the mean over all birds, those who need not wait included.`,
    ],
    sources: ["erlang-1917"],
  };
}

function stepOfWait(places: number, load: number, seconds: number) {
  const chance = erlangC(places, load);
  return stepOf(
    "wait",
    quotient(
      product(term("C", chance, bare(chance, 3)), term("a bout", seconds, writeSeconds(seconds))),
      difference(constant(places), term("at once", load, bare(load, 3))),
    ),
    writeSeconds,
  );
}

const boutTerm = (pen: PenReport, figures: Figures) =>
  term("water in a bout", pen.boutVolume, figures.volumeIn(pen.boutVolume), {
    of: "penBout",
    pen: pen.index,
  });

const secondsOrNone = (seconds: number | undefined): string =>
  seconds === undefined ? NOTHING_FLOWS_SHORT : writeSeconds(seconds);

/** A small chance as it is said: never 0 for what is more than nothing. */
export const percentOf = (share: number): string =>
  share > 0 && share < 0.01 ? "under 1 %" : `${Math.round(share * 100)} %`;
