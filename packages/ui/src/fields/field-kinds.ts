import {
  bareLengthUnit,
  lengthStep,
  systemOf,
  typedLength,
  type UnitSystem,
} from "../kernels/typed-quantity.js";
import { readCount, readWithUnit } from "./read-typed.js";
import type { KindRules } from "./typed-reading.js";

/** The kinds a slider can hold. A text field holds more: see text-kinds.ts. */
export type SliderKind = "length" | "count";

interface SliderRules extends KindRules {
  /** Step of the slider, in SI. */
  step(system: UnitSystem): number;
}

export const FIELD_KINDS: Readonly<Record<SliderKind, SliderRules>> = {
  length: {
    step: lengthStep,
    write: typedLength,
    shown: (typed, value, system) => (systemOf(typed) === system ? typed : typedLength(value, system)),
    read: (text, system) => readWithUnit(text, "length", bareLengthUnit(system)),
    bareUnit: bareLengthUnit,
  },
  count: {
    step: () => 1,
    write: String,
    shown: (_typed, value) => String(value),
    read: readCount,
  },
};
