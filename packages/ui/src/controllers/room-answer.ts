import type { Problem } from "@headfall/hydraulics";
import type { ReactiveControllerHost } from "lit";
import type { RoomAnswer, RoomAnswers, RoomQuestion } from "../worker/room-protocol.js";
import { RestedAsker } from "./rested-asker.js";

type Asked<Kind extends RoomQuestion["kind"]> = Extract<RoomQuestion, { kind: Kind }>;

/**
 * Has one kind of question about a plan answered for its host, once the hand has rested. What was found last stays
 * until then.
 */
export class RoomAnswerController<Kind extends RoomQuestion["kind"]> {
  answer: RoomAnswers[Kind] | undefined;
  problems: readonly Problem[] = [];
  /** Whether the work has to be asked for: the plan is large, or the last run was cancelled. */
  waits = false;

  readonly #host: ReactiveControllerHost;
  readonly #asker: RestedAsker;
  readonly #rest: number;
  #asked: Asked<Kind> | undefined;
  #answered: Asked<Kind> | undefined;

  /** @param rest  time without another change before it is worked out again [ms] */
  constructor(host: ReactiveControllerHost, rest: number) {
    this.#host = host;
    this.#asker = new RestedAsker(host);
    this.#rest = rest;
  }

  /** How far the work in hand has come, from 0 to 1; undefined when there is none. */
  get progress(): number | undefined {
    return this.#asker.progress;
  }

  /** Whether what was found is of an older question. */
  get isOld(): boolean {
    return this.answer !== undefined && this.#answered !== this.#asked;
  }

  /** Takes a new question; one that waits is worked out by `run` only. */
  ask(question: Asked<Kind>, waits = false): void {
    this.#asked = question;
    this.waits = waits;
    if (waits) this.#asker.close();
    else this.#run(this.answer === undefined ? 0 : this.#rest);
  }

  /** The user wants it worked out. */
  run(): void {
    this.#run(0);
    this.#host.requestUpdate();
  }

  /** Ends the work; what was found last stays. */
  cancel(): void {
    this.#asker.close();
    this.waits = true;
    this.#host.requestUpdate();
  }

  #run(rest: number): void {
    const question = this.#asked;
    if (question === undefined) return;
    this.waits = false;
    this.#asker.progress = 0;
    this.#asker.ask(question, rest, (told: RoomAnswer<Kind>) => {
      if (told.ok) {
        this.answer = told.answer;
        this.#answered = question;
      }
      this.problems = told.ok ? [] : told.problems;
    });
  }
}
