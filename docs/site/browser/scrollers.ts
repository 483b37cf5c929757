/** What scrolls sideways inside itself can be scrolled by keys too; what fits is not one more stop on the way. */
export function markScrollers(boxes: Iterable<HTMLElement>): void {
  const watcher = new ResizeObserver((entries) => {
    for (const { target } of entries) mark(target as HTMLElement);
  });
  for (const box of boxes) watcher.observe(box);
}

function mark(box: HTMLElement): void {
  if (box.scrollWidth > box.clientWidth) {
    box.tabIndex = 0;
    box.role = "group";
    box.ariaLabel = box.tagName === "PRE" ? "Text, scrolls sideways" : "Table, scrolls sideways";
  } else for (const name of ["tabindex", "role", "aria-label"]) box.removeAttribute(name);
}
