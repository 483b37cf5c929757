import type { Question } from "./answer-plan.js";
import type { CommandName } from "./help-commands.js";

/** A command that answers about one plan. */
export type QuestionName = Exclude<CommandName, "compare" | "batch">;

/** Whether there is such a question. */
export const isQuestion = (name: string): name is QuestionName => Object.hasOwn(QUESTIONS, name);

/** What can be asked about one plan, by name. Each is loaded when it is asked for, so that none waits for the others. */
export const QUESTIONS: Readonly<Record<QuestionName, () => Promise<Question>>> = {
  check: async () => (await import("./check.js")).CHECK,
  measure: async () => (await import("./measure.js")).MEASURE,
  birds: async () => (await import("./birds.js")).BIRDS,
  day: async () => (await import("./day.js")).DAY,
  lasts: async () => (await import("./lasts.js")).LASTS,
  away: async () => (await import("./away.js")).AWAY,
  mark: async () => (await import("./mark.js")).MARK,
  mishaps: async () => (await import("./mishaps.js")).MISHAPS,
  rain: async () => (await import("./rain.js")).RAIN,
  build: async () => (await import("./build.js")).BUILD,
  sizes: async () => (await import("./sizes.js")).SIZES,
  trouble: async () => (await import("./trouble.js")).TROUBLE,
  cure: async () => (await import("./cure.js")).CURE,
  heat: async () => (await import("./heat.js")).HEAT,
  frost: async () => (await import("./frost.js")).FROST,
  weeks: async () => (await import("./weeks.js")).WEEKS,
  yard: async () => (await import("./yard.js")).YARD,
  year: async () => (await import("./year.js")).YEAR,
};
