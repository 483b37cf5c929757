import type { LikelyCause, Trouble } from "../../judge/trouble/trouble-result.js";
import type { SignFit } from "../../judge/trouble/weigh.js";
import { type UnitSystem, writeQuantity } from "../../units/quantity.js";
import type { Paint } from "../check-text.js";
import { listed } from "../name-ranges.js";
import { writeTable } from "../text-table.js";
import { writeCause } from "./trouble-causes.js";
import { percent, writeAnswers, writeLookAtEach, writeSigns, writeUsefulLook } from "./trouble-looks.js";
import { writeTodo } from "./trouble-todo.js";
import { writeTwoAtOnce } from "./trouble-two.js";

/** What is likely wrong, as text for a terminal. */
export function writeTroubleText(title: string, trouble: Trouble, system: UnitSystem, paint: Paint): string {
  const head = `${title === "" ? "This plan" : title}: what is likely wrong`;
  const [first] = trouble.likely;
  const sections = [
    `${paint(head, "title")}\nSeen: ${writeSigns(trouble.signs, system)}.`,
    causesTable(trouble, system),
    ...(trouble.twoAtOnce === undefined
      ? []
      : [
          `${paint("Two things at once", "title")}\n${writeTwoAtOnce(trouble.twoAtOnce, system)
            .map((line) => `- ${line}`)
            .join("\n")}`,
        ]),
    `${paint("Why", "title")}\n${trouble.likely
      .slice(0, 3)
      .map((cause, k) => `- ${k + 1}: ${writeWhy(cause, system)}`)
      .join("\n")}`,
    `${paint("The one look", "title")}\n${writeNextLook(trouble, system).join("\n")}`,
    `${paint("What to do", "title")}\n${writeTodo(first)
      .map((line) => `- ${line}`)
      .join("\n")}`,
    `${paint("What this is", "title")}\n${writeTried(trouble, system)
      .map((line) => `- ${line}`)
      .join("\n")}`,
    `${paint("Cautions", "title")}\n${TROUBLE_CAUTIONS.map((line) => `- ${line}`).join("\n")}`,
  ];
  return `${sections.join("\n\n")}\n`;
}

/** Birds first, and what none of this answers. */
export const TROUBLE_CAUTIONS = [
  "Birds that have no water now come first: give them some in a pan, then look for the cause. Chicks and quail drown in a few centimetres: put stones in.",
  "A cause that is found does not show that every drinker works: look at the birds and each drinker afterwards, and every day. Birds that are ill are a matter for a vet.",
] as const;

function causesTable({ likely, otherShare }: Trouble, system: UnitSystem): string {
  const rows = likely.map((cause, k) => [String(k + 1), percent(cause.share), writeCause(cause, system)]);
  const rest = otherShare >= 0.005 ? [["", percent(otherShare), "all others"]] : [];
  return writeTable({
    columns: ["", "share", "cause"],
    alignRight: [true, true, false],
    rows: [...rows, ...rest],
  });
}

/**
 * Which signs speak for a cause, and which do not fit it.
 *
 * @example writeWhy(trouble.likely[0], "metric")   // "it fits line 4 dry."
 */
export function writeWhy({ code, fits, against }: LikelyCause, system: UnitSystem): string {
  if (code === "somethingElse")
    return "no sign speaks for it or against it; it stands for all that was not tried.";
  const words = (list: readonly SignFit[]) =>
    writeSigns(
      list.map(({ sign }) => sign),
      system,
    );
  if (fits.length === 0 && against.length === 0) return "no sign says much for it or against it.";
  const parts = [
    ...(fits.length === 0 ? ["no sign speaks for it"] : [`it fits ${words(fits)}`]),
    ...(against.length === 0 ? [] : [`it does not fit ${words(against)}`]),
  ];
  return `${parts.join("; ")}.`;
}

/**
 * The look that tells the first two apart, what its answers mean, and what cannot be told.
 *
 * @example writeNextLook(trouble, "metric")[0]   // "It tells 1 from 2: Look into bucket: where does its water stand?"
 */
export function writeNextLook(trouble: Trouble, system: UnitSystem): string[] {
  const { likely, nextLook, moreLooks, lookAmong, notToldFromFirst } = trouble;
  const lines: string[] = [];
  if (nextLook !== undefined) {
    lines.push(
      `It tells 1 from 2: ${writeUsefulLook(nextLook)}`,
      ...writeAnswers(nextLook).map((line) => `- ${line}`),
    );
    const [another] = moreLooks.filter(({ look }) => look.look !== nextLook.look.look);
    if (another !== undefined) lines.push(`Or else: ${writeUsefulLook(another)}`);
  } else if (likely.length < 2) lines.push("Nothing else is likely: see whether the first is so.");
  else lines.push("No look of these tells 1 from 2: see to both.");
  const count = likely[0].places.length;
  if (lookAmong !== undefined && count > 1) {
    const words = count > 2 ? writeLookAtEach(lookAmong.look) : undefined;
    lines.push(`Which of the ${count} it is: ${writeUsefulLook(lookAmong, words)}`);
  }
  const alike = notToldFromFirst.filter((k) => k > 1 || nextLook !== undefined);
  if (alike.length > 0)
    lines.push(
      `Nothing that can be looked at here tells ${listed(alike.map((k) => String(k + 1)))} (${writeCause(likely[alike[0]], system)}) from the first.`,
    );
  return lines;
}

/**
 * What was tried, and what was taken as understood.
 *
 * @example writeTried(trouble, "metric")[0]   // "18 causes in 57 states, each solved with this line; one ..."
 */
export function writeTried({ tried, levels, setAside }: Trouble, system: UnitSystem): string[] {
  const stands = levels.map(({ source, level }) => `${source} ${writeQuantity(level, "length", system, 3)}`);
  return [
    `${tried.causes} causes in ${tried.states} states, each solved with this line; one thing wrong at a time, two where one leaves a sign badly explained. Shares rest on how often such things happen, which is common practice without a source.`,
    `The water is taken to stand at: ${listed(stands)}.`,
    ...(setAside.length === 0
      ? []
      : [
          `With the water gone drinkers are dry whatever the cause: ${setAside.length} such ${setAside.length === 1 ? "sign says" : "signs say"} nothing more.`,
        ]),
  ];
}
