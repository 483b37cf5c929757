import { type Plan, VERDICTS, type VerdictName, writeProblem } from "@headfall/hydraulics";
import { html, nothing, type PropertyValues } from "lit";
import { WidthController } from "../controllers/width-controller.js";
import { fieldStyles } from "../fields/fields.styles.js";
import { TypingController } from "../fields/typing-controller.js";
import { isLineless, noLineView } from "../room/no-line.js";
import { RoomElement } from "../room/room-element.js";
import { EditWantedEvent } from "../store/edit-wanted-event.js";
import { diffPlans } from "../store/plan-diff.js";
import { controls } from "../styles/controls.js";
import { roomStyles } from "../styles/room.styles.js";
import { tokens } from "../styles/tokens.js";
import { tableStyles } from "../tables/table.styles.js";
import { answerView } from "./answer-view.js";
import { BesideController } from "./beside-controller.js";
import { besideView } from "./beside-view.js";
import { countsView } from "./counts-view.js";
import { cureStyles } from "./cure.styles.js";
import { howView } from "./how-view.js";
import { CHANGED, lookingView } from "./looking-view.js";
import type { BesideRoom, CureActs, CuredRoom, CureRoom, KeptPlan, TradedRoom, Wanted } from "./room.js";
import { SearchController } from "./search-controller.js";
import { tradeView } from "./trade-view.js";
import { wantedView } from "./wanted-view.js";

const AS_USUAL: Wanted = { by: undefined, standMost: undefined, margin: 0, weeks: undefined, never: [] };
const FIRST: TradedRoom["at"] = { margin: 0, height: 0 };

/**
 * The smallest changes that make a plan work: looked for when asked, told with their cost and what they do to every
 * drinker, and done with one press; what more would cost; and the plan beside others.
 *
 * @element headfall-cure
 * @fires edit-wanted  when the user wants the plan changed
 */
export class HeadfallCure extends RoomElement {
  static override properties = {
    keptPlans: { attribute: false },
    wanted: { state: true },
    at: { state: true },
    unfolded: { state: true },
  };
  static override styles = [tokens, controls, fieldStyles, tableStyles, roomStyles, cureStyles];

  /** Gives the plans kept elsewhere, to be set beside this one; where it is left out, only files can be. */
  declare keptPlans: (() => Promise<readonly KeptPlan[]>) | undefined;
  declare private wanted: Wanted;
  /** The point of each trade-off that is looked at. */
  declare private at: TradedRoom["at"];
  declare private unfolded: CuredRoom["unfolded"];

  readonly #typing = new TypingController(this);
  readonly #cures = new SearchController(this, "cure");
  readonly #fronts = new SearchController(this, "front");
  readonly #beside = new BesideController(this);
  readonly #width = new WidthController(this, "(min-width: 700px)");
  /** What was taken last, until it is known what came of it; then what is said of that. */
  #taking: string | undefined;
  #said = "";

  constructor() {
    super();
    this.keptPlans = undefined;
    this.wanted = AS_USUAL;
    this.at = FIRST;
    this.unfolded = new Set();
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has("plan")) return;
    this.#compare();
    if (changed.get("plan")?.shelf?.length !== this.plan?.shelf?.length) this.#typing.forgetUnder("shelf");
    this.#typing.planChanged();
    this.#said = this.#taking === undefined ? "" : `Done: ${this.#taking}. Undo takes it back.`;
    this.#taking = undefined;
  }

  override render() {
    const { plan } = this;
    if (plan === undefined) return nothing;
    if (isLineless(plan))
      return html`<h2>The smallest cure</h2>
        ${noLineView("Here a line is mended; what to put right at founts and pans stands in the yard.")} ${CAUTIONS}`;
    const room = this.#room(plan);
    const { problems, answer, of } = this.#cures;
    const told = [...problems, ...this.#fronts.problems];
    const stray = this.#typing.strayRefusal;
    const cured = answer && of && { ...room, answer, of, isTaken: this.#isTaken, unfolded: this.unfolded };
    return html`
      <h2>The smallest cure</h2>
      ${this.checked === undefined || answer !== undefined ? nothing : html`<p>Today: ${countsView(this.checked.counts)}.${isAllGood(this.checked.counts) ? " Nothing needs a cure now; in weeks to come, or with more head to spare, something may." : ""}</p>`}
      ${this.#askView(room)}
      <div role="status">${this.#said === "" ? nothing : html`<p>${this.#said}</p>`}</div>
      ${stray === "" ? nothing : html`<p class="problem" role="alert">${stray}</p>`}
      ${told.length === 0 ? nothing : html`<p class="problem" role="alert">${told.map(writeProblem).join(" ")}</p>`}
      <div class="rest">
        ${wantedView(room)}
        <div class="told">${cured === undefined ? BEFORE : this.#told(cured)}
          ${tradeView(room, this.#fronts.trying, this.#traded(room))} ${besideView(this.#besideRoom(plan))}
          ${howView()} ${CAUTIONS}</div>
      </div>
    `;
  }

  #askView({ acts }: CureRoom) {
    const { trying, answer } = this.#cures;
    if (trying !== undefined) return lookingView("Looking for a cure", trying, acts.cancel);
    return html`<div class="ask"><button type="button" class="chief" @click=${acts.look}>${answer === undefined ? "What would make it work?" : "Look again"}</button></div>`;
  }

  #told(room: CuredRoom) {
    const found = [...room.answer.cures, ...room.answer.relaxations];
    const isOld = room.of !== room.plan && !found.some(({ plan }) => this.#isTaken(plan));
    return html`${isOld ? CHANGED : nothing}<div class=${isOld ? "older" : nothing}>${answerView(room)}</div>`;
  }

  #traded(room: CureRoom): TradedRoom | undefined {
    const { answer: front, of } = this.#fronts;
    return front && of && { ...room, front, of, at: this.at, isTaken: this.#isTaken };
  }

  readonly #isTaken = (found: Plan): boolean =>
    this.plan !== undefined && diffPlans(this.plan, found).length === 0;

  #room(plan: Plan): CureRoom {
    const { system, wanted } = this;
    return { plan, system, wanted, typing: this.#typing, isWide: this.#width.matches, acts: this.#acts };
  }

  #besideRoom(plan: Plan): BesideRoom {
    const { system, keptPlans } = this;
    const { others, chosen, variants, isOld, problems } = this.#beside;
    return {
      ...{ plan, system, chosen, variants, isOld, problems },
      others: others?.filter((other) => diffPlans(plan, other.plan).length > 0),
      acts: {
        list: keptPlans === undefined ? undefined : () => void this.#beside.list(keptPlans),
        choose: (id, isChosen) => {
          this.#beside.choose(id, isChosen);
          this.#compare();
        },
        openFiles: (files) => void this.#beside.openFiles(files).then(() => this.#compare()),
      },
    };
  }

  #compare(): void {
    if (this.plan !== undefined) this.#beside.compare(this.plan, this.day);
  }

  #look(search: SearchController<"cure" | "front">): void {
    const { plan, day, system, wanted } = this;
    this.#said = "";
    if (plan !== undefined) search.look(plan, { ...wanted, day, system });
  }

  readonly #acts: CureActs = {
    want: (wanted) => {
      this.wanted = { ...this.wanted, ...wanted };
    },
    look: () => this.#look(this.#cures),
    unfold: (cure) => {
      if (!this.unfolded.has(cure)) this.unfolded = new Set([...this.unfolded, cure]);
    },
    cancel: () => this.#cures.cancel(),
    trade: () => {
      this.at = FIRST;
      this.#look(this.#fronts);
    },
    cancelTrade: () => this.#fronts.cancel(),
    point: (which, at) => {
      this.at = { ...this.at, [which]: at };
    },
    take: (of, found, what) => {
      this.#taking = what;
      this.dispatchEvent(new EditWantedEvent({ kind: "bringIn", diff: diffPlans(of, found), what }));
      this.requestUpdate();
    },
  };
}

const BEFORE = html`<p>Heights of the stand, sizes of pipe and other ways are tried on this plan, each judged as the line is, and the
  cheapest that makes every drinker good is told.</p>`;

const isAllGood = (counts: Readonly<Record<VerdictName, number>>): boolean =>
  VERDICTS.every((verdict) => verdict === "good" || counts[verdict] === 0) && counts.good > 0;

const CAUTIONS = html`<section class="cautions" aria-label="Cautions">
  <p>Water is heavy: a full drum on a stand can kill. Stand it level and firm, and anchor what stands high.</p>
  <p>A cure is reckoned from what the plan says. Measure heights again before you buy, and look at every drinker once it is built.</p>
</section>`;
