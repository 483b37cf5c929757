import type {
  Checked,
  Plan,
  RainReadingOptions,
  RainRecord,
  RainRun,
  RainSupply,
} from "@headfall/hydraulics";
import type { TypingController } from "../fields/typing-controller.js";
import type { RainYear } from "../kernels/rain/rain-years.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import type { RainController } from "./rain-controller.js";
import type { RainExample } from "./rain-example.js";

/** What its user can do in this room besides editing the plan. */
export interface RainActs {
  readonly openFile: (file: File) => void;
  readonly openExample: (example: RainExample) => void;
  readonly answer: (options: RainReadingOptions) => void;
  readonly leave: () => void;
  readonly choose: (source: number) => void;
  readonly drink: (figure: "expect" | "size") => void;
  readonly reckon: (run: number) => void;
  readonly showYears: (first: number) => void;
  /** By its place in the record. */
  readonly lookAt: (day: number) => void;
}

/** What is said in this room, before anything is known. */
export interface RainSaid {
  readonly plan: Plan;
  /** The source looked at. */
  readonly source: number;
  readonly system: UnitSystem;
  readonly typing: TypingController;
  readonly figure: "expect" | "size";
  readonly rain: RainController;
  readonly examples: readonly RainExample[];
  readonly acts: RainActs;
}

/** What the views of an answer are made from. */
export interface RainRoom {
  readonly checked: Checked | undefined;
  readonly record: RainRecord;
  readonly supply: RainSupply;
  readonly system: UnitSystem;
  readonly isWide: boolean;
  /** The way of reckoning that is shown, and its place among them. */
  readonly run: RainRun;
  readonly runIndex: number;
  readonly years: readonly RainYear[];
  /** First of the years on the calendar, by its place among them. */
  readonly firstYear: number;
  /** The day looked at, by its place in the record. */
  readonly day: number;
  readonly acts: RainActs;
}

/** Years on the calendar at once. */
export const YEARS_SHOWN = 4;
