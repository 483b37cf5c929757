import { lengthStep, systemOf, typedLength, type UnitSystem } from "../kernels/typed-quantity.js";

/** The kinds of quantity a field can hold. */
export type FieldKind = "length" | "count";

interface FieldKindRules {
  /** Step of the slider, in SI. */
  step(system: UnitSystem): number;
  /** A value of the slider as the text to keep. */
  write(value: number, system: UnitSystem): string;
  /** What the text field shows: what was typed if that is in the user's units, else the value in them. */
  shown(typed: string, value: number, system: UnitSystem): string;
}

export const FIELD_KINDS: Readonly<Record<FieldKind, FieldKindRules>> = {
  length: {
    step: lengthStep,
    write: typedLength,
    shown: (typed, value, system) => (systemOf(typed) === system ? typed : typedLength(value, system)),
  },
  count: {
    step: () => 1,
    write: (value) => String(value),
    shown: (_typed, value) => String(value),
  },
};
