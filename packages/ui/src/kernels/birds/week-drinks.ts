import type { PenReport, WeekReport } from "@headfall/hydraulics";

/** What one batch drinks in each of some weeks, with what its drinkers spill [m³/day]. */
export interface BatchWeeks {
  readonly pen: number;
  readonly batch: number;
  /** "meat birds: 40 × Fast-growing meat chicken". */
  readonly name: string;
  readonly size: readonly number[];
  readonly expect: readonly number[];
}

/** What all birds drink in each of some weeks, by batch and together. */
export interface WeekDrinks {
  readonly size: readonly number[];
  readonly expect: readonly number[];
  /** On days of the hot spell; empty where the plan names none. */
  readonly hot: readonly number[];
  readonly batches: readonly BatchWeeks[];
}

export function weekDrinksOf(weeks: readonly WeekReport[], hotWeeks: readonly WeekReport[]): WeekDrinks {
  const pens = weeks[0]?.pens ?? [];
  return {
    size: weeks.map(({ intakeSize }) => intakeSize),
    expect: weeks.map(({ intakeExpect }) => intakeExpect),
    hot: hotWeeks.map(({ intakeSize }) => intakeSize),
    batches: pens.flatMap(({ pen, batches }, p) =>
      batches.map(({ kindName }, k) => ({
        pen: p,
        batch: k,
        name: `${pen}: ${mostOf(weeks, p, k)} × ${kindName}`,
        size: weeks.map((week) => volumeOf(week.pens[p]!, k, "intakeSize")),
        expect: weeks.map((week) => volumeOf(week.pens[p]!, k, "intakeExpect")),
      })),
    ),
  };
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
