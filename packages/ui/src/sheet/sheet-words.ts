import { MOST_PAGES, type Sheet } from "../kernels/sheet/lay-sheet.js";
import { inFull, writeScales } from "../kernels/sheet/title-block.js";

/** What the print comes to, in a sentence or two. */
export function writeSheet(sheet: Sheet | undefined, drawing: "above" | "side", isChecked: boolean): string {
  if (sheet === undefined) {
    if (drawing === "above") return "There is nothing to draw yet.";
    return isChecked
      ? "No drinker hangs on a pipe that leads to a source, so there is no way to draw from the side."
      : "The plan has not been worked out, so it cannot be drawn from the side.";
  }
  const fits = sheet.fits === undefined ? "" : ` ${inFull(sheet.fits)} fits without a cut.`;
  if (sheet.tooMany > 0)
    return `That would be ${sheet.tooMany} pages, more than the ${MOST_PAGES} that are laid out. Choose a smaller drawing.${fits}`;
  const drawn = sheet.pages.filter(({ window }) => window !== undefined).length;
  const notes = sheet.pages.length - drawn;
  const isCut = sheet.fits === undefined || sheet.scale.times < sheet.fits.times;
  const pages = `${drawn === 1 ? "One page" : `${drawn} pages`}${notes === 0 ? "" : ` and ${notes === 1 ? "one page" : `${notes} pages`} of notes`}`;
  return `${pages} of ${sheet.paper.words}. ${writeScales(sheet)}.${isCut && drawn > 1 ? fits : ""}`;
}
