import type { Looked } from "@headfall/hydraulics";

/** An answer as it stands on its button. */
export interface AnswerWord {
  readonly sees: string;
  readonly words: string;
}

const answers = (words: Readonly<Record<string, string>>): readonly AnswerWord[] =>
  Object.entries(words).map(([sees, said]) => ({ sees, words: said }));

/** What can be said of each look, from well to ill. */
export const ANSWER_WORDS: Readonly<Record<Looked, readonly AnswerWord[]>> = {
  gives: answers({ fine: "fine", weak: "weak", dry: "dry" }),
  drips: answers({ holds: "holds", drips: "drips" }),
  night: answers({ holds: "stands still", falls: "falls" }),
  day: answers({ asMarked: "as marked", faster: "too fast", less: "too slow", still: "not at all" }),
  water: answers({ asThought: "as thought", low: "low", empty: "empty" }),
  ground: answers({ dry: "dry", wet: "wet" }),
  end: answers({ plenty: "plenty", little: "little", nothing: "nothing" }),
  lid: answers({ noChange: "no change", helps: "helps" }),
};
