/** Widths of signs as shares of the letters' size, on the wide side of usual sans-serif faces. */
const NARROW = /[iljtfrI.,:;'|!()[\]/ ]/;
const WIDE = /[mwMW@%]/;
const CAPITAL = /[A-Z]/;
/** Signs from here on are no Latin letters: they are taken as wide as they are high. */
const BEYOND_LATIN = "\u0250";

/** How long a text is when printed [mm], on the wide side. */
export function lengthOfText(text: string, size: number, isBold = false): number {
  let sum = 0;
  for (const sign of text) sum += shareOf(sign);
  return sum * size * (isBold ? 1.08 : 1);
}

function shareOf(sign: string): number {
  if (NARROW.test(sign)) return 0.37;
  if (WIDE.test(sign)) return 0.96;
  if (CAPITAL.test(sign)) return 0.72;
  return sign < BEYOND_LATIN ? 0.61 : 1.05;
}

/** The text, or as much of its beginning as has room, with an ellipsis. */
export function cropped(text: string, size: number, room: number, isBold = false): string {
  if (lengthOfText(text, size, isBold) <= room) return text;
  const signs = [...text];
  let length = lengthOfText("…", size, isBold);
  let kept = "";
  for (const sign of signs) {
    length += lengthOfText(sign, size, isBold);
    if (length > room) break;
    kept += sign;
  }
  return `${kept.trimEnd()}…`;
}

/** Broken into lines that have room, at blanks; a word that is too long by itself is cropped. */
export function wrapped(text: string, size: number, room: number): string[] {
  return brokenWhere(text, (line) => lengthOfText(line, size) <= room).map((each) =>
    cropped(each, size, room),
  );
}

/** Broken at blanks, so that each line has room, or is one word. */
export function brokenWhere(text: string, hasRoom: (line: string) => boolean): string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/)) {
    const longer = lines.length === 0 ? word : `${lines.at(-1)} ${word}`;
    if (lines.length > 0 && hasRoom(longer)) lines[lines.length - 1] = longer;
    else if (word !== "") lines.push(word);
  }
  return lines;
}
