import type { Plan } from "@headfall/hydraulics";
import { html, LitElement, nothing } from "lit";
import type { Spot } from "../../kernels/profile-request.js";
import type { Selected } from "../../kernels/selected.js";
import type { AlongWindow } from "../../kernels/side/along-window.js";
import { handlesOf } from "../../kernels/side/handles-of.js";
import { headBars } from "../../kernels/side/head-bars.js";
import { partAt } from "../../kernels/side/part-at.js";
import { nearestHandle, type PlacedHandle, placeHandles } from "../../kernels/side/place-handles.js";
import { type RunLabel, runLabels } from "../../kernels/side/run-labels.js";
import { scalesOf } from "../../kernels/side/side-scales.js";
import { EditWantedEvent, GestureGivenUpEvent } from "../../store/edit-wanted-event.js";
import { PartChosenEvent } from "../../store/part-chosen-event.js";
import type { PlanChange } from "../../store/plan-change.js";
import { controls } from "../../styles/controls.js";
import { tokens } from "../../styles/tokens.js";
import { DrinkerChosenEvent } from "../drinker-chosen-event.js";
import type { HeadfallProfile } from "../profile-element.js";
import { KEYS_WORDS, moveByKey } from "./hand-keys.js";
import { handsStyles } from "./hands.styles.js";
import type { DrawnLine, HandsHost } from "./hands-host.js";
import { handsView } from "./hands-view.js";
import { Holding } from "./holding.js";
import { Looking } from "./looking.js";
import { PointerStates } from "./pointer-states.js";
import { Surveying } from "./surveying.js";
import { toolsView } from "./tools-view.js";

/** A tap this near to a grip means what the handle belongs to [px]. */
const ON_GRIP = 12;
/** Drawings narrower than this are small [px]. */
const SMALL = 480;

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
  readonly #holding = new Holding(this);
  readonly #pointers = new PointerStates(this, this.#holding);
  readonly #looking = new Looking(this);
  readonly #surveying = new Surveying(this);
  readonly #onDrawn = () => this.#drawnAnew();
  #profile: HeadfallProfile | null = null;
  #labels: readonly RunLabel[] = [];
  /**
   * Where the drawing lay in the window at the last press. A longer sentence above moves it down in the midst of a
   * drag: what is held would follow, the sentence become shorter, and so to and fro.
   */
  #corner: Spot = { x: 0, y: 0 };
  #pathKey = "";

  constructor() {
    super();
    this.plan = undefined;
    this.selected = undefined;
    this.shows = "moment";
  }

  /** @internal */
  get drawn(): DrawnLine | undefined {
    const { layout, request, system } = this.#profile ?? {};
    return layout && request && system ? { layout, request, system } : undefined;
  }

  /** @internal */
  get pathLength(): number {
    return this.drawn?.request.path.along.at(-1) ?? 0;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    // It may still be waiting for its class; then it draws later, and says so.
    this.#profile = this.previousElementSibling as HeadfallProfile | null;
    this.#profile?.addEventListener("profile-drawn", this.#onDrawn);
    this.requestUpdate();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#holding.giveUp();
    this.#profile?.removeEventListener("profile-drawn", this.#onDrawn);
    this.#profile = null;
  }

  override willUpdate(): void {
    const { drawn, plan } = this;
    if (drawn === undefined || plan === undefined) {
      this.placed = [];
      return;
    }
    const { layout, request } = drawn;
    const { drag, heldKey } = this.#holding;
    const handles = handlesOf({ ...request, plan, reach: layout.heights }).map((handle) =>
      handle.key === drag?.key ? { ...handle, height: drag.height } : handle,
    );
    this.placed = placeHandles(handles, layout, drag?.key);
    const kept = heldKey === undefined ? undefined : new Map(this.#labels.map(({ run, y }) => [run, y]));
    this.#labels = this.#labelsOf(drawn, kept);
  }

  override render() {
    const { drawn, placed, selected, shows } = this;
    if (drawn === undefined || this.plan === undefined) return nothing;
    const { width, height } = drawn.layout;
    const { window } = drawn.request;
    return html`
      <div class="over" part="over" @keydown=${this.#keyPressed} @keyup=${this.#keyLeft} @focusout=${this.#focusLeft}>
        <svg class=${window === undefined ? "" : "closer"} width=${width} height=${height}
          viewBox="0 0 ${width} ${height}" role="group" aria-label="What can be moved up and down" aria-describedby="keys"
          @touchstart=${this.#touchStart}
          @pointerdown=${this.#pointerDown} @pointermove=${this.#pointerMoved} @pointerup=${this.#pointerUp}
          @pointercancel=${this.#pointerCancelled} @wheel=${this.#wheelTurned}>
          ${handsView({ ...drawn, labels: this.#labels, placed, holding: this.#holding, selected, shows })}
        </svg>
        <p id="keys" class="spoken">${KEYS_WORDS[drawn.system]}</p>
      </div>
      ${toolsView({
        isWhole: window === undefined,
        canAdd: this.#surveying.placeFor(selected) !== undefined,
        isBand: shows === "band",
        closer: () => this.#looking.closer(),
        wider: () => this.#looking.wider(),
        showWhole: () => this.#looking.whole(),
        addHeight: () => this.#addHeight(),
      })}`;
  }

  override updated(): void {
    this.#followDrawing();
    const next = this.#surveying.nextToFocus();
    if (next !== undefined) this.#focus(next.handle.key);
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
    if (this.#profile !== null) this.#profile.heldHeights = isHeld ? this.drawn?.layout.heights : undefined;
  }

  /** @internal Shows a stretch of the path, or all of it. */
  look(window: AlongWindow): void {
    if (this.#profile !== null) this.#profile.window = window;
  }

  /** @internal */
  tapped(spot: Spot, isTwice: boolean): void {
    const { drawn } = this;
    if (drawn === undefined) return;
    const { layout, request } = drawn;
    const onGrip = nearestHandle(this.placed, spot, ON_GRIP)?.handle.part;
    const pressed = partAt(layout, request.checked.line, request.path, spot);
    if (isTwice && pressed?.part.kind === "run" && onGrip === undefined) {
      this.#addAt(scalesOf(layout).alongAt(spot.x));
      return;
    }
    if (onGrip === undefined && pressed?.drinker !== undefined)
      this.dispatchEvent(new DrinkerChosenEvent(pressed.drinker));
    this.dispatchEvent(new PartChosenEvent(onGrip ?? pressed?.part));
  }

  /** A small drawing has no room for lengths beside the band. */
  #labelsOf({ layout, request, system }: DrawnLine, kept?: ReadonlyMap<number, number>): readonly RunLabel[] {
    const isBand = this.shows === "band";
    if (isBand && layout.width < SMALL) return [];
    const bars = isBand
      ? headBars(request.checked, layout).map(({ x, lowest, highest }) => [
          { x, y: lowest },
          { x, y: highest },
        ])
      : undefined;
    const grips = this.placed.map(({ grip }) => grip);
    return runLabels({ layout, request, system, grips, bars, kept });
  }

  #drawnAnew(): void {
    const { drawn } = this;
    if (drawn !== undefined) this.#holding.drawnAnew(drawn.request.checked);
    this.requestUpdate();
  }

  /** What the drawing is asked for after it has become another one; not while it is at it. */
  #followDrawing(): void {
    const { drawn } = this;
    if (drawn === undefined) return;
    const { request, layout } = drawn;
    // A scale that has gone on by a step stays there while the hand is down.
    const held = this.#profile?.heldHeights;
    if (held?.some((height, i) => height !== layout.heights[i])) this.holdScale(true);
    const { path, checked } = request;
    const key = `${path.source} ${checked.line.points.id[path.points.at(-1) ?? 0]}`;
    if (key !== this.#pathKey && request.window !== undefined) this.look(undefined);
    this.#pathKey = key;
  }

  /** Looks where the drawing lies in the window. */
  #findCorner(event: Event): void {
    const { left, top } = (event.currentTarget as Element).getBoundingClientRect();
    this.#corner = { x: left, y: top };
  }

  #spotOf({ clientX, clientY }: MouseEvent): Spot {
    return { x: clientX - this.#corner.x, y: clientY - this.#corner.y };
  }

  /** Only a finger on a handle keeps the page from scrolling; parts of an SVG cannot say so by style. */
  readonly #touchStart = {
    passive: false,
    handleEvent: (event: TouchEvent) => {
      const [touch] = event.touches;
      const box = this.renderRoot.querySelector("svg")?.getBoundingClientRect();
      if (touch === undefined || box === undefined) return;
      const spot = { x: touch.clientX - box.left, y: touch.clientY - box.top };
      if (event.touches.length === 1 && nearestHandle(this.placed, spot) !== undefined)
        event.preventDefault();
    },
  };

  #pointerDown(event: PointerEvent): void {
    if (event.button !== 0) return;
    this.#findCorner(event);
    const key = this.#pointers.down(event.pointerId, this.#spotOf(event), event.pointerType === "touch");
    if (key !== undefined) {
      // Else the press would move the focus away again, and begin to choose words.
      event.preventDefault();
      this.#focus(key);
    }
    if (key !== undefined || event.pointerType === "mouse")
      (event.currentTarget as Element).setPointerCapture(event.pointerId);
  }

  #pointerMoved(event: PointerEvent): void {
    this.#pointers.move(event.pointerId, this.#spotOf(event));
  }

  #pointerUp(event: PointerEvent): void {
    this.#pointers.up(event.pointerId, event.timeStamp);
  }

  #pointerCancelled(event: PointerEvent): void {
    this.#pointers.cancelled(event.pointerId);
  }

  #wheelTurned(event: WheelEvent): void {
    this.#findCorner(event);
    if (this.#looking.wheel(event, this.#spotOf(event).x)) event.preventDefault();
  }

  #keyPressed(event: KeyboardEvent): void {
    const { drawn } = this;
    const placed = this.#placedIn(event);
    if (drawn === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    const isOurs =
      (placed !== undefined && moveByKey(this.#holding, placed, event, drawn.system)) ||
      this.#actByKey(event, placed);
    if (isOurs) {
      event.preventDefault();
      event.stopPropagation();
    }
  }

  #actByKey({ key, shiftKey }: KeyboardEvent, placed: PlacedHandle | undefined): boolean {
    switch (key) {
      case "Escape":
        if (this.#holding.heldKey === undefined) return false;
        this.#holding.giveUp();
        return true;
      case "+":
      case "=":
        this.#looking.closer(placed?.handle.along);
        return true;
      case "-":
        this.#looking.wider(placed?.handle.along);
        return true;
      case "0":
        this.#looking.whole();
        return true;
      case "ArrowLeft":
      case "ArrowRight":
        return this.#goAlong(key === "ArrowLeft" ? -1 : 1, placed, shiftKey);
      case "Insert":
        this.#addHeight();
        return true;
      case "Delete":
        return this.#surveying.takeOut(placed);
      case "Enter":
        if (placed !== undefined) this.dispatchEvent(new PartChosenEvent(placed.handle.part));
        return placed !== undefined;
      default:
        return false;
    }
  }

  #keyLeft(): void {
    this.#holding.rest();
  }

  #focusLeft(): void {
    if (!this.#holding.isByPointer) this.#holding.letGo();
  }

  /** To the next handle, or with Shift along a line that is drawn closer. */
  #goAlong(direction: number, placed: PlacedHandle | undefined, isPan: boolean): boolean {
    if (isPan && this.#looking.along(direction)) return true;
    const at = placed === undefined ? -1 : this.placed.indexOf(placed);
    const next = this.placed[at + direction];
    if (next !== undefined) this.#focus(next.handle.key);
    return next !== undefined;
  }

  #addHeight(): void {
    const along = this.#surveying.placeFor(this.selected);
    if (along !== undefined) this.#addAt(along);
  }

  #addAt(along: number): void {
    this.#looking.show(along);
    this.#surveying.addAt(along);
  }

  #placedIn(event: Event): PlacedHandle | undefined {
    const key = (event.target as Element).closest("[data-key]")?.getAttribute("data-key");
    return this.placed.find(({ handle }) => handle.key === key);
  }

  #focus(key: string): void {
    const handles = this.renderRoot.querySelectorAll<SVGElement>("[data-key]");
    [...handles].find((one) => one.dataset["key"] === key)?.focus({ preventScroll: true });
  }
}
