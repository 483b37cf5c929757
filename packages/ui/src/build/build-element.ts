import {
  type BuildSheet,
  type Plan,
  writeBuildCautions,
  writePartsCsv,
  writeProblem,
} from "@headfall/hydraulics";
import { html, nothing, type PropertyValues } from "lit";
import { RoomAnswerController } from "../controllers/room-answer.js";
import { fieldStyles } from "../fields/fields.styles.js";
import { TypingController } from "../fields/typing-controller.js";
import type { PaperName } from "../kernels/sheet/paper.js";
import { RoomElement } from "../room/room-element.js";
import { savedName } from "../sheet/saved-name.js";
import { saveFile } from "../storage/save-file.js";
import { controls } from "../styles/controls.js";
import { roomStyles } from "../styles/room.styles.js";
import { tokens } from "../styles/tokens.js";
import { tableStyles } from "../tables/table.styles.js";
import { buildStyles } from "./build.styles.js";
import { printBuild } from "./build-printing.js";
import { cutsView } from "./cuts-view.js";
import { fieldsView } from "./fields-view.js";
import { coopView, heightsView, holesView, jugsView, loadsView, stepsView } from "./lists-view.js";
import { partsView } from "./parts-view.js";
import type { BuildActs, BuildRoom } from "./room.js";

/** Rest after the last change before all is worked out again [ms]. */
const REST_MS = 400;

/**
 * How to build a plan: what can hurt, parts and prices, cuts, holes, heights, the order, jug and watch, and the sheet
 * that hangs in the coop; all of it on paper, too.
 *
 * @element headfall-build
 * @fires edit-wanted  when the user wants the plan changed
 */
export class HeadfallBuild extends RoomElement {
  static override properties = { paper: { state: true } };
  static override styles = [tokens, controls, fieldStyles, tableStyles, roomStyles, buildStyles];

  /** Chosen paper; the usual one of the units where none is. */
  declare private paper: PaperName | undefined;

  readonly #typing = new TypingController(this);
  readonly #build = new RoomAnswerController<"build">(this, REST_MS);

  constructor() {
    super();
    this.paper = undefined;
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has("plan") && !changed.has("day")) return;
    const { plan, day } = this;
    if (changed.has("plan")) {
      const before = changed.get("plan");
      if (before?.contacts?.length !== plan?.contacts?.length) this.#typing.forgetUnder("contact");
      if (before?.shelf?.length !== plan?.shelf?.length) this.#typing.forgetUnder("shelf");
      if (before?.sources.length !== plan?.sources.length) this.#typing.forgetUnder("footing");
      this.#typing.planChanged();
    }
    if (plan !== undefined) this.#build.ask({ kind: "build", plan, day });
  }

  override render() {
    const { plan, system } = this;
    if (plan === undefined) return nothing;
    const { answer: sheet, problems, isOld } = this.#build;
    const stray = this.#typing.strayRefusal;
    return html`
      <h2>Build it</h2>
      ${stray === "" ? nothing : html`<p class="problem" role="alert">${stray}</p>`}
      ${problems.length === 0 ? nothing : html`<p class="problem" role="alert">${problems.map(writeProblem).join(" ")}</p>`}
      ${this.#work()}
      <div class="rest">
        <section class="say" aria-label="What is there">${fieldsView({ plan, system, typing: this.#typing })}</section>
        <div class="told ${isOld ? "older" : ""}">${sheet === undefined ? nothing : this.#told(this.#room(plan, sheet))}</div>
      </div>
    `;
  }

  /** How far the work has come, or how to begin it again. */
  #work() {
    const { progress, waits } = this.#build;
    if (progress !== undefined)
      return html`<div class="work" role="group" aria-label="Working it out"><span>Working it out ...</span>
        <progress max="1" .value=${progress} aria-label="Worked out"></progress>
        <button type="button" @click=${() => this.#build.cancel()}>Cancel</button></div>`;
    if (!waits) return nothing;
    return html`<p class="work">Cancelled. <button type="button" class="chief" @click=${() => this.#build.run()}>Work it out</button></p>`;
  }

  #told(room: BuildRoom) {
    return html`${this.#printView()} ${loadsView(room)} ${partsView(room, this.#acts)} ${cutsView(room)} ${holesView(room)}
      ${heightsView(room)} ${stepsView(room)} ${jugsView(room)} ${coopView(room)}
      <section class="cautions" aria-label="Cautions">${writeBuildCautions(room.sheet, room.system).map((line) => html`<p>${line}</p>`)}</section>`;
  }

  #printView() {
    const paper = this.#paper;
    return html`<div class="buttons">
      <button type="button" class="chief" @click=${this.#acts.print}>Print both sheets</button>
      <label class="choice">Paper <select @change=${(event: Event) => this.#acts.choosePaper((event.target as HTMLSelectElement).value as PaperName)}>
        <option value="a4" ?selected=${paper === "a4"}>A4</option><option value="letter" ?selected=${paper === "letter"}>Letter</option>
      </select></label>
    </div>`;
  }

  get #paper(): PaperName {
    return this.paper ?? (this.system === "us" ? "letter" : "a4");
  }

  #room(plan: Plan, sheet: BuildSheet): BuildRoom {
    return { sheet, name: plan.name ?? "This plan", system: this.system };
  }

  readonly #acts: BuildActs = {
    choosePaper: (paper) => {
      this.paper = paper;
    },
    print: () => {
      const { answer: sheet } = this.#build;
      if (this.plan !== undefined && sheet !== undefined)
        printBuild(this.#room(this.plan, sheet), this.#paper);
    },
    saveParts: () => {
      const { answer: sheet } = this.#build;
      if (this.plan === undefined || sheet === undefined) return;
      const text = writePartsCsv(sheet, this.system, { mark: true });
      saveFile(savedName(this.plan, "parts", "csv"), new Blob([text], { type: "text/csv;charset=utf-8" }));
    },
  };
}
