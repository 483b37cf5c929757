import type { Selected } from "../../kernels/selected.js";
import type { PlacedHandle } from "../../kernels/side/place-handles.js";
import { middleOfLongest, readingPlaceAt } from "../../kernels/side/reading-place.js";
import type { HandsHost } from "./hands-host.js";

/** Adds surveyed heights and takes them out; the focus follows to the new one, or to the neighbour of the one gone. */
export class Surveying {
  readonly #host: HandsHost;
  #next: ((placed: readonly PlacedHandle[]) => PlacedHandle | undefined) | undefined;

  constructor(host: HandsHost) {
    this.#host = host;
  }

  /** Where key and button add one: in the longest piece of the chosen run, or of the run of the drinker looked at. */
  placeFor(selected: Selected | undefined): number | undefined {
    const { drawn } = this.#host;
    if (drawn === undefined) return undefined;
    const { checked, path, drinker } = drawn.request;
    const { runs, drinkers } = checked.line;
    const chosen = selected && "run" in selected ? runs.findIndex(({ index }) => index === selected.run) : -1;
    const inChosen = chosen >= 0 ? middleOfLongest(checked, path, chosen) : undefined;
    return inChosen ?? middleOfLongest(checked, path, drinkers.run[drinker] ?? 0);
  }

  /** Surveys the height the pipe has at a distance along the path. */
  addAt(along: number): void {
    const { drawn, placed } = this.#host;
    if (drawn === undefined) return;
    const { checked, path } = drawn.request;
    const place = readingPlaceAt(checked, path, along, drawn.system);
    if (place === undefined) return;
    const known = placed.filter(isReading).length;
    this.#next = (now) => {
      const readings = now.filter(isReading);
      if (readings.length <= known) return undefined;
      const away = ({ handle }: PlacedHandle) => Math.abs((handle.along ?? 0) - along);
      return readings.sort((a, b) => away(a) - away(b))[0];
    };
    this.#host.want({ kind: "addReading", ...place });
  }

  /** @returns whether there was a reading to take out */
  takeOut(one: PlacedHandle | undefined): boolean {
    if (one?.handle.target.kind !== "reading") return false;
    const { run, reading } = one.handle.target;
    const { placed } = this.#host;
    const at = placed.indexOf(one);
    this.#next = (now) => (now.length < placed.length ? now[Math.min(at, now.length - 1)] : undefined);
    this.#host.want({ kind: "deleteReading", run, reading });
    return true;
  }

  /** The handle that is to have the focus, once the plan has followed. */
  nextToFocus(): PlacedHandle | undefined {
    const next = this.#next?.(this.#host.placed);
    if (next !== undefined) this.#next = undefined;
    return next;
  }
}

const isReading = ({ handle }: PlacedHandle): boolean => handle.kind === "reading";
