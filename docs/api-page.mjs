/** The text of one page of the reference: every public name of a folder of the sources. */
import { PARAMETERS } from "./api-parameters.mjs";

const LONGEST = 700;

/**
 * A page of the reference.
 *
 * @param title    of the page
 * @param names    what `readApi` found there
 * @param linkTo   from a type's declaration to its place in the reference; undefined where it is not public
 * @param sources  the sources of the tables, by key
 */
export function writePage({ title, names, linkTo, sources }) {
  const sections = names.map((one) => sectionOf(one, linkTo));
  const keys = new Set(
    names.flatMap(({ comment }) => taggedIn(comment, "source").map((text) => /^[\w-]+/.exec(text)?.[0])),
  );
  const cited = [...keys].filter((key) => sources[key] !== undefined).sort();
  const list = cited.map((key) => `- \`${key}\`: ${citationOf(sources[key])}`);
  return [
    `# ${title}`,
    "Written by `npm run api` from the comments in the sources. [All names](README.md).",
    ...sections,
    ...(list.length === 0 ? [] : ["## Sources", list.join("\n")]),
    "",
  ]
    .join("\n\n")
    .replace(/\n+$/, "\n");
}

function sectionOf(one, linkTo) {
  const { name, comment, path } = one;
  return [
    `## ${name}`,
    paragraphs(comment.words),
    `\`\`\`ts\n${signatureOf(one)}\n\`\`\``,
    parametersOf(one, linkTo),
    ...told(comment, "returns", "Returns"),
    ...told(comment, "valid", "Valid"),
    ...told(comment, "throws", "Throws"),
    ...told(comment, "source", "Source"),
    ...taggedIn(comment, "example").map((text) => `\`\`\`ts\n${text}\n\`\`\``),
    typesOf(one, linkTo),
    `In \`${path}.ts\`.`,
  ]
    .filter((part) => part !== "")
    .join("\n\n");
}

const taggedIn = ({ tags }, tag) => tags.filter((one) => one.tag === tag).map(({ text }) => text);

const told = (comment, tag, word) => taggedIn(comment, tag).map((text) => `${word}: ${oneLine(text)}`);

const oneLine = (text) => text.replace(/\s*\n\s*/g, " ");

/** Prose as it stands; equations and columns, which are set in, as blocks of their own. */
function paragraphs(words) {
  const isSet = (line) => /^ {2,}\S|\S {3,}\S/.test(line);
  const blocks = words.split(/\n\n+/).flatMap((block) => {
    const parts = [];
    for (const line of block.split("\n")) {
      const kind = isSet(line) ? "set" : "prose";
      if (parts.at(-1)?.kind === kind) parts.at(-1).lines.push(line);
      else parts.push({ kind, lines: [line] });
    }
    return parts;
  });
  return blocks
    .map(({ kind, lines }) =>
      kind === "set"
        ? `\`\`\`text\n${lines.map((line) => line.replace(/^ {2}/, "")).join("\n")}\n\`\`\``
        : lines.join("\n"),
    )
    .join("\n\n");
}

/** The declaration; a long result of a function, a long list and the inside of a class are left out. */
function signatureOf({ kind, text }) {
  const short = text.replaceAll(/import\("[^"]*"\)\./g, "");
  if (kind === "class") return short.slice(0, short.indexOf("{")).trim();
  if (short.length <= LONGEST || kind === "interface" || kind === "type") return short;
  const end = kind === "function" ? endOfParameters(short) : short.indexOf(":");
  return `${short.slice(0, end)}: …`;
}

/** Behind the bracket that closes the parameters. */
function endOfParameters(text) {
  let depth = 0;
  for (let at = text.indexOf("("); at < text.length; at += 1) {
    if ("({[".includes(text[at])) depth += 1;
    if (")}]".includes(text[at])) depth -= 1;
    if (depth === 0) return at + 1;
  }
  return text.length;
}

/** Whether a name is a function. */
export const isFunction = ({ kind, text }) =>
  kind === "function" || (kind === "const" && /^const \w+: (?:<[^>]*>)?\(/.test(text));

function parametersOf(one, linkTo) {
  if (!isFunction(one)) return "";
  const said = taggedIn(one.comment, "param").map((text) => {
    const [, name, meaning] = /^(\S+)\s+([\s\S]*)$/.exec(text);
    return [name.replace(/^\[|\]$/g, ""), oneLine(meaning)];
  });
  const rows = [
    ...said,
    ...parametersIn(one.text).flatMap((parameter) => rowOf(parameter, { one, said, linkTo })),
  ];
  if (rows.length === 0) return "";
  return [
    "| parameter | meaning |",
    "|---|---|",
    ...rows.map(([name, meaning]) => `| \`${name}\` | ${meaning.replaceAll("|", "\\|")} |`),
  ].join("\n");
}

/** A parameter that the comment does not speak of: what its type says, or what such parameters mean everywhere. */
function rowOf({ name, type }, { one, said, linkTo }) {
  if (said.some(([known]) => known === name || known.startsWith(`${name}.`) || name === "")) return [];
  const found = one.types.find((each) => new RegExp(`\\b${each.name}\\b`).test(type));
  const link = found && linkTo(found.found);
  const meaning = PARAMETERS[name];
  if (name === "" && link === undefined) return [];
  if (link !== undefined && type !== "UnitSystem")
    return [[name === "" ? "{ … }" : name, `a [${found.name}](${link})`]];
  if (meaning === undefined) throw new Error(`${one.name}: nothing says what its parameter ${name} is.`);
  return [[name, meaning]];
}

/** The parameters of a function: name (none where it is taken apart) and type. */
export function parametersIn(text) {
  const start = text.indexOf("(") + 1;
  const parts = [""];
  let depth = 0;
  for (let at = start; at < text.length && depth >= 0; at += 1) {
    const sign = text[at];
    if ("({[<".includes(sign)) depth += 1;
    if (")}]".includes(sign) || (sign === ">" && text[at - 1] !== "=")) depth -= 1;
    if (depth === 0 && sign === ",") parts.push("");
    else if (depth >= 0) parts[parts.length - 1] += sign;
  }
  return parts
    .map((part) => part.trim())
    .filter((part) => part !== "")
    .map((part) => {
      const [, name = "", type] = /^(?:\.\.\.)?(?:(\w+)|\{[\s\S]*?\})\??: ([\s\S]*)$/.exec(part) ?? [];
      return { name, type };
    });
}

function typesOf({ types }, linkTo) {
  const links = types.flatMap(({ name, found }) => {
    const link = linkTo(found);
    return link === undefined ? [] : [`[${name}](${link})`];
  });
  return links.length === 0 ? "" : `Types: ${links.join(", ")}.`;
}

function citationOf({ authors, title, publisher, year }) {
  return [authors, title, publisher, year].filter((part) => part !== undefined && part !== "").join(", ");
}
