import { buildSheetOf } from "../judge/build/build-of-plan.js";
import { writeBuildDocument } from "../report/build/build-document.js";
import { PAPERS, type PaperSize, writeBuildPage } from "../report/build/build-page.js";
import { writeBuildText } from "../report/build/build-text.js";
import { writePartsCsv } from "../report/build/csv-parts.js";
import { readQuantity } from "../units/quantity.js";
import type { Question } from "./answer-plan.js";

/** `headfall build PLAN --kerf "3 mm"`: nothing here is a verdict, so that the exit status is 0. */
export const BUILD: Question = {
  options: ["kerf", "weeks", "seed", "paper"],
  flags: ["csv"],
  answer: ({ plan, name, day, system, paint, own, flags }) => {
    const typed = own["kerf"];
    const kerf = typed === undefined ? undefined : readQuantity(typed, "length");
    if (kerf !== undefined && !kerf.ok) return { fault: `--kerf: found ${kerf.found}. ${kerf.allowed}` };
    if (kerf !== undefined && !(kerf.quantity.si >= 0 && kerf.quantity.si <= 0.02))
      return { fault: "--kerf is the width of a cut, from 0 to 20 mm." };
    const weeks = wholeFrom(own["weeks"], 8, 52);
    if (weeks === undefined) return { fault: "--weeks is a whole number from 0 to 52." };
    const seed = wholeFrom(own["seed"], 1, 2 ** 31 - 1);
    if (seed === undefined) return { fault: "--seed is a whole number from 0." };
    const paper = own["paper"];
    if (paper !== undefined && !isPaper(paper))
      return { fault: `--paper is a4 or letter, not ${JSON.stringify(paper)}.` };
    const answer = buildSheetOf(plan, {
      day,
      weeks,
      seed,
      ...(kerf === undefined ? {} : { kerf: kerf.quantity.si }),
    });
    if (!answer.ok) return answer;
    const { sheet } = answer;
    return {
      text: () => {
        if (flags.has("csv")) return writePartsCsv(sheet, system);
        return paper === undefined
          ? writeBuildText(name, sheet, system, paint)
          : writeBuildPage(name, sheet, system, paper);
      },
      document: () => writeBuildDocument(name, sheet, system),
      status: 0,
    };
  },
};

function wholeFrom(typed: string | undefined, otherwise: number, most: number): number | undefined {
  if (typed === undefined) return otherwise;
  return /^\d{1,10}$/.test(typed) && Number(typed) <= most ? Number(typed) : undefined;
}

const isPaper = (typed: string): typed is PaperSize => Object.hasOwn(PAPERS, typed);
