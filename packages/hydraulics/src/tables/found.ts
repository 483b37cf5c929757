/** What looking up by words gives: the one kind meant, or the nearest few for "did you mean ...". */
export type Found<Kind> =
  | { readonly outcome: "found"; readonly kind: Kind }
  | { readonly outcome: "near"; readonly near: readonly Kind[] };

/**
 * The kind that was meant by words, if one was.
 *
 * @param found  what looking them up gave; undefined where there was nothing to look up
 * @returns the kind; undefined where the words mean none, or more than one
 * @example kindFound(findVessel("barrel 55 gal"))?.id   // "drum-55gal-plastic"
 */
export const kindFound = <Kind>(found: Found<Kind> | undefined): Kind | undefined =>
  found?.outcome === "found" ? found.kind : undefined;

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
