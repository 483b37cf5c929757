import type { Problem } from "@headfall/hydraulics";
import type { ReactiveControllerHost } from "lit";
import { RestedAsker } from "./rested-asker.js";

/**
 * Has what its host asks found out, once the hand has rested. What was found last stays until then, and where something
 * is wrong with what is asked now.
 */
export abstract class AskingController<Question> {
  problems: readonly Problem[] = [];
  /** Whether what was found is of an older question, and is being found anew. */
  isOld = false;
  /** Whether the user wanted no more of it. */
  isStopped = false;

  protected readonly asker: RestedAsker;
  readonly #host: ReactiveControllerHost;
  #asked: Question | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    this.asker = new RestedAsker(host);
  }

  /** How far that has come, from 0 to 1; undefined until it takes long enough to tell. */
  get progress(): number | undefined {
    return this.asker.progress;
  }

  /** Takes a new question. */
  ask(question: Question): void {
    this.#asked = question;
    this.isStopped = false;
    this.isOld = true;
    this.find(question);
  }

  /** Ends the work; what was found last stays. */
  stop(): void {
    this.asker.close();
    this.isOld = false;
    this.isStopped = true;
    this.#host.requestUpdate();
  }

  /** After all. */
  goOn(): void {
    if (this.#asked !== undefined) this.ask(this.#asked);
    this.#host.requestUpdate();
  }

  /** Finds it out, and says so by `settle`. */
  protected abstract find(question: Question): void;

  /** What was asked is answered, or has nothing to be answered. */
  protected settle(problems: readonly Problem[]): void {
    this.problems = problems;
    this.isOld = false;
    this.#host.requestUpdate();
  }
}
