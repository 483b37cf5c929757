import type { Frost, Heat, Plan, Problem } from "@headfall/hydraulics";
import type { ReactiveControllerHost } from "lit";
import { RestedAsker } from "../controllers/rested-asker.js";
import type { RoomTold } from "../kernels/how-got/request.js";

/** Rest after the last change before night and day are reckoned [ms]. */
const REST_MS = 150;

/** Has a plan's night of frost and hot day reckoned for its host. What was found last stays until then. */
export class WeatherController {
  answer: { readonly frost: Frost; readonly heat: Heat } | undefined;
  /** The same, for figures that tell how they were got. */
  told: RoomTold = {};
  problems: readonly Problem[] = [];
  /** Whether the answer is of an older plan. */
  isOld = false;

  readonly #asker: RestedAsker;

  constructor(host: ReactiveControllerHost) {
    this.#asker = new RestedAsker(host);
  }

  ask(plan: Plan, day: string | undefined): void {
    this.isOld = true;
    this.#asker.ask({ kind: "weather", plan, day }, this.answer === undefined ? 0 : REST_MS, (told) => {
      if (told.ok) {
        this.answer = told.answer;
        this.told = told.answer;
      }
      this.problems = told.ok ? [] : told.problems;
      this.isOld = false;
    });
  }
}
