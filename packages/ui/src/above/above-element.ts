import type { Checked, MomentName, Plan } from "@headfall/hydraulics";
import { html, LitElement, nothing, type PropertyValues } from "lit";
import { guard } from "lit/directives/guard.js";
import { layAbove } from "../kernels/above/lay-above.js";
import { type Scene, vesselReachOf } from "../kernels/above/scene.js";
import { spotsOfPart } from "../kernels/above/spots-of-part.js";
import { zoomAbout } from "../kernels/above/viewport.js";
import { keyOfPart, type Selected } from "../kernels/selected.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { EditWantedEvent, GestureGivenUpEvent } from "../store/edit-wanted-event.js";
import { PartChosenEvent } from "../store/part-chosen-event.js";
import { controls } from "../styles/controls.js";
import { tokens } from "../styles/tokens.js";
import { aboveStyles } from "./above.styles.js";
import { HandController, nextGesture } from "./hand-controller.js";
import { SceneKeeper } from "./scene-keeper.js";
import type { AboveTool, Surroundings, Wish } from "./states/hand.js";
import { wishesOfKey } from "./states/keys.js";
import { wheelFactor } from "./states/wheel.js";
import { drawingView } from "./view/drawing-view.js";
import { sceneView } from "./view/scene-view.js";
import { hintFor, KEYS_SPOKEN, zoomButtons } from "./view/tools-view.js";
import { ViewKeeper } from "./view-keeper.js";

/**
 * The plan from above, drawn to scale as far as the plan's lengths allow: what can be pressed, dragged and drawn.
 * It never changes the plan; it says what its user wants changed.
 *
 * @element headfall-above
 * @fires edit-wanted       when the user wants the plan changed; all edits of one drag carry the same gesture
 * @fires gesture-given-up  when a drag was taken back by Escape
 * @fires part-chosen       when the user chose a part, or none
 * @csspart drawing  the SVG
 * @csspart hint     the line that says what a press does
 * @csspart buttons  closer, further away, the whole plan
 */
export class HeadfallAbove extends LitElement {
  static override properties = {
    plan: { attribute: false },
    checked: { attribute: false },
    selected: { attribute: false },
    system: {},
    moment: {},
    tool: { reflect: true },
    outlined: { state: true },
  };
  static override styles = [tokens, controls, aboveStyles];

  /** The plan drawn. */
  declare plan: Plan | undefined;
  /** What a check found out; it may be of an older plan, and is used as far as it still fits. */
  declare checked: Checked | undefined;
  /** The part chosen. */
  declare selected: Selected | undefined;
  /** Units shown, and those that lengths are snapped to. */
  declare system: UnitSystem;
  /** The moment whose flows are shown. */
  declare moment: MomentName;
  /** What a press does: "hand" chooses and moves, "run" draws pipe, "drinkers" hangs drinkers on a run. */
  declare tool: AboveTool;
  /** The part that the keyboard is at, while that is to be seen. */
  declare private outlined: Selected | undefined;
  #focused: Selected | undefined;

  readonly #views = new ViewKeeper();
  readonly #scenes = new SceneKeeper();
  readonly #hand = new HandController(this, {
    surroundings: () => this.#surroundings(),
    fulfil: (wish) => this.#fulfil(wish),
  });
  #sizes: ResizeObserver | undefined;

  constructor() {
    super();
    this.plan = undefined;
    this.checked = undefined;
    this.selected = undefined;
    this.system = "metric";
    this.moment = "fullBusiest";
    this.tool = "hand";
    this.outlined = undefined;
  }

  /** Shows the whole plan. */
  fit(): void {
    if (this.plan === undefined) return;
    this.#views.fit(layAbove(this.plan));
    this.requestUpdate();
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#sizes = new ResizeObserver(() => this.#resize());
    this.#sizes.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#sizes?.disconnect();
  }

  /** Draws once a frame at most, however many plans and checks come in between. */
  protected override async scheduleUpdate(): Promise<void> {
    if (this.hasUpdated) await new Promise((resolve) => requestAnimationFrame(resolve));
    super.scheduleUpdate();
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (!this.#hand.isIdle || this.plan === undefined) return;
    if (changed.has("plan")) this.#views.follow(this.plan, changed.get("plan"), layAbove(this.plan));
    if (changed.has("selected")) this.#reveal();
    this.#views.rest();
  }

  override render() {
    const scene = this.#scene();
    const { view, size } = this.#views;
    if (scene === undefined || view === undefined) return nothing;
    const isEmpty = scene.runs.length === 0;
    const kept = guard([scene, this.selected, this.outlined], () => this.#sceneView(scene));
    const drawing = {
      view,
      size,
      system: this.system,
      tool: this.tool,
      isBusy: !this.#hand.isIdle,
      ghost: this.#hand.ghost,
      scene: kept,
    };
    return html`
      ${drawingView(drawing, {
        down: this.#hand.down,
        move: this.#hand.move,
        up: this.#hand.up,
        cancel: this.#hand.cancel,
        menu: this.#hand.menu,
        wheel: this.#wheel,
        key: this.#key,
      })}
      <p class="hint ${isEmpty ? "inviting" : ""}" id="hint" part="hint">${hintFor(this.tool, isEmpty, this.selected)}</p>
      <p class="spoken" id="keys">${KEYS_SPOKEN}</p>
      ${zoomButtons({ zoom: (factor) => this.#zoom(factor), fit: () => this.fit() })}
    `;
  }

  /** What was chosen in another view comes into sight. */
  #reveal(): void {
    const scene = this.selected && this.#scene();
    if (scene) this.#views.reveal(spotsOfPart(this.selected!, scene.layout, scene.drinkers));
  }

  #sceneView(scene: Scene) {
    const words = {
      plan: this.plan!,
      selected: this.selected,
      system: this.system,
      onChoose: (part: Selected) => this.#choose(part),
      onFocus: (part: Selected | undefined, isSeen: boolean) => {
        this.#focused = part;
        this.outlined = isSeen ? part : undefined;
      },
    };
    return sceneView(scene, words, this.outlined);
  }

  #scene(): Scene | undefined {
    const { plan, checked, selected, moment, system } = this;
    const { view, seen } = this.#views;
    if (plan === undefined || view === undefined) return undefined;
    return this.#scenes.sceneOf({ plan, checked, selected, moment, system, scale: view.scale, seen });
  }

  #surroundings(): Surroundings | undefined {
    const scene = this.#scene();
    const { view } = this.#views;
    const { plan, tool, system, selected } = this;
    if (scene === undefined || plan === undefined || view === undefined) return undefined;
    const { layout, drinkers } = scene;
    return {
      plan,
      tool,
      system,
      selected,
      view,
      layout,
      drinkers,
      vesselReach: vesselReachOf(scene, view.scale),
    };
  }

  #fulfil(wish: Wish): void {
    switch (wish.kind) {
      case "edit":
        this.dispatchEvent(new EditWantedEvent(wish.change, wish.gesture));
        break;
      case "giveUp":
        this.dispatchEvent(new GestureGivenUpEvent(wish.gesture));
        break;
      case "choose":
        this.#choose(wish.part);
        break;
      case "view":
        this.#views.look(wish.view);
        this.requestUpdate();
        break;
      case "fit":
        this.fit();
    }
  }

  #choose(part: Selected | undefined): void {
    if (part !== undefined) this.#focusPart(part);
    this.dispatchEvent(new PartChosenEvent(part));
  }

  /** The keyboard goes on from where the hand was. */
  #focusPart(part: Selected): void {
    const key = keyOfPart(
      part.kind === "drinkers" ? { kind: "drinkers", run: part.run, group: part.group } : part,
    );
    for (const each of this.renderRoot.querySelectorAll<SVGGElement>(".part"))
      if (each.dataset["part"] === key) each.focus({ preventScroll: true });
  }

  #zoom(factor: number, at = this.#views.middle): void {
    const { view } = this.#views;
    if (view !== undefined) this.#fulfil({ kind: "view", view: zoomAbout(view, at, factor) });
  }

  /** With a modifier, or once the drawing has the focus; else the wheel is the page's. */
  readonly #wheel = (event: WheelEvent): void => {
    const hasFocus = this.renderRoot.querySelector(".drawing:focus-within") !== null;
    if (!hasFocus && !event.ctrlKey && !event.metaKey) return;
    event.preventDefault();
    const { left, top } = (event.currentTarget as Element).getBoundingClientRect();
    this.#zoom(wheelFactor(event), { x: event.clientX - left, y: event.clientY - top });
  };

  readonly #key = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const part = this.#focused;
    const isChoice = (event.key === "Enter" || event.key === " ") && part !== undefined;
    const around = this.#surroundings();
    if (around === undefined || !this.#hand.isIdle) return;
    const press = {
      key: event.key,
      isShift: event.shiftKey,
      middle: this.#views.middle,
      gesture: nextGesture(),
    };
    const wishes: readonly Wish[] = isChoice ? [{ kind: "choose", part }] : wishesOfKey(press, around);
    if (wishes.length === 0) return;
    event.preventDefault();
    for (const wish of wishes) this.#fulfil(wish);
  };

  #resize(): void {
    const { clientWidth: width, clientHeight: height } = this;
    if (width === 0 || height === 0) return;
    this.#views.resize(width, height, this.plan && layAbove(this.plan));
    this.requestUpdate();
  }
}
