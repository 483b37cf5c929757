import type { Plan } from "@headfall/hydraulics";
import { html, LitElement, nothing } from "lit";
import { nextTask } from "../../controllers/next-task.js";
import type { Spot } from "../../kernels/profile-request.js";
import type { Selected } from "../../kernels/selected.js";
import type { AlongWindow } from "../../kernels/side/along-window.js";
import { handlesOf } from "../../kernels/side/handles-of.js";
import { partAt } from "../../kernels/side/part-at.js";
import { nearestHandle, type PlacedHandle, placeHandles } from "../../kernels/side/place-handles.js";
import type { RunLabel } from "../../kernels/side/run-labels.js";
import { scalesOf } from "../../kernels/side/side-scales.js";
import { EditWantedEvent, GestureGivenUpEvent } from "../../store/edit-wanted-event.js";
import { PartChosenEvent } from "../../store/part-chosen-event.js";
import type { PlanChange } from "../../store/plan-change.js";
import { controls } from "../../styles/controls.js";
import { tokens } from "../../styles/tokens.js";
import { DrinkerChosenEvent } from "../drinker-chosen-event.js";
import { DrawingBeneath } from "./drawing-beneath.js";
import { KEYS_WORDS } from "./hand-keys.js";
import { handsStyles } from "./hands.styles.js";
import type { DrawnLine, HandsHost } from "./hands-host.js";
import { handsView } from "./hands-view.js";
import { Holding } from "./holding.js";
import { Keying } from "./keying.js";
import { labelRuns } from "./label-runs.js";
import { Looking } from "./looking.js";
import { Pointing } from "./pointing.js";
import { Surveying } from "./surveying.js";
import { toolsView } from "./tools-view.js";

/** A tap this near to a grip means what the handle belongs to [px]. */
const ON_GRIP = 12;
/**
 * What can be taken hold of on the line from the side: heights of pipe, ground, vessel, water and drinkers, by hand
 * or by keys; with the chosen part, the lengths and flows of the runs, and the band of heads. It lies over the
 * `<headfall-profile>` that stands right before it; the box that holds both is positioned.
 *
 * @element headfall-profile-hands
 * @fires edit-wanted       when something is to be moved, added or taken out
 * @fires gesture-given-up  when a drag was given up
 * @fires part-chosen       when a part of the plan, or nothing, was pressed
 * @fires drinker-chosen    when a drinker was pressed
 * @csspart over   the SVG that lies over the drawing
 * @csspart tools  the buttons under it
 */
export class HeadfallProfileHands extends LitElement implements HandsHost {
  static override properties = {
    plan: { attribute: false },
    selected: { attribute: false },
    shows: {},
  };
  static override styles = [tokens, controls, handsStyles];

  /** The plan as it is now; the drawing may be made from a slightly older one. */
  declare plan: Plan | undefined;
  /** The chosen part, outlined on the drawing. */
  declare selected: Selected | undefined;
  /** One moment, as the drawing shows it, or the band between both extremes. */
  declare shows: "moment" | "band";

  /** @internal For the states of the hand, as all of `HandsHost` is. */
  placed: readonly PlacedHandle[] = [];
  readonly #beneath = new DrawingBeneath(this, () => this.#drawnAnew());
  readonly #holding = new Holding(this);
  readonly #looking = new Looking(this);
  readonly #surveying = new Surveying(this, this.#looking);
  readonly #pointing = new Pointing(this, this.#holding, this.#looking);
  readonly #keying = new Keying(this, this.#holding, this.#looking, this.#surveying);
  #labels: readonly RunLabel[] = [];

  constructor() {
    super();
    this.plan = undefined;
    this.selected = undefined;
    this.shows = "moment";
  }

  /** @internal */
  get drawn(): DrawnLine | undefined {
    return this.#beneath.drawn;
  }

  /** @internal */
  get stretch(): AlongWindow {
    return this.#beneath.stretch;
  }

  /** @internal */
  get pathLength(): number {
    return this.drawn?.request.path.along.at(-1) ?? 0;
  }

  override disconnectedCallback(): void {
    // While there still is a drawing whose scale is held.
    this.#holding.giveUp();
    super.disconnectedCallback();
  }

  /** Once for all that comes in one turn, and after the drawing that it may bring. */
  protected override async scheduleUpdate(): Promise<void> {
    if (this.hasUpdated) await nextTask();
    super.scheduleUpdate();
  }

  override willUpdate(): void {
    const { drawn, plan, shows } = this;
    this.placed = drawn === undefined || plan === undefined ? [] : this.#placedOn(drawn, plan);
    if (drawn === undefined || plan === undefined) return;
    const kept = this.#holding.heldKey === undefined ? undefined : this.#labels;
    this.#labels = labelRuns(drawn, shows, this.placed, kept);
  }

  /** All handles; the one in the hand is where the hand has put it. */
  #placedOn({ layout, request }: DrawnLine, plan: Plan): readonly PlacedHandle[] {
    const { drag } = this.#holding;
    const handles = handlesOf({ ...request, plan, reach: layout.heights }).map((handle) =>
      handle.key === drag?.key ? { ...handle, height: drag.height } : handle,
    );
    return placeHandles(handles, layout, drag?.key);
  }

  override render() {
    const { drawn } = this;
    if (drawn === undefined || this.plan === undefined) return nothing;
    const keys = this.#keying;
    return html`
      <div class="over" part="over" @keydown=${keys.pressed} @keyup=${keys.left} @focusout=${keys.focusLeft}>
        ${this.#overView(drawn)}
        <p id="keys" class="spoken">${KEYS_WORDS[drawn.system]}</p>
      </div>
      ${this.#toolsView(drawn)}`;
  }

  #overView(drawn: DrawnLine) {
    const { placed, selected, shows } = this;
    const { width, height } = drawn.layout;
    const hand = this.#pointing;
    return html`<svg class=${drawn.request.window === undefined ? "" : "closer"} width=${width} height=${height}
      viewBox="0 0 ${width} ${height}" role="group" aria-label="What can be moved up and down" aria-describedby="keys"
      @touchstart=${hand.touchStart} @pointerdown=${hand.down} @pointermove=${hand.moved} @pointerup=${hand.up}
      @pointercancel=${hand.cancelled} @wheel=${hand.wheel}>
      ${handsView({ ...drawn, labels: this.#labels, placed, holding: this.#holding, selected, shows })}
    </svg>`;
  }

  #toolsView({ request }: DrawnLine) {
    return toolsView({
      isWhole: request.window === undefined,
      canAdd: this.#surveying.place !== undefined,
      isBand: this.shows === "band",
      closer: () => this.#looking.closer(),
      wider: () => this.#looking.wider(),
      showWhole: () => this.#looking.whole(),
      addHeight: () => this.#surveying.add(),
    });
  }

  override updated(): void {
    const next = this.#surveying.nextToFocus();
    if (next !== undefined) this.focusHandle(next.handle.key);
  }

  /** @internal */
  want(change: PlanChange, gesture?: string): void {
    this.dispatchEvent(new EditWantedEvent(change, gesture));
  }

  /** @internal */
  giveUp(gesture: string): void {
    this.dispatchEvent(new GestureGivenUpEvent(gesture));
  }

  /** @internal */
  holdScale(isHeld: boolean): void {
    this.#beneath.holdScale(isHeld);
  }

  /** @internal Shows a stretch of the path, or all of it. */
  look(window: AlongWindow): void {
    this.#beneath.look(window);
  }

  /** @internal */
  tapped(spot: Spot, isTwice: boolean): void {
    const { drawn } = this;
    if (drawn === undefined) return;
    const { layout, request } = drawn;
    const onGrip = nearestHandle(this.placed, spot, ON_GRIP)?.handle.part;
    const pressed = partAt(layout, request.checked.line, request.path, spot);
    if (isTwice && pressed?.part.kind === "run" && onGrip === undefined) {
      this.#surveying.addAt(scalesOf(layout).alongAt(spot.x));
      return;
    }
    if (onGrip === undefined && pressed?.drinker !== undefined)
      this.dispatchEvent(new DrinkerChosenEvent(pressed.drinker));
    this.choose(onGrip ?? pressed?.part);
  }

  /** @internal */
  choose(part: Selected | undefined): void {
    this.dispatchEvent(new PartChosenEvent(part));
  }

  /** @internal */
  focusHandle(key: string): void {
    const handles = this.renderRoot.querySelectorAll<SVGElement>("[data-key]");
    [...handles].find((one) => one.dataset["key"] === key)?.focus({ preventScroll: true });
  }

  #drawnAnew(): void {
    const { drawn } = this;
    if (drawn !== undefined) this.#holding.drawnAnew(drawn.request.checked);
    this.requestUpdate();
  }
}
