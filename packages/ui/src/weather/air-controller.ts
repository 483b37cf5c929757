import type { AirQuestion, AirReading, AirReadingOptions, AirRecord, Plan } from "@headfall/hydraulics";
import { RecordController } from "../room/record-controller.js";
import type { RoomAnswers } from "../worker/room-protocol.js";

/** Rest after the last change before the record is gone through [ms]. */
const REST_MS = 400;

/** Has a daily record of the air read, and gone through with a plan, for its host. */
export class AirController extends RecordController<AirRecord, AirReadingOptions, AirQuestion> {
  told: RoomAnswers["weatherRecord"] | undefined;
  #last: { readonly plan: Plan; readonly day: string | undefined } | undefined;

  /** How far the record has been gone through, from 0 to 1; undefined while it is not. */
  get progress(): number | undefined {
    return this.asker.progress;
  }

  /** Has the record gone through with a plan, once there is one and the hand has rested. */
  ask(plan: Plan, day: string | undefined): void {
    this.#last = { plan, day };
    const { record } = this;
    if (record === undefined || this.isReading) return;
    this.isOld = true;
    const rest = this.told === undefined ? 0 : REST_MS;
    this.asker.ask({ kind: "weatherRecord", plan, day, record }, rest, (told) => {
      if (told.ok) this.told = told.answer;
      this.isOld = !told.ok;
    });
  }

  protected override read(
    text: string,
    options: AirReadingOptions,
    tell: (reading: AirReading) => void,
  ): void {
    this.asker.ask({ kind: "airRecord", text, options }, 0, (told) => tell(told.ok ? told.answer : told));
  }

  protected override forget(): void {
    this.told = undefined;
  }

  protected override askAgain(): void {
    if (this.#last !== undefined) this.ask(this.#last.plan, this.#last.day);
  }
}
