import type { Pixel } from "../kernels/above/viewport.js";
import type { Selected } from "../kernels/selected.js";
import { type HandAsks, nextGesture } from "./hand-controller.js";
import type { Wish } from "./states/hand.js";
import { wishesOfKey } from "./states/keys.js";
import { wheelFactor } from "./states/wheel.js";

/** What keys and the wheel ask of the element they are used on. */
export interface KeyAsks extends HandAsks {
  /** Whether no pointer is at work. */
  isIdle(): boolean;
  /** The part that the keyboard is at. */
  focused(): Selected | undefined;
  /** The middle of the drawing. */
  middle(): Pixel;
  zoom(factor: number, at: Pixel): void;
}

/** Keys pressed and the wheel turned over a drawing. */
export class KeysAndWheel {
  readonly #asks: KeyAsks;

  constructor(asks: KeyAsks) {
    this.#asks = asks;
  }

  readonly key = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey || !this.#asks.isIdle()) return;
    const wishes = this.#wishesOf(event);
    if (wishes.length === 0) return;
    event.preventDefault();
    for (const wish of wishes) this.#asks.fulfil(wish);
  };

  #wishesOf({ key, shiftKey }: KeyboardEvent): readonly Wish[] {
    const around = this.#asks.surroundings();
    if (around === undefined) return [];
    const part = this.#asks.focused();
    if ((key === "Enter" || key === " ") && part !== undefined) return [{ kind: "choose", part }];
    const press = { key, isShift: shiftKey, middle: this.#asks.middle(), gesture: nextGesture() };
    return wishesOfKey(press, around);
  }

  /** With a modifier, or once the drawing has the focus; else the wheel is the page's. */
  readonly wheel = (event: WheelEvent): void => {
    const drawing = event.currentTarget as Element;
    if (!drawing.matches(":focus-within") && !event.ctrlKey && !event.metaKey) return;
    event.preventDefault();
    const { left, top } = drawing.getBoundingClientRect();
    this.#asks.zoom(wheelFactor(event), { x: event.clientX - left, y: event.clientY - top });
  };
}
