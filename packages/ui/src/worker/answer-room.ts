import {
  carryingOf,
  dailyMark,
  goingAway,
  howLongItLasts,
  judgeWeeks,
  rainSupply,
  readRainRecord,
  rowOf,
  runDay,
  settingOfPlan,
  simulateDay,
  summariseDays,
} from "@headfall/hydraulics";
import type { RoomAnswer, RoomQuestion } from "./room-protocol.js";

/** Answers a room's question; `progress` is told the share done of what takes long. */
export function answerRoom(
  question: RoomQuestion,
  progress: (share: number) => void = () => undefined,
): RoomAnswer<RoomQuestion["kind"]> {
  switch (question.kind) {
    case "weeks": {
      const { plan, day, weeks } = question;
      const judged = judgeWeeks(plan, { day, weeks, progress });
      return judged.ok ? { ok: true, answer: judged } : judged;
    }
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
    case "record":
      return { ok: true, answer: readRainRecord(question.text, question.options) };
    case "rain": {
      const { plan, day, record, source, figure } = question;
      const supplied = rainSupply(plan, record, { day, source, figure });
      return supplied.ok ? { ok: true, answer: supplied.supply } : supplied;
    }
  }
}

function answerTime({
  plan,
  day,
  daysAway,
  source,
}: Extract<RoomQuestion, { kind: "time" }>): RoomAnswer<"time"> {
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
