import type { Box, Shape } from "./shapes.js";

/** One page, in millimetres from its upper left corner. */
export interface SheetPage {
  /** "B2": row B, column 2. "N1" is a page of notes. */
  readonly name: string;
  /** Frame, title block, marks. */
  readonly shapes: readonly Shape[];
  /** The page's part of the drawing: seen through `box`, its shapes moved by `shift`. */
  readonly window:
    | {
        readonly box: Box;
        readonly shift: { readonly x: number; readonly y: number };
        readonly shapes: readonly Shape[];
      }
    | undefined;
}
