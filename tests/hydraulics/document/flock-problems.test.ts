import { describe, expect, test } from "vitest";
import { readPlan } from "../../../packages/hydraulics/src/document/read-plan.js";
import { REGIONS } from "../../../packages/hydraulics/src/document/regions.js";
import { writeProblem } from "../../../packages/hydraulics/src/document/write-problem.js";
import { planWith } from "./problem-cases.js";

/** The sentences told of a document, without the line of the text. */
function told(document: unknown): string[] {
  const reading = readPlan(JSON.stringify(document));
  return reading.ok ? [] : reading.problems.map(({ line: _, ...problem }) => writeProblem(problem));
}

const RUNS = [
  { id: "hen line", length: "3 m", drinkers: { kind: "cup-float" } },
  { id: "yard", length: "3 m" },
];
const pens = (...list: unknown[]) => planWith({ runs: RUNS, pens: list });
const birds = (more: Record<string, unknown>) => pens({ birds: { kind: "hen", count: 3, ...more } });
const weather = (more: Record<string, unknown>) => planWith({ weather: { high: "25 degC", ...more } });
const source = (more: Record<string, unknown>) =>
  planWith({ sources: [{ vessel: "drum-55gal-plastic", ...more }] });
const roof = (more: Record<string, unknown>) => source({ roof: { area: "10 m2", ...more } });

const ASK_TIME =
  'A time is a number with its unit: s, min, h, day or week. Write for instance "90 min" or "2 h 30 min".';
const AIR = "Here a temperature is from -40 to 55 °C. Check the unit and the figure.";
const SHARE = 'A share is from 0 to 100 %. Write for instance "80 %".';
const CLOCK = 'A time of day is hours and minutes, from 00:00 to 23:59. Write for instance "06:30".';
const DATE = 'A day is year, month and day, from 1800 to 2200. Write for instance "2026-07-04".';
const KEY = "The plan format has no such key here. Check the spelling, or remove it.";
const CHECK = "Check the unit and the figure.";

const ONCE = "Each name is given once. Choose another.";
const UNIT = "A quantity is text with its unit. Write for instance";
const REACH = "A group of drinkers, or a run that has drinkers.";
const NIGHT = "The lowest is not above the highest. Swap or correct the two.";
const HENS = { birds: { kind: "hen", count: 3 } };

const FROST = "Here a temperature is from -40 to 0 °C. Check the unit and the figure.";
const frost = (more: Record<string, unknown>) => weather({ frost: { low: "-8 degC", ...more } });
const run = (more: Record<string, unknown>) => planWith({ runs: [{ length: "3 m", ...more }] });

const kit = (...list: unknown[]) => planWith({ kit: list });
const months = (...list: unknown[]) => weather({ months: list });

const CASES: readonly (readonly [words: string, document: unknown, sentences: readonly string[]])[] = [
  [
    "birds that arrive before they hatch, and leave before they arrive",
    birds({ hatched: "2026-05-02", arrives: "2026-05-01", leaves: "2026-04-01" }),
    [
      'pens[0].birds.arrives: found "2026-05-01". Birds arrive on the day they hatch or later. Put the days in order.',
      'pens[0].birds.leaves: found "2026-04-01". Birds leave later than they arrive and move. Put the days in order.',
    ],
  ],
  [
    "birds that move to no pen, to their own, and on no day",
    birds({
      moves: [
        { on: "2026-05-01", to: "meadow" },
        { on: "May", to: "pen 1" },
      ],
    }),
    [
      'pens[0].birds.moves[0].to: found "meadow". A pen of this plan. Known here: "pen 1".',
      `pens[0].birds.moves[1].on: found "May". ${DATE}`,
    ],
  ],
  [
    "a kit of what no table has, of fewer than are kept back, and of none",
    kit({ kind: "fount-2gal", count: 1 }, { kind: "fount-1gal", count: 1, spare: 2 }, { kind: "fount-1gal" }),
    [
      'kit[0].kind: found "fount-2gal". No waterer of that name is in the tables. Did you mean "fount-1gal" or "fount-bottom-5gal" or "fount-top-3gal"?',
      "kit[1].spare: found 2. No more can be kept back than there are. Correct one of the two.",
      "kit[2].count: found nothing. Here stands a number. Add it.",
    ],
  ],
  [
    "a month given twice, hotter by night than by day, with hottest days that are cooler",
    months(
      { month: "may", high: "18 degC", low: "20 degC", hot: "15 degC" },
      { month: "may", high: "18 degC" },
    ),
    [
      `weather.months[0].low: found "20 degC". ${NIGHT}`,
      'weather.months[0].hot: found "15 degC". The hottest days are not cooler than usual ones. Correct one of them.',
      'weather.months[1].month: found "may". Each month is given once. Take one of them out.',
    ],
  ],
  ["a frost that does not freeze", frost({ low: "3 degC" }), [`weather.frost.low: found "3 degC". ${FROST}`]],
  [
    "a frost whose day is colder than its night",
    frost({ high: "-12 degC" }),
    [`weather.frost.low: found "-8 degC". ${NIGHT}`],
  ],
  [
    "a wind without its unit, and a sun beyond any",
    weather({ wind: "3", sun: "9 kW/m2" }),
    [
      'weather.wind: found "3". A speed is a number with its unit: m/s, km/h, mph or kn. Add the unit, for instance "3 m/s" or "3 mph".',
      'weather.sun: found "9 kW/m2". Here sunshine is from 0 to 1200 W/m². Check the unit and the figure.',
    ],
  ],
  [
    "pipe of no colour, more than buried, wrapped beyond sense, shaded twice over",
    run({ colour: "mauve", buried: "4 m", lagging: "1 ft", shade: "120 %" }),
    [
      'runs[0].colour: found "mauve". Allowed: "black", "dark", "grey", "white", "bright-metal". Write one of these.',
      `runs[0].buried: found "4 m". Here a length is from 0 to 3 m. ${CHECK}`,
      `runs[0].lagging: found "1 ft". Here a length is from 0 to 20 cm. ${CHECK}`,
      'runs[0].shade: found "120 %". A share is from 0 to 100 %. Write for instance "80 %".',
    ],
  ],
  [
    "a pen without birds",
    pens({}),
    [
      `pens[0].birds: found nothing. Here stands an object in curly brackets, or a list in square brackets. Add it.`,
    ],
  ],
  [
    "a pen with no batch",
    pens({ birds: [] }),
    ["pens[0].birds: found a list of 0. This list has at least 1 entry. Add what is missing."],
  ],
  [
    "a pen whose birds are a word",
    pens({ birds: "hens" }),
    [
      `pens[0].birds: found "hens". Here stands an object in curly brackets, or a list in square brackets. Mend it or leave the key out.`,
    ],
  ],
  [
    "a pen with a key too many",
    pens({ ...HENS, cocks: 2 }),
    [`pens[0].cocks: found the key "cocks". ${KEY}`],
  ],
  [
    "two pens of one name",
    pens({ id: "a", ...HENS, drinkers: ["hen line"] }, { id: "a", ...HENS }),
    [`pens[1].id: found "a". ${ONCE}`],
  ],
  [
    "a pen called as another is by default",
    pens({ id: "pen 2", ...HENS, drinkers: ["hen line"] }, HENS),
    [`pens[1].id: found "pen 2". ${ONCE}`],
  ],
  [
    "a bird that no table has",
    birds({ kind: "henn" }),
    [
      `pens[0].birds.kind: found "henn". No bird of that name is in the tables. Did you mean "hen" or "guinea-fowl" or "turkey-hen"?`,
    ],
  ],
  [
    "a bird like none",
    birds({ kind: "dragon" }),
    [`pens[0].birds.kind: found "dragon". No bird of that name is in the tables. Write an id such as "hen".`],
  ],
  [
    "no birds of a kind",
    birds({ count: 0 }),
    ["pens[0].birds.count: found 0. This number is at least 1. Check the figure."],
  ],
  [
    "half a bird",
    birds({ count: 2.5 }),
    ["pens[0].birds.count: found 2.5. Here stands a whole number. Mend it or leave the key out."],
  ],
  [
    "more birds than a plan has",
    birds({ count: 100_001 }),
    ["pens[0].birds.count: found 100001. This number is at most 100000. Check the figure."],
  ],
  [
    "an age with a slip of the pen",
    birds({ age: "6 weks" }),
    [`pens[0].birds.age: found "6 weks". ${ASK_TIME}`],
  ],
  [
    "an age below nothing",
    birds({ age: "-1 day" }),
    [`pens[0].birds.age: found "-1 day". Here a time is from 0 days to 10 years. ${CHECK}`],
  ],
  [
    "an age without its unit",
    birds({ age: 6 }),
    [`pens[0].birds.age: found 6. ${UNIT} "6 weeks", with the unit you mean.`],
  ],
  [
    "a day that no month has",
    birds({ hatched: "2026-02-30" }),
    [`pens[0].birds.hatched: found "2026-02-30". ${DATE}`],
  ],
  [
    "an age beside a day of hatching",
    birds({ age: "6 weeks", hatched: "2026-05-01" }),
    [`pens[0].birds.age: found "6 weeks". An age, or the day they hatched, not both. Take one of them out.`],
  ],
  ["more eggs than days", birds({ lay: "120 %" }), [`pens[0].birds.lay: found "120 %". ${SHARE}`]],
  [
    "lay without its sign",
    birds({ lay: 90 }),
    [`pens[0].birds.lay: found 90. ${UNIT} "90 %", with the unit you mean.`],
  ],
  [
    "a slip in the second batch",
    pens({ birds: [HENS.birds, { ...HENS.birds, agee: "3 days" }] }),
    [
      `pens[0].birds[1].agee: found the key "agee". The plan format has no such key here. Did you mean "age"?`,
    ],
  ],
  [
    "drinkers that are not there",
    pens({ ...HENS, drinkers: ["hen lin"] }),
    [`pens[0].drinkers[0]: found "hen lin". ${REACH} Known here: "hen line".`],
  ],
  [
    "a run without drinkers",
    pens({ ...HENS, drinkers: ["yard"] }),
    [`pens[0].drinkers[0]: found "yard". ${REACH} Known here: "hen line".`],
  ],
  [
    "drinkers of a line that has none",
    planWith({ pens: [{ ...HENS, drinkers: ["yard"] }] }),
    [`pens[0].drinkers[0]: found "yard". ${REACH} Give the line drinkers first.`],
  ],
  [
    "drinkers that are no list",
    pens({ ...HENS, drinkers: "hen line" }),
    [
      `pens[0].drinkers: found "hen line". Here stands a list in square brackets. Mend it or leave the key out.`,
    ],
  ],
  ["a day in words", planWith({ day: "4 July" }), [`day: found "4 July". ${DATE}`]],
  [
    "rules of elsewhere",
    planWith({ region: "Mars" }),
    [
      `region: found "Mars". Allowed: ${REGIONS.map((region) => `"${region}"`).join(", ")}. Write one of these.`,
    ],
  ],
  [
    "weather without the day's heat",
    planWith({ weather: { low: "3 degC" } }),
    ["weather.high: found nothing. Here stands text in quotes. Add it."],
  ],
  ["a day hotter than any", weather({ high: "60 degC" }), [`weather.high: found "60 degC". ${AIR}`]],
  [
    "a temperature without its unit",
    weather({ high: 25 }),
    [`weather.high: found 25. ${UNIT} "25 °C", with the unit you mean.`],
  ],
  ["a night warmer than its day", weather({ low: "80 °F" }), [`weather.low: found "80 °F". ${NIGHT}`]],
  [
    "a day too short",
    weather({ light: "3 h" }),
    [`weather.light: found "3 h". Here a time is from 4 to 24 hours. ${CHECK}`],
  ],
  ["a dawn at no hour", weather({ dawn: "24:00" }), [`weather.dawn: found "24:00". ${CLOCK}`]],
  [
    "a hot spell without its heat",
    weather({ hotSpell: {} }),
    ["weather.hotSpell.high: found nothing. Here stands text in quotes. Add it."],
  ],
  [
    "a hot night warmer than its day",
    weather({ hotSpell: { high: "33 degC", low: "34 degC" } }),
    [`weather.hotSpell.low: found "34 degC". ${NIGHT}`],
  ],
  [
    "a hot spell of two months",
    weather({ hotSpell: { high: "33 degC", days: 61 } }),
    ["weather.hotSpell.days: found 61. This number is at most 60. Check the figure."],
  ],
  [
    "a refill in words",
    source({ refill: "often" }),
    [
      `sources[0].refill: found "often". Here stands "none", or an object in curly brackets. Mend it or leave the key out.`,
    ],
  ],
  [
    "a refill every half hour",
    source({ refill: { every: "30 min" } }),
    [`sources[0].refill.every: found "30 min". Here a time is from 1 hour to 90 days. ${CHECK}`],
  ],
  [
    "a refill without its unit",
    source({ refill: { every: 24 } }),
    [`sources[0].refill.every: found 24. ${UNIT} "24 h", with the unit you mean.`],
  ],
  [
    "a refill at an hour but not how often",
    source({ refill: { at: "07:00" } }),
    ["sources[0].refill.every: found nothing. Here stands text in quotes. Add it."],
  ],
  [
    "a refill at an hour in words",
    source({ refill: { every: "1 day", at: "7 o'clock" } }),
    [`sources[0].refill.at: found "7 o'clock". ${CLOCK}`],
  ],
  [
    "a hose that gives nothing",
    source({ refill: { hose: "0 L/min" } }),
    [`sources[0].refill.hose: found "0 L/min". Here a flow is up to 100 L/s. ${CHECK}`],
  ],
  [
    "a roof without its area",
    source({ roof: {} }),
    ["sources[0].roof.area: found nothing. Here stands text in quotes. Add it."],
  ],
  [
    "a roof of no area",
    roof({ area: "0 m2" }),
    [`sources[0].roof.area: found "0 m2". Here an area is up to 100000 m². ${CHECK}`],
  ],
  [
    "a roof of no known kind",
    roof({ kind: "thach" }),
    [`sources[0].roof.kind: found "thach". No roof of that name is in the tables. Did you mean "thatch"?`],
  ],
  ["runoff that is no share", roof({ runoff: "0.8" }), [`sources[0].roof.runoff: found "0.8". ${SHARE}`]],
  [
    "a roof that takes in all",
    roof({ wetting: "6 cm" }),
    [`sources[0].roof.wetting: found "6 cm". Here a length is from 0 to 5 cm. ${CHECK}`],
  ],
  [
    "a diverter of less than nothing",
    roof({ firstFlush: "-1 L" }),
    [`sources[0].roof.firstFlush: found "-1 L". Here a volume is from 0 to 10 m³. ${CHECK}`],
  ],
  [
    "an overflow too thin",
    roof({ overflow: "1 mm" }),
    [`sources[0].roof.overflow: found "1 mm". Here a length is from 5 mm to 1 m. ${CHECK}`],
  ],
  [
    "a roof with a key too many",
    roof({ slope: "30 deg" }),
    [`sources[0].roof.slope: found the key "slope". ${KEY}`],
  ],
  [
    "trips of nothing",
    planWith({ carry: { each: "0 L" } }),
    [`carry.each: found "0 L". Here a volume is from 0.1 L to 1 m³. ${CHECK}`],
  ],
  [
    "a climb of a kilometre",
    planWith({ carry: { climb: "1 km" } }),
    [`carry.climb: found "1 km". Here a length is from -200 m to 200 m. ${CHECK}`],
  ],
  [
    "a limit with a unit, which is kilograms",
    planWith({ carry: { most: "20 kg" } }),
    [`carry.most: found "20 kg". Here stands a number. Mend it or leave the key out.`],
  ],
  [
    "a limit of nothing",
    planWith({ carry: { most: 0 } }),
    ["carry.most: found 0. This number is at least 1. Check the figure."],
  ],
  [
    "carrying with a key too many",
    planWith({ carry: { trips: 3 } }),
    [`carry.trips: found the key "trips". ${KEY}`],
  ],
  [
    "a run that hangs in words",
    planWith({ runs: [{ length: "3 m", hung: "yes" }] }),
    [`runs[0].hung: found "yes". Here stands true or false. Mend it or leave the key out.`],
  ],
];

describe("what is wrong with birds, weather and water brought is told: where, what, what may be, how to mend it", () => {
  test.each(CASES)("%s", (_, document, sentences) => {
    expect(told(document)).toEqual(sentences);
  });
});
