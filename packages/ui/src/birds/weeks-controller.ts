import type { Plan, WeekReport } from "@headfall/hydraulics";
import type { ReactiveController, ReactiveControllerHost } from "lit";
import { RoomAsker } from "../worker/ask-room.js";

/** Weeks looked ahead beyond this one. */
export const WEEKS_AHEAD = 8;
/** Rest after the last change before the weeks are judged: they are some twenty checks [ms]. */
const REST_MS = 300;

/** Has the coming weeks of a plan judged for its host, once the hand has rested. What was found last stays until then. */
export class WeeksController implements ReactiveController {
  weeks: readonly WeekReport[] = [];
  hotWeeks: readonly WeekReport[] = [];
  /** Whether they are of an older plan. */
  isOld = false;

  readonly #host: ReactiveControllerHost;
  readonly #asker = new RoomAsker();
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    clearTimeout(this.#timer);
    this.#asker.close();
  }

  /** Takes a new plan. */
  judge(plan: Plan, day: string | undefined): void {
    clearTimeout(this.#timer);
    this.isOld = true;
    if (plan.pens === undefined) {
      this.#asker.close();
      this.#take([], []);
      return;
    }
    const question = { kind: "weeks", plan, day, weeks: WEEKS_AHEAD } as const;
    const send = () =>
      this.#asker.ask(question, (told) => {
        // The line tells what is wrong with a plan; what was found of the one before it stays.
        if (told.ok) this.#take(told.answer.weeks, told.answer.hotWeeks);
      });
    this.#timer = setTimeout(send, this.weeks.length === 0 ? 0 : REST_MS);
  }

  #take(weeks: readonly WeekReport[], hotWeeks: readonly WeekReport[]): void {
    this.weeks = weeks;
    this.hotWeeks = hotWeeks;
    this.isOld = false;
    this.#host.requestUpdate();
  }
}
