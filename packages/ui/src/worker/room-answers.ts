/** What rooms ask of their worker, one question a function: asked of the library, its answer taken out of the result. */
import {
  birdsForPlan,
  buildSheetOf,
  CURE_WORDS,
  type CureKind,
  carryingOf,
  compareVariants,
  dailyMark,
  findCures,
  findFront,
  frostOfPlan,
  frostOfRecord,
  goingAway,
  heatOfPlan,
  heatOfRecord,
  howLongItLasts,
  judgeWeeks,
  measureAgain,
  mishapsOfPlan,
  rainSupply,
  rowOf,
  runDay,
  settingOfPlan,
  simulateDay,
  summariseDays,
  whatIsWrong,
  yardForPlan,
  yearForPlan,
} from "@headfall/hydraulics";
import type { RoomAnswer, RoomQuestion } from "./room-protocol.js";

/** Told the share done of what takes long, and in words what is being done. */
export type RoomProgress = (share: number, words?: string) => void;

export type QuestionOf<Kind extends RoomQuestion["kind"]> = Extract<RoomQuestion, { kind: Kind }>;

type Refused = { readonly ok: false };

/** What of a result answers the question; a refusal stands as it is. */
const answered = <Result extends { readonly ok: boolean }, Answer>(
  result: Result,
  answerIn: (given: Exclude<Result, Refused>) => Answer,
) =>
  result.ok
    ? ({ ok: true, answer: answerIn(result as Exclude<Result, Refused>) } as const)
    : (result as Extract<Result, Refused>);

export function answerWeeks(
  { plan, day, weeks }: QuestionOf<"weeks">,
  progress: RoomProgress,
): RoomAnswer<"weeks"> {
  const judged = judgeWeeks(plan, { day, weeks, progress });
  if (!judged.ok || !judged.weeks.some(({ pens }) => pens.some(({ isElsewhere }) => isElsewhere)))
    return judged.ok ? { ok: true, answer: judged } : judged;
  const told = birdsForPlan(plan, { weeks, ...(day === undefined ? {} : { day }) });
  return answered(told, ({ birds }) => ({ ...judged, everyBird: birds.weeks }));
}

export const answerDay = ({ plan, day, seed, hot, figure }: QuestionOf<"day">): RoomAnswer<"day"> =>
  answered(simulateDay(plan, { day, seed, hot, figure, record: true }), ({ result }) => result);

export const answerDays = (
  { plan, day, count, hot, figure }: QuestionOf<"days">,
  progress: RoomProgress,
): RoomAnswer<"days"> =>
  answered(settingOfPlan(plan, { day, hot, figure }), ({ setting }) =>
    summariseDays(
      Array.from({ length: count }, (_, k) => {
        progress(k / count);
        return rowOf(runDay(setting, { seed: k + 1, figure, record: false }));
      }),
    ),
  );

export const answerMeasure = (
  { plan, day }: QuestionOf<"measure">,
  progress: RoomProgress,
): RoomAnswer<"measure"> => answered(measureAgain(plan, { day, progress }), ({ measuring }) => measuring);

export const answerRain = ({ plan, day, record, source, figure }: QuestionOf<"rain">): RoomAnswer<"rain"> =>
  answered(rainSupply(plan, record, { day, source, figure }), ({ supply }) => supply);

export const answerCompare = ({ plans, day }: QuestionOf<"compare">): RoomAnswer<"compare"> =>
  answered(compareVariants(plans, { day, samples: 0 }), ({ variants }) => variants);

export const answerBuild = (
  { plan, day }: QuestionOf<"build">,
  progress: RoomProgress,
): RoomAnswer<"build"> => answered(buildSheetOf(plan, { day, progress }), ({ sheet }) => sheet);

export const answerYard = ({ plan, day, weeks }: QuestionOf<"yard">): RoomAnswer<"yard"> =>
  answered(yardForPlan(plan, { day, weeks }), ({ yard }) => yard);

export const answerMishaps = (
  { plan, day }: QuestionOf<"mishaps">,
  progress: RoomProgress,
): RoomAnswer<"mishaps"> => answered(mishapsOfPlan(plan, { day, progress }), ({ mishaps }) => mishaps);

export const answerTrouble = (
  { plan, day, signs, lastSeen, levels }: QuestionOf<"trouble">,
  progress: RoomProgress,
): RoomAnswer<"trouble"> =>
  answered(whatIsWrong(plan, signs, { day, lastSeen, levels, progress }), ({ trouble }) => trouble);

/** Of a plan of loose waterers alone. */
const NO_LINE = {
  code: "missing",
  path: "sources",
  found: "a list of 0",
  allowed: "This is asked of a line, and the plan has none.",
  mend: "Add a vessel and a run; what founts and pans hold is told in the room Yard.",
} as const;

export function answerTime({ plan, day, daysAway, source }: QuestionOf<"time">): RoomAnswer<"time"> {
  if (plan.sources.length === 0) return { ok: false, problems: [NO_LINE] };
  const lasting = howLongItLasts(plan, { day });
  if (!lasting.ok) return lasting;
  const away = goingAway(plan, { days: daysAway, day });
  if (!away.ok) return away;
  const mark = dailyMark(plan, { source: Math.min(source, plan.sources.length - 1), day });
  if (!mark.ok) return mark;
  const carrying = carryingOf(plan, { day });
  if (!carrying.ok) return carrying;
  return {
    ok: true,
    answer: { lasting: lasting.lasting, away: away.away, mark: mark.mark, carrying: carrying.carrying },
  };
}

export function answerYear(
  { plan, day, weeks }: QuestionOf<"year">,
  progress: RoomProgress,
): RoomAnswer<"year"> {
  const told = yearForPlan(plan, {
    weeks,
    day,
    progress: (share) => {
      progress(share);
      return true;
    },
  });
  return answered(told, ({ year }) => year);
}

export function answerWeather({ plan, day }: QuestionOf<"weather">): RoomAnswer<"weather"> {
  const frost = frostOfPlan(plan);
  if (!frost.ok) return frost;
  const heat = heatOfPlan(plan, { day });
  return answered(heat, (told) => ({ frost: frost.frost, heat: told.heat }));
}

export function answerWeatherRecord(
  { plan, day, record }: QuestionOf<"weatherRecord">,
  progress: RoomProgress,
): RoomAnswer<"weatherRecord"> {
  const frost = frostOfRecord(plan, record);
  if (!frost.ok) return frost;
  const heat = heatOfRecord(plan, record, { day, progress });
  return answered(heat, ({ record: told }) => ({ frost: frost.record, heat: told }));
}

/** How many plans there are to judge shows only at the end: the share stays open. */
export function answerCure(
  { plan, options }: QuestionOf<"cure">,
  progress: RoomProgress,
): RoomAnswer<"cure"> {
  return findCures(plan, {
    ...options,
    progress: (judged, trying) => progress(0, `${CURE_WORDS[trying as CureKind]}: ${judged} judged`),
  });
}

export function answerFront(
  { plan, options }: QuestionOf<"front">,
  progress: RoomProgress,
): RoomAnswer<"front"> {
  const finding = findFront(plan, {
    ...options,
    progress: (judged) => progress(0, `trade-offs: ${judged} judged`),
  });
  return answered(finding, ({ front }) => front);
}
