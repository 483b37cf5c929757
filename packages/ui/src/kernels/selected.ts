/**
 * The part of a plan that the hand, the keyboard or a table row has chosen, by its place in the plan. Drinkers are
 * chosen as a group, or one of them by its number in the group (from 0).
 */
export type Selected =
  | { readonly kind: "source"; readonly source: number }
  | { readonly kind: "run"; readonly run: number }
  | { readonly kind: "joint"; readonly joint: string }
  | {
      readonly kind: "drinkers";
      readonly run: number;
      readonly group: number;
      readonly number?: number;
    };

/** Whether two choices mean the same part; `undefined` is nothing chosen. */
export function isSamePart(one: Selected | undefined, other: Selected | undefined): boolean {
  if (one === undefined || other === undefined) return one === other;
  return keyOfPart(one) === keyOfPart(other);
}

/** One text for each part, for lists and look-ups. */
export function keyOfPart(part: Selected): string {
  switch (part.kind) {
    case "source":
      return `source ${part.source}`;
    case "run":
      return `run ${part.run}`;
    case "joint":
      return `joint ${part.joint}`;
    case "drinkers":
      return `drinkers ${part.run} ${part.group} ${part.number ?? ""}`;
  }
}
