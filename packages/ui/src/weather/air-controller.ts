import type { AirQuestion, AirReadingOptions, AirRecord, Plan, Problem } from "@headfall/hydraulics";
import type { ReactiveController, ReactiveControllerHost } from "lit";
import { RestedAsker } from "../controllers/rested-asker.js";
import { readRecordFile } from "../rain/read-record-file.js";
import { UNFETCHED_EXAMPLE } from "../room/unfetched.js";
import type { RoomAnswers } from "../worker/room-protocol.js";
import type { AirExample } from "./air-example.js";

/** Rest after the last change before the record is gone through [ms]. */
const REST_MS = 400;

interface Opened {
  readonly name: string;
  readonly text: string;
  readonly options: AirReadingOptions;
}

/**
 * Has a daily record of the air read, and gone through with a plan, for its host. The record before stays until the
 * new one is read, and what was found last until the next has been.
 */
export class AirController implements ReactiveController {
  record: AirRecord | undefined;
  from = "";
  asked: { readonly opened: Opened; readonly question: AirQuestion } | undefined;
  faulty: { readonly name: string; readonly problems: readonly Problem[] } | undefined;
  isReading = false;
  told: RoomAnswers["weatherRecord"] | undefined;
  /** Whether what was found is of a plan or a record before. */
  isOld = false;

  readonly #host: ReactiveControllerHost;
  readonly #asker: RestedAsker;
  #plan: { readonly plan: Plan; readonly day: string | undefined } | undefined;
  #opening = 0;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
    this.#asker = new RestedAsker(host);
  }

  /** How far the record has been gone through, from 0 to 1; undefined while it is not. */
  get progress(): number | undefined {
    return this.#asker.progress;
  }

  hostDisconnected(): void {
    this.isReading = false;
  }

  /** Opens a file of the user's own. */
  async openFile(file: File): Promise<void> {
    const opening = this.#begin();
    const read = await readRecordFile(file);
    // Something else was chosen meanwhile.
    if (opening !== this.#opening) return;
    if (read.ok) this.#read({ name: file.name, text: read.text, options: {} });
    else this.#refuse(file.name, read.problems);
  }

  /** Fetches one of the examples, and opens it. */
  async openExample({ name, options, text }: AirExample): Promise<void> {
    const opening = this.#begin();
    const fetched = await text().catch(() => undefined);
    if (opening !== this.#opening) return;
    if (fetched === undefined) this.#refuse(name, [UNFETCHED_EXAMPLE]);
    else this.#read({ name, text: fetched, options });
  }

  /** Answers what was asked of the text. */
  answer(options: AirReadingOptions): void {
    if (this.asked === undefined) return;
    const { opened } = this.asked;
    this.#begin();
    this.#read({ ...opened, options: { ...opened.options, ...options } });
  }

  /** Lets go of a text that waits for an answer, or of what was wrong with one. */
  leave(): void {
    this.asked = undefined;
    this.faulty = undefined;
    this.#host.requestUpdate();
  }

  /** Has the record gone through with a plan, once there is one and the hand has rested. */
  ask(plan: Plan, day: string | undefined): void {
    this.#plan = { plan, day };
    const { record } = this;
    if (record === undefined || this.isReading) return;
    this.isOld = true;
    const rest = this.told === undefined ? 0 : REST_MS;
    this.#asker.ask({ kind: "weatherRecord", plan, day, record }, rest, (told) => {
      if (told.ok) this.told = told.answer;
      this.isOld = !told.ok;
    });
  }

  #begin(): number {
    Object.assign(this, { isReading: true, faulty: undefined, asked: undefined });
    this.#host.requestUpdate();
    this.#opening += 1;
    return this.#opening;
  }

  #read(opened: Opened): void {
    this.#asker.ask({ kind: "airRecord", text: opened.text, options: opened.options }, 0, (told) => {
      const reading = told.ok ? told.answer : told;
      if (reading.ok) {
        this.record = reading.record;
        this.from = opened.name;
        this.told = undefined;
      } else if ("question" in reading) this.asked = { opened, question: reading.question };
      else this.faulty = { name: opened.name, problems: reading.problems };
      this.#ended();
    });
  }

  #refuse(name: string, problems: readonly Problem[]): void {
    this.faulty = { name, problems };
    this.#ended();
  }

  /** What was asked of the record before has waited while another was opened. */
  #ended(): void {
    this.isReading = false;
    if (this.#plan !== undefined) this.ask(this.#plan.plan, this.#plan.day);
    this.#host.requestUpdate();
  }
}
