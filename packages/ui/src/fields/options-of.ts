import type { ChoiceOption } from "./entry.js";

/** Kinds of a table as options of a choice, by their names. */
export const optionsOf = (
  kinds: readonly { readonly id: string; readonly name: string }[],
): readonly ChoiceOption[] => kinds.map(({ id, name }) => ({ value: id, words: name }));
