import type { Checked, Line, Look, Plan, Sign, Trouble } from "@headfall/hydraulics";
import type { ProfileLayout } from "../kernels/profile-layout.js";
import type { ProfilePath } from "../kernels/profile-path.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";

/** What every view of this room is made from. */
export interface TroubleRoom {
  readonly plan: Plan;
  readonly line: Line;
  readonly signs: readonly Sign[];
  /** What was told, by the key of its look. */
  readonly seen: ReadonlyMap<string, string>;
  /** Runs that are unfolded: drinkers of the others are not drawn. */
  readonly unfolded: ReadonlySet<string>;
  /** Where the water stands in each source, as typed; nothing where it is as the plan has it. */
  readonly stands: Readonly<Record<string, string>>;
  /** Undefined while nothing is told, or nothing has come yet. */
  readonly trouble: Trouble | undefined;
  readonly system: UnitSystem;
  /** How long ago the sources were last seen with water in them [s]. */
  readonly lastSeen: number;
  readonly jug: JugTyped;
  readonly acts: TroubleActs;
}

/** What was typed of a jug and a watch; the drinker by its name, "" for the first. */
export interface JugTyped {
  readonly drinker: string;
  readonly volume: string;
  readonly time: string;
  /** Whether it was pressed in, so that what is wrong with it is told. */
  readonly isTried: boolean;
}

export interface TroubleActs {
  /** Tells an answer; the same again takes it back. */
  readonly tell: (look: Look, sees: string) => void;
  /** Tells the same of many places at once, or takes it back. */
  readonly tellAll: (looks: readonly Look[], sees: string) => void;
  /** Tells what was seen at a look that was asked for. */
  readonly answer: (look: Look, sees: string, afterFilling: boolean) => void;
  readonly takeBack: (sign: Sign) => void;
  readonly typeJug: (typed: Partial<JugTyped>) => void;
  readonly tellJug: () => void;
  readonly unfold: (run: string, isUnfolded: boolean) => void;
  readonly typeStand: (source: string, typed: string) => void;
  readonly sayLastSeen: (seconds: number) => void;
  /** What a press on the drawing tells, and of what it is. */
  readonly draw: (drawn: Partial<Drawn>) => void;
  readonly clear: () => void;
}

/** What a press on the drawing tells, and of which run the drawing is. */
export interface Drawn {
  readonly isUnfolded: boolean;
  readonly run: string | undefined;
  readonly look: "gives" | "drips";
  readonly sees: string;
  readonly layout: ProfileLayout | undefined;
}

export const NOT_DRAWN: Drawn = {
  isUnfolded: false,
  run: undefined,
  look: "gives",
  sees: "dry",
  layout: undefined,
};

/** The drawing as told: made anew only when what it shows changes. */
export interface ToldDrawing {
  readonly run: string;
  readonly path: ProfilePath;
  readonly checked: Checked;
}
