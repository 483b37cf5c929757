import type {
  Plan,
  Problem,
  RainQuestion,
  RainReading,
  RainReadingOptions,
  RainRecord,
  RainSupply,
} from "@headfall/hydraulics";
import type { RoomTold } from "../kernels/how-got/request.js";
import { RecordController } from "../room/record-controller.js";

/** Rest after the last change before the record is gone through [ms]. */
const REST_MS = 250;

export interface RainAsked {
  readonly plan: Plan;
  readonly day: string | undefined;
  readonly source: number;
  readonly figure: "expect" | "size";
}

/** Has a daily record of rain read, and gone through with a plan, for its host. */
export class RainController extends RecordController<RainRecord, RainReadingOptions, RainQuestion> {
  supply: RainSupply | undefined;
  problems: readonly Problem[] = [];
  #last: RainAsked | undefined;
  #told: RoomTold = {};

  /** What its figures are got from: the same object while they stay the same. */
  get told(): RoomTold {
    if (this.#told.rain !== this.supply) this.#told = { rain: this.supply };
    return this.#told;
  }

  /** Has the record gone through with a plan, once there is one and the hand has rested. */
  ask(asked: RainAsked): void {
    this.#last = asked;
    if (this.isReading) return;
    const { record } = this;
    const { plan, source } = asked;
    if (record === undefined || plan.pens === undefined || plan.sources[source]?.roof === undefined) {
      this.asker.close();
      this.supply = undefined;
      this.problems = [];
      return;
    }
    this.isOld = true;
    const rest = this.supply === undefined ? 0 : REST_MS;
    this.asker.ask({ kind: "rain", ...asked, record }, rest, (told) => {
      if (told.ok) this.supply = told.answer;
      this.problems = told.ok ? [] : told.problems;
      this.isOld = false;
    });
  }

  protected override read(
    text: string,
    options: RainReadingOptions,
    tell: (reading: RainReading) => void,
  ): void {
    this.asker.ask({ kind: "record", text, options }, 0, (told) => tell(told.ok ? told.answer : told));
  }

  protected override forget(): void {
    this.supply = undefined;
  }

  protected override askAgain(): void {
    if (this.#last !== undefined) this.ask(this.#last);
  }
}
