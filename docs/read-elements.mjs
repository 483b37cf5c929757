/**
 * Reads what the sources of packages/ui say of themselves: doc comments, static properties, constructors, events,
 * edits. It leans on the habits they are written by, which the formatter keeps; where a comment is missing, it fails.
 */
import { readdirSync, readFileSync } from "node:fs";

const src = new URL("../packages/ui/src/", import.meta.url);
const readSource = (path) => readFileSync(new URL(path, src), "utf8");
const sources = readdirSync(src, { recursive: true })
  .filter((path) => path.endsWith(".ts"))
  .map((path) => ({ path: path.replaceAll("\\", "/"), text: readSource(path) }));

/** Every registered element, by tag, in the order they are registered. */
export function readElements() {
  return ["define.ts", "define-rest.ts", "define-rooms.ts"].flatMap((file) => {
    const text = readSource(file);
    const registered = text.matchAll(/^ {2}"(headfall-[\w-]+)": (Headfall\w+),$/gm);
    return [...registered].map(([, tag, name]) => {
      const path = new RegExp(`import \\{ ${name} \\} from "\\./(.*)\\.js"`).exec(text)?.[1];
      return readElement(tag, name, `${path}.ts`, file);
    });
  });
}

function readElement(tag, name, path, definedBy) {
  const text = readSource(path);
  const { comment, body: own, base } = readClass(text, name);
  const body = `${inheritedBy(text, base, path)}${own}`;
  const said = readTags(comment);
  if (said.element !== tag)
    throw new Error(`${path}: @element says ${said.element}, it is registered as ${tag}.`);
  const members = readMembers(body, path);
  const properties = readProperties(body, members, path);
  const isProperty = ({ name: member }) => properties.some((each) => each.name === member);
  const parts = said.csspart ?? [];
  expectParts(path, parts);
  return {
    ...{ tag, name, path, definedBy: definedBy.replace(".ts", ""), properties, parts },
    purpose: said.words,
    events: said.fires ?? [],
    results: members.filter((member) => member.kind === "result" && !isProperty(member)),
    methods: members.filter(({ kind }) => kind === "method"),
  };
}

/** The lines inside a class of this package that another one builds on; none where that is a library's. */
function inheritedBy(text, base, path) {
  const from = new RegExp(`import \\{ ${base} \\} from "(\\..*)\\.js"`).exec(text)?.[1];
  if (from === undefined) return "";
  const file = new URL(`${from}.ts`, new URL(path, src)).pathname.slice(src.pathname.length);
  return `${readClass(readSource(file), base).body}\n`;
}

/** A class with the comment before it, the lines inside it, and the class it builds on. */
function readClass(text, name) {
  const found = new RegExp(
    `/\\*\\*((?:(?!\\*/)[\\s\\S])*)\\*/\\nexport (?:abstract )?class ${name}\\b(?: extends (\\w+))?[^\\n]* \\{\\n([\\s\\S]*?)\\n\\}\\n`,
  ).exec(text);
  if (found === null) throw new Error(`There is no class ${name} with a comment before it.`);
  return { comment: plain(found[1]), base: found[2], body: found[3] };
}

/** A comment without its stars. */
const plain = (comment) =>
  comment
    .split("\n")
    .map((line) => line.replace(/^\s*\*? ?/, "").trimEnd())
    .join("\n")
    .trim();

/** A comment's words, and what stands behind its tags: `@fires name  words`, `@csspart one two  words`. */
function readTags(comment) {
  const [words, ...tagged] = comment.split(/\n(?=@)/);
  const said = { words: words.replaceAll("\n", " ").trim() };
  for (const line of tagged) {
    const [, tag, rest] = /^@(\w+)\s+([\s\S]*)$/.exec(line.replaceAll("\n", " "));
    const [names, meaning] = rest.split(/\s{2,}/);
    if (tag === "element") said.element = names;
    else if (meaning === undefined) throw new Error(`"@${line}" has no words behind its name.`);
    else said[tag] = [...(said[tag] ?? []), ...names.split(" ").map((name) => ({ name, meaning }))];
  }
  return said;
}

const MEMBER =
  /^(?: {2}\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\n)? {2}(?!(?:if|for|return|super)\b)(declare |get |readonly |async )?([a-z]\w*)(?:(\([^\n]*?\)): ([^\n{]+) \{|: ((?:[^\n=;]|=>)+)(?: = [^\n]*)?;)$/gm;

/** What a class offers to others: declared properties, getters, methods; without what says @internal. */
function readMembers(body, path) {
  const seen = [...body.matchAll(MEMBER)].map(([, comment, word, name, parameters, returns, type]) => ({
    name,
    comment: comment && plain(comment).replaceAll("\n", " "),
    kind: parameters === undefined ? "declared" : word === "get " ? "result" : "method",
    parameters: parameters ?? "",
    type: (type ?? returns).trim(),
  }));
  const open = seen.filter(({ comment }) => !comment?.startsWith("@internal"));
  for (const { name, comment } of open)
    if (comment === undefined) throw new Error(`${path}: ${name} has no comment that says what it is.`);
  return open;
}

/** The reactive properties that are not the element's own state, each with attribute, type, meaning, default. */
function readProperties(body, members, path) {
  const listed = [...body.matchAll(/static override properties(?:: \w+)? = \{\n([\s\S]*?)\n {2}\};/g)];
  const entries = listed.flatMap(([, lines]) => [...lines.matchAll(/^ {4}(\w+): \{(.*)\},$/gm)]);
  return entries
    .filter(([, , options]) => !options.includes("state: true"))
    .map(([, name, options]) => {
      const member = members.find((each) => each.name === name);
      if (member === undefined)
        throw new Error(`${path}: the property ${name} has no comment that says what it is.`);
      return {
        ...{ name, type: member.type, meaning: member.comment },
        attribute: options.includes("attribute: false") ? undefined : name.toLowerCase(),
        isReflected: options.includes("reflect: true"),
        fallback: defaultOf(body, name),
      };
    });
}

function defaultOf(body, name) {
  const value = new RegExp(`^ {4}this\\.${name} = (.*);$`, "m").exec(body)?.[1];
  return value === undefined || value === "undefined" ? undefined : value;
}

/** Every part that is promised is there, and every one that is there is promised. */
function expectParts(path, promised) {
  const texts = reachedInFolder(path).map((each) => readSource(each));
  const written = texts.flatMap((text) => wordsOf(text, /\bpart="([\w -]+)"/g));
  const computed = texts
    .filter((text) => text.includes("part=${"))
    .flatMap((text) => wordsOf(text, /"([\w-]+)"/g));
  const names = promised.map(({ name }) => name);
  const missing = names.find((name) => !written.includes(name) && !computed.includes(name));
  if (missing !== undefined)
    throw new Error(`${path}: there is no part "${missing}", as its comment promises.`);
  const untold = written.find((name) => !names.includes(name));
  if (untold !== undefined) throw new Error(`${path}: the comment does not tell of the part "${untold}".`);
}

const wordsOf = (text, pattern) => [...text.matchAll(pattern)].flatMap(([, words]) => words.split(" "));

/** The files of an element's own folder that it is made from. */
function reachedInFolder(path) {
  const folder = path.slice(0, path.lastIndexOf("/") + 1);
  const reached = new Set([path]);
  for (const each of reached) {
    for (const [, from] of readSource(each).matchAll(/(?:from |import\()"(\.[^"]+)\.js"/g)) {
      const file = `${new URL(`${from}.ts`, new URL(each, src)).pathname.slice(src.pathname.length)}`;
      if (file.startsWith(folder)) reached.add(file);
    }
  }
  return [...reached];
}

/** Every event class: its name, what it tells, and its fields. */
export function readEvents() {
  return sources
    .flatMap(({ text }) =>
      [...text.matchAll(/export class (\w+Event) extends Event \{/g)].map(([, name]) => ({ name, text })),
    )
    .map(({ name, text }) => {
      const { comment, body } = readClass(text, name);
      const event = /eventName = "([\w-]+)"/.exec(body)[1];
      const fields = [...body.matchAll(/(?:\/\*\* (.*) \*\/\s+)?readonly (\w+\??): ([^\n]*?),?\)? ?\{?$/gm)];
      return {
        ...{ event, name, meaning: comment.replaceAll("\n", " ") },
        fields: fields.map(([, meaning, field, type]) => ({ text: `${field}: ${type}`, meaning })),
      };
    })
    .sort((one, other) => (one.event < other.event ? -1 : 1));
}

/** Every edit of PlanChange: kind, fields, what it does. */
export function readEdits() {
  const union = readType("store/plan-change.ts", "PlanChange");
  const edits = [
    ...union.matchAll(
      /(?:\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\n {2})?\| (\{[\s\S]*?\})(?=;?$|\n {2}(?:\||\/\*\*))/gm,
    ),
  ];
  return edits.map(([, comment, body]) => {
    const kind = /readonly kind: "(\w+)"/.exec(body)[1];
    if (comment === undefined) throw new Error(`plan-change.ts: the edit ${kind} has no comment.`);
    return { kind, meaning: plain(comment).replaceAll("\n", " "), fields: fieldsOf(body) };
  });
}

/** The fields of an edit but its kind, as `name: type`; a field with a comment of its own keeps it in brackets. */
function fieldsOf(body) {
  const inside = body.slice(1, -1).replaceAll(/\s+/g, " ");
  const fields = splitOutside(inside).filter((field) => !field.includes('kind: "'));
  return fields.map((field) => {
    const [, meaning, text] = /^(?:\/\*\* (.*?) \*\/ )?readonly (.*)$/.exec(field);
    return { text: text.replaceAll("readonly ", ""), meaning };
  });
}

/** Cut at semicolons that stand in no bracket and no comment. */
function splitOutside(text) {
  const parts = [""];
  let depth = 0;
  for (const [sign] of text.matchAll(/\/\*\*.*?\*\/|./g)) {
    depth += "{([".includes(sign) ? 1 : "})]".includes(sign) ? -1 : 0;
    if (sign === ";" && depth === 0) parts.push("");
    else parts[parts.length - 1] += sign;
  }
  return parts.map((part) => part.trim()).filter((part) => part !== "");
}

/** A type or an interface as it stands in a file. */
export function readType(path, name) {
  const text = readSource(path);
  const found = new RegExp(
    `^export (?:type ${name} =[\\s\\S]*?;$(?=\\n(?:\\n|\\S|$))|interface ${name} [\\s\\S]*?^\\})`,
    "m",
  ).exec(text);
  if (found === null) throw new Error(`${path} has no type ${name}.`);
  return found[0];
}

/** What a class offers: its results and its methods. */
export function readOffered(path, name) {
  return readMembers(readClass(readSource(path), name).body, path);
}

/** The custom properties, each with its meaning and what stands in its place in light and in dark. */
export function readColours() {
  const path = "styles/tokens.ts";
  const text = readSource(path);
  const told = new Map(
    [...text.matchAll(/@cssprop (--[\w-]+) {2}(.*)$/gm)].map(([, name, meaning]) => [name, meaning]),
  );
  const used = [...text.matchAll(/var\((--headfall-[\w-]+), (?:light-dark\(([^,]+), ([^)]+)\)|([^)]+))\)/g)];
  return used.map(([, name, light, dark, other]) => {
    const meaning = told.get(name);
    if (meaning === undefined) throw new Error(`${path}: no @cssprop says what ${name} is.`);
    return { name, meaning, fallback: other ?? `${light}, in the dark ${dark}` };
  });
}
