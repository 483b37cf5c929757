import type { Plan, Sign, Trouble } from "@headfall/hydraulics";
import { AskingController } from "../controllers/asking-controller.js";
import type { RoomTold } from "../kernels/how-got/request.js";

/** Rest after the last press before the causes are ranked [ms]. */
const REST_MS = 200;

export interface TroubleQuestion {
  readonly plan: Plan;
  readonly day: string | undefined;
  readonly signs: readonly Sign[];
  readonly lastSeen: number;
  /** Where the water stands in each source [m]; as the plan has it where left out. */
  readonly levels: readonly (number | undefined)[];
}

/** Has likely causes ranked for its host; without signs nothing is wrong that could be told. */
export class TroubleController extends AskingController<TroubleQuestion> {
  trouble: Trouble | undefined;
  /** The same, for figures that tell how they were got. */
  told: RoomTold = {};

  protected override find(question: TroubleQuestion): void {
    if (question.signs.length === 0) {
      this.asker.close();
      this.#take(undefined);
      this.settle([]);
      return;
    }
    this.asker.ask({ kind: "trouble", ...question }, REST_MS, (told) => {
      if (told.ok) this.#take(told.answer);
      this.settle(told.ok ? [] : told.problems);
    });
  }

  #take(trouble: Trouble | undefined): void {
    if (trouble !== this.trouble) this.told = { trouble };
    this.trouble = trouble;
  }
}
