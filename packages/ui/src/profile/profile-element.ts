import type { Checked, MomentName } from "@headfall/hydraulics";
import { html, LitElement, nothing } from "lit";
import { nextTask } from "../controllers/next-task.js";
import { layProfile, type ProfileLayout } from "../kernels/profile-layout.js";
import type { ProfilePath } from "../kernels/profile-path.js";
import type { ProfileRequest } from "../kernels/profile-request.js";
import { axisUnit, type UnitSystem } from "../kernels/typed-quantity.js";
import { tokens } from "../styles/tokens.js";
import { DrinkerChosenEvent } from "./drinker-chosen-event.js";
import { profileStyles } from "./profile.styles.js";
import { profileKey } from "./profile-key.js";
import { profileView } from "./profile-view.js";

/**
 * The line from the side: ground, source, pipe, drinkers with their verdicts, the hydraulic grade line at one moment
 * between its two extremes, and under it the head lost on the way. Reads only; a press chooses the nearest drinker.
 *
 * @element headfall-profile
 * @fires drinker-chosen  when the user presses near a drinker
 * @fires profile-drawn   after each drawing: `layout` then says where everything is
 * @csspart drawing  the SVG
 * @csspart key      what the lines mean, and the scales
 */
export class HeadfallProfile extends LitElement {
  static override properties = {
    checked: { attribute: false },
    path: { attribute: false },
    moment: {},
    drinker: { type: Number },
    system: {},
    window: { attribute: false },
    heldHeights: { attribute: false },
    gradeWords: {},
    width: { state: true },
  };
  static override styles = [tokens, profileStyles];

  /** What the check found out. */
  declare checked: Checked | undefined;
  /** The way through the line that is drawn. */
  declare path: ProfilePath | undefined;
  /** The moment whose grade line is drawn bold. */
  declare moment: MomentName;
  /** The drinker whose head is measured out, by index. */
  declare drinker: number;
  /** Units on the axes. */
  declare system: UnitSystem;
  /** Stretch of the path that is drawn, from and to [m]; undefined: all of it. */
  declare window: ProfileRequest["window"];
  /** Lowest and highest metre to keep on the drawing [m], so that its scale does not jump; undefined: as it fits. */
  declare heldHeights: ProfileRequest["heldHeights"];
  /** What the bold grade line is called. */
  declare gradeWords: string;
  declare private width: number;
  #request: ProfileRequest | undefined;
  #layout: ProfileLayout | undefined;
  #sizes: ResizeObserver | undefined;

  constructor() {
    super();
    this.checked = undefined;
    this.path = undefined;
    this.moment = "fullIdle";
    this.drinker = 0;
    this.system = "metric";
    this.gradeWords = "grade line now";
    this.width = 0;
  }

  /** Where everything is on the drawing, in pixels; for what lies over it. */
  get layout(): ProfileLayout | undefined {
    return this.#layout;
  }
  /** What the drawing was made from. */
  get request(): ProfileRequest | undefined {
    return this.#request;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    // On the next frame, since redrawing changes the height of what is being observed.
    this.#sizes = new ResizeObserver(() => {
      requestAnimationFrame(() => {
        this.width = Math.round(this.clientWidth);
      });
    });
    this.#sizes.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#sizes?.disconnect();
  }

  /** Once it stands, it is drawn anew in a task of its own: with the check that brings it, that would be a long one. */
  protected override async scheduleUpdate(): Promise<void> {
    if (this.#layout !== undefined) await nextTask();
    super.scheduleUpdate();
  }

  override updated(): void {
    if (this.#layout !== undefined) this.dispatchEvent(new Event("profile-drawn"));
  }

  override render() {
    const { checked, path, moment, drinker, system } = this;
    if (checked === undefined || path === undefined || this.width < 120) return nothing;
    const unit = axisUnit(system);
    this.#request = {
      checked,
      path,
      moment,
      drinker,
      width: this.width,
      height: this.width < 480 ? 296 : 420,
      tickUnit: unit.length,
      window: this.window,
      heldHeights: this.heldHeights,
    };
    const layout = layProfile(this.#request);
    this.#layout = layout;
    return html`<figure @click=${this.#pressed}>
      ${profileView(layout, { checked, drinker, system, unitSign: unit.sign, moment })}
      <figcaption part="key">${profileKey(layout, this.gradeWords)}</figcaption>
    </figure>`;
  }

  #pressed(event: MouseEvent): void {
    const drawing = this.renderRoot.querySelector("svg");
    if (drawing === null || this.#layout === undefined) return;
    const x = event.clientX - drawing.getBoundingClientRect().left;
    let nearest: { index: number; distance: number } | undefined;
    for (const { index, x: at } of this.#layout.drinkers) {
      const distance = Math.abs(at - x);
      if (nearest === undefined || distance < nearest.distance) nearest = { index, distance };
    }
    if (nearest !== undefined && nearest.distance < 24)
      this.dispatchEvent(new DrinkerChosenEvent(nearest.index));
  }
}
