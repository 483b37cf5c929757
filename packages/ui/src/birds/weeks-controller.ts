import { judgeWeeks, type Plan, type WeekReport } from "@headfall/hydraulics";
import type { ReactiveController, ReactiveControllerHost } from "lit";

/** Weeks looked ahead beyond this one. */
export const WEEKS_AHEAD = 8;
/** Rest after the last change before the weeks are judged: they are some ten checks [ms]. */
const REST_MS = 300;

/** Judges the coming weeks of a plan for its host, once the hand has rested. What was found last stays until then. */
export class WeeksController implements ReactiveController {
  weeks: readonly WeekReport[] = [];
  hotWeeks: readonly WeekReport[] = [];
  /** Whether they are of an older plan. */
  isOld = false;

  readonly #host: ReactiveControllerHost;
  #timer: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  hostDisconnected(): void {
    clearTimeout(this.#timer);
  }

  /** Takes a new plan. */
  judge(plan: Plan, day: string | undefined): void {
    clearTimeout(this.#timer);
    this.isOld = true;
    const rest = this.weeks.length === 0 ? 0 : REST_MS;
    this.#timer = setTimeout(() => {
      const judging = plan.pens === undefined ? undefined : judgeWeeks(plan, { weeks: WEEKS_AHEAD, day });
      this.weeks = judging?.ok ? judging.weeks : [];
      this.hotWeeks = judging?.ok ? judging.hotWeeks : [];
      this.isOld = false;
      this.#host.requestUpdate();
    }, rest);
  }
}
