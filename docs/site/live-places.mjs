/**
 * Where a page shows a plan that can be worked on: a comment `<!-- live: line -->` before the link to a plan file, or before
 * the plan itself as a block of json. Whoever reads the plain document sees the link, or the plan.
 */

/** What can be shown, by its word in the comment. */
const ELEMENTS = new Set(
  [
    "line",
    "birds",
    "yard",
    "time",
    "day",
    "weather",
    "year",
    "cure",
    "mishaps",
    "trouble",
    "build",
    "rain",
  ].map((word) => `headfall-${word}`),
);

/** `line` or `line us`: which element, and in which units where not in metric ones. */
const ASKED = /^<!-- live: (\w+)( us)? -->$/;

/** Lets the reader of markdown take comments out of the text, and put a figure where one asks for it. */
export function livePlaces(markdown) {
  markdown.block.ruler.before("html_block", "comment", takeComment, { alt: ["paragraph"] });
  markdown.core.ruler.push("live_places", ({ tokens }) => {
    tokens.splice(0, tokens.length, ...withFigures(tokens));
  });
}

function takeComment(state, startLine, endLine, isTrial) {
  const first = state.src.slice(state.bMarks[startLine] + state.tShift[startLine], state.eMarks[startLine]);
  if (!first.startsWith("<!--")) return false;
  let last = startLine;
  const textTo = (line) => state.src.slice(state.bMarks[startLine], state.eMarks[line]);
  while (!textTo(last).includes("-->") && last + 1 < endLine) last++;
  if (!textTo(last).includes("-->")) return false;
  if (isTrial) return true;
  const token = state.push("comment", "", 0);
  token.content = textTo(last).trim();
  token.hidden = true;
  state.line = last + 1;
  return true;
}

/** Each place that asks is put between the ends of a figure; other comments are gone. */
function withFigures(tokens) {
  const out = [];
  let asked;
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    if (token.type === "comment") {
      asked = readAsked(token.content) ?? asked;
    } else if (asked !== undefined) {
      const size = token.type === "paragraph_open" ? 3 : 1;
      out.push(...figureOf(token, tokens.slice(at, at + size), asked));
      at += size - 1;
      asked = undefined;
    } else out.push(token);
  }
  return out;
}

function readAsked(comment) {
  if (!/^<!-- live\b/.test(comment)) return undefined;
  const [, word, units] = ASKED.exec(comment) ?? [];
  if (!ELEMENTS.has(`headfall-${word}`)) throw new Error(`${comment}: there is no such element to show.`);
  return { element: `headfall-${word}`, units: units === undefined ? "" : "us" };
}

function figureOf(token, inside, { element, units }) {
  const isPlan = token.type === "fence" && token.info.trim() === "json";
  const link = inside[1]?.children?.find(({ type }) => type === "link_open");
  if (!isPlan && link === undefined)
    throw new Error(`${element} is asked for, with neither a link to a plan nor a plan as json below it.`);
  const raw = (content) => Object.assign(new token.constructor("html_block", "", 0), { content });
  const start = `<figure class="live" data-element="${element}" data-units="${units}"`;
  if (isPlan) {
    return [
      raw(`${start}><details><summary>The plan as text</summary>`),
      token,
      raw("</details></figure>\n"),
    ];
  }
  return [raw(`${start} data-from-link><figcaption>`), ...inside, raw("</figcaption></figure>\n")];
}
