import type { DayResult, DaysSummary, Plan, Problem } from "@headfall/hydraulics";
import type { ReactiveController, ReactiveControllerHost } from "lit";
import { RestedAsker } from "../controllers/rested-asker.js";
import { type DayIndex, indexDay } from "../kernels/day/day-index.js";
import type { RoomTold } from "../kernels/how-got/request.js";
import { RoomAsker } from "../worker/ask-room.js";

/** Rest after the last change before the day is run [ms]. */
const REST_MS = 300;
/** Days run to tell how one differs from another. */
export const MANY_DAYS = 100;

/** What makes a day what it is. */
export interface DayQuestion {
  readonly plan: Plan;
  readonly day: string | undefined;
  readonly seed: number;
  readonly hot: boolean;
  readonly figure: "expect" | "size";
}

/** Has one day, and many, run for its host. What was found last stays until the next has been. */
export class DayController implements ReactiveController {
  result: DayResult | undefined;
  index: DayIndex | undefined;
  /** The day, for figures that tell how they were got. */
  told: RoomTold = {};
  /** What the day shown was run for. */
  shown: DayQuestion | undefined;
  problems: readonly Problem[] = [];
  /** Whether the day is of an older question. */
  isOld = false;
  days: DaysSummary | undefined;
  /** How far the many days have come, from 0 to 1; undefined when none are being run. */
  progress: number | undefined;

  readonly #host: ReactiveControllerHost;
  readonly #asker: RestedAsker;
  readonly #manyAsker = new RoomAsker();

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
    this.#asker = new RestedAsker(host);
    this.#manyAsker.onProgress = (share) => {
      this.progress = share;
      host.requestUpdate();
    };
  }

  hostDisconnected(): void {
    this.cancelMany();
  }

  ask(question: DayQuestion): void {
    this.isOld = true;
    const rest = this.result === undefined ? 0 : REST_MS;
    this.#asker.ask({ kind: "day", ...question }, rest, (told) => {
      if (told.ok) {
        this.result = told.answer;
        this.told = { day: told.answer };
        this.index = indexDay(told.answer);
        this.shown = question;
      }
      this.problems = told.ok ? [] : told.problems;
      this.isOld = false;
    });
  }

  askMany({ plan, day, hot, figure }: DayQuestion): void {
    this.progress = 0;
    this.#manyAsker.ask({ kind: "days", plan, day, hot, figure, count: MANY_DAYS }, (told) => {
      this.progress = undefined;
      if (told.ok) this.days = told.answer;
      else this.problems = told.problems;
      this.#host.requestUpdate();
    });
    this.#host.requestUpdate();
  }

  cancelMany(): void {
    this.#manyAsker.close();
    this.progress = undefined;
    this.#host.requestUpdate();
  }

  /** The many days were of another plan, figure or weather: they say nothing of this one. */
  forgetMany(): void {
    this.cancelMany();
    this.days = undefined;
  }
}
