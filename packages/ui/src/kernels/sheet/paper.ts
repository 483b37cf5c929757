/** Papers that printers have at home. */
export type PaperName = "a4" | "letter";

/** A sheet of paper as it lies in the hand [mm]. */
export interface Paper {
  readonly name: PaperName;
  readonly isLying: boolean;
  readonly width: number;
  readonly height: number;
  /** "A4, upright". */
  readonly words: string;
}

/** ISO 216 A4, and the US Letter of 8 1/2 by 11 in [mm]. */
const SIZES = {
  a4: { short: 210, long: 297, words: "A4" },
  letter: { short: 215.9, long: 279.4, words: "Letter" },
} as const;

/** What home printers leave white around a page [mm]. */
export const MARGIN = 8;

export function paperOf(name: PaperName, isLying: boolean): Paper {
  const { short, long, words } = SIZES[name];
  return {
    name,
    isLying,
    width: isLying ? long : short,
    height: isLying ? short : long,
    words: `${words}, ${isLying ? "lying" : "upright"}`,
  };
}
