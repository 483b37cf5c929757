import { type Plan, runEnds } from "@headfall/hydraulics";
import { metresOf } from "../../kernels/typed-metres.js";
import { heightsOf, type PlanHeights, toldFall } from "../plan-heights.js";

/** How one run lies from end to end, in metres. */
export interface RunCourse {
  readonly length: number;
  /** What its falls are counted from [m above datum]. */
  readonly reference: number;
  /** Places of known height, from start to end; the pipe is straight between them. */
  readonly knots: readonly { readonly along: number; readonly height: number }[];
}

/** Places nearer than this to an end are the end [m]. */
const SAME_PLACE = 1e-6;

/** How a run lies; an end that nothing gives a height is taken where the run itself would put it. */
export function courseOf(plan: Plan, index: number, heights: PlanHeights = heightsOf(plan)): RunCourse {
  const run = plan.runs[index]!;
  const { from, to } = runEnds(plan)[index]!;
  const length = metresOf(run.length);
  const reference = heights.reference[index]!;
  const start = heights.joints.get(from)?.height ?? 0;
  const end = heights.joints.get(to)?.height ?? reference - (toldFall(run) ?? 0);
  const inner = (run.survey ?? [])
    .map((reading) => ({ along: metresOf(reading.along), height: reference - metresOf(reading.fall) }))
    .filter(({ along }) => along > SAME_PLACE && along < length - SAME_PLACE);
  return {
    length,
    reference,
    knots: [{ along: 0, height: start }, ...inner, { along: length, height: end }],
  };
}

/** Height of the pipe at a distance from the start of its run [m above datum]. */
export function heightAlong({ knots }: Pick<RunCourse, "knots">, along: number): number {
  const next = Math.max(
    1,
    knots.findIndex((knot, i) => i > 0 && knot.along >= along),
  );
  const [a, b] = [knots[next - 1]!, knots[next]!];
  if (b.along <= a.along) return b.height;
  return a.height + ((b.height - a.height) * (along - a.along)) / (b.along - a.along);
}
