import type { Checked, MomentName, Plan } from "@headfall/hydraulics";
import { html, LitElement, nothing, type PropertyValues } from "lit";
import { guard } from "lit/directives/guard.js";
import { nextTask } from "../controllers/next-task.js";
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
import { type HandAsks, HandController } from "./hand-controller.js";
import { KeysAndWheel } from "./keys-and-wheel.js";
import { SceneKeeper } from "./scene-keeper.js";
import type { AboveTool, Surroundings, Wish } from "./states/hand.js";
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
  readonly #asks: HandAsks = {
    surroundings: () => this.#surroundings(),
    fulfil: (wish) => this.#fulfil(wish),
  };
  readonly #hand = new HandController(this, this.#asks);
  readonly #keys = new KeysAndWheel({
    ...this.#asks,
    isIdle: () => this.#hand.isIdle,
    focused: () => this.#focused,
    middle: () => this.#views.middle,
    zoom: (factor, at) => this.#zoom(factor, at),
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

  /** Draws once for all that comes in one turn, in a task of its own: the frame it comes in has enough to do. */
  protected override async scheduleUpdate(): Promise<void> {
    if (this.hasUpdated) await nextTask();
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
    if (scene === undefined) return nothing;
    const isEmpty = scene.runs.length === 0;
    return html`
      ${this.#drawingView(scene)}
      <p class="hint ${isEmpty ? "inviting" : ""}" id="hint" part="hint">${hintFor(this.tool, isEmpty, this.selected)}</p>
      <p class="spoken" id="keys">${KEYS_SPOKEN}</p>
      ${zoomButtons({ zoom: (factor) => this.#zoom(factor), fit: () => this.fit() })}
    `;
  }

  #drawingView(scene: Scene) {
    const { system, tool } = this;
    const { view, size } = this.#views;
    const { isIdle, ghost, down, move, up, cancel, menu } = this.#hand;
    const { key, wheel } = this.#keys;
    const kept = guard([scene, this.selected, this.outlined], () => this.#sceneView(scene));
    const drawing = { view: view!, size, system, tool, isBusy: !isIdle, ghost, scene: kept };
    return drawingView(drawing, { down, move, up, cancel, menu, wheel, key });
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
    const vesselReach = vesselReachOf(scene, view.scale);
    return { plan, tool, system, selected, view, layout, drinkers, vesselReach };
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

  #resize(): void {
    const { clientWidth: width, clientHeight: height } = this;
    if (width === 0 || height === 0) return;
    this.#views.resize(width, height, this.plan && layAbove(this.plan));
    this.requestUpdate();
  }
}
