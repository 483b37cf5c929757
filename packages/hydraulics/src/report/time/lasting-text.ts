import type { Carrying } from "../../judge/time/carrying.js";
import type { Lasting, LastingCase, LastingSource } from "../../judge/time/lasting.js";
import { writeClock, writeDay } from "../../units/day.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import { writeDuration } from "../durations.js";
import { writeTable } from "../text-table.js";
import { writeFlow, writeMass, writeVolume } from "../words.js";

const COLUMNS = [
  { name: "expect", title: "to expect" },
  { name: "size", title: "to size on" },
  { name: "hot", title: "hot spell" },
] as const;

/** How long the water lasts, as text for a terminal. */
export function writeLastingText(
  title: string,
  lasting: Lasting,
  carrying: Carrying,
  system: UnitSystem,
  paint: Paint,
): string {
  const head = `${title === "" ? "This plan" : title}: how long the water lasts`;
  const isFilled = lasting.cases !== lasting.alone;
  const sections = [
    `${paint(head, "title")}\n${beginning(lasting, system)}`,
    ...(isFilled
      ? [`${paint("Filled as the plan says", "title")}\n${caseTable(lasting.cases, system)}`]
      : []),
    `${paint(isFilled ? "If nobody comes any more" : "Nobody fills it again", "title")}\n${caseTable(lasting.alone, system)}\n${rangeLine(lasting.alone)}`,
    `${paint("Carrying", "title")}\n${writeCarryingLines(carrying, system)}`,
    ...(lasting.leavesOut.length === 0
      ? []
      : [
          `${paint("Left out", "title")}\n${lasting.leavesOut.map((code) => `- ${LEFT_OUT_WORDS[code]}`).join("\n")}`,
        ]),
    `${paint("Cautions", "title")}\n- Look at the birds and their water every day: no computed figure replaces that.`,
  ];
  return `${sections.join("\n\n")}\n`;
}

/** What the answer does not count, in words. */
export const LEFT_OUT_WORDS: Readonly<Record<Lasting["leavesOut"][number], string>> = {
  rain: "Rain is not counted: a dry spell. See how a rain record bears on it with headfall rain.",
  headerTank: "The water in header tanks is not counted; they give out when what fills them does.",
  nobodyDrinks: "The plan has no pens of birds: nobody drinks. Add pens to it.",
};

function beginning({ sources, begins, day }: Lasting, system: UnitSystem): string {
  const on = day === undefined ? "" : ` on ${writeDay(day)}`;
  return [
    `Full${on} at ${writeClock(begins)}:`,
    ...sources.map(
      (source) =>
        `- ${source.source}: ${writeVolume(source.full, system)}, of which ${writeVolume(source.usable, system)} can be drawn; ${writeRefill(source.refill, system)}`,
    ),
  ].join("\n");
}

/** How a source is filled, in words. */
function writeRefill(refill: LastingSource["refill"], system: UnitSystem): string {
  if (refill.kind === "none") return "not filled again";
  if (refill.kind === "hose") return `kept full by a hose, ${writeFlow(refill.flow, system)} at most`;
  return `filled up every ${writeDuration(refill.every).replace(/^1 (day|h)$/, "$1")}`;
}

function caseTable(cases: Lasting["cases"], system: UnitSystem): string {
  const row = (words: string, read: (one: LastingCase) => string) => [
    words,
    ...COLUMNS.map(({ name }) => read(cases[name])),
  ];
  const span = (after: number | undefined) => (after === undefined ? "not" : writeDuration(after));
  return writeTable({
    columns: ["", ...COLUMNS.map(({ title }) => title)],
    alignRight: [false, true, true, true],
    rows: [
      row("first bird without", (one) => span(one.firstWithout?.after)),
      row("first drinker dry", (one) => span(one.firstDry?.after)),
      row("half of the drinkers dry", (one) => span(one.halfDry)),
      row("nothing left to draw", (one) => span(one.empty)),
      row("drawn on the first day", (one) => writeVolume(one.firstDay, system)),
    ],
  });
}

function rangeLine({ low, high }: Lasting["alone"]): string {
  const [longest, shortest] = [low.firstWithout, high.firstWithout].map((one) =>
    one === undefined ? "longer than it was followed" : writeDuration(one.after),
  );
  return `From the least the birds may drink to the most, in heat and with every dripping drinker at its worst: ${shortest} to ${longest}.`;
}

/** Kilograms a trip, trips a day, climb: now, hot, and where it changes. */
function writeCarryingLines(carrying: Carrying, system: UnitSystem): string {
  if (carrying.sources.length === 0)
    return "- Nothing is carried: every source is filled by a hose, a roof or another.";
  const shown = carrying.days.filter(({ week }) => week === 0 || week === 4 || week === 8);
  const lines = shown.map((day) => {
    const when = `${day.week === 0 ? "now" : `in ${day.week} weeks`}${day.hot ? ", hot" : ""}`;
    const trips =
      day.trips.expect === day.trips.size
        ? String(day.trips.size)
        : `${day.trips.expect} to ${day.trips.size}`;
    const climb = day.climb === 0 ? "" : `, ${writeQuantity(day.climb, "length", system)} of climb`;
    return `- ${when}: ${trips} ${trips === "1" ? "trip" : "trips"} a day of ${writeVolume(carrying.each, system)} (${writeMass(day.massPerTrip, system)} each)${climb}`;
  });
  return [`To ${carrying.sources.join(", ")}, if what is drunk is carried:`, ...lines].join("\n");
}
