import { LAW_WORDS } from "@headfall/hydraulics";
import { svg } from "lit";
import { pathOf } from "../kernels/path-of.js";
import type { ProfileLayout } from "../kernels/profile-layout.js";
import { showHead } from "../kernels/shown.js";
import type { ProfileWords } from "./profile-words.js";

/** The strip of head lost on the way: solid by the law shown first, broken by the second opinion. */
export function lossView({ loss, plot, width }: ProfileLayout, { system }: ProfileWords) {
  const left = 4;
  if (loss.exaggeration === 0) {
    return svg`<text class="quiet" x=${left} y=${loss.top - 4}>Nothing flows, so no head is lost on the way.</text>`;
  }
  const first = { x: plot.left, y: loss.top };
  const area = [first, ...loss.shown, { x: loss.shown[loss.shown.length - 1]!.x, y: loss.top }];
  const both =
    width < 480
      ? `Lost on the way: ${amount(loss.shownLoss)} (second opinion ${amount(loss.otherLoss)})`
      : `Head lost on the way: ${amount(loss.shownLoss)} by ${LAW_WORDS[loss.shownLaw]}, ${amount(loss.otherLoss)} by ${LAW_WORDS[loss.otherLaw]} (broken line)`;
  return svg`
    <path class="tick" d="M${plot.left} ${loss.top}H${plot.right}"></path>
    <path class="loss-area" d="${pathOf(area)}Z"></path>
    <path class="loss-other" d=${pathOf(loss.other)}></path>
    <path class="loss" d=${pathOf(loss.shown)}></path>
    <text x=${left} y=${loss.top - 5}>${both}</text>`;

  function amount(head: number): string {
    return showHead(head, system);
  }
}
