import type { RainFinding, RainQuestion, RainRecord } from "../../document/rain-record.js";
import type { RainRun, RainSupply } from "../../judge/rain/rain-answer.js";
import { writeDay } from "../../units/day.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import { writeTable } from "../text-table.js";
import { writeFlow, writeVolume } from "../words.js";
import { writeShare } from "./day-text.js";

/** The four seasons, by their months. */
export const SEASON_WORDS = [
  "December to February",
  "March to May",
  "June to August",
  "September to November",
] as const;

/**
 * A run of the balance, in words.
 *
 * @example writeRainRun({ convention: "drawnFirst", begins: "full" })   // "drawn before the day's rain, begun full"
 */
export const writeRainRun = ({ convention, begins }: Pick<RainRun, "convention" | "begins">): string =>
  `${convention === "drawnFirst" ? "drawn before the day's rain" : "rain of the day counted"}, begun ${begins}`;

/**
 * A depth of rain: mm, or inches.
 *
 * @example writeRain(0.0123, "metric")   // "12.3 mm"
 */
export const writeRain = (metres: number, system: UnitSystem): string =>
  system === "us"
    ? `${Number((metres / 0.0254).toPrecision(3))} in`
    : `${Number((metres * 1000).toPrecision(3))} mm`;

/**
 * What is worth knowing of a record, a sentence each.
 *
 * @example writeRainFinding({ code: "daysMissing", days: 3, share: 0.008 }, "metric")   // "3 days (0.8 %) are not known; they are taken as dry."
 */
export function writeRainFinding(finding: RainFinding, system: UnitSystem): string {
  switch (finding.code) {
    case "daysMissing":
      return finding.days === 1
        ? `1 day (${writeShare(finding.share)}) is not known; it is taken as dry.`
        : `${finding.days} days (${writeShare(finding.share)}) are not known; they are taken as dry.`;
    case "yearIncomplete":
      return `Of ${finding.year} only ${writeShare(finding.share)} of the days are known: do not trust that year.`;
    case "flagged":
      return `${finding.days === 1 ? "1 value" : `${finding.days} values`} failed a check of those who keep the record, and ${finding.days === 1 ? "is" : "are"} left out.`;
    case "dayTwice":
      return `${finding.days === 1 ? "1 day stands" : `${finding.days} days stand`} in it twice; the later line counts.`;
    case "suspicious":
      return `${writeRain(finding.rain, system)} on ${writeDay(finding.day)} is hardly right: check the unit.`;
  }
}

/** What has to be asked, as a question. */
export function writeRainQuestion(question: RainQuestion): string {
  switch (question.ask) {
    case "unit":
      return `Which unit is the rain in: ${question.choices.join(", ")}? The text does not say. The most in a day is ${question.mostInDay}; one line: ${question.example}`;
    case "dates":
      return `Is ${question.example} written day first or month first? The text does not say.`;
    case "place":
      return `Which place: ${question.choices.slice(0, 8).join(", ")}${question.choices.length > 8 ? " ..." : ""}? The text is of several.`;
  }
}

/**
 * The answer in one sentence.
 *
 * @example writeRainAnswer(supply, "metric")   // "Yes: in 0.0055 years no day was short; 5.83 L of usable ..."
 */
export function writeRainAnswer(supply: RainSupply, system: UnitSystem): string {
  const [run] = supply.runs;
  if (supply.demandMost === 0)
    return `No pen drinks from ${supply.source}: nothing can come short, whatever it rains.`;
  const years = supply.days / 365.25;
  const each = Number((run.balance.shortDays / years).toPrecision(2));
  const size =
    supply.neverFails === undefined
      ? "no size lasts with this roof: more is drunk than runs off it"
      : `${writeVolume(supply.neverFailsDrawnFirst ?? supply.neverFails, system)} of usable water would never have failed`;
  if (run.balance.shortDays === 0)
    return `Yes: in ${Number(years.toPrecision(2))} years no day was short; ${size}.`;
  return `Not by itself: ${run.balance.shortDays} of ${supply.days} days were short, about ${each} a year, at most ${run.longestShort} in a row; ${size}.`;
}

/** Whether a rain barrel will do, as text for a terminal. */
export function writeRainText(
  title: string,
  record: RainRecord,
  supply: RainSupply,
  system: UnitSystem,
  paint: Paint,
): string {
  const head = `${title === "" ? "This plan" : title}: will the rain do for ${supply.source}?`;
  const last = writeDay(supply.firstDay + supply.days - 1);
  const area = writeQuantity(supply.roof.area, "area", system, 3);
  const sections = [
    `${paint(head, "title")}\n${paint(writeRainAnswer(supply, system), supply.runs[0]?.balance.shortDays === 0 ? "good" : "starves")}`,
    [
      `${paint("Reckoned with", "title")}`,
      `- rain${record.name === "" ? "" : ` of ${record.name}`}: ${writeDay(supply.firstDay)} to ${last}, ${supply.days} days`,
      `- roof: ${area}, ${writeShare(supply.roof.runoff)} runs off, ${writeRain(supply.roof.wetting, system)} a wet day only wets it, the diverter keeps ${writeVolume(supply.roof.firstFlush, system)}`,
      `- vessel: ${writeVolume(supply.usable, system)} usable`,
      `- birds: ${writeVolume(supply.demandMean, system)} a day on average, ${writeVolume(supply.demandMost, system)} on the hottest (${supply.figure === "size" ? "the figure to size on" : "the figure to expect"}; heat ${supply.heatFrom === "record" ? "of each day of the record" : "as in the plan"})`,
      ...record.findings.map((finding) => `- ${writeRainFinding(finding, system)}`),
    ].join("\n"),
    runsTable(supply, system),
    partsTable(supply),
    [
      `${paint("Sizes", "title")}`,
      `- ${supply.neverFails === undefined ? "No vessel lasts with this roof." : `Never fails: ${writeVolume(supply.neverFails, system)} usable with the rain of the day counted, ${supply.neverFailsDrawnFirst === undefined ? "none" : writeVolume(supply.neverFailsDrawnFirst, system)} without.`}`,
      `- ${supply.roofNeeded === undefined ? "No roof is large enough for this vessel: a dry spell is longer than it lasts." : `With this vessel the roof would have to be ${writeQuantity(supply.roofNeeded, "area", system, 3)}.`}`,
    ].join("\n"),
    `${paint("Cautions", "title")}\n${writeRainCautions(supply, system)
      .map((text) => `- ${text}`)
      .join("\n")}`,
  ];
  return `${sections.join("\n\n")}\n`;
}

function runsTable({ runs }: RainSupply, system: UnitSystem): string {
  return writeTable({
    columns: [
      "how it is reckoned",
      "days short",
      "longest, days",
      "days served",
      "water served",
      "came in",
      "drunk",
      "ran over",
      "left",
    ],
    alignRight: [false, true, true, true, true, true, true, true, true],
    rows: runs.map((run) => [
      writeRainRun(run),
      String(run.balance.shortDays),
      String(run.longestShort),
      `${(100 * run.inTime).toFixed(1)} %`,
      `${(100 * run.inVolume).toFixed(1)} %`,
      writeVolume(run.balance.sums.in, system),
      writeVolume(run.balance.sums.given, system),
      writeVolume(run.balance.sums.over, system),
      writeVolume(run.balance.sums.end, system),
    ]),
  });
}

function partsTable({ runs }: RainSupply): string {
  const [run] = runs;
  const rows = [
    ...run.years.map((part) => [String(part.year), String(part.shortDays), String(part.days)]),
    ...run.seasons.map((part, season) => [
      SEASON_WORDS[season] ?? "",
      String(part.shortDays),
      String(part.days),
    ]),
  ];
  return writeTable({
    columns: ["year or season", "days short", "of"],
    alignRight: [false, true, true],
    rows,
  });
}

/**
 * What can go wrong with roof water, a sentence each.
 *
 * @example writeRainCautions(supply, "metric")[0]   // "In a downpour of 100 mm an hour the roof sheds 7.4 L/min; ..."
 */
export function writeRainCautions({ overflow, source }: RainSupply, system: UnitSystem): string[] {
  const length = (metres: number) => writeQuantity(metres, "length", system, 2);
  return [
    overflow.isEnough
      ? `In a downpour of ${writeRain(0.1, system)} an hour the roof sheds ${writeFlow(overflow.downpour, system)}; the overflow (${length(overflow.diameter)}) passes ${writeFlow(overflow.passes, system)}.`
      : `In a downpour of ${writeRain(0.1, system)} an hour the roof sheds ${writeFlow(overflow.downpour, system)}, and the overflow (${length(overflow.diameter)}) passes only ${writeFlow(overflow.passes, system)}: fit ${length(overflow.needed)} or more, and lead it away from the stand's feet.`,
    `On the wettest day of the record (${writeRain(overflow.wettest, system)}) up to ${writeVolume(overflow.wettestOver, system)} run through or over.`,
    `Roof water carries droppings: keep a first flush and a lid, clean ${source}, and never let people drink it. What roof it comes from matters; local rules and a vet decide on water for birds.`,
    "A past record is no promise. Look at the birds and their water every day, and have another supply ready.",
  ];
}
