import type { PlacedHandle } from "../../kernels/side/place-handles.js";
import { moveByKey } from "./hand-keys.js";
import type { HandsHost } from "./hands-host.js";
import type { Holding } from "./holding.js";
import type { Looking } from "./looking.js";
import type { Surveying } from "./surveying.js";

/** What keys do on the drawing: move the handle that has the focus, go on to another, look closer, survey. */
export class Keying {
  readonly #host: HandsHost;
  readonly #holding: Holding;
  readonly #looking: Looking;
  readonly #surveying: Surveying;

  constructor(host: HandsHost, holding: Holding, looking: Looking, surveying: Surveying) {
    this.#host = host;
    this.#holding = holding;
    this.#looking = looking;
    this.#surveying = surveying;
  }

  readonly pressed = (event: KeyboardEvent): void => {
    const { drawn } = this.#host;
    if (drawn === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    const placed = this.#placedIn(event);
    const isMove = placed !== undefined && moveByKey(this.#holding, placed, event, drawn.system);
    if (!isMove && !this.#act(event, placed)) return;
    event.preventDefault();
    event.stopPropagation();
  };

  readonly left = (): void => this.#holding.rest();

  readonly focusLeft = (): void => {
    if (!this.#holding.isByPointer) this.#holding.letGo();
  };

  #placedIn(event: Event): PlacedHandle | undefined {
    const key = (event.target as Element).closest("[data-key]")?.getAttribute("data-key");
    return this.#host.placed.find(({ handle }) => handle.key === key);
  }

  /** @returns whether the key was one of these */
  #act({ key, shiftKey }: KeyboardEvent, placed: PlacedHandle | undefined): boolean {
    switch (key) {
      case "Escape":
        return this.#giveUp();
      case "ArrowLeft":
      case "ArrowRight":
        return this.#goAlong(key === "ArrowLeft" ? -1 : 1, placed, shiftKey);
      case "Insert":
        this.#surveying.add();
        return true;
      case "Delete":
        return this.#surveying.takeOut(placed);
      case "Enter":
        if (placed !== undefined) this.#host.choose(placed.handle.part);
        return placed !== undefined;
      default:
        return this.#look(key, placed?.handle.along);
    }
  }

  #giveUp(): boolean {
    const isHeld = this.#holding.heldKey !== undefined;
    this.#holding.giveUp();
    return isHeld;
  }

  #look(key: string, around: number | undefined): boolean {
    if (key === "+" || key === "=") this.#looking.closer(around);
    else if (key === "-") this.#looking.wider(around);
    else if (key === "0") this.#looking.whole();
    else return false;
    return true;
  }

  /** To the next handle, or with Shift along a line that is drawn closer. */
  #goAlong(direction: number, from: PlacedHandle | undefined, isPan: boolean): boolean {
    if (isPan && this.#looking.along(direction)) return true;
    const { placed } = this.#host;
    const at = from === undefined ? -1 : placed.indexOf(from);
    const next = placed[at + direction];
    if (next !== undefined) this.#host.focusHandle(next.handle.key);
    return next !== undefined;
  }
}
