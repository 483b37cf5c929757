import {
  dailyMark,
  howLongItLasts,
  LASTING_CASES,
  type Lasting,
  type LastingCase,
  type LastingCaseName,
  writeDay,
  writeDuration,
} from "@headfall/hydraulics";
import { difference, product, quotient, sum, term } from "./expression.js";
import { type HowGot, soundSteps, stepOf, untold } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import type { HowSubject, LastingWhat } from "./subject.js";
import { alwaysValid } from "./validity.js";

const DAY = 86_400;

type LastsSubject = Extract<HowSubject, { of: "lasts" }>;

const WHAT: Readonly<Record<LastingWhat, string>> = {
  firstWithout: "Until the first bird goes without",
  firstDry: "Until the first drinker is dry",
  halfDry: "Until half of the drinkers are dry",
  empty: "Until nothing is left to draw",
  firstDay: "Drawn on the first day",
};

const CASE: Readonly<Record<LastsSubject["which"], string>> = {
  low: "the least that may be drunk",
  expect: "to expect",
  size: "to size on",
  hot: "on days of the hot spell",
  high: "the most that may be drunk, in heat, with drips at their worst",
};

/** The day the check was of. */
export const dayOf = ({ checked, plan }: HowRequest): string | undefined =>
  checked.flock?.day === undefined ? plan?.day : writeDay(checked.flock.day);

/** How long the water lasts, nobody filling: all that can be drawn over what is drawn in a day, followed hour by hour. */
export function howLasts(request: HowRequest, { what, which }: LastsSubject): HowGot {
  const { plan, figures } = request;
  const title = `${WHAT[what]}, ${CASE[which]}`;
  const answer = plan === undefined ? undefined : howLongItLasts(plan, { day: dayOf(request) });
  if (answer === undefined || !answer.ok) return untold(title);
  const one = answer.lasting.alone[which];
  const { sources } = answer.lasting;
  const usable = sources.reduce((all, source) => all + source.usable, 0);
  const together = stepOf(
    "can be drawn",
    sum(
      ...sources.map((source) => term(quoted(source.source), source.usable, figures.volumeIn(source.usable))),
    ),
    figures.volumeIn,
  );
  const days = stepOf(
    "days, about",
    quotient(
      term("can be drawn", usable, figures.volumeIn(usable)),
      term("drawn on the first day", one.firstDay, figures.volumeIn(one.firstDay), {
        of: "lasts",
        what: "firstDay",
        which,
      }),
    ),
    (value) => `${Number(value.toPrecision(3))} days`,
  );
  return {
    title,
    result: what === "firstDay" ? figures.volume(one.firstDay) : spanOf(one, what),
    steps: what === "firstDay" ? soundSteps(firstDayStep(request, one, which)) : soundSteps(together, days),
    valid: [alwaysValid("A balance of water", "what is drawn, and what is left, add up to what was there")],
    notes: notesOf(answer.lasting, what, which),
    sources: ["closed-form", "cautious-defaults"],
  };
}

/** What the birds draw on the first day, and what drips on top. */
function firstDayStep({ checked, figures }: HowRequest, { firstDay }: LastingCase, which: LastingCaseName) {
  const each = LASTING_CASES[which].drips * DAY;
  const dripping = checked.drinkers.filter(
    ({ verdict, also }) => verdict === "drips" || also.some((other) => other.verdict === "drips"),
  ).length;
  const drunk = firstDay - dripping * each;
  const birds = term("drunk and spilled", drunk, figures.volumeIn(drunk));
  if (each === 0 || dripping === 0) return stepOf("first day", sum(birds), figures.volumeIn);
  const drips = product(
    term("drinkers that drip", dripping, String(dripping)),
    term("one loses in a day", each, figures.volumeIn(each)),
  );
  return stepOf("first day", sum(birds, drips), figures.volumeIn);
}

function spanOf(one: LastingCase, what: Exclude<LastingWhat, "firstDay">): string {
  const found = one[what];
  const after = typeof found === "object" ? found.after : found;
  return after === undefined
    ? `lasts the ${Math.round(one.followed / DAY)} days that were followed`
    : writeDuration(after);
}

function notesOf({ begins }: Lasting, what: LastingWhat, which: LastsSubject["which"]): string[] {
  const { drips, hot } = LASTING_CASES[which];
  return [
    `Begins full at ${Math.floor(begins / 3600)}:00, nobody filling. Birds drink by their day's curve and grow older each day, so the moment itself is followed hour by hour and found exactly, not by the division above.`,
    ...(what === "firstWithout"
      ? [
          "A bird goes without when the drinkers of its pen, all worked at once, pass less than the pen drinks in its busiest hour; at the latest when nothing is left.",
        ]
      : []),
    ...(what === "firstDry" || what === "halfDry"
      ? [
          "A drinker is dry when the water stands no higher than its valve with its opening head and the air left in the line, or than the highest place on the way.",
        ]
      : []),
    ...(hot ? ["Each day is as hot as the plan's hot spell, or as its usual day where it names none."] : []),
    ...(drips > 0 ? ["Each drinker whose verdict is that it drips loses some on top."] : []),
  ];
}

/** How far a level falls in a day: what is drawn over the vessel's surface, between the two levels. */
export function howDailyFall(request: HowRequest, source: number): HowGot {
  const { plan, figures } = request;
  const title = "Fall of the level by tomorrow, to expect";
  const isThere = plan?.sources[source] !== undefined;
  const answer =
    plan === undefined || !isThere ? undefined : dailyMark(plan, { source, day: dayOf(request) });
  if (answer === undefined || !answer.ok) return untold(title);
  const { mark } = answer;
  const tomorrow = mark.from - mark.fall.expect;
  const write = (value: number) => figures.lengthIn(value);
  return {
    title: `${title}, ${quoted(mark.source)}`,
    result: figures.length(mark.fall.expect),
    steps: soundSteps(
      stepOf(
        "fall",
        difference(
          term("level now", mark.from, write(mark.from)),
          term("level tomorrow", tomorrow, write(tomorrow)),
        ),
        write,
      ),
    ),
    valid: [alwaysValid("The vessel's shape", "level and volume follow from each other")],
    notes: [
      `Drawn by then: ${figures.volume(mark.volume.expect)} to expect, ${figures.volume(mark.volume.size)} to size on.`,
      "The band goes from the least to the most that birds of this kind may drink, by how sure its figures are.",
    ],
    sources: ["closed-form"],
  };
}
