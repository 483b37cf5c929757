/**
 * JSON Schemas of types of the library, by asking the compiler what each type holds. What JSON leaves out (undefined) is
 * optional; a named type that is met stands once, among the definitions.
 */
import { API } from "typescript/unstable/sync";

const FLAGS = {
  any: 3,
  undefined: 4,
  null: 8,
  string: 32,
  number: 64,
  boolean: 256,
  literal: 15360,
  object: 1048576,
  union: 134217728,
  intersection: 268435456,
};
const OPTIONAL = 16_777_216;
const NOT_NAMES = new Set([
  "__type",
  "__object",
  "Array",
  "ReadonlyArray",
  "Readonly",
  "Record",
  "Omit",
  "Pick",
  "Partial",
  "Required",
]);

/** Opens a project for asking; `close` it when done. */
export function openTypes(config) {
  const api = new API();
  const project = api.updateSnapshot({ openProjects: [config] }).getProject(config);
  if (project === undefined) throw new Error(`There is no project ${config}.`);
  return { checker: project.checker, program: project.program, project, close: () => api.close() };
}

/** What a function of the library gives, as a schema with its definitions. */
export function schemaOfResult(types, file, name) {
  const { checker, program } = types;
  const source = program.getSourceFile(file);
  const symbol = checker
    .getExportsOfModule(checker.getSymbolAtLocation(source))
    .find((one) => one.name === name);
  if (symbol === undefined) throw new Error(`${file} has no ${name}.`);
  const [signature] = checker.getSignaturesOfType(checker.getTypeOfSymbol(symbol), 0);
  const definitions = new Map();
  const schema = schemaOf(checker.getReturnTypeOfSignature(signature), {
    checker,
    definitions,
    within: [],
    isTop: true,
  });
  const named = [...definitions.values()].filter(({ schema }) => schema !== undefined);
  const $defs = Object.fromEntries(
    named.map(({ name: key, schema: one }) => [key, one]).sort(([one], [other]) => (one < other ? -1 : 1)),
  );
  return { ...schema, ...(named.length === 0 ? {} : { $defs }) };
}

function schemaOf(type, asked) {
  if (type.flags & FLAGS.any) return {};
  if (type.flags & FLAGS.null) return { type: "null" };
  if (type.flags & FLAGS.literal) return { const: type.value };
  if (type.flags & FLAGS.string) return { type: "string" };
  if (type.flags & FLAGS.number) return { type: "number" };
  if (type.flags & FLAGS.boolean) return { type: "boolean" };
  if (type.flags & FLAGS.union) return namedOr(type, asked, schemaOfUnion);
  if (type.flags & (FLAGS.object | FLAGS.intersection)) {
    if (asked.checker.isTupleType(type) || asked.checker.isArrayType(type)) return schemaOfList(type, asked);
    return namedOr(type, asked, schemaOfObject);
  }
  throw new Error(`No schema for ${asked.checker.typeToString(type)}`);
}

/** A type that has a name, as a reference to its definition; another one where it stands. */
function namedOr(type, asked, write) {
  const name = nameOf(type);
  if (asked.isTop || name === undefined) return write(type, { ...asked, isTop: false });
  const { definitions } = asked;
  if (!definitions.has(type.id)) {
    const taken = [...definitions.values()].filter((one) => one.base === name).length;
    const entry = { base: name, name: taken === 0 ? name : `${name}${taken + 1}`, schema: undefined };
    definitions.set(type.id, entry);
    entry.schema = write(type, { ...asked, isTop: false });
  }
  return { $ref: `#/$defs/${definitions.get(type.id).name}` };
}

function nameOf(type) {
  const name = type.getAliasSymbol()?.name ?? (type.flags & FLAGS.union ? undefined : type.getSymbol()?.name);
  return name === undefined || NOT_NAMES.has(name) || !/^[A-Z]/.test(name) ? undefined : name;
}

function schemaOfList(type, asked) {
  const { checker } = asked;
  const items = checker.getTypeArguments(type);
  if (checker.isArrayType(type)) return { type: "array", items: schemaOfItem(items[0], asked) };
  const prefixItems = items.map((item) => schemaOfItem(item, asked));
  return { type: "array", prefixItems, minItems: items.length, maxItems: items.length };
}

/** In a list JSON writes null for what is undefined. */
function schemaOfItem(type, asked) {
  const schema = schemaOf(type, asked);
  return holdsUndefined(type) ? { anyOf: [schema, { type: "null" }] } : schema;
}

function schemaOfUnion(type, asked) {
  const kept = type.getTypes().filter((one) => !(one.flags & FLAGS.undefined));
  const literals = kept.filter((one) => one.flags & FLAGS.literal);
  const others = kept.filter((one) => !(one.flags & FLAGS.literal));
  const parts = others.map((one) => schemaOf(one, asked));
  const values = literals.map(({ value }) => value);
  if (values.length === 2 && values.includes(true) && values.includes(false)) parts.push({ type: "boolean" });
  else if (values.length === 1) parts.push({ const: values[0] });
  else if (values.length > 1) parts.push({ enum: values.sort() });
  // What may be anything says nothing.
  if (parts.some((part) => Object.keys(part).length === 0)) return {};
  const unlike = [...new Map(parts.map((part) => [JSON.stringify(part), part])).values()];
  return unlike.length === 1 ? unlike[0] : { anyOf: unlike };
}

function schemaOfObject(type, asked) {
  const { checker } = asked;
  const index = checker.getIndexInfosOfType(type)[0];
  const entries = checker.getPropertiesOfType(type).flatMap((symbol) => {
    const held = checker.getTypeOfSymbol(symbol);
    if (held.flags & FLAGS.undefined) return [];
    const description = checker.getDocumentationCommentOfSymbol(symbol).replace(/\s+/g, " ").trim();
    const schema = schemaOf(held, asked);
    const mayMiss = (symbol.flags & OPTIONAL) !== 0 || holdsUndefined(held);
    return { name: symbol.name, mayMiss, schema: description === "" ? schema : { description, ...schema } };
  });
  if (entries.length === 0 && index === undefined) return {};
  const required = entries.filter(({ mayMiss }) => !mayMiss).map(({ name }) => name);
  return {
    type: "object",
    ...(entries.length === 0
      ? {}
      : { properties: Object.fromEntries(entries.map(({ name, schema }) => [name, schema])) }),
    ...(required.length === 0 ? {} : { required }),
    ...(index === undefined ? {} : { additionalProperties: schemaOf(index.valueType, asked) }),
  };
}

const holdsUndefined = (type) =>
  (type.flags & FLAGS.undefined) !== 0 ||
  ((type.flags & FLAGS.union) !== 0 && type.getTypes().some((one) => one.flags & FLAGS.undefined));
