import type { Problem } from "../../document/problem.js";
import type { FrostNight } from "../../model/extremes.js";
import type { DefaultUsed } from "../../model/typed-values.js";
import type { FrostMaterial } from "../../tables/frost-materials.js";

/** What freezes. */
export type FrostPartKind = "pin" | "bowl" | "pipe" | "vessel" | "fount" | "pan" | "bucket";

/**
 * How long something takes from dusk [s]: soonest (wind of that night, little water: the cautious side) to latest
 * (still air, full). Infinity where that frost never does it.
 */
export interface FrostBand {
  readonly soonest: number;
  readonly latest: number;
}

/** One part of the plan in the night of frost. */
export interface FrostPart {
  readonly id: string;
  readonly kind: FrostPartKind;
  /** How many are alike. */
  readonly count: number;
  /** The run, source or pen it belongs to, as a key of the plan. */
  readonly path: string;
  /** Water in one of them, as little as is reckoned with, and full [m³]; of a pin next to nothing. */
  readonly volume: { readonly least: number; readonly full: number };
  readonly cold: FrostBand;
  /** Until no water comes, or no beak gets through; undefined where something before it decides. */
  readonly blocked: FrostBand | undefined;
  readonly solid: FrostBand;
  /** Whether it surely, perhaps or surely not gives water until the night is over. */
  readonly lasts: "yes" | "perhaps" | "no";
  /** Ice on its open water by dawn, at most [m]; undefined where there is none. */
  readonly ice: number | undefined;
  /** Heat that holds it at 2 °C through the night [W], each. */
  readonly watts: number;
  /** Of pipe: flow that holds its far end above 1 °C [m³/s]; undefined where its water is too cold to hold anything. */
  readonly holdingFlow?: number;
  readonly material?: FrostMaterial;
}

/** Refills a day of a loose waterer or bowl, as the frost has it, by air temperature [°C] kept all day. */
export interface FrostRefills {
  readonly id: string;
  readonly path: string;
  readonly count: number;
  /** On the day after the night. */
  readonly thatDay: number;
  /** More than a keeper does: frozen again within the hour. */
  readonly isHopeless: boolean;
  readonly byAir: readonly { readonly air: number; readonly refills: number }[];
}

/** What the day after the night does. */
export interface FrostThaw {
  /** When the air is first above 0 °C, and no longer [s after midnight]; undefined: all day below. */
  readonly from: number | undefined;
  readonly to: number | undefined;
  /** Ice that such a day melts off open water in still air [m]. */
  readonly melts: number;
}

/** What to let out before the night. Volumes [m³]. */
export interface FrostDrain {
  readonly volume: number;
  readonly ends: readonly { readonly point: string; readonly isSource: boolean; readonly volume: number }[];
  readonly sags: readonly {
    readonly point: string;
    readonly run: string;
    readonly along: number;
    readonly depth: number;
    readonly volume: number;
  }[];
  readonly devices: readonly { readonly run: string; readonly kind: "tap" | "oneWay" | "regulator" }[];
  /** Sources that no tap of the plan shuts, with what they hold when full: it would run out with the pipe's. */
  readonly untapped: readonly { readonly source: string; readonly volume: number }[];
}

/** A closed vessel too full for its ice. */
export interface HeadSpace {
  readonly source: string;
  /** Share of it that is empty when full. */
  readonly empty: number;
  /** Water to take out so that a tenth stays empty [m³]. */
  readonly takeOut: number;
}

/** A night of frost. Times [s after dusk], temperatures [°C]. */
export interface Frost {
  readonly night: FrostNight;
  readonly waterTemperature: number;
  /** From dusk to when the night's frost ends [s after midnight]. */
  readonly dusk: number;
  readonly parts: readonly FrostPart[];
  /** Position of the part that stops first; undefined where nothing does. */
  readonly first: number | undefined;
  readonly drain: FrostDrain;
  readonly refills: readonly FrostRefills[];
  readonly thaw: FrostThaw;
  readonly headSpace: readonly HeadSpace[];
  /** Materials that this night makes brittle, with what is of them. */
  readonly brittle: readonly { readonly material: FrostMaterial; readonly parts: readonly string[] }[];
  readonly defaults: readonly DefaultUsed[];
}

/** What a night of frost does, or what in the plan contradicts itself. */
export type FrostAnswer =
  | { readonly ok: true; readonly frost: Frost }
  | { readonly ok: false; readonly problems: readonly Problem[] };
