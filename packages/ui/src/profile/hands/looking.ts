import { panWindow, showAlong, zoomWindow } from "../../kernels/side/along-window.js";
import { scalesOf } from "../../kernels/side/side-scales.js";
import type { HandsHost } from "./hands-host.js";

/** How much closer one press of a key or button brings the line. */
const CLOSER = 1.6;
/** Turn of the wheel that doubles [px]. */
const DOUBLES = 200;

/** Draws the line closer or wider, and moves along it. */
export class Looking {
  readonly #host: HandsHost;

  constructor(host: HandsHost) {
    this.#host = host;
  }

  closer(around?: number): void {
    this.#zoom(CLOSER, around);
  }

  wider(around?: number): void {
    this.#zoom(1 / CLOSER, around);
  }

  whole(): void {
    this.#host.look(undefined);
  }

  /** By a quarter of what is drawn. @returns whether there is anywhere to go */
  along(direction: number): boolean {
    const { stretch, pathLength } = this.#host;
    if (stretch === undefined) return false;
    this.#host.look(panWindow(stretch, pathLength, (direction * (stretch[1] - stretch[0])) / 4));
    return true;
  }

  /** Moves along until a place is on the drawing. */
  show(along: number): void {
    const { stretch, pathLength } = this.#host;
    if (stretch !== undefined) this.#host.look(showAlong(stretch, pathLength, along));
  }

  /**
   * With Ctrl the wheel zooms around the pointer; sideways it moves along a line that is drawn closer.
   *
   * @returns whether the turn was meant for the drawing
   */
  wheel({ ctrlKey, deltaX, deltaY }: WheelEvent, x: number): boolean {
    const { drawn, pathLength, stretch } = this.#host;
    if (drawn === undefined) return false;
    const scales = scalesOf(drawn.layout);
    if (ctrlKey)
      this.#host.look(zoomWindow(stretch, pathLength, 2 ** (-deltaY / DOUBLES), scales.alongAt(x)));
    else if (stretch !== undefined && Math.abs(deltaX) > Math.abs(deltaY))
      this.#host.look(panWindow(stretch, pathLength, deltaX / scales.perMetreAlong));
    else return false;
    return true;
  }

  #zoom(factor: number, around?: number): void {
    const { drawn, pathLength, stretch } = this.#host;
    if (drawn === undefined) return;
    const [from, to] = stretch ?? [0, pathLength];
    this.#host.look(zoomWindow(stretch, pathLength, factor, around ?? (from + to) / 2));
  }
}
