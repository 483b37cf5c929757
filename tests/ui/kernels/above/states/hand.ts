import type { Plan } from "@headfall/hydraulics";
import type { HandEvent, Surroundings, Wish } from "../../../../../packages/ui/src/above/states/hand.js";
import { type HandState, IDLE } from "../../../../../packages/ui/src/above/states/hand-state.js";
import { takeTurn } from "../../../../../packages/ui/src/above/states/take-turn.js";
import { layAbove } from "../../../../../packages/ui/src/kernels/above/lay-above.js";
import { placeDrinkers } from "../../../../../packages/ui/src/kernels/above/place-drinkers.js";
import { toPixel } from "../../../../../packages/ui/src/kernels/above/viewport.js";
import { PLACED } from "../../../fixtures/placed-plan.js";

/** 40 px a metre, the barrel of the placed plan at (100, 300). */
export const VIEW = { scale: 40, left: 100, top: 300 };

export function around(changes: Partial<Surroundings> = {}, plan: Plan = PLACED): Surroundings {
  const layout = layAbove(plan);
  return {
    plan,
    layout,
    drinkers: placeDrinkers(plan, layout, undefined),
    view: VIEW,
    tool: "hand",
    system: "metric",
    selected: undefined,
    vesselReach: [0.28],
    ...changes,
  };
}

/** A hand over a drawing that stays as it is, and all that it has asked for. */
export class Hand {
  state: HandState = IDLE;
  readonly wishes: Wish[] = [];
  time = 1000;
  type = "mouse";

  constructor(readonly surroundings: Surroundings = around()) {}

  /** Places are metres on the ground. */
  down(x: number, y: number, pointer = 1): this {
    const { time, type } = this;
    return this.#turn({ kind: "down", pointer, type, at: this.#at(x, y), time, gesture: "drag 1" });
  }

  move(x: number, y: number, pointer = 1): this {
    return this.#turn({ kind: "move", pointer, at: this.#at(x, y) });
  }

  up(x: number, y: number, pointer = 1): this {
    return this.#turn({ kind: "up", pointer, at: this.#at(x, y), time: this.time });
  }

  tap(x: number, y: number): this {
    return this.down(x, y).up(x, y);
  }

  /** Moves through so many places on the way. */
  stroke(spots: readonly (readonly [number, number])[], steps = 12): this {
    spots.slice(1).forEach(([x, y], i) => {
      const [fromX, fromY] = spots[i]!;
      for (let k = 1; k <= steps; k++)
        this.move(fromX + ((x - fromX) * k) / steps, fromY + ((y - fromY) * k) / steps);
    });
    return this;
  }

  hold(pointer = 1): this {
    return this.#turn({ kind: "hold", pointer });
  }

  giveUp(): this {
    return this.#turn({ kind: "giveUp" });
  }

  /** The changes of the plan asked for. */
  get changes() {
    return this.wishes.flatMap((wish) => (wish.kind === "edit" ? [wish.change] : []));
  }

  get last(): Wish | undefined {
    return this.wishes[this.wishes.length - 1];
  }

  #at(x: number, y: number) {
    return toPixel(this.surroundings.view, { x, y });
  }

  #turn(event: HandEvent): this {
    const { state, wishes } = takeTurn(this.state, event, this.surroundings);
    this.state = state;
    this.wishes.push(...wishes);
    return this;
  }
}
