import { type Plan, sourceNames } from "@headfall/hydraulics";
import type { AboveLayout } from "../kernels/above/lay-above.js";
import type { Box } from "../kernels/above/place-texts.js";
import type { Ground } from "../kernels/above/spot.js";
import { type Frame, fitView, type Pixel, panBy, toPixel, type Viewport } from "../kernels/above/viewport.js";

/** Room around a fitted plan for names, for the hint above and the buttons below [px]; less on a phone. */
const marginOf = (width: number): Frame["margin"] =>
  width < 480 ? { left: 34, right: 34, top: 52, bottom: 76 } : { left: 64, right: 64, top: 64, bottom: 76 };

/** What lies over the upper and lower edge [px]: no label goes under it. */
const HINT = 36;
const BUTTONS = 58;

/** How the drawing is looked at: fitted to the plan until a hand moves it. */
export class ViewKeeper {
  #view: Viewport | undefined;
  #isFitted = false;
  #size = { width: 0, height: 0 };
  #seen: Box | undefined;

  get view(): Viewport | undefined {
    return this.#view;
  }

  get size(): { readonly width: number; readonly height: number } {
    return this.#size;
  }

  get middle() {
    return { x: this.#size.width / 2, y: this.#size.height / 2 };
  }

  /** The part of the scene that was seen when the view last rested, in the scene's pixels. */
  get seen(): Box {
    this.#seen ??= this.#seenNow();
    return this.#seen;
  }

  /** The hand has moved or enlarged the drawing. */
  look(view: Viewport): void {
    if (view.scale !== this.#view?.scale) this.#seen = undefined;
    this.#view = view;
    this.#isFitted = false;
  }

  /** The view has come to rest: labels may be placed anew where they are seen now. */
  rest(): void {
    const now = this.#seenNow();
    const before = this.#seen;
    if (before === undefined || Math.abs(now.left - before.left) + Math.abs(now.top - before.top) > 1)
      this.#seen = now;
  }

  fit(layout: AboveLayout): void {
    const spots = [...layout.joints, ...layout.runs.flatMap((run) => run.spots)];
    this.#view = fitView(spots, { ...this.#size, margin: marginOf(this.#size.width) });
    this.#isFitted = true;
    this.#seen = undefined;
  }

  /** A part was chosen elsewhere: when no place of it is in sight, the nearest comes to the middle. */
  reveal(spots: readonly Ground[]): void {
    const view = this.#view;
    if (view === undefined || spots.length === 0) return;
    const pixels = spots.map((spot) => toPixel(view, spot));
    if (pixels.some((pixel) => this.#isSeen(pixel))) return;
    const { x, y } = this.middle;
    const away = (pixel: Pixel) => Math.hypot(pixel.x - x, pixel.y - y);
    const nearest = pixels.reduce((best, pixel) => (away(pixel) < away(best) ? pixel : best));
    this.look(panBy(view, x - nearest.x, y - nearest.y));
  }

  #isSeen({ x, y }: Pixel): boolean {
    return x >= 0 && x <= this.#size.width && y >= 0 && y <= this.#size.height;
  }

  /** The drawing has another size: a fitted plan is fitted again, another view keeps its middle. */
  resize(width: number, height: number, layout: AboveLayout | undefined): void {
    const before = this.#size;
    this.#size = { width, height };
    this.#seen = undefined;
    if (layout === undefined) return;
    if (this.#view === undefined || this.#isFitted) this.fit(layout);
    else this.#view = panBy(this.#view, (width - before.width) / 2, (height - before.height) / 2);
  }

  /** Another plan is shown: a quite different one is fitted, and a fitted one that has grown out of sight. */
  follow(plan: Plan, before: Plan | undefined, layout: AboveLayout): void {
    if (this.#size.width === 0) return;
    const isOther = before === undefined || !hasPartsOf(plan, before);
    if (this.#view === undefined || isOther || (this.#isFitted && !this.#isAllSeen(layout))) this.fit(layout);
  }

  #isAllSeen({ joints }: AboveLayout): boolean {
    return joints.every((joint) => this.#isSeen(toPixel(this.#view!, joint)));
  }

  #seenNow(): Box {
    const { left = 0, top = 0 } = this.#view ?? {};
    const { width, height } = this.#size;
    return { left: 4 - left, right: width - 4 - left, top: HINT - top, bottom: height - BUTTONS - top };
  }
}

/** Edits leave most of a plan as it was, its name for one; a plan that shares nothing with the one before was opened. */
function hasPartsOf(plan: Plan, before: Plan): boolean {
  if (plan.name === before.name && sourceNames(plan)[0] === sourceNames(before)[0]) return true;
  const parts = new Set<unknown>([...before.sources, ...before.runs]);
  return [...plan.sources, ...plan.runs].some((part) => parts.has(part));
}
