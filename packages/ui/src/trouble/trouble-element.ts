import {
  type Checked,
  type Plan,
  type Sign,
  TROUBLE_CAUTIONS,
  writeBothCauses,
  writeCause,
  writeChance,
  writeProblem,
} from "@headfall/hydraulics";
import { html, nothing, type PropertyValues } from "lit";
import { readJug } from "../kernels/trouble/read-jug.js";
import { readStand } from "../kernels/trouble/read-stand.js";
import { checkedAsTold, wayOfRun } from "../kernels/trouble/told-drawing.js";
import {
  seenAt,
  seenByLook,
  signsOn,
  withAnswerAtAll,
  withoutSign,
  withSign,
} from "../kernels/trouble/told-signs.js";
import { isLineless, noLineView } from "../room/no-line.js";
import { RoomElement } from "../room/room-element.js";
import { controls } from "../styles/controls.js";
import { roomStyles } from "../styles/room.styles.js";
import { tokens } from "../styles/tokens.js";
import { howStyles } from "../verdicts/how.styles.js";
import { causesView, triedView } from "./causes-view.js";
import { lookView } from "./look-view.js";
import {
  type Drawn,
  type JugTyped,
  NOT_DRAWN,
  type ToldDrawing,
  type TroubleActs,
  type TroubleRoom,
} from "./room.js";
import { setTabStop } from "./rove-answers.js";
import { seenView, toldView } from "./seen-view.js";
import { troubleStyles } from "./trouble.styles.js";
import { TroubleController } from "./trouble-controller.js";

const DAY = 86_400;
/** The first run that drinkers hang on. */
const firstHung = ({ drinkers, runs }: Checked["line"]): string | undefined =>
  drinkers.count === 0 ? undefined : runs[drinkers.run[0]!]!.id;
const EMPTY_JUG: JugTyped = { drinker: "", volume: "250 mL", time: "1 min", isTried: false };

/**
 * It is not working: the keeper says what is seen, and likely causes come back ranked, with the one look that tells the
 * first two apart and what to do. What is told is no part of the plan, and kept while the page is open.
 *
 * @element headfall-trouble
 */
export class HeadfallTrouble extends RoomElement {
  static override properties = {
    signs: { state: true },
    lastSeen: { state: true },
    stands: { state: true },
    unfolded: { state: true },
    jug: { state: true },
    drawn: { state: true },
  };
  static override styles = [tokens, controls, howStyles, roomStyles, troubleStyles];

  declare private signs: readonly Sign[];
  declare private lastSeen: number;
  declare private stands: Readonly<Record<string, string>>;
  declare private unfolded: ReadonlySet<string>;
  declare private jug: JugTyped;
  declare private drawn: Drawn;
  #drawing: ToldDrawing | undefined;

  readonly #trouble = new TroubleController(this);

  constructor() {
    super();
    this.signs = [];
    this.lastSeen = DAY;
    this.stands = {};
    this.unfolded = new Set();
    this.jug = EMPTY_JUG;
    this.drawn = NOT_DRAWN;
  }

  override willUpdate(changed: PropertyValues<this>): void {
    const asked = changed as ReadonlyMap<PropertyKey, unknown>;
    if (asked.has("checked") && this.checked !== undefined) {
      const kept = signsOn(this.checked.line, this.signs);
      if (kept !== this.signs) this.signs = kept;
    }
    if (asked.has("checked") || asked.has("signs") || asked.has("drawn")) this.#draw(asked);
    const { plan, day, signs, lastSeen } = this;
    if (plan === undefined || isLineless(plan)) return;
    if (["plan", "day", "signs", "lastSeen", "stands"].some((key) => asked.has(key)))
      this.#trouble.ask({ plan, day, signs, lastSeen, levels: this.#levels(plan) });
  }

  /** The drawing is made anew only when what it shows changes, or each of its drawings would lead to the next. */
  #draw(changed: ReadonlyMap<PropertyKey, unknown>): void {
    const { checked, drawn, signs } = this;
    if (checked === undefined || !drawn.isUnfolded) return;
    const { line } = checked;
    const run = line.runs.some(({ id }) => id === drawn.run) ? drawn.run! : (firstHung(line) ?? "");
    const before = this.#drawing;
    if (before?.run === run && !changed.has("checked") && !changed.has("signs")) return;
    const path = before?.run === run && !changed.has("checked") ? before.path : wayOfRun(line, run);
    this.#drawing = path === undefined ? undefined : { run, path, checked: checkedAsTold(checked, signs) };
  }

  /** What cannot be read is told beside its field, and left out. */
  #levels(plan: Plan): readonly (number | undefined)[] {
    const sources = this.checked?.line.sources ?? [];
    if (sources.length !== plan.sources.length) return [];
    return sources.map(({ id, levels }) => {
      const reading = readStand(this.stands[id] ?? "", levels.full, this.system);
      return reading.ok ? reading.level : undefined;
    });
  }

  override updated(): void {
    for (const list of this.renderRoot.querySelectorAll(".list")) setTabStop(list);
  }

  override render() {
    const { plan, checked } = this;
    if (plan === undefined) return nothing;
    if (isLineless(plan))
      return html`<h2>It is not working</h2>
        ${noLineView("Here the causes of trouble on a line are ranked; what is amiss with founts and pans stands in the yard.")}
        <section class="cautions" aria-label="Cautions">${TROUBLE_CAUTIONS.map((line) => html`<p>${line}</p>`)}</section>`;
    const { problems, isOld } = this.#trouble;
    return html`
      <h2>It is not working</h2>
      <p>Say what you see, and likely causes come back ranked. What is told is kept while this page is open.</p>
      ${problems.length === 0 ? nothing : html`<p class="problem" role="alert">${problems.map(writeProblem).join(" ")}</p>`}
      ${
        checked === undefined
          ? html`<p role="status">Working the line out ...</p>`
          : html`<div class="head"><div class="likeliest" role="status">${this.#likeliest(this.#room(plan, checked))}</div>${this.#jump()}</div>
            <div class="rest">${seenView(this.#room(plan, checked), this.drawn, this.#drawing)}
              <div class="told ${isOld ? "older" : ""}">${this.#told(this.#room(plan, checked))}</div></div>`
      }
      ${this.howPanel(this.#trouble.told)}
    `;
  }

  #told(room: TroubleRoom) {
    const { trouble } = room;
    return html`${toldView(room)} ${this.#work()}
      ${
        trouble === undefined
          ? room.signs.length === 0
            ? html`<p>Nothing is told yet. One dry drinker, or a level that falls overnight, is enough to begin with.</p>`
            : nothing
          : html`${causesView(room, trouble)} ${lookView(room, trouble)} ${triedView(room, trouble)}`
      }
      <section class="cautions" aria-label="Cautions">${TROUBLE_CAUTIONS.map((line) => html`<p>${line}</p>`)}
        <p>Nobody works under a full vessel on a stand that has not been proven.</p></section>`;
  }

  /** On a phone the causes stand far below what is pressed. */
  #jump() {
    if (this.#trouble.trouble === undefined) return nothing;
    return html`<button type="button" class="jump" @click=${this.#goToLook}>To the one look</button>`;
  }

  readonly #goToLook = (): void => {
    const look = this.renderRoot.querySelector<HTMLElement>("#look");
    look?.scrollIntoView({ block: "center" });
    look?.focus({ preventScroll: true });
  };

  /** At the head of the room, so that it is seen and heard where the signs are told. */
  #likeliest({ trouble, system }: TroubleRoom) {
    const first = trouble?.likely[0];
    if (first === undefined || this.#trouble.isOld) return nothing;
    const two = trouble?.twoAtOnce;
    if (two !== undefined && two.share > two.aloneShare)
      return html`<strong>Likeliest, ${writeChance(two.share)}, two things at once:</strong> ${writeBothCauses(two, system)}.`;
    return html`<strong>Likeliest, ${writeChance(first.share)}:</strong> ${writeCause(first, system)}.`;
  }

  /** How far the ranking has come, where it takes a while. */
  #work() {
    const { progress, isOld, isStopped } = this.#trouble;
    if (isStopped)
      return html`<p class="work">The causes were not ranked. <button type="button" @click=${() => this.#trouble.goOn()}>Rank the causes</button></p>`;
    if (!isOld || progress === undefined) return nothing;
    return html`<div class="work" role="group" aria-label="Ranking the causes">
      <span>Solving each cause ...</span>
      <progress max="1" .value=${progress} aria-label="Causes solved"></progress>
      <button type="button" @click=${() => this.#trouble.stop()}>Cancel</button>
    </div>`;
  }

  #room(plan: Plan, { line }: Checked): TroubleRoom {
    const { signs, system, lastSeen, jug, stands, unfolded } = this;
    const drinker = line.drinkers.id.includes(jug.drinker) ? jug.drinker : (line.drinkers.id[0] ?? "");
    const { trouble } = this.#trouble;
    const told = { signs, seen: seenByLook(signs), stands, lastSeen, jug: { ...jug, drinker } };
    return { plan, line, system, trouble, unfolded, ...told, acts: this.#acts };
  }

  #tellJug(): void {
    const reading = readJug(this.jug);
    const id = this.jug.drinker || this.checked?.line.drinkers.id[0];
    if (!reading.ok || id === undefined) {
      this.jug = { ...this.jug, isTried: true };
      return;
    }
    this.signs = withSign(this.signs, { look: "jug", at: "drinker", id, flow: reading.flow });
    this.jug = { ...this.jug, isTried: false };
  }

  readonly #acts: TroubleActs = {
    tell: (look, sees) => {
      this.signs =
        seenAt(this.signs, look) === sees
          ? withoutSign(this.signs, look)
          : withSign(this.signs, { ...look, sees });
    },
    tellAll: (looks, sees) => {
      this.signs = withAnswerAtAll(this.signs, looks, sees);
    },
    answer: (look, sees, afterFilling) => {
      this.signs = withSign(this.signs, { ...look, sees, ...(afterFilling ? { afterFilling } : {}) });
    },
    takeBack: (sign) => {
      this.signs = withoutSign(this.signs, sign);
    },
    typeJug: (typed) => {
      this.jug = { ...this.jug, ...typed };
    },
    tellJug: () => this.#tellJug(),
    unfold: (run, isUnfolded) => {
      if (this.unfolded.has(run) === isUnfolded) return;
      const others = [...this.unfolded].filter((one) => one !== run);
      this.unfolded = new Set(isUnfolded ? [...others, run] : others);
    },
    typeStand: (source, typed) => {
      this.stands = { ...this.stands, [source]: typed };
    },
    sayLastSeen: (seconds) => {
      this.lastSeen = seconds;
    },
    draw: (drawn) => {
      const isSame = (Object.keys(drawn) as (keyof Drawn)[]).every((key) => drawn[key] === this.drawn[key]);
      if (!isSame) this.drawn = { ...this.drawn, ...drawn };
    },
    clear: () => {
      this.signs = [];
      this.stands = {};
      this.jug = EMPTY_JUG;
    },
  };
}
