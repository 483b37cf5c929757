import type { BarToCut, RunPiece } from "@headfall/hydraulics";

/** The width of the longest bar of a drawing. */
export const BAR_WIDTH = 998;

export interface LaidBar {
  readonly width: number;
  readonly pieces: readonly { readonly x: number; readonly width: number; readonly piece: RunPiece }[];
  /** What is left at its end; undefined where that is nothing. */
  readonly rest: { readonly x: number; readonly width: number } | undefined;
}

/** A bar to the scale of the longest, its pieces from the left, the cuts between them shared out. */
export function barLayout({ length, pieces, rest }: BarToCut, longest: number): LaidBar {
  const scale = BAR_WIDTH / longest;
  const cut = pieces.reduce((sum, piece) => sum + piece.length, 0);
  const kerf = pieces.length === 0 ? 0 : Math.max(0, length - rest - cut) / pieces.length;
  let at = 0;
  const laid = pieces.map((piece) => {
    const x = 1 + at * scale;
    at += piece.length + kerf;
    return { x, width: piece.length * scale, piece };
  });
  return {
    width: length * scale,
    pieces: laid,
    rest: rest > 0 ? { x: 1 + (length - rest) * scale, width: rest * scale } : undefined,
  };
}
