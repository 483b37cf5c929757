import { type PenPeriod, type Serving, writeAge, writeDay, type YearOfPlan } from "@headfall/hydraulics";
import { product, sum, term } from "./expression.js";
import { bare } from "./figures.js";
import { type HowGot, soundSteps, stepOf, untold } from "./how-got.js";
import { howNeeded } from "./needed.js";
import { type HowRequest, quoted } from "./request.js";
import type { HowSubject } from "./subject.js";
import { alwaysValid } from "./validity.js";

type YearSubject = Extract<HowSubject, { of: "yearDraw" | "yearMet" }>;
type NeedSubject = Extract<HowSubject, { of: "yearNeeded" }>;

function periodOf(year: YearOfPlan, at: number): string {
  const period = year.periods[at];
  return period === undefined ? "" : `${writeDay(period.from)} to ${writeDay(period.to - 1)}`;
}

/** A pen's water on the last day of a period: each batch, what one drinks, and what is spilled. */
export function howYearDraw(
  { room: { year }, figures }: HowRequest,
  { pen: p, period: t }: YearSubject,
): HowGot {
  const pen = year?.periods[t]?.pens[p];
  const name = year?.pens[p]?.pen;
  const title = `A day's water to size on${name === undefined ? "" : ` of ${quoted(name)}`}`;
  if (year === undefined || pen === undefined) return untold(title);
  const drunk = pen.batches.map(({ count, kindName, each }) =>
    product(term(kindName, count, String(count)), term("one drinks", each, figures.volumeIn(each))),
  );
  const step = stepOf(
    "day's water",
    product(sum(...drunk), sum(1, term("spilled", pen.spilled, bare(pen.spilled, 2)))),
    figures.volumeIn,
  );
  return {
    title: `${title}, ${periodOf(year, t)}`,
    result: `${figures.volume(pen.draw.size)} a day`,
    steps: drunk.length === 0 ? [] : soundSteps(step),
    valid: [alwaysValid("The last day of the period", "birds grow, and ask most then")],
    notes: [
      ...pen.batches.map(({ kindName, ageTo }) => `${kindName}: ${writeAge(ageTo)} old on that day.`),
      airNote(year, t, figures.temperature),
    ],
    sources: ["may-lott-1992"],
  };
}

function airNote({ periods, weatherFrom }: YearOfPlan, t: number, degrees: (celsius: number) => string) {
  const { high, low } = periods[t]!.air;
  const from = weatherFrom === "months" ? "between the months the plan gives" : "the plan's one weather";
  return `Air of ${degrees(low)} to ${degrees(high)}, ${from}: one drinks more in heat.`;
}

const BECAUSE: Readonly<Record<Serving["because"], string>> = {
  rules: "rules and advice",
  crowd: "birds at once in the busiest minutes",
  water: "a day's water in two fillings",
  inReach: "two in reach of each bird",
};

/** Drinkers of one device that a pen needs on the last day of a period. */
export function howYearNeeded(request: HowRequest, { pen: p, period: t, device: k }: NeedSubject): HowGot {
  const { year } = request.room;
  const pen = year?.periods[t]?.pens[p]?.drinkers;
  const need = pen?.devices[k];
  if (year === undefined || pen === undefined || need === undefined) return untold("Drinkers needed");
  const told = howNeeded(request, { need, pen: pen.pen, region: year.region });
  return { ...told, title: `${told.title}, ${periodOf(year, t)}` };
}

/** How far what stands in a pen goes: its line, its own waterers, and each kind of the kit. */
export function howYearMet({ room: { year } }: HowRequest, { pen: p, period: t }: YearSubject): HowGot {
  const pen = year?.periods[t]?.pens[p];
  const name = year?.pens[p]?.pen;
  const title = `Share of the need that is met${name === undefined ? "" : ` in ${quoted(name)}`}`;
  const kit = year?.kit;
  if (year === undefined || pen === undefined || kit === undefined) return untold(title);
  const lent = kit.kinds.flatMap((kind, k) => {
    const [count, serving] = [kit.lent[t]![p]![k]!, kit.serves[t]![p]![k]];
    return count > 0 && serving !== undefined ? [{ kind, count, serving }] : [];
  });
  const step = stepOf(
    "met",
    sum(
      ...own(pen),
      ...lent.map(({ kind, count, serving }) =>
        product(
          term(kind.name, count, String(count)),
          term("one meets", serving.share, bare(serving.share, 3)),
        ),
      ),
    ),
    (value) => bare(value, 3),
  );
  const met = metOf(year, t, p);
  return {
    title: `${title}, ${periodOf(year, t)}`,
    result: `${Math.round(100 * met)} %`,
    steps: soundSteps(step),
    valid: [alwaysValid("Enough", "when the shares come to 1 or more")],
    notes: [
      ...lent.map(
        ({ kind, serving }) =>
          `${kind.name}: what holds one back is ${BECAUSE[serving.because]}; ${serving.enough} would be enough alone.`,
      ),
      "The most demanding day counts: the last of the period, in its hottest air.",
    ],
    sources: ["closed-form"],
  };
}

const own = ({ byLine, byWaterers }: PenPeriod) => [
  term("line", byLine, bare(byLine, 3)),
  term("own waterers", byWaterers, bare(byWaterers, 3)),
];

/** Share of a pen's need that is met in a period by all that stands there. */
export function metOf({ periods, kit }: YearOfPlan, t: number, p: number): number {
  const { byLine, byWaterers } = periods[t]!.pens[p]!;
  const pieces = kit?.lent[t]?.[p] ?? [];
  return pieces.reduce(
    (met, count, k) => met + count * (kit?.serves[t]?.[p]?.[k]?.share ?? 0),
    byLine + byWaterers,
  );
}
