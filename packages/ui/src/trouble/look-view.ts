import {
  ANSWERS,
  type Trouble,
  type UsefulLook,
  writeAnswers,
  writeLookAnswer,
  writeNextLook,
  writeUsefulLook,
} from "@headfall/hydraulics";
import { html, nothing } from "lit";
import type { TroubleRoom } from "./room.js";

/** The one look that tells the first two apart, as a question; its answers are told when pressed. */
export function lookView(room: TroubleRoom, trouble: Trouble) {
  const { nextLook, moreLooks, lookAmong, likely } = trouble;
  const another = moreLooks.find(({ look }) => look.look !== nextLook?.look.look);
  const places = likely[0]?.places.length ?? 0;
  return html`<section class="look" aria-labelledby="look">
    <h3 id="look" tabindex="-1">The one look</h3>
    ${nextLook === undefined ? nothing : questionView(room, nextLook, "It tells 1 from 2")}
    ${another === undefined ? nothing : html`<details><summary>Or another look</summary>${questionView(room, another, "It tells 1 from 2 as well")}</details>`}
    ${lookAmong === undefined || places < 2 ? nothing : html`<details ?open=${nextLook === undefined}><summary>Which of the ${places} it is</summary>${questionView(room, lookAmong, "It tells most about which")}</details>`}
    ${untoldOf(trouble, room).map((line) => html`<p>${line}</p>`)}
  </section>`;
}

function questionView({ acts }: TroubleRoom, useful: UsefulLook, why: string) {
  const { look, afterFilling, answers } = useful;
  const meanings = writeAnswers(useful);
  return html`<p>${why}: <strong>${writeUsefulLook(useful)}</strong></p>
    <ul class="answers-of" aria-label="What you see there">${ANSWERS[look.look].map((sees, k) => {
      const words = writeLookAnswer(look, sees);
      const meaning = answers.length === 0 ? "" : (meanings[k] ?? "").slice(words.length + 2);
      return html`<li><button type="button" @click=${() => acts.answer(look, sees, afterFilling)}>${words}</button>
        ${meaning === "" ? nothing : html`<span class="quiet">${meaning}</span>`}</li>`;
    })}</ul>`;
}

/** What no look tells, as the report says it. */
const untoldOf = (trouble: Trouble, { system }: TroubleRoom): readonly string[] =>
  writeNextLook(trouble, system).filter((line) => /^(Nothing|No look)/.test(line));
