/** What asks for drinkers, by a shape before any word: a full square where a rule binds, an open one for advice. */
export const forceMark = (isBinding: boolean): string => (isBinding ? "■" : "◇");
