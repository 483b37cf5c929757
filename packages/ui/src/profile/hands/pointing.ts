import type { Spot } from "../../kernels/profile-request.js";
import { nearestHandle } from "../../kernels/side/place-handles.js";
import type { HandsHost } from "./hands-host.js";
import type { Holding } from "./holding.js";
import type { Looking } from "./looking.js";
import { PointerStates } from "./pointer-states.js";

/** What the browser tells of pointers and the wheel, in the pixels of the drawing. */
export class Pointing {
  readonly #host: HandsHost;
  readonly #looking: Looking;
  readonly #states: PointerStates;
  /**
   * Where the drawing lay in the window at the last press. A longer sentence above moves it down in the midst of a
   * drag: what is held would follow, the sentence become shorter, and so to and fro.
   */
  #corner: Spot = { x: 0, y: 0 };

  constructor(host: HandsHost, holding: Holding, looking: Looking) {
    this.#host = host;
    this.#looking = looking;
    this.#states = new PointerStates(host, holding);
  }

  /** Only a finger on a handle keeps the page from scrolling; parts of an SVG cannot say so by style. */
  readonly touchStart = {
    passive: false,
    handleEvent: (event: TouchEvent): void => {
      const [touch] = event.touches;
      if (touch === undefined || event.touches.length > 1) return;
      const { x, y } = cornerOf(event);
      const spot = { x: touch.clientX - x, y: touch.clientY - y };
      if (nearestHandle(this.#host.placed, spot) !== undefined) event.preventDefault();
    },
  };

  readonly down = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    this.#corner = cornerOf(event);
    const key = this.#states.down(event.pointerId, this.#spotOf(event), event.pointerType === "touch");
    if (key !== undefined) {
      // Else the press would move the focus away again, and begin to choose words.
      event.preventDefault();
      this.#host.focusHandle(key);
    }
    if (key !== undefined || event.pointerType === "mouse")
      (event.currentTarget as Element).setPointerCapture(event.pointerId);
  };

  readonly moved = (event: PointerEvent): void => this.#states.move(event.pointerId, this.#spotOf(event));

  readonly up = (event: PointerEvent): void => this.#states.up(event.pointerId, event.timeStamp);

  readonly cancelled = (event: PointerEvent): void => this.#states.cancelled(event.pointerId);

  readonly wheel = (event: WheelEvent): void => {
    this.#corner = cornerOf(event);
    if (this.#looking.wheel(event, this.#spotOf(event).x)) event.preventDefault();
  };

  #spotOf({ clientX, clientY }: MouseEvent): Spot {
    return { x: clientX - this.#corner.x, y: clientY - this.#corner.y };
  }
}

/** Where the drawing lies in the window. */
function cornerOf(event: Event): Spot {
  const { left, top } = (event.currentTarget as Element).getBoundingClientRect();
  return { x: left, y: top };
}
