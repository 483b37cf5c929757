import type { CommandName } from "./help-commands.js";

/** How an option is typed, with a value one might give it, and what it says. */
export interface OptionWords {
  readonly typed: string;
  readonly says: string;
}

const option = (typed: string, says: string): OptionWords => ({ typed, says });

/** What every command takes. */
export const COMMON_OPTIONS: readonly OptionWords[] = [
  option("--json", "the result as a document (see docs/reference)"),
  option("--units us", "write US units (metric if left out; what the plan typed is kept)"),
  option("--no-colour", "no colour"),
];

/** What options say, whichever command has them. */
export const OPTIONS: Readonly<Record<string, OptionWords>> = {
  day: option("--day 2026-07-04", "the day ages are counted on, if the plan names none; today if left out"),
  samples: option(
    "--samples 200",
    "plans tried within the doubts of the measurements (more where these do not decide, if left out); 0 for none",
  ),
  seed: option("--seed 1", "seed of what is tried at random"),
  weeks: option("--weeks 8", "how many weeks to look ahead"),
  days: option("--days 5", "how many days nobody comes"),
  jobs: option("--jobs 2", "on so many workers; the answer is the same"),
  weather: option("--weather hot", "a day of the plan's hot spell"),
  run: option("--run NAME", "exchange the pipe of this run only (all if left out)"),
  source: option("--source NAME", "which source (the first if left out)"),
  level: option('--level "60 cm"', "where its water stands (full if left out)"),
  record: option("--record FILE", "a station file of GHCN-Daily, or a table of dates and rain"),
  example: option("--example seattle", "a record of open data instead; or newyork"),
  "rain-units": option("--rain-units mm", 'unit of a table that does not say; also cm, in, "tenths of mm"'),
  degrees: option("--degrees C", 'unit of a record that does not say; also F, "tenths of C"'),
  dates: option(
    '--dates "day first"',
    "how a table writes its dates, if that can be read both ways; or month first",
  ),
  place: option("--place NAME", "what to call the place of the record"),
  low: option('--low "-8 degC"', "the night's lowest; the plan's own if left out"),
  hours: option("--hours 12", "how long it is below freezing"),
  wind: option('--wind "3 m/s"', "the wind of that night"),
  high: option('--high "36 degC"', "the day's highest; the plan's own if left out"),
  sun: option('--sun "900 W/m2"', "the sun at noon on level ground"),
  by: option(
    "--by money",
    "what counts first; also parts or stand (money where the plan has prices, else parts)",
  ),
  "stand-most": option("--stand-most 1.5m", "the highest stand to think of"),
  "stand-step": option("--stand-step 5cm", "between heights of a stand"),
  margin: option("--margin 5cm", "head that every drinker must have to spare"),
  front: option("--front margin", "what more head to spare costs; height: what a higher stand saves in pipe"),
  apply: option("--apply 1", "write the plan with that cure into the file named by --out"),
  out: option("--out FILE", "where to; a file that is there already is left alone"),
  most: option("--most 1600", "plans that may be judged before the search ends"),
  all: option("--all", "all of them, each with its guards (the worst 12 if left out)"),
  dry: option("--dry LIST", 'drinkers that give nothing when worked, "hen line 3-8, hen line 12"'),
  weak: option("--weak LIST", "drinkers that give little"),
  fine: option("--fine LIST", "drinkers that give as they should"),
  drips: option("--drips LIST", "drinkers that drip with nobody at them"),
  holds: option("--holds LIST", "drinkers that do not"),
  wet: option("--wet LIST", "wet ground along a run, under a drinker, at a source"),
  "not-wet": option("--not-wet LIST", "where the ground is dry"),
  jug: option('--jug "hen line 3: 250 mL in 4 min"', "jug and watch at a worked drinker"),
  end: option('--end "feed: little"', "from the run's far end, opened; also nothing, plenty"),
  lid: option('--lid "barrel: helps"', "with its lid off; also no-change"),
  "after-filling": option(
    "--after-filling LIST",
    "drinkers looked at after water was poured into an empty source",
  ),
  stands: option('--stands "60 cm"', "where the water stands now (the plan's ordinary level if left out)"),
  seen: option('--seen "2 days"', "how long ago there was water in it (a day if left out)"),
  kerf: option('--kerf "2 mm"', "width that a cut takes"),
  paper: option("--paper a4", "two sheets to print, as a page for a browser; also letter"),
  csv: option("--csv", "the parts, as a table"),
  ics: option("--ics", "a calendar file"),
  from: option("--from 2026-04-01", "the day it begins (the plan's day if left out)"),
  ask: option("--ask check", "what is asked, with the options of that command; FILE has one plan a line"),
  resume: option("--resume OUT", "goes on with the file OUT where it was left"),
};

/** Where an option says something else than it does elsewhere. */
export const OWN_WORDS: Readonly<Partial<Record<CommandName, Readonly<Record<string, OptionWords>>>>> = {
  day: {
    days: option("--days 100", "how many days to simulate (1 if left out)"),
    seed: option("--seed 1", "seed of the (first) day"),
    figure: option("--figure size", "birds want the figure to size on (the one to expect if left out)"),
  },
  frost: {
    record: option(
      "--record FILE",
      "by a daily record instead: a station file of GHCN-Daily, or a table of dates and lowest temperatures",
    ),
  },
  heat: {
    record: option(
      "--record FILE",
      "by a daily record instead: a station file of GHCN-Daily, or a table of dates, lowest and highest temperatures",
    ),
  },
  rain: {
    figure: option("--figure expect", "birds want the figure to expect (the one to size on if left out)"),
  },
  trouble: {
    level: option(
      "--level falls-overnight",
      'also holds-overnight, does-not-fall, falls-less, falls-as-marked, falls-faster, found-empty, low, as-thought; of several sources "barrel: low"',
    ),
  },
  year: {
    weeks: option("--weeks 52", "how many weeks, from its first day"),
    csv: option("--csv", "a row for each week and pen, as a table"),
  },
  compare: { samples: option("--samples 200", "plans tried within the doubts of each; 0 for none") },
};
