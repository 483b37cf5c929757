import type { Plan, Problem, WeekReport } from "@headfall/hydraulics";
import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { RoomTold } from "../kernels/how-got/request.js";
import { RoomAsker } from "../worker/ask-room.js";

/** Weeks looked ahead beyond this one. */
export const WEEKS_AHEAD = 8;
/** Rest after the last change before the weeks are judged: they are some twenty checks [ms]. */
const REST_MS = 300;

/** Has the coming weeks of a plan judged for its host, once the hand has rested. What was found last stays until then. */
export class WeeksController implements ReactiveController {
  weeks: readonly WeekReport[] = [];
  hotWeeks: readonly WeekReport[] = [];
  /** Both, for figures that tell how they were got. */
  told: RoomTold = {};
  /** Whether they are of an older plan, and are being judged anew. */
  isOld = false;
  /** How far that has come, from 0 to 1; undefined until it takes long enough to tell. */
  progress: number | undefined;
  /** Whether the user wanted no more of it. */
  isStopped = false;
  /** Why the plan's weeks cannot be judged. */
  problems: readonly Problem[] = [];

  readonly #host: ReactiveControllerHost;
  readonly #asker = new RoomAsker();
  #timer: ReturnType<typeof setTimeout> | undefined;
  #asked: { readonly plan: Plan; readonly day: string | undefined } | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
    this.#asker.onProgress = (share) => {
      this.progress = share;
      host.requestUpdate();
    };
  }

  hostDisconnected(): void {
    clearTimeout(this.#timer);
    this.#asker.close();
  }

  /** Takes a new plan. */
  judge(plan: Plan, day: string | undefined): void {
    clearTimeout(this.#timer);
    this.#asked = { plan, day };
    if (plan.pens === undefined) {
      this.#asker.close();
      this.#take([], []);
      return;
    }
    this.isOld = true;
    this.isStopped = false;
    this.#timer = setTimeout(() => this.#send(plan, day), this.weeks.length === 0 ? 0 : REST_MS);
  }

  /** Ends the work; what was found last stays. */
  stop(): void {
    clearTimeout(this.#timer);
    this.#asker.close();
    this.progress = undefined;
    this.isOld = false;
    this.isStopped = true;
    this.#host.requestUpdate();
  }

  /** After all. */
  goOn(): void {
    if (this.#asked !== undefined) this.judge(this.#asked.plan, this.#asked.day);
    this.#host.requestUpdate();
  }

  #send(plan: Plan, day: string | undefined): void {
    this.#asker.ask({ kind: "weeks", plan, day, weeks: WEEKS_AHEAD }, (told) => {
      if (told.ok) this.#take(told.answer.weeks, told.answer.hotWeeks);
      else this.#refuse(told.problems);
    });
  }

  #take(weeks: readonly WeekReport[], hotWeeks: readonly WeekReport[]): void {
    this.weeks = weeks;
    this.hotWeeks = hotWeeks;
    this.told = { weeks, hotWeeks };
    this.#refuse([]);
  }

  /** What was found of the plan before stays, if something is wrong with this one. */
  #refuse(problems: readonly Problem[]): void {
    this.problems = problems;
    this.progress = undefined;
    this.isOld = false;
    this.isStopped = false;
    this.#host.requestUpdate();
  }
}
