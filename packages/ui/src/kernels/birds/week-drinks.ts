import type { PenReport, WeekReport } from "@headfall/hydraulics";

/** What one batch drinks in each of some weeks, with what its drinkers spill [m³/day]. */
export interface BatchWeeks {
  readonly pen: number;
  readonly batch: number;
  /** "hen house"; "hen house 2" of several batches in a pen, "birds 2" where there is but one pen. */
  readonly label: string;
  /** "40 × Fast-growing meat chicken". */
  readonly birds: string;
  readonly size: readonly number[];
  readonly expect: readonly number[];
}

/** What all birds drink in each of some weeks, by batch and together. */
export interface WeekDrinks {
  readonly size: readonly number[];
  readonly expect: readonly number[];
  /** On days of the hot spell; empty where the plan names none. */
  readonly hot: readonly number[];
  /** Those that drink from the line in any of the weeks. */
  readonly batches: readonly BatchWeeks[];
}

export function weekDrinksOf(weeks: readonly WeekReport[], hotWeeks: readonly WeekReport[]): WeekDrinks {
  return {
    size: weeks.map(({ intakeSize }) => intakeSize),
    expect: weeks.map(({ intakeExpect }) => intakeExpect),
    hot: hotWeeks.map(({ intakeSize }) => intakeSize),
    batches: labelled(
      (weeks[0]?.pens ?? []).flatMap(({ batches }, p) => batches.map((_, k) => batchWeeks(weeks, p, k))),
    ),
  };
}

type Unlabelled = Omit<BatchWeeks, "label"> & { readonly penName: string };

function batchWeeks(weeks: readonly WeekReport[], p: number, k: number): Unlabelled {
  const { pen, batches } = weeks[0]!.pens[p]!;
  return {
    pen: p,
    penName: pen,
    batch: k,
    birds: `${mostOf(weeks, p, k)} × ${batches[k]!.kindName}`,
    size: weeks.map((week) => volumeOf(week.pens[p]!, k, "intakeSize")),
    expect: weeks.map((week) => volumeOf(week.pens[p]!, k, "intakeExpect")),
  };
}

/** Those that drink, named so that no two are alike. */
function labelled(all: readonly Unlabelled[]): BatchWeeks[] {
  const drinking = all.filter(({ size }) => size.some((volume) => volume > 0));
  const isOnePen = new Set(drinking.map(({ pen }) => pen)).size === 1;
  return drinking.map(({ penName, ...batch }) => {
    const isAlone = drinking.filter(({ pen }) => pen === batch.pen).length === 1;
    const number = batch.batch + 1;
    return { ...batch, label: isOnePen ? `birds ${number}` : isAlone ? penName : `${penName} ${number}` };
  });
}

/** Birds of a batch in the week in which most are in the pen: they may come later, or leave. */
const mostOf = (weeks: readonly WeekReport[], p: number, k: number): number =>
  Math.max(...weeks.map(({ pens }) => pens[p]!.batches[k]!.count));

/** A batch's share of what its pen takes. */
function volumeOf(pen: PenReport, k: number, key: "intakeSize" | "intakeExpect"): number {
  const drunk = pen.batches.reduce((sum, { count, ...each }) => sum + count * each[key], 0);
  const { count, ...batch } = pen.batches[k]!;
  return drunk === 0 ? 0 : (count * batch[key] * pen[key]) / drunk;
}
