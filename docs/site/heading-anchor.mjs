/**
 * The anchor of a heading, as readers of plain markdown make it: lower case, no punctuation, dashes for spaces; the
 * second of the same name on a page ends in -1.
 *
 * @param {string} heading  its text, without marks
 * @param {Set<string>} taken  the anchors before it on the page; the new one is added
 */
export function headingAnchor(heading, taken) {
  const plain = heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, "")
    .trim()
    .replaceAll(/\s/g, "-");
  let anchor = plain;
  for (let count = 1; taken.has(anchor); count++) anchor = `${plain}-${count}`;
  taken.add(anchor);
  return anchor;
}
