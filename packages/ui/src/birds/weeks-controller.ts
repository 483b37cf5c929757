import type { BirdsWeek, Plan, Problem, WeekReport } from "@headfall/hydraulics";
import type { ReactiveControllerHost } from "lit";
import { RestedAsker } from "../controllers/rested-asker.js";
import type { RoomTold } from "../kernels/how-got/request.js";
import type { WeeksAnswer } from "../worker/room-protocol.js";

/** Weeks looked ahead beyond this one. */
export const WEEKS_AHEAD = 8;
/** Rest after the last change before the weeks are judged: they are some twenty checks [ms]. */
const REST_MS = 300;

/** Has the coming weeks of a plan judged for its host, once the hand has rested. What was found last stays until then. */
export class WeeksController {
  weeks: readonly WeekReport[] = [];
  hotWeeks: readonly WeekReport[] = [];
  everyBird: readonly BirdsWeek[] | undefined;
  /** Both, for figures that tell how they were got. */
  told: RoomTold = {};
  /** Whether they are of an older plan, and are being judged anew. */
  isOld = false;
  /** Whether the user wanted no more of it. */
  isStopped = false;
  /** Why the plan's weeks cannot be judged. */
  problems: readonly Problem[] = [];

  readonly #host: ReactiveControllerHost;
  readonly #asker: RestedAsker;
  #asked: { readonly plan: Plan; readonly day: string | undefined } | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    this.#asker = new RestedAsker(host);
  }

  /** How far that has come, from 0 to 1; undefined until it takes long enough to tell. */
  get progress(): number | undefined {
    return this.#asker.progress;
  }

  /** Takes a new plan. */
  judge(plan: Plan, day: string | undefined): void {
    this.#asked = { plan, day };
    if (plan.pens === undefined) {
      this.#asker.close();
      this.#take({ weeks: [], hotWeeks: [] });
      return;
    }
    this.isOld = true;
    this.isStopped = false;
    const rest = this.weeks.length === 0 ? 0 : REST_MS;
    this.#asker.ask({ kind: "weeks", plan, day, weeks: WEEKS_AHEAD }, rest, (told) => {
      if (told.ok) this.#take(told.answer);
      else this.#refuse(told.problems);
    });
  }

  /** Ends the work; what was found last stays. */
  stop(): void {
    this.#asker.close();
    this.isOld = false;
    this.isStopped = true;
    this.#host.requestUpdate();
  }

  /** After all. */
  goOn(): void {
    if (this.#asked !== undefined) this.judge(this.#asked.plan, this.#asked.day);
    this.#host.requestUpdate();
  }

  #take({ weeks, hotWeeks, everyBird }: Omit<WeeksAnswer, "ok">): void {
    this.everyBird = everyBird;
    this.weeks = weeks;
    this.hotWeeks = hotWeeks;
    this.told = { weeks, hotWeeks };
    this.#refuse([]);
  }

  /** What was found of the plan before stays, if something is wrong with this one. */
  #refuse(problems: readonly Problem[]): void {
    this.problems = problems;
    this.isOld = false;
    this.isStopped = false;
    this.#host.requestUpdate();
  }
}
