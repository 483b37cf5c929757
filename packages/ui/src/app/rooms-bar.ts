import { html, nothing } from "lit";
import { ROOM_GROUPS, ROOMS, type RoomGroup, type RoomName } from "./room-list.js";

export type Chosen = RoomName | "line";

export interface RoomsBar {
  readonly chosen: Chosen;
  /** Whether the list is open; it always is where the window is wide. */
  readonly isOpen: boolean;
  open(isOpen: boolean): void;
  goTo(room: Chosen): void;
}

const LINE = { name: "line", label: "Line", words: "Draw it, and see which drinkers get water" } as const;

/** The way from room to room: a row of buttons, on a phone one button that opens a list with a word on each. */
export function roomsBar(bar: RoomsBar) {
  const { chosen, isOpen } = bar;
  const label = [LINE, ...ROOMS].find(({ name }) => name === chosen)!.label;
  return html`<nav aria-label="Rooms of this plan" @keydown=${(event: KeyboardEvent) => {
    if (event.key === "Escape" && isOpen) bar.open(false);
  }}>
    <button class="which" aria-expanded=${isOpen} aria-controls="room-list" @click=${() => bar.open(!isOpen)}>
      <span>${label}</span><span class="other">${isOpen ? "Close" : "Other rooms"}</span>
    </button>
    <div id="room-list" class=${isOpen ? "list open" : "list"}>${Object.entries(ROOM_GROUPS).map(
      ([group, words]) => html`<div class="group" role="group" aria-label=${words}>
        <p aria-hidden="true">${words}</p>
        ${roomsOf(group as RoomGroup).map((room) => roomButton(room, bar))}
      </div>`,
    )}</div>
  </nav>`;
}

const roomsOf = (group: RoomGroup) => [
  ...(group === "plan" ? [LINE] : []),
  ...ROOMS.filter((room) => room.group === group),
];

const roomButton = (
  { name, label, words }: { readonly name: Chosen; readonly label: string; readonly words: string },
  { chosen, goTo }: RoomsBar,
) => html`<button
  title=${words} aria-current=${name === chosen ? "page" : nothing} @click=${() => goTo(name)}
><span class="name">${label}</span> <span class="words">${words}</span></button>`;
