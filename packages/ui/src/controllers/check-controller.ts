import { type Checked, type CheckSteps, lookAtPlan, type Plan, type Problem } from "@headfall/hydraulics";
import type { ReactiveController, ReactiveControllerHost } from "lit";
import { WorkerAsker } from "../worker/ask-worker.js";
import type { CheckAnswer, CheckOutcome } from "../worker/protocol.js";
import { afterPaint } from "./after-paint.js";
import { nextTask } from "./next-task.js";

/** Samples of the tolerances behind "sure" and "close call". */
const SAMPLES = 200;
/** Rest after the last change before they are taken [ms]. */
const REST_MS = 150;
/** A plan whose quick check takes longer than this is checked in the worker only [ms]. */
const LONG_MS = 50;
/** A plan that the worker checks in less than this is checked on the page's own thread again [ms]. */
const SHORT_MS = 20;
/** Work that lasts longer than this is shown, and can be stopped [ms]. */
const SHOW_AFTER_MS = 1000;

/**
 * How far the close calls of the newest plan are: still to come, coarse, all there, stopped by the user; or stopped
 * before anything of the newest plan was known.
 */
export type Sampling = "waiting" | "coarse" | "whole" | "stopped" | "outdated";

/**
 * Checks a plan for its host: quickly at the next animation frame, however many changes came before it, and with
 * all samples once the hand has rested. What was found last stays until something newer is known, also when the
 * newest plan turns out to be faulty. Only the first check is made within the frame: what a hand does, the check and the
 * drawing of it are each a short task, where together they would be a long one on a slow device.
 */
export class CheckController implements ReactiveController {
  /** What the last good plan came to, and that plan: the newest may be ahead of it. */
  checked: Checked | undefined;
  checkedPlan: Plan | undefined;
  /** The plan that was looked at last, good or faulty. */
  lookedAt: Plan | undefined;
  /** What is wrong with the newest plan; empty when nothing is. */
  problems: readonly Problem[] = [];
  sampling: Sampling = "waiting";
  /** Share done of work that takes long, from 0 to 1; undefined while there is none. */
  progress: number | undefined;

  readonly #host: ReactiveControllerHost;
  readonly #onChecked: (controller: CheckController) => void;
  readonly #asker = new WorkerAsker({
    answered: (answer) => this.#answered(answer),
    wentOn: ({ turn, share }) => {
      if (this.#turns.has(turn) && performance.now() - this.#asked > SHOW_AFTER_MS) this.#show(share);
    },
  });
  #plan: Plan | undefined;
  #day: string | undefined;
  /** The first look is a quick one; what looks closer, at the birds too, is fetched meanwhile. */
  #look = (plan: Plan, day: string | undefined): CheckSteps => lookAtOnce(plan, day);
  #isCloser = false;
  /** Time the last quick check took [ms]. */
  #quickMs = 0;
  /** The quick check that is under way, a task for each of its steps: all of it at once can be a long one. */
  #underWay: CheckSteps | undefined;
  /** Takes back the quick check that is due. */
  #undue: (() => void) | undefined;
  #rest: ReturnType<typeof setTimeout> | undefined;
  #late: ReturnType<typeof setTimeout> | undefined;
  /** Questions about the newest plan that the worker has or had; the last of them is the closest look. */
  readonly #turns = new Set<number>();
  #turn = 0;
  #asked = 0;

  constructor(host: ReactiveControllerHost, onChecked: (controller: CheckController) => void) {
    this.#host = host;
    this.#onChecked = onChecked;
    host.addController(this);
  }

  hostConnected(): void {
    if (this.#plan !== undefined) this.check(this.#plan, this.#day);
  }

  hostDisconnected(): void {
    this.#forgetPending();
    this.#asker.close();
  }

  /** Takes a new plan; on the next frame its host is updated, and what it comes to is known unless that takes long. */
  check(plan: Plan, day?: string): void {
    this.#plan = plan;
    this.#day = day;
    this.#turns.clear();
    this.#show(undefined);
    this.#undue ??= (this.lookedAt === undefined ? inFrame : afterPaint)(() => this.#checkQuickly());
    clearTimeout(this.#rest);
    this.#rest = undefined;
  }

  /** Whether all that is shown is of the newest plan, with at least a coarse answer to what is sure. */
  get isSettled(): boolean {
    if (this.lookedAt !== this.#plan || this.#undue !== undefined) return false;
    return this.problems.length > 0 || this.sampling !== "waiting";
  }

  /** Ends the work that is under way; what is known so far stays. */
  stop(): void {
    this.#asker.close();
    this.#turns.clear();
    this.sampling = this.checkedPlan === this.#plan ? "stopped" : "outdated";
    this.#show(undefined);
    this.#host.requestUpdate();
  }

  #checkQuickly(): void {
    this.#undue = undefined;
    const plan = this.#plan;
    if (plan === undefined) return;
    // One that has begun is ended first: under a hand that goes on, none would be otherwise.
    if (this.#underWay !== undefined) this.#undue = afterPaint(() => this.#checkQuickly());
    else if (this.#quickMs > LONG_MS) {
      this.#ask(plan, 0);
      this.#host.requestUpdate();
      this.#checkCloselyLater(plan);
    } else this.#goOn(plan, this.#look(plan, this.#day), 0);
  }

  /** Makes the next step of a quick check; `ms` is what the steps before it took. */
  #goOn(plan: Plan, steps: CheckSteps, ms: number): void {
    const start = performance.now();
    const step = steps.next();
    const spent = ms + performance.now() - start;
    this.#underWay = step.done ? undefined : steps;
    if (!step.done) {
      void nextTask().then(() => {
        if (this.#underWay === steps) this.#goOn(plan, steps, spent);
      });
      return;
    }
    this.#quickMs = spent;
    this.#settle(plan, step.value, "waiting");
    if (plan === this.#plan) this.#checkCloselyLater(plan);
  }

  #checkCloselyLater(plan: Plan): void {
    // A plan that is looked at twice, as on another day, is looked at closely once.
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => this.#checkClosely(plan), REST_MS);
  }

  #checkClosely(plan: Plan): void {
    if (this.problems.length === 0) this.#ask(plan, SAMPLES);
  }

  #ask(plan: Plan, samples: number): void {
    this.#turn = this.#asker.ask(plan, samples, this.#day);
    this.#turns.add(this.#turn);
    this.#asked = performance.now();
    // The work before the first sample tells nothing; that it lasts is told all the same.
    clearTimeout(this.#late);
    this.#late = setTimeout(() => this.#show(0), SHOW_AFTER_MS);
  }

  #answered({ outcome, turn, isCoarse, ms }: CheckAnswer): void {
    const isQuick = outcome.ok && outcome.checked.madeFrom.samples === 0;
    // The first check of all takes long on every device: that says little about the next ones.
    if (isQuick && ms < SHORT_MS) this.#quickMs = ms;
    // An answer to an older plan says nothing about the one in hand.
    if (!this.#turns.has(turn) || this.#plan === undefined) return;
    if (!isCoarse && turn === this.#turn) this.#show(undefined);
    this.#settle(this.#plan, outcome, isQuick ? "waiting" : isCoarse ? "coarse" : "whole");
  }

  #settle(plan: Plan, outcome: CheckOutcome, sampling: Sampling): void {
    this.sampling = sampling;
    if (outcome.ok) {
      this.checked = outcome.checked;
      this.checkedPlan = plan;
    }
    this.lookedAt = plan;
    this.problems = outcome.ok ? [] : outcome.problems;
    this.#onChecked(this);
    this.#host.requestUpdate();
    void this.#lookCloser();
  }

  /** Once the first verdict stands, every look tells of the birds too. */
  async #lookCloser(): Promise<void> {
    if (this.#isCloser) return;
    this.#isCloser = true;
    const { checkHereInSteps } = await import("../worker/check-here.js");
    this.#look = (plan, day) => checkHereInSteps({ plan, day, samples: 0 });
  }

  #show(share: number | undefined): void {
    clearTimeout(this.#late);
    if (share === this.progress) return;
    this.progress = share;
    this.#host.requestUpdate();
  }

  #forgetPending(): void {
    this.#undue?.();
    this.#undue = undefined;
    this.#underWay = undefined;
    clearTimeout(this.#rest);
    clearTimeout(this.#late);
  }
}

/** The first look of all, made at once: nothing is shown yet that would wait for it. */
// biome-ignore lint/correctness/useYield: it has the one step that it ends with.
function* lookAtOnce(plan: Plan, day: string | undefined): CheckSteps {
  return lookAtPlan(plan, { day });
}

/** Has something done within the next frame; what it gives back takes that back. */
function inFrame(act: () => void): () => void {
  const frame = requestAnimationFrame(act);
  return () => cancelAnimationFrame(frame);
}
