import type { Spot } from "../../kernels/profile-request.js";
import { panWindow, zoomWindow } from "../../kernels/side/along-window.js";
import { distance, nearestHandle } from "../../kernels/side/place-handles.js";
import { scalesOf } from "../../kernels/side/side-scales.js";
import type { HandsHost } from "./hands-host.js";
import type { Holding } from "./holding.js";

/** A pointer that moves less than this is pressing, not dragging [px]; fingers tremble more than mice. */
const TREMBLE = { mouse: 3, touch: 7 } as const;
/** Reach of a mouse, which is finer than a thumb [px]. */
const MOUSE_REACH = 13;
/** Two presses so close in time [ms] and place [px] are one double press. */
const TWICE_MS = 400;
const TWICE_PX = 24;

interface Press {
  readonly start: Spot;
  last: Spot;
  isDragged: boolean;
  readonly isTouch: boolean;
  readonly isOnHandle: boolean;
}

/** What pointers do on the drawing: hold a handle, pan, pinch, or just press. */
export class PointerStates {
  readonly #host: HandsHost;
  readonly #holding: Holding;
  readonly #pressed = new Map<number, Press>();
  #lastTap: { spot: Spot; at: number } | undefined;

  constructor(host: HandsHost, holding: Holding) {
    this.#host = host;
    this.#holding = holding;
  }

  /** @returns the key of the handle that was taken, if one was */
  down(id: number, spot: Spot, isTouch: boolean): string | undefined {
    const near = nearestHandle(this.#host.placed, spot, isTouch ? undefined : MOUSE_REACH);
    const isFirst = this.#pressed.size === 0;
    const press = {
      start: spot,
      last: spot,
      isDragged: false,
      isTouch,
      isOnHandle: isFirst && near !== undefined,
    };
    this.#pressed.set(id, press);
    if (!press.isOnHandle || near === undefined) return undefined;
    this.#holding.take(near.handle, "pointer");
    return near.handle.key;
  }

  move(id: number, spot: Spot): void {
    const press = this.#pressed.get(id);
    if (press === undefined) return;
    if (!press.isDragged && distance(press.start, spot) < TREMBLE[press.isTouch ? "touch" : "mouse"]) return;
    const by = { x: spot.x - press.last.x, y: spot.y - press.last.y };
    if (press.isOnHandle && this.#holding.isByPointer) this.#holding.moveBy(by.y);
    else if (this.#pressed.size === 2) this.#pinch(id, spot);
    else if (this.#pressed.size === 1) this.#pan(by.x);
    press.last = spot;
    press.isDragged = true;
  }

  up(id: number, at: number): void {
    const press = this.#pressed.get(id);
    this.#pressed.delete(id);
    if (press === undefined) return;
    if (press.isOnHandle) this.#holding.letGo();
    if (!press.isDragged) this.#tapped(press.start, at);
  }

  /** The browser has taken the pointer for itself, to scroll. */
  cancelled(id: number): void {
    if (this.#pressed.get(id)?.isOnHandle) this.#holding.giveUp();
    this.#pressed.delete(id);
  }

  #tapped(spot: Spot, at: number): void {
    const last = this.#lastTap;
    const isTwice = last !== undefined && at - last.at < TWICE_MS && distance(last.spot, spot) < TWICE_PX;
    this.#lastTap = isTwice ? undefined : { spot, at };
    this.#host.tapped(spot, isTwice);
  }

  #pan(right: number): void {
    const { drawn, pathLength, stretch } = this.#host;
    if (drawn === undefined || stretch === undefined) return;
    const { perMetreAlong } = scalesOf(drawn.layout);
    this.#host.look(panWindow(stretch, pathLength, -right / perMetreAlong));
  }

  /** The place between two fingers stays between them, and their distance is the zoom. */
  #pinch(moved: number, spot: Spot): void {
    const { drawn, pathLength, stretch } = this.#host;
    const other = [...this.#pressed].find(([id]) => id !== moved)?.[1];
    const before = this.#pressed.get(moved)?.last;
    if (drawn === undefined || other === undefined || before === undefined) return;
    const factor =
      Math.max(8, Math.abs(spot.x - other.last.x)) / Math.max(8, Math.abs(before.x - other.last.x));
    const middle = scalesOf(drawn.layout).alongAt((spot.x + other.last.x) / 2);
    this.#host.look(zoomWindow(stretch, pathLength, factor, middle));
  }
}
