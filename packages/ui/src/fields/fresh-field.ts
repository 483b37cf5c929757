import { html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import { idOf, problemView } from "./entry-view.js";
import type { FieldKind } from "./text-kinds.js";
import type { TypedReading } from "./typed-reading.js";
import type { TypingController } from "./typing-controller.js";

/** A field for something that is not in the plan yet. */
export interface FreshField {
  readonly key: string;
  readonly title: string;
  readonly kind: FieldKind;
  /** What stands in it until something is typed. */
  readonly usual: string;
}

export function freshView({ key, title, usual }: FreshField, typing: TypingController) {
  const id = idOf(key);
  const isFaulty = typing.problem(key) !== undefined;
  return html`<div class="field">
    <label for=${id}>${title}</label>
    <input
      type="text" id=${id} autocomplete="off" spellcheck="false" enterkeyhint="done"
      aria-invalid=${isFaulty ? "true" : nothing} aria-describedby=${isFaulty ? `${id}-problem` : nothing}
      .value=${live(typing.draft(key) ?? usual)}
      @input=${(event: Event) => typing.keep(key, (event.target as HTMLInputElement).value)}
    />
    ${problemView(typing, key, `${id}-problem`)}
  </div>`;
}

/** What stands in a fresh field, read; where it cannot be read, the field says so. */
export function readFresh({ key, kind, usual }: FreshField, typing: TypingController) {
  return typing.read(key, kind, typing.draft(key) ?? usual) as Promise<
    (TypedReading & { readonly ok: true }) | undefined
  >;
}

/** A form whose button is pressed by Enter too; afterwards the hand is back at its first field. */
export function pressForm(press: () => unknown) {
  return (event: SubmitEvent) => {
    event.preventDefault();
    const form = event.currentTarget as HTMLFormElement;
    Promise.resolve(press()).then(() => {
      const faulty = form.querySelector<HTMLElement>('[aria-invalid="true"]');
      (faulty ?? form.querySelector<HTMLElement>("input, select, textarea"))?.focus();
    });
  };
}
