import type { Trouble } from "../../judge/trouble/trouble-result.js";
import type { UnitSystem } from "../../units/quantity.js";
import { writeCause } from "./trouble-causes.js";
import { writeUsefulLook } from "./trouble-looks.js";
import { writeNextLook } from "./trouble-text.js";
import { writeTodo } from "./trouble-todo.js";
import { writeTwoAtOnce } from "./trouble-two.js";

/**
 * What is likely wrong, as a plain document, SI throughout: m, m³/s.
 *
 * @example writeTroubleDocument("a bucket", trouble, "metric").format   // "headfall trouble"
 */
export function writeTroubleDocument(name: string, trouble: Trouble, system: UnitSystem) {
  const { plan, likely, twoAtOnce, nextLook, moreLooks, lookAmong, ...rest } = trouble;
  const told = (look: typeof nextLook) =>
    look === undefined ? undefined : { ...look, sentence: writeUsefulLook(look) };
  return {
    format: "headfall trouble",
    version: 1,
    plan: { name, ...plan },
    ...rest,
    likely: likely.map((cause) => ({
      ...cause,
      sentence: `${writeCause(cause, system)}.`,
      todo: writeTodo(cause),
    })),
    ...(twoAtOnce === undefined
      ? {}
      : { twoAtOnce: { ...twoAtOnce, sentences: writeTwoAtOnce(twoAtOnce, system) } }),
    ...(nextLook === undefined ? {} : { nextLook: told(nextLook) }),
    moreLooks: moreLooks.map(told),
    ...(lookAmong === undefined ? {} : { lookAmong: told(lookAmong) }),
    sentences: writeNextLook(trouble, system),
  };
}
