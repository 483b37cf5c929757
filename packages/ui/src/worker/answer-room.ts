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
  readAirRecord,
  readRainRecord,
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

/** Answers a room's question. */
export function answerRoom(
  question: RoomQuestion,
  progress: RoomProgress = () => undefined,
): RoomAnswer<RoomQuestion["kind"]> {
  switch (question.kind) {
    case "weeks":
      return answerWeeks(question, progress);
    case "time":
      return answerTime(question);
    case "day": {
      const { plan, day, seed, hot, figure } = question;
      const simulated = simulateDay(plan, { day, seed, hot, figure, record: true });
      return simulated.ok ? { ok: true, answer: simulated.result } : simulated;
    }
    case "days": {
      const { plan, day, count, hot, figure } = question;
      const set = settingOfPlan(plan, { day, hot, figure });
      if (!set.ok) return set;
      const rows = Array.from({ length: count }, (_, k) => {
        progress(k / count);
        return rowOf(runDay(set.setting, { seed: k + 1, figure, record: false }));
      });
      return { ok: true, answer: summariseDays(rows) };
    }
    case "measure": {
      const { plan, day } = question;
      const found = measureAgain(plan, { day, progress });
      return found.ok ? { ok: true, answer: found.measuring } : found;
    }
    case "record":
      return { ok: true, answer: readRainRecord(question.text, question.options) };
    case "rain": {
      const { plan, day, record, source, figure } = question;
      const supplied = rainSupply(plan, record, { day, source, figure });
      return supplied.ok ? { ok: true, answer: supplied.supply } : supplied;
    }
    case "cure":
      return answerCure(question, progress);
    case "front":
      return answerFront(question, progress);
    case "compare": {
      const { plans, day } = question;
      const compared = compareVariants(plans, { day, samples: 0 });
      return compared.ok ? { ok: true, answer: compared.variants } : compared;
    }
    case "weather":
      return answerWeather(question);
    case "airRecord":
      return { ok: true, answer: readAirRecord(question.text, question.options) };
    case "weatherRecord":
      return answerWeatherRecord(question, progress);
    case "build": {
      const { plan, day } = question;
      const built = buildSheetOf(plan, { day, progress });
      return built.ok ? { ok: true, answer: built.sheet } : built;
    }
    case "year":
      return answerYear(question, progress);
    case "yard": {
      const { plan, day, weeks } = question;
      const told = yardForPlan(plan, { day, weeks });
      return told.ok ? { ok: true, answer: told.yard } : told;
    }
    case "mishaps": {
      const { plan, day } = question;
      const told = mishapsOfPlan(plan, { day, progress });
      return told.ok ? { ok: true, answer: told.mishaps } : told;
    }
    case "trouble": {
      const { plan, day, signs, lastSeen, levels } = question;
      const told = whatIsWrong(plan, signs, { day, lastSeen, levels, progress });
      return told.ok ? { ok: true, answer: told.trouble } : told;
    }
  }
}

function answerWeeks(
  { plan, day, weeks }: Extract<RoomQuestion, { kind: "weeks" }>,
  progress: RoomProgress,
): RoomAnswer<"weeks"> {
  const judged = judgeWeeks(plan, { day, weeks, progress });
  if (!judged.ok || !judged.weeks.some(({ pens }) => pens.some(({ isElsewhere }) => isElsewhere)))
    return judged.ok ? { ok: true, answer: judged } : judged;
  const told = birdsForPlan(plan, { weeks, ...(day === undefined ? {} : { day }) });
  return told.ok ? { ok: true, answer: { ...judged, everyBird: told.birds.weeks } } : told;
}

/** Of a plan of loose waterers alone. */
const NO_LINE = {
  code: "missing",
  path: "sources",
  found: "a list of 0",
  allowed: "This is asked of a line, and the plan has none.",
  mend: "Add a vessel and a run; what founts and pans hold is told in the room Yard.",
} as const;

function answerTime({
  plan,
  day,
  daysAway,
  source,
}: Extract<RoomQuestion, { kind: "time" }>): RoomAnswer<"time"> {
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

function answerYear(
  { plan, day, weeks }: Extract<RoomQuestion, { kind: "year" }>,
  progress: RoomProgress,
): RoomAnswer<"year"> {
  const answer = yearForPlan(plan, {
    weeks,
    day,
    progress: (share) => {
      progress(share);
      return true;
    },
  });
  return answer.ok ? { ok: true, answer: answer.year } : answer;
}

function answerWeather({ plan, day }: Extract<RoomQuestion, { kind: "weather" }>): RoomAnswer<"weather"> {
  const frost = frostOfPlan(plan);
  if (!frost.ok) return frost;
  const heat = heatOfPlan(plan, { day });
  return heat.ok ? { ok: true, answer: { frost: frost.frost, heat: heat.heat } } : heat;
}

function answerWeatherRecord(
  { plan, day, record }: Extract<RoomQuestion, { kind: "weatherRecord" }>,
  progress: RoomProgress,
): RoomAnswer<"weatherRecord"> {
  const frost = frostOfRecord(plan, record);
  if (!frost.ok) return frost;
  const heat = heatOfRecord(plan, record, { day, progress });
  return heat.ok ? { ok: true, answer: { frost: frost.record, heat: heat.record } } : heat;
}

/** How many plans there are to judge shows only at the end: the share stays open. */
function answerCure(
  { plan, options }: Extract<RoomQuestion, { kind: "cure" }>,
  progress: RoomProgress,
): RoomAnswer<"cure"> {
  return findCures(plan, {
    ...options,
    progress: (judged, trying) => progress(0, `${CURE_WORDS[trying as CureKind]}: ${judged} judged`),
  });
}

function answerFront(
  { plan, options }: Extract<RoomQuestion, { kind: "front" }>,
  progress: RoomProgress,
): RoomAnswer<"front"> {
  const finding = findFront(plan, {
    ...options,
    progress: (judged) => progress(0, `trade-offs: ${judged} judged`),
  });
  return finding.ok ? { ok: true, answer: finding.front } : finding;
}
