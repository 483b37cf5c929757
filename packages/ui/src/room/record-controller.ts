import type { Problem } from "@headfall/hydraulics";
import type { ReactiveController, ReactiveControllerHost } from "lit";
import { RestedAsker } from "../controllers/rested-asker.js";
import { readRecordFile } from "./read-record-file.js";
import { UNFETCHED_EXAMPLE } from "./unfetched.js";

/** A text that is read, or waits for an answer: nothing of it is lost meanwhile. */
interface Opened<Options> {
  readonly name: string;
  readonly text: string;
  readonly options: Partial<Options>;
}

/** What reading a text came to: a record, a question of what it leaves open, or what is wrong with it. */
export type RecordReading<Daily, Question> =
  | { readonly ok: true; readonly record: Daily }
  | { readonly ok: false; readonly question: Question }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Has a daily record read for its host. The record before stays until the new one is read, and what was found of it
 * until the next has been gone through, which is for the kinds of record to say.
 */
export abstract class RecordController<Daily, Options, Question> implements ReactiveController {
  /** The record that counts, and the name of where it is from. */
  record: Daily | undefined;
  from = "";
  /** What waits for an answer. */
  asked: { readonly opened: Opened<Options>; readonly question: Question } | undefined;
  /** What is wrong with the text opened last. */
  faulty: { readonly name: string; readonly problems: readonly Problem[] } | undefined;
  isReading = false;
  /** Whether what was found is of an older question. */
  isOld = false;

  protected readonly asker: RestedAsker;
  readonly #host: ReactiveControllerHost;
  #opening = 0;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
    this.asker = new RestedAsker(host);
  }

  /** Has a text read, by the worker that goes through it afterwards. */
  protected abstract read(
    text: string,
    options: Partial<Options>,
    tell: (reading: RecordReading<Daily, Question>) => void,
  ): void;
  /** Another record counts: lets go of what was found of the one before. */
  protected abstract forget(): void;
  /** Asks again what was asked last: of the record before, it has waited or gone untold while another was opened. */
  protected abstract askAgain(): void;

  hostDisconnected(): void {
    this.isReading = false;
  }

  /** Opens a file of the user's own. */
  async openFile(file: File): Promise<void> {
    const opening = this.#begin();
    const read = await readRecordFile(file);
    // Something else was chosen meanwhile.
    if (opening !== this.#opening) return;
    if (read.ok) this.#open({ name: file.name, text: read.text, options: {} });
    else this.#refuse(file.name, read.problems);
  }

  /** Fetches one of the examples, and opens it. */
  async openExample({ name, options, text }: RecordExample<Options>): Promise<void> {
    const opening = this.#begin();
    const fetched = await text().catch(() => undefined);
    if (opening !== this.#opening) return;
    if (fetched === undefined) this.#refuse(name, [UNFETCHED_EXAMPLE]);
    else this.#open({ name, text: fetched, options });
  }

  /** Answers what was asked of the text. */
  answer(options: Partial<Options>): void {
    if (this.asked === undefined) return;
    const { opened } = this.asked;
    this.#begin();
    this.#open({ ...opened, options: { ...opened.options, ...options } });
  }

  /** Lets go of a text that waits for an answer, or of what was wrong with one. */
  leave(): void {
    this.asked = undefined;
    this.faulty = undefined;
    this.#host.requestUpdate();
  }

  /** Something is being fetched or unpacked, to be read next. Gives its number, to tell later whether it still counts. */
  #begin(): number {
    this.isReading = true;
    this.leave();
    this.#opening += 1;
    return this.#opening;
  }

  #open(opened: Opened<Options>): void {
    this.read(opened.text, opened.options, (reading) => {
      if (reading.ok) {
        this.record = reading.record;
        this.from = opened.name;
        this.forget();
      } else if ("question" in reading) this.asked = { opened, question: reading.question };
      else this.faulty = { name: opened.name, problems: reading.problems };
      this.#ended();
    });
  }

  #refuse(name: string, problems: readonly Problem[]): void {
    this.faulty = { name, problems };
    this.#ended();
  }

  #ended(): void {
    this.isReading = false;
    this.askAgain();
    this.#host.requestUpdate();
  }
}

/** What of an example the room opens it by. */
interface RecordExample<Options> {
  readonly name: string;
  readonly options: Partial<Options>;
  text(): Promise<string>;
}
