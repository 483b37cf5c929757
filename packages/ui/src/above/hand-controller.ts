import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { Pixel } from "../kernels/above/viewport.js";
import type { Ghost, HandEvent, Surroundings, Wish } from "./states/hand.js";
import { type HandState, IDLE } from "./states/hand-state.js";
import { takeTurn } from "./states/take-turn.js";

/** What the hand asks of the element it is at. */
export interface HandAsks {
  /** The plan as drawn now; undefined while nothing is drawn. */
  surroundings(): Surroundings | undefined;
  fulfil(wish: Wish): void;
}

/** How long a press is held still to mean more [ms]. */
const HOLD_MS = 550;

let gestures = 0;
/** A name for the next drag or key press that no other has had on this page. */
export const nextGesture = (): string => `above ${++gestures}`;

/**
 * After a touch the browser makes up a press of the mouse, which would take the focus away from what the touch has
 * opened. Without it, the focus comes here at once: a field that was being typed into is done.
 */
function takeFocus(event: PointerEvent, drawing: Element): void {
  event.preventDefault();
  (drawing as SVGElement).focus({ preventScroll: true });
}

/** Follows the pointers over a drawing from state to state. */
export class HandController implements ReactiveController {
  #state: HandState = IDLE;
  readonly #host: ReactiveControllerHost;
  readonly #asks: HandAsks;
  /** Where the drawing lies in the window; taken at each press, so that a drag asks for no layout. */
  #corner: Pixel = { x: 0, y: 0 };
  #hold: ReturnType<typeof setTimeout> | undefined;

  constructor(host: ReactiveControllerHost, asks: HandAsks) {
    this.#host = host;
    this.#asks = asks;
    host.addController(this);
  }

  hostConnected(): void {
    window.addEventListener("keydown", this.#escape, { capture: true });
  }

  hostDisconnected(): void {
    window.removeEventListener("keydown", this.#escape, { capture: true });
    this.#turn({ kind: "giveUp" });
  }

  get isIdle(): boolean {
    return this.#state.name === "idle";
  }

  /** The name of what the hand is doing. */
  get doing(): HandState["name"] {
    return this.#state.name;
  }

  get ghost(): Ghost | undefined {
    return "ghost" in this.#state ? this.#state.ghost : undefined;
  }

  readonly down = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    const drawing = event.currentTarget as Element;
    const { left, top } = drawing.getBoundingClientRect();
    this.#corner = { x: left, y: top };
    drawing.setPointerCapture(event.pointerId);
    if (event.pointerType === "touch") takeFocus(event, drawing);
    const { pointerId: pointer, pointerType: type, timeStamp: time } = event;
    this.#turn({ kind: "down", pointer, type, at: this.#at(event), time, gesture: nextGesture() });
    this.#hold = setTimeout(() => this.#turn({ kind: "hold", pointer }), HOLD_MS);
  };

  readonly move = (event: PointerEvent): void => {
    if (!this.isIdle) this.#turn({ kind: "move", pointer: event.pointerId, at: this.#at(event) });
  };

  readonly up = (event: PointerEvent): void => {
    this.#turn({ kind: "up", pointer: event.pointerId, at: this.#at(event), time: event.timeStamp });
  };

  /** A finger held still would open the browser's menu, and end what it has begun. */
  readonly menu = (event: Event): void => {
    if (!this.isIdle) event.preventDefault();
  };

  readonly cancel = (): void => this.#turn({ kind: "giveUp" });

  readonly #escape = (event: KeyboardEvent): void => {
    if (event.key !== "Escape" || this.isIdle) return;
    event.preventDefault();
    event.stopPropagation();
    this.#turn({ kind: "giveUp" });
  };

  #at({ clientX, clientY }: PointerEvent): Pixel {
    return { x: clientX - this.#corner.x, y: clientY - this.#corner.y };
  }

  #turn(event: HandEvent): void {
    if (event.kind !== "move") clearTimeout(this.#hold);
    const around = this.#asks.surroundings();
    if (around === undefined) {
      this.#state = IDLE;
      return;
    }
    const { state, wishes } = takeTurn(this.#state, event, around);
    if (state === this.#state && wishes.length === 0) return;
    this.#state = state;
    for (const wish of wishes) this.#asks.fulfil(wish);
    this.#host.requestUpdate();
  }
}
