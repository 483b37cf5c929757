import type { Checked, Plan, Problem } from "@headfall/hydraulics";

/** What the page asks of the worker; `turn` tells answers to older questions from the newest. */
export interface CheckRequest {
  readonly turn: number;
  readonly plan: Plan;
  /** The day asked about, "2026-07-04"; counts where the plan names none. */
  readonly day: string | undefined;
  readonly samples: number;
}

export type CheckOutcome =
  | { readonly ok: true; readonly checked: Checked }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** How far the work on a question has come, from 0 to 1. */
export interface CheckProgress {
  readonly turn: number;
  readonly share: number;
}

/** An answer; a coarse one, from few samples, is followed by the full one. */
export interface CheckAnswer {
  readonly turn: number;
  readonly outcome: CheckOutcome;
  readonly isCoarse: boolean;
  /** Time the check took [ms]. */
  readonly ms: number;
}

export type WorkerMessage = CheckProgress | CheckAnswer;

/** Samples of a first, coarse answer. */
export const COARSE_SAMPLES = 16;
