import type { EditWantedEvent } from "../store/edit-wanted-event.js";
import { nextTask } from "./next-task.js";

/**
 * The step of a drag that is still to be made: it is made in a task of its own, since the frame that brought it has the
 * drawing to do. Of steps alike that come before that, only the last is made.
 */
export class DragStep {
  #wanted: EditWantedEvent | undefined;
  readonly #make: (wanted: EditWantedEvent) => void;

  constructor(make: (wanted: EditWantedEvent) => void) {
    this.#make = make;
  }

  get isWaiting(): boolean {
    return this.#wanted !== undefined;
  }

  put(wanted: EditWantedEvent): void {
    const before = this.#wanted;
    const isAlike = before?.gesture === wanted.gesture && before?.change.kind === wanted.change.kind;
    if (!isAlike) this.makeNow();
    this.#wanted = wanted;
    if (!isAlike) void nextTask().then(() => this.makeNow());
  }

  /** Makes it, if there is one: whoever asks for the plan is to have it with all that was done. */
  makeNow(): void {
    const wanted = this.#wanted;
    this.#wanted = undefined;
    if (wanted !== undefined) this.#make(wanted);
  }
}
