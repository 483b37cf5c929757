import { parseSync } from "vite";
import { alternativesOf } from "./alternatives.mjs";

/** Parts of a syntax tree that leave no trace when the program runs. */
const SILENT_KEYS = new Set([
  "typeAnnotation",
  "typeParameters",
  "typeArguments",
  "returnType",
  "superTypeArguments",
]);
const EXPRESSIONS_WITH_TYPES = new Set(["TSAsExpression", "TSNonNullExpression", "TSSatisfiesExpression"]);
// What is thrown is not judged here: the tests of refusals read it word for word.
const LEFT_ALONE = new Set(["ThrowStatement", "ImportDeclaration", "ExportAllDeclaration"]);
/** Where words are written, the figures within them are judged too; elsewhere a text is a key or a name. */
const WRITES_WORDS = /^report\//;
const FUNCTIONS = new Set(["FunctionDeclaration", "FunctionExpression", "ArrowFunctionExpression"]);

/**
 * Finds the places of a file that can be changed.
 *
 * @returns places, by range: kind "value" (an expression and what may stand for it), "statement" (which may be left
 *   out) "body" (of a function in no other) or "constant" (of the file), and the files it imports
 */
export function findPlaces(path, source) {
  const { program, errors } = parseSync(path, source);
  if (errors.length > 0) throw new Error(`${path}: ${errors[0].message}`);
  const places = new Map();
  const add = (kind, { start, end }, more) => {
    const key = `${kind} ${start} ${end}`;
    const place = places.get(key) ?? { kind, start, end, alternatives: [] };
    place.alternatives.push(...(more.alternatives ?? []));
    places.set(key, { ...place, isExpression: more.isExpression, parts: more.parts });
  };
  visit(program, { add, source, isInFunction: false, writesWords: WRITES_WORDS.test(path) });
  for (const statement of program.body) addConstant(statement, add);
  const imports = program.body.filter(({ type, source: from }) => /Declaration$/.test(type) && from?.value);
  return { places: [...places.values()], imports: imports.map(({ source: from }) => from.value) };
}

/** What a file works out when it is imported is worked out again when a mutant is switched on that has to do with it. */
function addConstant(statement, add) {
  const declaration = statement.type === "ExportNamedDeclaration" ? statement.declaration : statement;
  if (declaration?.type !== "VariableDeclaration" || declaration.kind !== "const") return;
  if (declaration.declarations.some(({ id, init }) => id.type !== "Identifier" || FUNCTIONS.has(init?.type)))
    return;
  const parts = declaration.declarations.map(({ id, init }) => ({ name: id.name, init }));
  add("constant", declaration, { parts });
}

function visit(node, state) {
  if (isSilent(node, state)) return;
  addStatement(node, state);
  addTest(node, state);
  if (!state.isTarget) addValue(node, state);
  const isOuterFunction = FUNCTIONS.has(node.type) && node.body !== null && !state.isInFunction;
  if (isOuterFunction) state.add("body", node.body, { isExpression: node.body.type !== "BlockStatement" });
  const inside = { ...state, isTarget: false, isTest: false, isCounting: false };
  for (const [key, child] of partsOf(node)) {
    visit(child, {
      ...inside,
      isInFunction: state.isInFunction || (FUNCTIONS.has(node.type) && key === "body"),
      isTarget: isTargetOf(node, key),
      isTest: key === "test" && node.type !== "SwitchCase",
      isCounting: node.type === "ForStatement" && key === "update",
    });
  }
}

const isSilent = ({ type }, { writesWords }) =>
  LEFT_ALONE.has(type) ||
  (type === "TemplateLiteral" && !writesWords) ||
  (type.startsWith("TS") && !EXPRESSIONS_WITH_TYPES.has(type));

/** What is written to is no value; nor is a name of a key. */
const isTargetOf = ({ type }, key) =>
  (type === "AssignmentExpression" && key === "left") || (type === "UpdateExpression" && key === "argument");

function* partsOf(node) {
  for (const [key, value] of Object.entries(node)) {
    if (SILENT_KEYS.has(key) || value === null || typeof value !== "object") continue;
    if ((key === "key" || key === "property") && !node.computed) continue;
    if (key === "test" && node.type === "SwitchCase") continue;
    for (const one of Array.isArray(value) ? value : [value]) {
      if (typeof one?.type === "string") yield [key, one];
    }
  }
}

function addStatement(node, { add }) {
  const { type } = node;
  const isCall = type === "ExpressionStatement" && !("directive" in node && node.directive);
  const isJump = type === "ContinueStatement" || type === "BreakStatement";
  if (isCall || isJump || (type === "ReturnStatement" && node.argument === null)) {
    add("statement", node, { alternatives: [""] });
  }
}

/** A branch taken always and never; a loop never entered. What joins two claims loses each instead. */
function addTest(node, { add }) {
  const { type, test } = node;
  if (!test || type === "SwitchCase" || test.type === "LogicalExpression") return;
  const isLoop = /^(For|While|DoWhile)Statement$/.test(type);
  add("value", test, { alternatives: isLoop ? ["false"] : ["true", "false"] });
}

function addValue(node, { add, source, isTest, isCounting }) {
  if (isCounting && node.type === "UpdateExpression") return;
  const alternatives = alternativesOf(node, source, isTest);
  if (alternatives.length > 0) add("value", node, { alternatives });
}
