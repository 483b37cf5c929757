import type { Problem } from "../../document/problem.js";
import type { HotDay } from "../../model/extremes.js";
import type { FlockIntake } from "../../model/flock-intake.js";
import type { DefaultUsed } from "../../model/typed-values.js";
import type { FrostMaterial } from "../../tables/frost-materials.js";

/** Water through the day, at equal steps from midnight [°C]. */
export interface HeatCurve {
  readonly water: readonly number[];
  readonly peak: number;
  /** When it is hottest [s after midnight]. */
  readonly at: number;
  /** How long birds drink less (above 30 °C) and refuse (above 44 °C) [s]. */
  readonly less: number;
  readonly refused: number;
}

/** What would make it cooler. */
export type HeatChange = "white" | "shade" | "lagging" | "buriedShallow" | "buriedDeep";

/** What one change would make of the warmest hour. Temperatures [°C], `refused` [s]. */
export interface HeatLever {
  readonly change: HeatChange;
  /** The hotter curve's, after the change. */
  readonly peak: number;
  readonly less: number;
  readonly refused: number;
}

/** A loose waterer that is emptied and filled anew whenever its water is too warm. */
export interface HeatRefresh {
  /** What it is filled with [°C]. */
  readonly water: number;
  /** Fills in the day that keep it under 30 °C; undefined where what it is filled with is too warm itself. */
  readonly times: number | undefined;
  /** How soon after one it is too warm again, at the soonest [s]; undefined where it is not. */
  readonly againAfter: number | undefined;
}

/** What of a loose waterer is told besides, of one of them. */
export interface HeatWaterer {
  /** Water open to the air [m²]. */
  readonly open: number;
  /** What dries of it in the day [m³]. */
  readonly dried: { readonly hottest: number; readonly expected: number };
  readonly refresh: HeatRefresh;
}

/** One run, vessel or loose waterer in the sun, hour by hour. */
export interface HeatPart {
  readonly id: string;
  readonly kind: "pipe" | "vessel" | "fount" | "pan" | "bucket";
  readonly path: string;
  /** Drinkers on it; of loose waterers, how many stand alike. */
  readonly drinkers: number;
  /** Water it holds [m³]: a vessel's is that of its ordinary level. */
  readonly volume: number;
  readonly colour: string;
  readonly isColourSaid: boolean;
  readonly shade: number;
  /** How late it follows the air and the sun [s]. */
  readonly timeConstant: number;
  /** Still air and the darker end of its colour: the cautious side. */
  readonly hottest: HeatCurve;
  /** The wind of the day and the colour's middling figure. */
  readonly expected: HeatCurve;
  readonly levers: readonly HeatLever[];
  readonly material?: FrostMaterial;
  /** Set of loose waterers. */
  readonly waterer?: HeatWaterer;
}

/** What to let run away before birds drink from a hot run. */
export interface HeatFlush {
  readonly run: string;
  readonly path: string;
  /** Of all hot pipe from the source to its end [m³]. */
  readonly volume: number;
  /** When it is first too warm, and when no longer [s after midnight]. */
  readonly from: number;
  readonly to: number;
  /** Flushes that keep it under 30 °C through that time; undefined where the vessel's water is too warm itself. */
  readonly times: number | undefined;
  /** How soon after a flush it is too warm again, at its hottest [s]. */
  readonly againAfter: number | undefined;
}

/** What all birds drink on the hot day, those at loose waterers too, with what drinkers of the line spill [m³/day]. */
export interface HeatIntake extends FlockIntake {
  /** The night it is reckoned with [°C]: where the plan names one temperature alone as warm as the day, for then they drink most. */
  readonly night: number;
}

/** A hot, clear day. Temperatures [°C] at each step from midnight; draw [m³/s], times [s]. */
export interface Heat {
  readonly day: HotDay;
  /** The step of all curves [s]. */
  readonly step: number;
  /** Air through the day, at the same steps [°C]. */
  readonly air: readonly number[];
  readonly parts: readonly HeatPart[];
  readonly flushes: readonly HeatFlush[];
  /** Undefined where the plan tells of no birds. */
  readonly intake: HeatIntake | undefined;
  /** What the birds draw in an hour of light, on average [m³/s], and how often that renews all hot pipe [s]. */
  readonly draw: number;
  readonly renewedEvery: number | undefined;
  readonly defaults: readonly DefaultUsed[];
}

/** What a hot day does, or what in the plan contradicts itself. */
export type HeatAnswer =
  | { readonly ok: true; readonly heat: Heat }
  | { readonly ok: false; readonly problems: readonly Problem[] };
