import { MARGIN } from "./paper.js";
import type { SheetPage } from "./sheet-page.js";
import { inColumns } from "./title-block.js";

/** More notes than anyone reads on paper; the tables have them all. */
const MOST_NOTES = 300;
const TITLE = 9;

/** Texts on pages of their own, in two columns, called N1, N2 ... */
export function layNotePages(texts: readonly string[], room: { width: number; height: number }): SheetPage[] {
  const pages: SheetPage[] = [];
  let rest = kept(texts);
  while (rest.length > 0) {
    const count = countThatFits(rest, room);
    const columns = inColumns(rest.slice(0, count), room.width);
    pages.push({
      name: `N${pages.length + 1}`,
      window: undefined,
      shapes: [
        { kind: "text", x: MARGIN, y: MARGIN + 5, text: "Notes", size: 4.4, isBold: true },
        ...columns.draw(MARGIN, MARGIN + TITLE),
      ],
    });
    rest = rest.slice(count);
  }
  return pages;
}

function kept(texts: readonly string[]): readonly string[] {
  if (texts.length <= MOST_NOTES) return texts;
  return [...texts.slice(0, MOST_NOTES), `And ${texts.length - MOST_NOTES} more: see the tables.`];
}

/** At least one, so that an endless text cannot hold the pages up. */
function countThatFits(
  texts: readonly string[],
  { width, height }: { width: number; height: number },
): number {
  const fits = (count: number) => inColumns(texts.slice(0, count), width).height <= height - TITLE;
  let [low, high] = [1, texts.length];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (fits(middle)) low = middle;
    else high = middle - 1;
  }
  return low;
}
