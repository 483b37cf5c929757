/** What looking up by words gives: the one kind meant, or the nearest few for "did you mean ...". */
export type Found<Kind> =
  | { readonly outcome: "found"; readonly kind: Kind }
  | { readonly outcome: "near"; readonly near: readonly Kind[] };

interface Scored<Kind> {
  readonly kind: Kind;
  readonly score: number;
}

/** The best few of those with any likeness at all, best first; equals keep the order of the table. */
export function nearest<Kind>(scored: readonly Scored<Kind>[], atMost: number): readonly Kind[] {
  return scored
    .filter(({ score }) => score > 0)
    .sort((one, other) => other.score - one.score)
    .slice(0, atMost)
    .map(({ kind }) => kind);
}
