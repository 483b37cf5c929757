/**
 * Notes the height an element has now, for its styles to keep while a hand drags: what is said in it changes at each step,
 * and nothing around it is to move for that, nor to be laid out anew.
 */
export function keepHeight(element: HTMLElement | null): void {
  if (element !== null) noteHeight(element, element.getBoundingClientRect().height);
}

/** Lets an element of a kept height grow where it now says more than it has room for: nothing said is hidden. */
export function growToFit(element: HTMLElement | null): void {
  if (element !== null && element.scrollHeight > element.clientHeight + 1)
    noteHeight(element, element.scrollHeight);
}

const noteHeight = (element: HTMLElement, height: number): void =>
  element.style.setProperty("--_height", `${height}px`);
