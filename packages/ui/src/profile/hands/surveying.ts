import type { PlacedHandle } from "../../kernels/side/place-handles.js";
import { middleOfLongest, readingPlaceAt } from "../../kernels/side/reading-place.js";
import type { HandsHost } from "./hands-host.js";
import type { Looking } from "./looking.js";

/** Adds surveyed heights and takes them out; the focus follows to the new one, or to the neighbour of the one gone. */
export class Surveying {
  readonly #host: HandsHost;
  readonly #looking: Looking;
  #next: ((placed: readonly PlacedHandle[]) => PlacedHandle | undefined) | undefined;

  constructor(host: HandsHost, looking: Looking) {
    this.#host = host;
    this.#looking = looking;
  }

  /** Where key and button add one: in the longest piece of the chosen run, or of the run of the drinker looked at. */
  get place(): number | undefined {
    const { drawn, selected } = this.#host;
    if (drawn === undefined) return undefined;
    const { checked, path, drinker } = drawn.request;
    const { runs, drinkers } = checked.line;
    const chosen = selected && "run" in selected ? runs.findIndex(({ index }) => index === selected.run) : -1;
    const inChosen = chosen >= 0 ? middleOfLongest(checked, path, chosen) : undefined;
    return inChosen ?? middleOfLongest(checked, path, drinkers.run[drinker] ?? 0);
  }

  /** Surveys one there. */
  add(): void {
    const along = this.place;
    if (along !== undefined) this.addAt(along);
  }

  /** Surveys the height the pipe has at a distance along the path. */
  addAt(along: number): void {
    this.#looking.show(along);
    const { drawn, placed } = this.#host;
    if (drawn === undefined) return;
    const { checked, path } = drawn.request;
    const place = readingPlaceAt(checked, path, along, drawn.system);
    if (place === undefined) return;
    const known = placed.filter(isReading).length;
    this.#next = (now) => newReading(now, known, along);
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

/** Once there are more readings than were known: the one nearest to where it was added. */
function newReading(now: readonly PlacedHandle[], known: number, along: number): PlacedHandle | undefined {
  const readings = now.filter(isReading);
  const away = ({ handle }: PlacedHandle) => Math.abs((handle.along ?? 0) - along);
  return readings.length <= known ? undefined : readings.sort((a, b) => away(a) - away(b))[0];
}
