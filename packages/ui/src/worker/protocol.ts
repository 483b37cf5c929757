import type { Checked, Plan, Problem } from "@headfall/hydraulics";

/** What the page asks of the worker; `turn` tells answers to older questions from the newest. */
export interface CheckRequest {
  readonly turn: number;
  readonly plan: Plan;
  readonly samples: number;
}

export type CheckOutcome =
  | { readonly ok: true; readonly checked: Checked }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export interface CheckAnswer {
  readonly turn: number;
  readonly outcome: CheckOutcome;
}
