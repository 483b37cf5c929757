import type { HeadfallLine } from "../line/line-element.js";

/**
 * Undo and redo by keys mean the line wherever on the page they are pressed: on nothing, or on a button around it. Not
 * in a dialog, and not where text is typed.
 */
export function passKeys(line: HeadfallLine): void {
  document.addEventListener("keydown", (event) => {
    if (!(event.ctrlKey || event.metaKey) || isElsewhere(event, line)) return;
    const { key, ctrlKey, metaKey, shiftKey, altKey } = event;
    const passed = new KeyboardEvent("keydown", {
      key,
      ctrlKey,
      metaKey,
      shiftKey,
      altKey,
      cancelable: true,
    });
    line.dispatchEvent(passed);
    if (passed.defaultPrevented) event.preventDefault();
  });
}

/** What is pressed in the line has come to it already; a field may lie deep inside another element. */
function isElsewhere(event: Event, line: HeadfallLine): boolean {
  const path = event.composedPath();
  return path.includes(line) || path.some((each) => each instanceof Element && each.matches(TYPED_INTO));
}

const TYPED_INTO = "dialog, input:not([type=file], [type=checkbox]), textarea";
