import type { BirdsWeek, Plan, WeekReport } from "@headfall/hydraulics";
import { AskingController } from "../controllers/asking-controller.js";
import type { RoomTold } from "../kernels/how-got/request.js";
import type { WeeksAnswer } from "../worker/room-protocol.js";

/** Weeks looked ahead beyond this one. */
export const WEEKS_AHEAD = 8;
/** Rest after the last change before the weeks are judged: they are some twenty checks [ms]. */
const REST_MS = 300;

export interface WeeksQuestion {
  readonly plan: Plan;
  readonly day: string | undefined;
}

/** Has the coming weeks of a plan judged for its host; without birds there is nothing to judge. */
export class WeeksController extends AskingController<WeeksQuestion> {
  weeks: readonly WeekReport[] = [];
  hotWeeks: readonly WeekReport[] = [];
  everyBird: readonly BirdsWeek[] | undefined;
  /** Both, for figures that tell how they were got. */
  told: RoomTold = {};

  protected override find({ plan, day }: WeeksQuestion): void {
    if (plan.pens === undefined) {
      this.asker.close();
      this.#take({ weeks: [], hotWeeks: [] });
      this.settle([]);
      return;
    }
    const rest = this.weeks.length === 0 ? 0 : REST_MS;
    this.asker.ask({ kind: "weeks", plan, day, weeks: WEEKS_AHEAD }, rest, (told) => {
      if (told.ok) this.#take(told.answer);
      this.settle(told.ok ? [] : told.problems);
    });
  }

  #take({ weeks, hotWeeks, everyBird }: Omit<WeeksAnswer, "ok">): void {
    this.everyBird = everyBird;
    this.weeks = weeks;
    this.hotWeeks = hotWeeks;
    this.told = { weeks, hotWeeks };
  }
}
