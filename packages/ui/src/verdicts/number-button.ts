import { html, noChange } from "lit";
import { Directive, type DirectiveParameters, directive, type ElementPart } from "lit/directive.js";
import { type HowSubject, keyOfSubject, subjectOfKey } from "../kernels/how-got/subject.js";
import { HowWantedEvent } from "./how-wanted-event.js";

/** A number that can be pressed to see how it was got. Fires how-wanted. */
export function numberButton(text: unknown, subject: HowSubject) {
  return html`<button type="button" class="number roomy" aria-haspopup="dialog" data-how=${keyOfSubject(subject)}
    @click=${askHow}>${text}</button>`;
}

/** What a number in a table is and where it stands; of one place in one table it never changes. */
export interface NumberPlace {
  readonly subject: HowSubject;
  /** Ids of what says whose number it is: the heads of its row and column. */
  readonly describedBy: string;
  /** Whether the tab key stops here; of a table one number does, arrow keys lead to the others. */
  readonly isTabStop: boolean;
}

/** Sets all that stays on a number's button at one stroke, so that of a long table only texts are compared. */
class NumberAt extends Directive {
  #key = "";

  render(_key: string, _place: () => NumberPlace) {
    return noChange;
  }

  override update(part: ElementPart, [key, place]: DirectiveParameters<this>) {
    if (key === this.#key) return noChange;
    this.#key = key;
    const { subject, describedBy, isTabStop } = place();
    const button = part.element as HTMLButtonElement;
    button.dataset["how"] = keyOfSubject(subject);
    button.setAttribute("aria-describedby", describedBy);
    button.tabIndex = isTabStop ? 0 : -1;
    return noChange;
  }
}
const numberAt = directive(NumberAt);

/**
 * The same inside a table whose element listens for all its numbers with `askHow` and `roveNumbers`. `key` tells
 * places apart; `place` is only asked when the key is a new one.
 */
export function numberInTable(text: unknown, key: string, place: () => NumberPlace) {
  return html`<button type="button" class="number" aria-haspopup="dialog" ${numberAt(key, place)}>${text}</button>`;
}

const numberOf = (event: Event): HTMLElement | undefined =>
  (event.target as Element).closest<HTMLElement>("[data-how]") ?? undefined;

/** For a click on a number or around numbers. */
export function askHow(event: Event): void {
  const number = numberOf(event);
  // A number by itself has asked already when the click comes up to a table around it.
  if (number === undefined || event.defaultPrevented) return;
  event.preventDefault();
  number.dispatchEvent(new HowWantedEvent(subjectOfKey(number.dataset["how"]!)));
}

const STEPS: Readonly<Record<string, readonly [row: number, column: number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};

/** Arrow keys go from number to number, up and down in one column, so that a long table is one stop of the tab key. */
export function roveNumbers(event: KeyboardEvent): void {
  const step = STEPS[event.key];
  const number = numberOf(event);
  const rows = number?.closest("tbody")?.rows;
  if (step === undefined || number === undefined || rows === undefined) return;
  if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
  event.preventDefault();
  const row = number.closest("tr")!;
  const next = rows[[...rows].indexOf(row) + step[0]];
  if (next === undefined) return;
  const numbers = next.querySelectorAll<HTMLElement>("[data-how]");
  const column = [...row.querySelectorAll("[data-how]")].indexOf(number) + step[1];
  // Beyond either end of a row there is nothing; a shorter row has its last number taken.
  const target =
    column < 0
      ? undefined
      : step[1] === 0
        ? (numbers[column] ?? numbers[numbers.length - 1])
        : numbers[column];
  if (target === undefined) return;
  moveTabStop(number, target);
}

function moveTabStop(from: HTMLElement, to: HTMLElement): void {
  from
    .closest("table")
    ?.querySelectorAll<HTMLElement>("[data-how]:not([tabindex='-1'])")
    .forEach((stop) => {
      stop.tabIndex = -1;
    });
  to.tabIndex = 0;
  to.focus();
}
