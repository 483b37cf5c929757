import type { PaperName } from "../kernels/sheet/paper.js";
import type { SheetDrawing } from "../kernels/sheet/sheet-request.js";

/** What the user has chosen about the print. */
export interface SheetChoices {
  readonly drawing: SheetDrawing;
  /** Undefined: the paper usual where the units are. */
  readonly paper: PaperName | undefined;
  readonly isLying: boolean;
  readonly scale: number | undefined;
  readonly heightScale: number | undefined;
  readonly run: number | undefined;
  readonly isColour: boolean;
}

export const FIRST_CHOICES: SheetChoices = {
  drawing: "above",
  paper: undefined,
  isLying: false,
  scale: undefined,
  heightScale: undefined,
  run: undefined,
  isColour: true,
};
