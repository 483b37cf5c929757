import type { Checked } from "@headfall/hydraulics";
import { editOf } from "../../kernels/side/edit-of.js";
import { type HandDrag, moveHand, putHand, takeInHand } from "../../kernels/side/hand-drag.js";
import type { PlacedHandle } from "../../kernels/side/place-handles.js";
import type { SideHandle } from "../../kernels/side/side-handle.js";
import { scalesOf } from "../../kernels/side/side-scales.js";
import { levelNeighbours } from "../../kernels/side/snap-height.js";
import type { UnitSystem } from "../../kernels/typed-quantity.js";
import type { HandsHost } from "./hands-host.js";

/** Keys pressed with no longer rest between them are one edit [ms]. */
const REST_MS = 900;

let gestures = 0;

/**
 * A handle held by the pointer or moved by keys. After it is let go it stays where it was put until the next check
 * has come, so that it does not jump back while a large plan is being worked out.
 */
export class Holding {
  readonly #host: HandsHost;
  #drag: HandDrag | undefined;
  #by: "pointer" | "keys" | undefined;
  #settling: Checked | undefined;
  #isMoved = false;
  #rest: ReturnType<typeof setTimeout> | undefined;

  constructor(host: HandsHost) {
    this.#host = host;
  }

  /** The drag to be drawn; also shortly after it has ended. */
  get drag(): HandDrag | undefined {
    return this.#drag;
  }
  /** The handle that is held now. */
  get heldKey(): string | undefined {
    return this.#by === undefined ? undefined : this.#drag?.key;
  }
  get isByPointer(): boolean {
    return this.#by === "pointer";
  }

  take(handle: SideHandle, by: "pointer" | "keys"): void {
    clearTimeout(this.#rest);
    const { placed } = this.#host;
    if (by === "keys" && this.#by === "keys" && this.#drag?.key === handle.key) return;
    this.letGo();
    const neighbours = levelNeighbours(
      handle,
      placed.map((candidate) => candidate.handle),
    );
    this.#drag = takeInHand(handle, neighbours, `${handle.key}, hand ${++gestures}`);
    this.#by = by;
    this.#settling = undefined;
    this.#isMoved = false;
    if (by === "pointer") this.#host.holdScale(true);
    this.#host.requestUpdate();
  }

  /** The pointer has gone down by so many pixels. */
  moveBy(down: number): void {
    const { drawn } = this.#host;
    const held = this.#placedHeld();
    if (this.#drag === undefined || held === undefined || drawn === undefined) return;
    const { perMetreUp } = scalesOf(drawn.layout);
    this.#become(moveHand(this.#drag, held.handle, down, perMetreUp, drawn.system), held.handle);
  }

  /** A key has put it at a height. */
  put(height: number, system: UnitSystem): void {
    const held = this.#placedHeld();
    if (this.#drag === undefined || held === undefined) return;
    this.#become(putHand(this.#drag, held.handle, height, system), held.handle);
  }

  /** A key has been let go: if none follows soon, so is the handle. */
  rest(): void {
    clearTimeout(this.#rest);
    if (this.#by === "keys") this.#rest = setTimeout(() => this.letGo(), REST_MS);
  }

  letGo(): void {
    clearTimeout(this.#rest);
    if (this.#by === undefined) return;
    if (this.isByPointer) this.#host.holdScale(false);
    this.#by = undefined;
    this.#settling = this.#host.drawn?.request.checked;
    if (!this.#isMoved) this.#drag = undefined;
    this.#host.requestUpdate();
  }

  giveUp(): void {
    const { heldKey } = this;
    if (heldKey === undefined || this.#drag === undefined) return;
    const { gesture } = this.#drag;
    const wasMoved = this.#isMoved;
    this.#isMoved = false;
    this.letGo();
    if (wasMoved) this.#host.giveUp(gesture);
  }

  /** A new check is drawn: what was let go is now where the plan says. */
  drawnAnew(checked: Checked): void {
    if (this.#by !== undefined || this.#settling === checked) return;
    this.#drag = undefined;
    this.#settling = undefined;
  }

  #placedHeld(): PlacedHandle | undefined {
    return this.#host.placed.find(({ handle }) => handle.key === this.#drag?.key);
  }

  #become(drag: HandDrag, handle: SideHandle): void {
    const before = this.#drag?.height;
    this.#drag = drag;
    if (drag.height !== before) {
      this.#isMoved = true;
      const system = this.#host.drawn?.system ?? "metric";
      this.#host.want(editOf(handle, drag.height, system), drag.gesture);
    }
    this.#host.requestUpdate();
  }
}
