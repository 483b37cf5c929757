import {
  allBirds,
  deviceOf,
  type HangPoint,
  hangPointsOf,
  LAW_WORDS,
  type WeekReport,
  writeAge,
  writeReason,
} from "@headfall/hydraulics";
import { VERDICT_MARKS, writeCounts } from "../verdict-marks.js";
import { difference, product, quotient, sum, term } from "./expression.js";
import { bare, type Figures } from "./figures.js";
import { type HowGot, type Parts, type Step, soundSteps, stepOf, untold } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import type { HowSubject } from "./subject.js";
import { alwaysValid } from "./validity.js";

type WeekSubject = Extract<HowSubject, { week: number; of: `week${string}` }>;

const when = ({ week, hot }: { readonly week: number; readonly hot?: boolean }): string =>
  `${hot ? "on a day of the hot spell, " : ""}${week === 0 ? "this week" : week === 1 ? "in 1 week" : `in ${week} weeks`}`;

/** A figure of the coming weeks, from what the room had judged. */
export function howWeek(request: HowRequest, subject: WeekSubject): HowGot {
  const { weeks = [], hotWeeks = [] } = request.room;
  const hot = subject.of === "weekVerdict" && subject.hot === true;
  const then = (hot ? hotWeeks : weeks)[subject.week];
  const [now] = weeks;
  if (then === undefined || now === undefined) return UNTOLD;
  switch (subject.of) {
    case "weekHang":
      return howHang(request, then, subject.group);
    case "weekRaise":
      return howRaise(request, now, then, subject.raised);
    case "weekHead":
      return howHead(request, now, then, subject.which);
    case "weekVerdict":
      return howVerdict(request, then);
  }
}

const UNTOLD = untold(
  "A figure of the coming weeks",
  "The weeks have been judged anew since; press the number again.",
);

/** Where drinkers should hang: between two rows of the table of heights, for the smallest birds that reach them. */
function howHang({ checked, figures }: HowRequest, then: WeekReport, g: number): HowGot {
  const crowd = then.groups[g];
  const group = checked.line.drinkers.groups[g];
  const range = crowd?.hangAt;
  if (range === undefined || group === undefined) return UNTOLD;
  const device = deviceOf(group);
  const batches = then.pens[crowd?.pen ?? 0]?.batches ?? [];
  const batch = batches.find(
    ({ ageDays, kind }) => ageDays === range.ageDays && rowsOf(kind, device).length > 0,
  );
  const rows = rowsOf(batch?.kind ?? "", device);
  const kind = allBirds.find(({ id }) => id === batch?.kind);
  return {
    title: `Where ${quoted(group.id)} should hang, ${when(then)}`,
    result: `${figures.length(range.height)} (${figures.length(range.low)} to ${figures.length(range.high)})`,
    steps: stepsBetween(rows, range.ageDays, figures),
    listed: {
      caption: `Heights for ${kind?.name ?? "these birds"}, by age`,
      columns: ["Age", "Low", "Height", "High"],
      rows: rows.map((row) => ({
        cells: [writeAge(row.ageDays), ...[row.low, row.height, row.high].map((at) => figures.length(at))],
        value: row.height,
        source: row.citation.source,
      })),
    },
    valid: [],
    notes: [
      `Above what they stand on, for birds of ${writeAge(range.ageDays)}: the smallest that reach these drinkers, as too high leaves them dry and too low only spills. Straight between the rows, level beyond them. How the birds stand decides, not the ruler.`,
    ],
    sources: [...new Set(rows.map(({ citation }) => citation.source))],
  };
}

const rowsOf = (birdId: string, device: HangPoint["device"]): readonly HangPoint[] =>
  hangPointsOf(birdId).filter((row) => row.device === device);

/** The height between two rows of the table; nothing beyond its ends, where it is level. */
function stepsBetween(rows: readonly HangPoint[], age: number, figures: Figures): readonly Step[] {
  const above = rows.findIndex(({ ageDays }) => ageDays >= age);
  const [from, to] = [rows[above - 1], rows[above]];
  if (from === undefined || to === undefined) return [];
  const write = figures.alike(from.height, to.height);
  const days = (value: number) => `${bare(value)} days`;
  const younger = term("younger row", from.height, write(from.height));
  const itsAge = term("its age", from.ageDays, days(from.ageDays));
  const share = quotient(
    difference(term("age", age, days(age)), itsAge),
    difference(term("age of the older", to.ageDays, days(to.ageDays)), itsAge),
  );
  const rise = difference(term("older row", to.height, write(to.height)), younger);
  return soundSteps(stepOf("height", sum(younger, product(rise, share)), write));
}

/** How far a run is raised by then: where it should hang, less where it hangs now. */
function howRaise({ figures }: HowRequest, now: WeekReport, then: WeekReport, k: number): HowGot {
  const run = then.raised[k];
  const before = now.raised.find(({ index }) => index === run?.index);
  if (run === undefined) return UNTOLD;
  const isKnown = run.height !== undefined && before?.height !== undefined;
  const [to, from] = [run.height ?? 0, before?.height ?? 0];
  const write = figures.alike(to, from);
  return {
    title: `How far ${quoted(run.run)} is raised, ${when(then)}`,
    result: run.raise < 0 ? `${figures.length(-run.raise)} lower` : figures.length(run.raise),
    steps:
      isKnown && then.week > 0
        ? soundSteps(
            stepOf(
              "raised by",
              difference(term("hangs then at", to, write(to)), term("hangs now at", from, write(from))),
              write,
            ),
          )
        : [],
    valid: [alwaysValid("Heights", "measured above the ground under the drinkers")],
    notes: [
      then.week === 0
        ? "This week it hangs as the plan says."
        : isKnown
          ? "Each week it is hung right for the smallest birds that reach it."
          : "The plan does not say how high it hangs above the ground: it is taken to hang right this week, and goes up by as much as the birds grow.",
      `Each ${figures.length(0.01)} it goes up takes ${figures.length(0.01)} from the head of still water at its drinkers.`,
    ],
    sources: ["closed-form"],
  };
}

/** The range of heads over all drinkers in a week, beside those of the other weeks. */
function howHead(request: HowRequest, now: WeekReport, then: WeekReport, which: "idle" | "flowing"): HowGot {
  const { checked, figures } = request;
  const { least, most } = then[HEADS[which]];
  const atWork = then.groups.map(({ group, busiest }) => `${busiest.count} of ${quoted(group)}`).join(", ");
  return {
    title: `${which === "idle" ? "Head of still water, full" : "Head at work, lowest and busiest"}, ${when(then)}`,
    result: `${figures.head(least)} to ${figures.head(most)}`,
    steps: which === "idle" ? idleSteps(now, then, figures) : [],
    listed: headsByWeek(request, HEADS[which]),
    valid: [],
    notes: [
      which === "idle"
        ? "The surface when full, less the height of each drinker, as that run then hangs, by the rules of the line."
        : `The whole line is solved anew as it then hangs (${LAW_WORDS[checked.friction]}): the source at its lowest usable level, at work ${atWork}.`,
    ],
    sources: ["closed-form"],
  };
}

const HEADS = { idle: "idleHead", flowing: "flowingHead" } as const;

/** What all runs are raised by comes off the head of still water; where they are raised apart no one formula tells. */
function idleSteps(now: WeekReport, then: WeekReport, figures: Figures): readonly Step[] {
  const raises = new Set(then.raised.map(({ raise }) => raise));
  const [raise = 0] = raises;
  const before = now.idleHead.least;
  const isPlain = raises.size === 1 && then.week > 0 && Math.abs(before - raise - then.idleHead.least) < 1e-9;
  if (!isPlain) return [];
  const write = figures.alike(before, raise);
  const formula = difference(
    term("least head now", before, write(before)),
    term("raised by", raise, write(raise)),
  );
  return soundSteps(stepOf("least head then", formula, write));
}

const headsByWeek = ({ figures, room }: HowRequest, key: "idleHead" | "flowingHead"): Parts => ({
  caption: "Week by week, least and most over all drinkers",
  columns: ["Week", "Raised by", "Least", "Most"],
  rows: (room.weeks ?? []).map((week) => ({
    cells: [
      when(week),
      week.raised.map((run) => figures.length(run.raise)).join(", ") || "not hung",
      figures.head(week[key].least),
      figures.head(week[key].most),
    ],
    value: week[key].least,
  })),
});

/** The verdict of a week, by its worst drinker. */
function howVerdict({ figures }: HowRequest, then: WeekReport): HowGot {
  const { worst, verdict, counts, pens } = then;
  return {
    title: `Verdict on the line, ${when(then)}`,
    result: `${VERDICT_MARKS[verdict].word} (${writeCounts(counts)})`,
    steps: [],
    valid: [],
    notes: [
      ...(worst === undefined ? [] : [`${worst.drinker}: ${writeReason(worst.because, figures.system)}.`]),
      `Judged as on the line, at each of its moments and by both laws of friction, with the birds as old as they then are: ${pens.map(({ pen, busiest, drinkers }) => `${quoted(pen)} keeps ${busiest} of ${drinkers} at work at the busiest`).join("; ")}.`,
    ],
    sources: ["closed-form"],
  };
}
