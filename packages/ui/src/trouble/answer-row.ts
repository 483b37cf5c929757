import { keyOfLook, type Look, type VerdictName } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { ANSWER_WORDS } from "../kernels/trouble/answer-words.js";
import { verdictMarkAt } from "../verdicts/verdict-mark.js";
import type { TroubleRoom } from "./room.js";

/** Answers that are what a verdict says wear its mark. */
const MARK_OF: Readonly<Record<string, VerdictName>> = {
  "gives fine": "good",
  "gives weak": "starves",
  "gives dry": "dry",
  "drips drips": "drips",
};

const markOf = (look: string, sees: string) => {
  const verdict = MARK_OF[`${look} ${sees}`];
  return verdict === undefined
    ? nothing
    : html`<svg class="inline-mark ${verdict}" viewBox="-1.2 -1.2 2.4 2.4" width="14" height="14" aria-hidden="true">${verdictMarkAt(verdict, 0, 0, 1)}</svg>`;
};

/** One or several looks at a place, as a row of answers to press; a second press takes one back. */
export function answerRow(room: TroubleRoom, label: string, looks: readonly Look[], hint = label) {
  return html`<div class="row" role="group" aria-label=${hint}>
    <span class="label" aria-hidden="true">${label}</span>
    <span class="answers">${looks.map((look) => answersOf(room, look))}</span>
  </div>`;
}

function answersOf({ seen: told, acts }: TroubleRoom, look: Look) {
  const seen = told.get(keyOfLook(look));
  return ANSWER_WORDS[look.look].map(
    ({ sees, words }) =>
      html`<button type="button" aria-pressed=${seen === sees ? "true" : "false"} @click=${() => acts.tell(look, sees)}>${markOf(look.look, sees)}${words}</button>`,
  );
}

/** The same answers for many places at once. */
export function answerRowForAll(
  { seen, acts }: TroubleRoom,
  label: string,
  looks: readonly (readonly Look[])[],
) {
  return html`<div class="row all" role="group" aria-label=${label}>
    <span class="label" aria-hidden="true">${label}</span>
    <span class="answers">${looks.map((places) =>
      ANSWER_WORDS[places[0]!.look].map(({ sees, words }) => {
        const count = places.filter((look) => seen.get(keyOfLook(look)) === sees).length;
        return html`<button type="button" aria-pressed=${count === 0 ? "false" : count === places.length ? "true" : "mixed"}
          @click=${() => acts.tellAll(places, sees)}>${markOf(places[0]!.look, sees)}${words}</button>`;
      }),
    )}</span>
  </div>`;
}
