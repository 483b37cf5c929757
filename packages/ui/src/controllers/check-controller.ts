import { type Checked, checkPlan, type Plan, type Problem } from "@headfall/hydraulics";
import type { ReactiveController, ReactiveControllerHost } from "lit";
import { WorkerAsker } from "../worker/ask-worker.js";
import type { CheckOutcome } from "../worker/protocol.js";

/** Samples of the tolerances behind "sure" and "close call". */
const SAMPLES = 200;
/** Rest after the last change before they are taken [ms]. */
const REST_MS = 150;
/** A plan whose quick check takes longer than this is checked in the worker only [ms]. */
const LONG_MS = 50;

/**
 * Checks a plan for its host: quickly on the next animation frame, however many changes came before it, and with
 * all samples once the hand has rested. What was found last stays until something newer is known, also when the
 * newest plan turns out to be faulty.
 */
export class CheckController implements ReactiveController {
  /** What the last good plan came to. */
  checked: Checked | undefined;
  /** What is wrong with the newest plan; empty when nothing is. */
  problems: readonly Problem[] = [];
  /** Whether the close calls of the newest plan are still to come. */
  isSampling = false;
  /** Time the last quick check took [ms]. */
  quickMs = 0;

  readonly #host: ReactiveControllerHost;
  readonly #onChecked: (controller: CheckController) => void;
  readonly #asker = new WorkerAsker((outcome, turn) => this.#answered(outcome, turn));
  #plan: Plan | undefined;
  #frame: number | undefined;
  #rest: ReturnType<typeof setTimeout> | undefined;
  #turn = 0;

  constructor(host: ReactiveControllerHost, onChecked: (controller: CheckController) => void) {
    this.#host = host;
    this.#onChecked = onChecked;
    host.addController(this);
  }

  hostConnected(): void {
    if (this.#plan !== undefined) this.check(this.#plan);
  }

  hostDisconnected(): void {
    this.#forgetPending();
    this.#asker.close();
  }

  /** Takes a new plan; what it comes to is known after the next frame. */
  check(plan: Plan): void {
    this.#plan = plan;
    this.#turn = 0;
    this.#frame ??= requestAnimationFrame(() => this.#checkQuickly());
    clearTimeout(this.#rest);
    this.#rest = undefined;
  }

  #checkQuickly(): void {
    this.#frame = undefined;
    const plan = this.#plan;
    if (plan === undefined) return;
    if (this.quickMs > LONG_MS) {
      this.#turn = this.#asker.ask(plan, 0);
    } else {
      const start = performance.now();
      const outcome = checkPlan(plan, { samples: 0 });
      this.quickMs = performance.now() - start;
      this.#settle(outcome, outcome.ok);
    }
    this.#rest = setTimeout(() => this.#checkClosely(plan), REST_MS);
  }

  #checkClosely(plan: Plan): void {
    if (this.problems.length === 0) this.#turn = this.#asker.ask(plan, SAMPLES);
  }

  #answered(outcome: CheckOutcome, turn: number): void {
    // An answer to an older plan says nothing about the one in hand.
    if (turn !== this.#turn) return;
    this.#settle(outcome, outcome.ok && outcome.checked.madeFrom.samples === 0);
  }

  #settle(outcome: CheckOutcome, isSampling: boolean): void {
    this.isSampling = isSampling;
    if (outcome.ok) this.checked = outcome.checked;
    this.problems = outcome.ok ? [] : outcome.problems;
    this.#onChecked(this);
    this.#host.requestUpdate();
  }

  #forgetPending(): void {
    if (this.#frame !== undefined) cancelAnimationFrame(this.#frame);
    this.#frame = undefined;
    clearTimeout(this.#rest);
  }
}
