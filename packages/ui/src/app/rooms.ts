import { html, nothing, render } from "lit";
import type { HeadfallLine } from "../line/line-element.js";
import type { RoomElement } from "../room/room-element.js";
import type { EditWantedEvent } from "../store/edit-wanted-event.js";
import type { PlanStore } from "../store/plan-store.js";
import { ROOMS, type RoomName } from "./room-list.js";
import { roomStyles } from "./rooms.styles.js";
import { type Chosen, roomsBar } from "./rooms-bar.js";
import { today } from "./today.js";

const roomInAddress = (): Chosen => ROOMS.find(({ name }) => location.hash === `#${name}`)?.name ?? "line";

const UNFETCHED =
  "This part of the page could not be fetched. Is the network there? Press its name to try again.";

const FAULTY =
  "This plan cannot be worked out yet: the line tells what is wrong. What is shown is the plan before that change.";

/**
 * The rooms of the page: the line, and what else there is to know of the same plan. The line stays where it is and
 * goes on checking; each other room is fetched when it is first entered. The address tells which one is shown, so that
 * the page comes back to it when it is loaded again, and the browser's own buttons go from room to room.
 */
export class Rooms {
  readonly #line: HeadfallLine;
  readonly #store: PlanStore;
  readonly #main: HTMLElement;
  readonly #nav = document.createElement("div");
  readonly #places = new Map<RoomName, { readonly box: HTMLElement; element?: RoomElement }>();
  #chosen: Chosen = "line";
  /** On a phone the rooms are a list that is opened. */
  #isOpen = false;
  #words = "";
  #spoken = "";

  constructor(line: HeadfallLine, store: PlanStore) {
    this.#line = line;
    this.#store = store;
    this.#main = line.parentElement!;
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, roomStyles.styleSheet!];
    this.#main.before(this.#nav);
    this.#nav.className = "rooms";
    // Follows the plan, its verdicts and the units in one: the line is drawn anew with each of them.
    line.addController({ hostUpdated: () => this.#show() });
    this.#main.addEventListener("edit-wanted", (event) => this.#editWanted(event));
    document.addEventListener("room-wanted", (event) => {
      const room = (event as CustomEvent<{ room?: unknown }>).detail?.room;
      if (room === "line" || ROOMS.some(({ name }) => name === room)) this.#goTo(room as Chosen);
    });
    // A plan that comes by a link is in the address too, and means the line.
    addEventListener("popstate", () => void this.#enter(roomInAddress()));
    this.#show();
    if (roomInAddress() !== "line") void this.#enter(roomInAddress());
  }

  #open(isOpen: boolean): void {
    this.#isOpen = isOpen;
    this.#showNav();
  }

  /** From the bar: the list closes, and the keyboard stays where a thumb would look for it. */
  #choose(room: Chosen): void {
    const wasOpen = this.#isOpen;
    this.#isOpen = false;
    this.#goTo(room);
    if (wasOpen) this.#nav.querySelector<HTMLElement>(".which")?.focus();
  }

  #goTo(room: Chosen): void {
    const place = location.pathname + location.search + (room === "line" ? "" : `#${room}`);
    if (room !== roomInAddress()) history.pushState(null, "", place);
    void this.#enter(room);
  }

  async #enter(room: Chosen): Promise<void> {
    this.#chosen = room;
    this.#words = "";
    this.#show();
    if (room === "line") return;
    try {
      await this.#furnish(room);
    } catch (error) {
      reportError(error);
      this.#words = UNFETCHED;
    }
    this.#show();
  }

  async #furnish(room: RoomName): Promise<void> {
    const place = this.#places.get(room) ?? { box: this.#main.appendChild(document.createElement("div")) };
    this.#places.set(room, place);
    if (place.element !== undefined) return;
    const { tag, load } = ROOMS.find(({ name }) => name === room)!;
    const element = await load();
    if (customElements.get(tag) === undefined) customElements.define(tag, element);
    place.element ??= place.box.appendChild(document.createElement(tag) as RoomElement);
  }

  #show(): void {
    this.#line.hidden = this.#chosen !== "line";
    for (const [room, { box, element }] of this.#places) {
      box.hidden = room !== this.#chosen;
      if (element === undefined || box.hidden) continue;
      element.plan = this.#store.plan;
      element.checked = this.#line.checked;
      element.system = this.#line.units;
      element.day = today();
    }
    this.#showNav();
  }

  #showNav(): void {
    render(
      html`${roomsBar({
        chosen: this.#chosen,
        isOpen: this.#isOpen,
        open: (isOpen) => this.#open(isOpen),
        goTo: (room) => this.#choose(room),
      })}
        ${this.#chosen === "line" ? nothing : this.#steps()}
        <div class="spoken" role="status">${this.#spoken}</div>
        <div role="alert">${this.#trouble().map((words) => html`<p class="problem">${words}</p>`)}</div>`,
      this.#nav,
    );
  }

  /** What stands in the way of a room; the line tells its own. */
  #trouble(): readonly string[] {
    const isFaulty = this.#chosen !== "line" && this.#line.problems.length > 0;
    return [this.#words, isFaulty ? FAULTY : ""].filter((words) => words !== "");
  }

  /** The line has its own; they go out of sight with it. */
  #steps() {
    const { canUndo, canRedo } = this.#store;
    const button = (word: string, words: string | undefined, act: () => void) =>
      html`<button ?disabled=${words === undefined} aria-label=${words === undefined ? word : `${word}: ${words}`} @click=${act}>${word}</button>`;
    return html`<div class="steps" role="group" aria-label="Steps">
      ${button("Undo", canUndo?.words, () => this.#step("Undone", this.#store.undo()?.words))}
      ${button("Redo", canRedo?.words, () => this.#step("Done again", this.#store.redo()?.words))}
    </div>`;
  }

  #step(what: string, words: string | undefined): void {
    this.#spoken = words === undefined ? "" : `${what}: ${words}.`;
    for (const { element } of this.#places.values()) if (element !== undefined) element.refusal = "";
    this.#show();
  }

  /** Edits of the line itself are made there; those of a room are made here, on the same store. */
  #editWanted({ target, change, gesture }: EditWantedEvent): void {
    const element = [...this.#places.values()].find((place) => place.element === target)?.element;
    if (element === undefined) return;
    const edited = this.#store.edit(change, this.#line.units, gesture);
    element.refusal = edited.ok ? "" : edited.because;
    this.#spoken = edited.ok ? "" : `Not done: ${edited.because}`;
    element.plan = this.#store.plan;
    this.#showNav();
  }
}
