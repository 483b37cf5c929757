import {
  type Batch,
  type BatchIntake,
  buildFlock,
  type Flock,
  flockAtLine,
  flockInDays,
  flockInHeat,
  type Heat,
  INTAKE_DOUBT,
  intakeOfBatch,
  type Pen,
  spilledAtPen,
  writeAge,
  writeDay,
} from "@headfall/hydraulics";
import { product, sum, term } from "./expression.js";
import { bare, type Figures, percent } from "./figures.js";
import { type HowGot, type Part, soundSteps, stepOf, untold } from "./how-got.js";
import { type HowRequest, quoted } from "./request.js";
import type { HowSubject, IntakeDay, IntakeFigure } from "./subject.js";
import { alwaysValid } from "./validity.js";

type FlockSubject = Extract<HowSubject, { of: "flockIntake" }>;
type BatchSubject = Extract<HowSubject, { of: "batchIntake" }>;

const MOST_TERMS = 8;
const FIGURE_WORDS: Readonly<Record<IntakeFigure, string>> = { size: "to size on", expect: "to expect" };

/** The birds on the day asked about; undefined where the plan has been left out, or is no longer what was checked. */
function flockAt(
  { checked, plan, room }: HowRequest,
  { week = 0, hot = false, heat = false }: IntakeDay,
): Flock | undefined {
  const day = checked.flock?.day;
  if (plan === undefined) return undefined;
  const building = buildFlock(plan, checked.line, day === undefined ? undefined : writeDay(day));
  if (!building.ok) return undefined;
  if (heat) return flockInHeatOf(room.heat, building.flock);
  // As the check has it: birds at loose waterers drink nothing of the line.
  const older = flockInDays(flockAtLine(plan, building.flock), 7 * week);
  return hot ? flockInHeat(older) : older;
}

/** On the hot day of the room Weather every bird counts, in that day's air. */
function flockInHeatOf(heat: Heat | undefined, flock: Flock): Flock | undefined {
  if (heat?.intake === undefined) return undefined;
  return { ...flock, weather: { ...flock.weather, high: heat.day.high, low: heat.intake.night } };
}

const onDay = ({ week = 0, hot = false, heat = false }: IntakeDay): string =>
  `${heat ? ", on the hot day" : hot ? ", on a day of the hot spell" : ""}${week === 0 ? "" : `, in ${week} ${week === 1 ? "week" : "weeks"}`}`;

/** What all pens drink in a day: the sum of their batches, with what is spilled. */
export function howFlockIntake(request: HowRequest, subject: FlockSubject): HowGot {
  const { figures } = request;
  const flock = flockAt(request, subject);
  const title = `A day's water of all birds, ${FIGURE_WORDS[subject.which]}${onDay(subject)}`;
  if (flock === undefined) return untold(title);
  const rows = flock.pens.flatMap((pen) =>
    pen.batches.map((batch) => ({ pen, batch, value: volumeOf(request, flock, pen, batch, subject.which) })),
  );
  const parts: Part[] = rows.map(({ pen, batch, value }) => ({
    cells: [batchName(batch), quoted(pen.id), writeAgeOf(batch), figures.volumeIn(value)],
    value,
  }));
  const terms = rows.map(({ pen, batch, value }) =>
    term(`${quoted(pen.id)} ${batchName(batch)}`, value, figures.volumeIn(value), {
      ...subject,
      of: "batchIntake",
      pen: pen.index,
      batch: batch.index,
    }),
  );
  const total = rows.reduce((all, { value }) => all + value, 0);
  return {
    title,
    result: `${figures.volume(total)} a day`,
    // A sum of very many is read better in the table below.
    steps:
      terms.length === 0 || terms.length > MOST_TERMS
        ? []
        : soundSteps(stepOf("day's water", sum(...terms), figures.volumeIn)),
    parts: {
      caption: "Each batch, with what its drinkers spill",
      columns: ["Birds", "Pen", "Age", "A day"],
      rows: parts,
    },
    valid: [alwaysValid("A sum", "birds that are not there drink nothing")],
    notes: [MEANING[subject.which]],
    sources: ["closed-form"],
  };
}

const MEANING: Readonly<Record<IntakeFigure, string>> = {
  size: "The cautious figure: vessels, pipes and drinkers are to be sized on it.",
  expect: "What is likely to be drunk; on some days it is more. Vessels sized on it alone would run dry.",
};

/** One batch: how many, what one drinks on a mild day, the air, and what is spilled. */
export function howBatchIntake(request: HowRequest, subject: BatchSubject): HowGot {
  const { figures } = request;
  const flock = flockAt(request, subject);
  const pen = flock?.pens[subject.pen];
  const batch = pen?.batches[subject.batch];
  const title = `A day's water ${FIGURE_WORDS[subject.which]}${onDay(subject)}`;
  if (flock === undefined || pen === undefined || batch === undefined) return untold(title);
  const intake = intakeOfBatch(batch, flock.weather);
  const each = intake[subject.which];
  const spilled = spilledAtPen(request.checked.line, pen);
  const isThere = batch.ageDays >= 0 && batch.count > 0;
  const step = stepOf(
    "day's water",
    product(
      term("birds", batch.count, String(batch.count)),
      term("one on a mild day", each / intake.heat, figures.volumeIn(each / intake.heat)),
      term("times for the air", intake.heat, bare(intake.heat, 3)),
      sum(1, term("spilled", spilled, bare(spilled, 2))),
    ),
    figures.volumeIn,
  );
  return {
    title: `${batchName(batch)} of ${quoted(pen.id)}: ${title}`,
    result: `${figures.volume(volumeOf(request, flock, pen, batch, subject.which))} a day`,
    steps: isThere ? soundSteps(step) : [],
    valid: [
      alwaysValid("Between two rows of the table", "in a straight line; beyond the last row, as that row"),
    ],
    notes: [
      isThere
        ? `${writeAgeOf(batch)} old${batch.kind.lays ? `, ${percent(batch.lay)} of them laying on a day` : ""}. ${airWords(flock, figures)}`
        : "They are not there, and drink nothing.",
      doubtWords(intake, batch, figures),
    ],
    sources: [
      ...new Set([...citationsOf(intake, subject.which).map(({ source }) => source), "may-lott-1992"]),
    ],
  };
}

const citationsOf = (intake: BatchIntake, which: IntakeFigure) =>
  which === "size" ? intake.sizeFrom : intake.expectFrom;

function doubtWords(intake: BatchIntake, { count }: Batch, figures: Figures): string {
  const { confidence, low, high } = intake;
  const places = [...intake.sizeFrom, ...intake.expectFrom].map(({ where }) => where);
  return `How sure: ${confidence} confidence, ± ${percent(INTAKE_DOUBT[confidence])}. Drunk by them may be ${figures.volume(count * low)} to ${figures.volume(count * high)} a day. Rows used: ${[...new Set(places)].join("; ")}.`;
}

function airWords({ weather }: Flock, figures: Figures): string {
  const { high, low } = weather;
  const air =
    high === low ? figures.temperature(high) : `${figures.temperature(low)} to ${figures.temperature(high)}`;
  return `Air of ${air}: what one drinks grows by 6.5 % a degree above ${figures.temperature(21)}, weighed by the hours they drink in, to three times at most.`;
}

function volumeOf(
  { checked }: HowRequest,
  { weather }: Flock,
  pen: Pen,
  batch: Batch,
  which: IntakeFigure,
): number {
  if (batch.ageDays < 0) return 0;
  return batch.count * intakeOfBatch(batch, weather)[which] * (1 + spilledAtPen(checked.line, pen));
}

const batchName = ({ count, kind }: Batch): string => `${count} × ${kind.name}`;
const writeAgeOf = ({ ageDays }: Batch): string => (ageDays < 0 ? "not there" : writeAge(ageDays));
