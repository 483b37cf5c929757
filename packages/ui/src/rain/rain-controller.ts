import type {
  Plan,
  Problem,
  RainQuestion,
  RainReadingOptions,
  RainRecord,
  RainSupply,
} from "@headfall/hydraulics";
import type { ReactiveController, ReactiveControllerHost } from "lit";
import { RestedAsker } from "../controllers/rested-asker.js";
import type { RoomTold } from "../kernels/how-got/request.js";

/** Rest after the last change before the record is gone through [ms]. */
const REST_MS = 250;

/** A text that is read, or waits for an answer: nothing of it is lost meanwhile. */
export interface OpenedText {
  readonly name: string;
  readonly text: string;
  readonly options: RainReadingOptions;
}

export interface RainAsked {
  readonly plan: Plan;
  readonly day: string | undefined;
  readonly source: number;
  readonly figure: "expect" | "size";
}

/**
 * Has a record read, and gone through with a plan, for its host. The record before stays until the new one is read,
 * and what was found last until the next has been.
 */
export class RainController implements ReactiveController {
  /** The record that counts, and the name of where it is from. */
  record: RainRecord | undefined;
  from = "";
  /** What waits for an answer. */
  asked: { readonly opened: OpenedText; readonly question: RainQuestion } | undefined;
  /** What is wrong with the text opened last. */
  faulty: { readonly name: string; readonly problems: readonly Problem[] } | undefined;
  isReading = false;
  supply: RainSupply | undefined;
  problems: readonly Problem[] = [];
  /** Whether the answer is of an older question. */
  isOld = false;

  readonly #host: ReactiveControllerHost;
  readonly #asker: RestedAsker;
  #last: RainAsked | undefined;
  #told: RoomTold = {};
  #opening = 0;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
    this.#asker = new RestedAsker(host);
  }

  hostDisconnected(): void {
    this.isReading = false;
  }

  /** What its figures are got from: the same object while they stay the same. */
  get told(): RoomTold {
    if (this.#told.rain !== this.supply) this.#told = { rain: this.supply };
    return this.#told;
  }

  /** Something is being fetched or unpacked, to be read next. Gives its number, to ask later whether it still counts. */
  begin(): number {
    this.#turn({ isReading: true, faulty: undefined, asked: undefined });
    this.#opening += 1;
    return this.#opening;
  }

  /** Whether nothing was opened since. */
  isNewest(opening: number): boolean {
    return opening === this.#opening;
  }

  /** Has a text read, by the worker that goes through it afterwards. */
  open(opened: OpenedText): void {
    this.begin();
    this.#asker.ask({ kind: "record", text: opened.text, options: opened.options }, 0, (told) => {
      const reading = told.ok ? told.answer : told;
      if (reading.ok) {
        this.record = reading.record;
        this.from = opened.name;
        this.supply = undefined;
      } else if ("question" in reading) this.asked = { opened, question: reading.question };
      else this.faulty = { name: opened.name, problems: reading.problems };
      this.#opened();
    });
  }

  /** Answers what was asked of the text. */
  answer(options: RainReadingOptions): void {
    if (this.asked === undefined) return;
    const { opened } = this.asked;
    this.open({ ...opened, options: { ...opened.options, ...options } });
  }

  /** Lets go of a text that waits for an answer, or of what was wrong with one. */
  leave(): void {
    this.#turn({ asked: undefined, faulty: undefined });
  }

  refuse(name: string, problems: readonly Problem[]): void {
    this.faulty = { name, problems };
    this.#opened();
  }

  /** What was asked of the record before has waited, or gone untold, while another was opened. */
  #opened(): void {
    this.isReading = false;
    if (this.#last !== undefined) this.ask(this.#last);
    this.#host.requestUpdate();
  }

  /** Has the record gone through with a plan, once there is one and the hand has rested. */
  ask(asked: RainAsked): void {
    this.#last = asked;
    if (this.isReading) return;
    const { record } = this;
    const { plan, source } = asked;
    if (record === undefined || plan.pens === undefined || plan.sources[source]?.roof === undefined) {
      this.#asker.close();
      this.supply = undefined;
      this.problems = [];
      return;
    }
    this.isOld = true;
    const rest = this.supply === undefined ? 0 : REST_MS;
    this.#asker.ask({ kind: "rain", ...asked, record }, rest, (told) => {
      if (told.ok) this.supply = told.answer;
      this.problems = told.ok ? [] : told.problems;
      this.isOld = false;
    });
  }

  #turn(state: Partial<Pick<RainController, "isReading" | "faulty" | "asked">>): void {
    Object.assign(this, state);
    this.#host.requestUpdate();
  }
}
