import { findPlaces } from "./find-mutants.mjs";

/** The name by which a changed file finds the switch; see warm-tests.mjs. */
const SWITCH = "__mutation";

/**
 * Writes a file so that each of its mutants can be switched on while it runs. A function runs as it was written, at its
 * own speed, unless one of its mutants is on.
 *
 * @param firstId number of the first mutant
 * @returns the text, the mutants in order of their numbers, and what the file imports
 */
export function writeSwitchable(path, source, firstId) {
  const { places, imports } = findPlaces(path, source);
  const mutants = [];
  places.sort((a, b) => a.start - b.start || b.end - a.end || rank(a) - rank(b));
  const bodies = places.filter(({ kind }) => kind === "body");
  for (const place of places) {
    place.ids =
      place.kind === "body" || place.kind === "constant"
        ? []
        : place.alternatives.map((text) => {
            const isStatic = !bodies.some(({ start, end }) => start <= place.start && place.end <= end);
            mutants.push({
              id: firstId + mutants.length,
              ...describePlace(source, place),
              became: text,
              isStatic,
            });
            return mutants.at(-1).id;
          });
  }
  return { text: writeRange({ source, places, start: 0, end: source.length }), mutants, imports };
}

const rank = ({ kind }) => ["constant", "body", "statement", "value"].indexOf(kind);

/** Where a mutant is, said so that it is found again after lines were added above it. */
function describePlace(source, { start, end }) {
  const lineStart = source.lastIndexOf("\n", start - 1) + 1;
  const lineEnd = source.indexOf("\n", start);
  const line = source.slice(lineStart, lineEnd < 0 ? source.length : lineEnd);
  const indent = line.length - line.trimStart().length;
  return {
    line: source.slice(0, start).split("\n").length,
    code: line.trim(),
    at: start - lineStart - indent,
    was: source.slice(start, end),
  };
}

/** Writes the text from start to end with the places in it made switchable; places are in order, outer before inner. */
function writeRange({ source, places, start, end }) {
  let text = "";
  let done = start;
  let index = 0;
  while (index < places.length) {
    const place = places[index];
    let next = index + 1;
    while (next < places.length && places[next].start < place.end) next += 1;
    text += source.slice(done, place.start) + writePlace(source, place, places.slice(index + 1, next));
    done = place.end;
    index = next;
  }
  return text + source.slice(done, end);
}

function writePlace(source, place, inner) {
  const { kind, start, end } = place;
  const written = source.slice(start, end);
  const text = writeRange({ source, places: inner, start, end });
  if (kind === "constant") return writeConstant(source, place, inner, text);
  if (kind === "statement") return `{ if (!${SWITCH}.is(${place.ids[0]})) { ${text} } }`;
  if (kind === "value") {
    const cases = place.ids.map((id, index) => `${SWITCH}.is(${id}) ? (${place.alternatives[index]}) : `);
    return `(${cases.join("")}(${text}))`;
  }
  const ids = inner.flatMap((one) => one.ids);
  if (ids.length === 0) return text;
  const condition = `${SWITCH}.isIn(${ids[0]}, ${ids.at(-1)})`;
  if (place.isExpression) return `{ if (${condition}) { return ${text}; } else { return ${written}; } }`;
  return `{ if (${condition}) ${text} else ${written} }`;
}

/** A constant that can be worked out again. */
function writeConstant(source, { parts }, inner, text) {
  const again = parts.map(({ name, init: { start, end } }) => {
    const places = inner.filter((one) => start <= one.start && one.end <= end);
    return `${name} = ${writeRange({ source, places, start, end })};`;
  });
  return `${text.replace(/^const/, "let")} ${SWITCH}.onSwitched(() => { ${again.join(" ")} });`;
}
