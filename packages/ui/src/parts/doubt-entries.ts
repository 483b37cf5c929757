import { DEFAULTS, type Plan } from "@headfall/hydraulics";
import type { Entry } from "../fields/entry.js";
import { heightKeyOf } from "../store/measure-height.js";
import type { Path } from "../store/plan-values.js";
import { setAt } from "../store/set-at.js";
import { type PlanContext, runNames, sourceNames } from "./plan-context.js";

/** How far the height of a run's end may be off, where it was measured better or worse than the others. */
export function endDoubtEntry({ plan }: PlanContext, run: number): Entry {
  const name = runNames(plan)[run]!;
  return entryOf({
    title: "The height of its end may be off by",
    name: `The height of the end of ${name} may be off by`,
    typed: plan.runs[run]!.doubt,
    standIn: plan.doubts?.heights ?? DEFAULTS.heightDoubt.typed,
    path: ["runs", run, "doubt"],
  });
}

/** The same of one reading of a survey. */
export function readingDoubtEntry({ plan }: PlanContext, run: number, reading: number): Entry {
  const name = runNames(plan)[run]!;
  const entry = entryOf({
    title: `Reading ${reading + 1} may be off by`,
    name: `Reading ${reading + 1} of ${name} may be off by`,
    typed: plan.runs[run]!.survey![reading]!.doubt,
    standIn: plan.doubts?.heights ?? DEFAULTS.heightDoubt.typed,
    path: ["runs", run, "survey", reading, "doubt"],
  });
  // Under the name of the survey, so that what is half typed goes when readings are moved.
  return { ...entry, key: `${name} survey ${reading} doubt` };
}

/** The same of the height of a joint, wherever the plan tells that height: at the joint itself, or by a run that ends there. */
export function jointDoubtEntry(context: PlanContext, joint: string): Entry | undefined {
  const { plan } = context;
  const [list, index] = heightKeyOf(plan, joint).path;
  const entry = list === "runs" ? endDoubtEntry(context, index as number) : pointDoubtEntry(plan, joint);
  return (
    entry && { ...entry, title: "Its height may be off by", name: `The height of ${joint} may be off by` }
  );
}

/** Undefined where the point says nothing that could be off. */
function pointDoubtEntry(plan: Plan, joint: string): Entry | undefined {
  const index = plan.points?.findIndex(({ id }) => id === joint) ?? -1;
  const point = plan.points?.[index];
  if (point === undefined || (point.ground === undefined && point.above === undefined)) return undefined;
  return entryOf({
    title: "Its height may be off by",
    name: `The height of ${joint} may be off by`,
    typed: point.doubt,
    standIn: plan.doubts?.heights ?? DEFAULTS.heightDoubt.typed,
    path: ["points", index, "doubt"],
  });
}

/** The same of the height a source stands at, and of its water levels. */
export function sourceDoubtEntries({ plan }: PlanContext, index: number): Entry[] {
  const name = sourceNames(plan)[index]!;
  const source = plan.sources[index]!;
  return [
    entryOf({
      title: "The height it stands at may be off by",
      name: `The height ${name} stands at may be off by`,
      typed: source.doubt,
      standIn: plan.doubts?.heights ?? DEFAULTS.heightDoubt.typed,
      path: ["sources", index, "doubt"],
    }),
    entryOf({
      title: "Its water levels may be off by",
      name: `The water levels of ${name} may be off by`,
      typed: source.level?.doubt,
      standIn: plan.doubts?.level ?? DEFAULTS.levelDoubt.typed,
      path: ["sources", index, "level", "doubt"],
    }),
  ];
}

const entryOf = (told: {
  readonly title: string;
  readonly name: string;
  readonly typed: string | undefined;
  readonly standIn: string;
  readonly path: Path;
}): Entry => ({
  form: "typed",
  key: told.path.join(" "),
  title: told.title,
  name: told.name,
  kind: "length",
  typed: told.typed,
  standIn: told.standIn,
  note: "Either way. It decides what is sure and what is a close call.",
  change: setAt(told.path, told.title.toLowerCase()),
});
