/** What a sub-command is for, and how its exit status is to be read. */
export interface CommandWords {
  readonly what: string;
  /** What it is given, where that is not one plan. */
  readonly given?: string;
  /** When it exits with 1; nothing is said of those that never do. */
  readonly one?: string;
  /** A line to begin from. */
  readonly example: string;
  /** The page of the documentation that shows it at work. */
  readonly page: string;
}

/** The commands by what one wants to know, in the order they are shown. */
export const COMMAND_GROUPS = {
  "Will it work": ["check", "measure", "weeks", "sizes", "compare"],
  "Birds and their waterers": ["birds", "yard", "year", "day"],
  "How long it lasts": ["lasts", "away", "mark", "rain", "frost", "heat"],
  "When it does not work": ["cure", "mishaps", "trouble"],
  "Making it": ["build"],
  "Many plans": ["batch"],
} as const;

export type CommandName = (typeof COMMAND_GROUPS)[keyof typeof COMMAND_GROUPS][number];

export const COMMANDS: Readonly<Record<CommandName, CommandWords>> = {
  check: {
    what: "heads, flows and verdict of every drinker",
    one: "something starves, drips or is dry",
    example: "headfall check coop.json --units us",
    page: "how-to/coop-line.md",
  },
  measure: {
    what: "which measurements to take again, and how good they must be",
    one: "a verdict is a close call",
    example: "headfall measure coop.json",
    page: "how-to/sure-or-close.md",
  },
  weeks: {
    what: "the check of each coming week, as birds grow and hung lines go up",
    one: "some week is not all good",
    example: "headfall weeks meat-birds.json --weeks 8",
    page: "how-to/raise-a-hung-line.md",
  },
  sizes: {
    what: "each pipe size on the shelf in place of the pipe",
    one: "none of them works",
    example: "headfall sizes coop.json --run feed",
    page: "how-to/which-pipe-size.md",
  },
  compare: {
    what: "what two or more plans come to, side by side",
    given: "PLAN PLAN ...",
    one: "in none of them every drinker is good",
    example: "headfall compare barrel.json two-barrels.json",
    page: "how-to/compare-plans.md",
  },
  birds: {
    what: "what the birds drink, now and each coming week; drinkers they need",
    one: "some pen has fewer drinkers than its birds need",
    example: "headfall birds brooder.json --weeks 6",
    page: "how-to/chicks-arrive.md",
  },
  yard: {
    what: "founts, pans and buckets: litres, slopes, refills, whom they suit",
    one: "birds go without, or may drown",
    example: "headfall yard yard.json",
    page: "how-to/founts-on-a-hill.md",
  },
  year: {
    what: "a year: who is where, what they drink, and the kit given out to the pens",
    one: "some pen goes short of kit",
    example: "headfall year yard.json --from 2026-04-01",
    page: "how-to/eighty-five-chicks.md",
  },
  day: {
    what: "a simulated day of the birds at their drinkers, or many",
    one: "some bird came short",
    example: "headfall day coop.json --days 100 --jobs 2",
    page: "how-to/play-a-day.md",
  },
  lasts: {
    what: "how long the water lasts, and what is carried",
    one: "filled as the plan says, some bird goes without in a hot spell",
    example: "headfall lasts coop.json",
    page: "how-to/going-away.md",
  },
  away: {
    what: "what must stand there for some days away, and what one failure does",
    one: "it does not last",
    example: "headfall away coop.json --days 5",
    page: "how-to/going-away.md",
  },
  mark: {
    what: "how far the level should fall by tomorrow",
    example: 'headfall mark coop.json --level "60 cm"',
    page: "how-to/daily-mark.md",
  },
  rain: {
    what: "whether a roof and a barrel will do, by a record of rain",
    one: "some day is short",
    example: "headfall rain roof.json --example seattle",
    page: "how-to/rain-barrel.md",
  },
  frost: {
    what: "a night of frost: hours until each part stops, what to drain, refills",
    one: "something that birds drink from surely stops",
    example: 'headfall frost coop.json --low "-8 degC"',
    page: "how-to/frost-night.md",
  },
  heat: {
    what: "a hot day: water temperature by the hour, what to flush, what shade changes",
    one: "water that birds drink from comes above 30 °C",
    example: 'headfall heat coop.json --high "36 degC"',
    page: "how-to/hot-line.md",
  },
  cure: {
    what: "the smallest changes that make it work, and what they cost",
    one: "nothing was found that does",
    example: "headfall cure coop.json --by parts",
    page: "how-to/smallest-change.md",
  },
  mishaps: {
    what: "what any one mishap does, the worst first, and what guards against it",
    example: "headfall mishaps coop.json --all",
    page: "how-to/what-one-mishap-does.md",
  },
  trouble: {
    what: "what is likely wrong, from what you see",
    example: 'headfall trouble coop.json --dry "hen line 3-8"',
    page: "how-to/when-it-is-not-working.md",
  },
  build: {
    what: "parts, cuts, holes, heights, order, tests, loads: how to build it",
    example: "headfall build coop.json --paper a4 > sheets.html",
    page: "how-to/build-it.md",
  },
  batch: {
    what: "the same of each of many plans, a line of JSON each",
    given: "FILE",
    one: "the worst answer is 1",
    example: "headfall batch plans.jsonl --ask check --jobs 2",
    page: "how-to/many-plans.md",
  },
};
