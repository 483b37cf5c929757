import type { Citation } from "./citation.js";

/** Share of the sun that a colour takes [-], with its range. */
export interface SunColour {
  readonly id: string;
  readonly name: string;
  readonly absorptance: number;
  readonly absorptanceLow: number;
  readonly absorptanceHigh: number;
  readonly also?: readonly string[];
  readonly citation: Citation;
}

/** What frost and heat do to a material. Temperatures [°C]. */
export interface FrostMaterial {
  readonly id: string;
  readonly name: string;
  /** Materials of the pipe table that are of it. */
  readonly pipes: readonly string[];
  /** A knock breaks it when colder; undefined: not in any frost here. */
  readonly brittleBelow?: number;
  /** Not to be bent or loaded when hotter. */
  readonly softensAbove?: number;
  /** Whether ice within breaks it. */
  readonly bursts: boolean;
  readonly note: string;
  readonly citation: Citation;
}
