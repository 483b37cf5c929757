import { MARGIN_STEP } from "@headfall/hydraulics";
import { html } from "lit";

/** The rules of the search. */
export function howView() {
  return html`<section aria-labelledby="how-cure"><h3 id="how-cure">How it was got</h3>
    <details><summary>The rules of the search</summary>
      <ul>
        <li>A plan works when no drinker starves, drips or is dry in any of the four moments, by either friction law, on the plan's day and in each coming week that is asked for, with the head to spare that is asked for.</li>
        <li>Every plan that is told has been judged just as the line is: what stands in its tables is what the line would say.</li>
        <li>Not every plan has to be judged. From the far ends on, what hangs on a point needs at least so much head there, with the sizes it has: a stand lower than that does not do. And what costs more than a plan that works is not wanted. In rings, and where sources are joined, only cost rules plans out.</li>
        <li>What is on hand is used before any pipe is bought. What has no price counts after all that has one.</li>
        <li>Each other remedy is tried by itself, with sizes and stands around it; two of them together are not.</li>
        <li>A point of a trade-off is a search of its own with the other figure held; heads to spare are told apart by ${1000 * MARGIN_STEP} mm.</li>
        <li>Which is the lesser change between equals: fewer runs laid anew, then less stand, then fewer things to buy.</li>
      </ul>
    </details></section>`;
}
