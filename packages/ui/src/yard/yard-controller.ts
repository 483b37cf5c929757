import type { Plan, Problem, YardOfPlan } from "@headfall/hydraulics";
import type { ReactiveControllerHost } from "lit";
import { RestedAsker } from "../controllers/rested-asker.js";
import type { RoomTold } from "../kernels/how-got/request.js";

/** Rest after the last change before the yard is reckoned [ms]. */
const REST_MS = 100;
const WEEKS = 8;

/** Has a plan's yard reckoned for its host. What was found last stays until then. */
export class YardController {
  yard: YardOfPlan | undefined;
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
    const rest = this.yard === undefined ? 0 : REST_MS;
    this.#asker.ask({ kind: "yard", plan, day, weeks: WEEKS }, rest, (told) => {
      if (told.ok) {
        this.yard = told.answer;
        this.told = { yard: told.answer };
      }
      this.problems = told.ok ? [] : told.problems;
      this.isOld = false;
    });
  }
}
