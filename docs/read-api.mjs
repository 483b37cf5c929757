/**
 * Reads what a package offers: every name its entry exports, with its declaration and its comment, from the
 * declarations that the compiler wrote beside the compiled code. Needs the packages to be built.
 */
import { readFileSync } from "node:fs";
import { dirname, relative, resolve } from "node:path";

/**
 * Every exported name of an entry, in the order of the alphabet.
 *
 * Each has `name`, `kind` (function, const, class, interface or type), `path` of its source without its ending, `text`
 * of its declaration, `comment` (words and tags), and `types`: the names of the package's own types that it speaks of,
 * each with the declaration it leads to.
 */
export function readApi(entry) {
  const root = dirname(entry);
  const read = readerOf(root);
  return [...read(entry).exports]
    .map(([name, found]) => ({ ...found, name, types: typesIn(found, read) }))
    .sort((one, other) => (one.name.toLowerCase() < other.name.toLowerCase() ? -1 : 1));
}

/** Reads each file of declarations once. */
function readerOf(root) {
  const files = new Map();
  const read = (file) => {
    if (!files.has(file)) {
      const known = { exports: new Map(), local: new Map(), imports: new Map() };
      files.set(file, known);
      readFile(file, { known, root, read });
    }
    return files.get(file);
  };
  return read;
}

function readFile(file, { known, root, read }) {
  const path = relative(root, file)
    .replaceAll("\\", "/")
    .replace(/\.d\.ts$/, "");
  const beside = (from) => resolve(dirname(file), from.replace(/\.js$/, ".d.ts"));
  const statements = statementsOf(readFileSync(file, "utf8"));
  for (const { text, comment } of statements) {
    const [, words, from] = /^import (?:type )?\{([^}]*)\} from "(\.[^"]*)";$/s.exec(text) ?? [];
    if (words !== undefined)
      for (const [name, as] of namesOf(words)) known.imports.set(as, { file: beside(from), name });
    for (const one of declaredIn(text)) {
      const found = { ...one, file, path, comment: readComment(comment) };
      known.local.set(one.name, found);
      if (text.startsWith("export ")) known.exports.set(one.name, found);
    }
  }
  for (const { text } of statements) {
    const [, all] = /^export \* from "(\.[^"]*)";$/.exec(text) ?? [];
    if (all !== undefined)
      for (const [name, found] of read(beside(all)).exports) known.exports.set(name, found);
    const [, words, from] = /^export (?:type )?\{([^}]*)\}(?: from "(\.[^"]*)")?;$/s.exec(text) ?? [];
    for (const [name, as] of namesOf(words ?? "")) {
      const found = from === undefined ? findIn(known, name, read) : read(beside(from)).exports.get(name);
      if (found === undefined) throw new Error(`${path}: what is ${name}?`);
      known.exports.set(as, found);
    }
  }
}

/** What a name means inside a file. */
function findIn(known, name, read) {
  if (known.local.has(name)) return known.local.get(name);
  const from = known.imports.get(name);
  return from && read(from.file).exports.get(from.name);
}

const namesOf = (words) =>
  words
    .split(",")
    .map((word) => word.trim().replace(/^type /, ""))
    .filter((word) => word !== "")
    .map((word) => word.split(" as "))
    .map(([name, as = name]) => [name, as]);

/** The statements at the top of a file of declarations, each with the comment before it. */
function statementsOf(text) {
  const found = [];
  const next = /\/\*\*?[\s\S]*?\*\/|\/\/[^\n]*|\S/g;
  let comment;
  for (let one = next.exec(text); one !== null; one = next.exec(text)) {
    if (one[0].startsWith("/**")) comment = one[0];
    if (one[0].startsWith("/")) continue;
    next.lastIndex = endOf(text, one.index);
    found.push({ text: text.slice(one.index, next.lastIndex), comment });
    comment = undefined;
  }
  return found;
}

/** Where the statement that begins here ends: at its semicolon, or at the bracket that closes its body. */
function endOf(text, start) {
  const hasBody = /^(?:export )?(?:declare )?(?:abstract )?(?:interface|class)\b/.test(
    text.slice(start, start + 60),
  );
  const parts = /"(?:[^"\\]|\\.)*"|\/\*[\s\S]*?\*\/|`[^`]*`|[{}()[\];]/g;
  parts.lastIndex = start;
  let depth = 0;
  for (let one = parts.exec(text); one !== null; one = parts.exec(text)) {
    if ("{([".includes(one[0])) depth += 1;
    if ("})]".includes(one[0])) depth -= 1;
    if (depth === 0 && (one[0] === ";" || (hasBody && one[0] === "}"))) return parts.lastIndex;
  }
  return text.length;
}

/** The names that one statement declares. */
function declaredIn(text) {
  const [, kind, rest] =
    /^(?:export )?(?:declare )?(?:abstract )?(function|const|class|interface|type) (\w[\s\S]*)$/.exec(text) ??
    [];
  if (kind === undefined) return [];
  const clean = text.replace(/^export (declare )?/, "");
  if (kind !== "const" || !/^\w+: [\w.]+(?:, \w+: [\w.]+)+;$/.test(rest))
    return [{ name: /^\w+/.exec(rest)[0], kind, text: clean }];
  return rest
    .slice(0, -1)
    .split(", ")
    .map((one) => ({ name: one.split(":")[0], kind, text: `const ${one};` }));
}

/** A comment as its words, and its tags in their order: `{ tag, text }`. */
export function readComment(comment) {
  if (comment === undefined) return { words: "", tags: [] };
  const lines = comment
    .slice(3, -2)
    .split("\n")
    .map((line) => line.replace(/^\s*\* ?/, "").trimEnd());
  const [words, ...tagged] = lines
    .join("\n")
    .trim()
    .split(/\n(?=@\w)/);
  const both = words.startsWith("@") ? ["", words, ...tagged] : [words, ...tagged];
  return {
    words: both[0].trim(),
    tags: both.slice(1).map((text) => {
      const [, tag, rest] = /^@(\w+)\s*([\s\S]*)$/.exec(text);
      return { tag, text: rest.trim() };
    }),
  };
}

/** The package's own types that a declaration speaks of. */
function typesIn({ text, file, name }, read) {
  const bare = text.replace(/\/\*[\s\S]*?\*\/|"(?:[^"\\]|\\.)*"/g, "");
  const named = new Set(bare.match(/\b[A-Z]\w+/g) ?? []);
  named.delete(name);
  return [...named].flatMap((one) => {
    const found = findIn(read(file), one, read);
    return found === undefined ? [] : [{ name: one, found }];
  });
}
