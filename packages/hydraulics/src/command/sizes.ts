import { writeSizesDocument } from "../report/cure/sizes-document.js";
import { writeSizesText } from "../report/cure/sizes-text.js";
import { compareSizes } from "../search/compare-sizes.js";
import type { Question } from "./answer-plan.js";

/** `headfall sizes PLAN`: exit status 0 when some size works, 1 when none does. */
export const SIZES: Question = {
  options: ["run"],
  answer: ({ plan, day, system, paint, own }) => {
    const comparing = compareSizes(plan, { day, ...(own["run"] === undefined ? {} : { run: own["run"] }) });
    if (!comparing.ok) return comparing;
    const { comparison } = comparing;
    return {
      text: () => writeSizesText(comparison, system, paint),
      document: () => writeSizesDocument(comparison),
      status: comparison.smallestThatWorks === undefined ? 1 : 0,
    };
  },
};
