/**
 * What a line of code may be changed into: each alternative is a mistake that somebody could make, of one place only.
 * A mutant is source text, so that what is reported is what one would see in the file.
 */
const ARITHMETIC = { "+": "-", "-": "+", "*": "/", "/": "*", "%": "*", "**": "*" };
const BITS = { "&": "|", "|": "&", "^": "&", "<<": ">>", ">>": "<<", ">>>": "<<" };
const BOUNDARY = { "<": "<=", "<=": "<", ">": ">=", ">=": ">" };
const REVERSED = { "<": ">=", "<=": ">", ">": "<=", ">=": "<", "===": "!==", "!==": "===" };
const ASSIGNING = { "+=": "-=", "-=": "+=", "*=": "/=", "/=": "*=" };
const STEPS = { "++": "--", "--": "++" };
const OTHER_OF_MATH = { min: "max", max: "min", floor: "ceil", ceil: "floor", round: "floor" };
const DROPPED_OF_MATH = new Set([
  "abs",
  "sqrt",
  "cbrt",
  "exp",
  "log",
  "log10",
  "sin",
  "cos",
  "tan",
  "tanh",
  "sign",
  "trunc",
]);
const OTHER_METHOD = { every: "some", some: "every" };
const DROPPED_METHODS = new Set(["filter", "slice", "sort", "toSorted", "reverse", "toReversed"]);

/**
 * @param node an expression
 * @param source the text of its file
 * @param isTest whether it decides a branch or a loop: then its being always true and always false stand for its reverse
 * @returns the texts that may stand in its place
 */
export function alternativesOf(node, source, isTest) {
  const text = ({ start, end }) => source.slice(start, end);
  switch (node.type) {
    case "BinaryExpression":
      return binaryAlternatives(node, text, isTest);
    case "LogicalExpression":
      return [text(node.left), text(node.right)];
    case "UnaryExpression":
      return node.operator === "-" || (node.operator === "!" && !isTest) ? [text(node.argument)] : [];
    case "UpdateExpression":
      return [
        node.prefix ? STEPS[node.operator] + text(node.argument) : text(node.argument) + STEPS[node.operator],
      ];
    case "AssignmentExpression":
      return Object.hasOwn(ASSIGNING, node.operator)
        ? [`${text(node.left)} ${ASSIGNING[node.operator]} ${text(node.right)}`]
        : [];
    case "CallExpression":
      return callAlternatives(node, text);
    case "Literal":
      return literalAlternatives(node);
    default:
      return [];
  }
}

function binaryAlternatives({ left, operator, right }, text, isTest) {
  if (isText(left) || isText(right)) return [];
  const others = [
    ARITHMETIC[operator] ?? BITS[operator] ?? BOUNDARY[operator],
    isTest ? undefined : REVERSED[operator],
  ];
  return others
    .filter((other) => other !== undefined)
    .map((other) => `${text(left)} ${other} ${text(right)}`);
}

const isText = ({ type, value }) =>
  type === "TemplateLiteral" || (type === "Literal" && typeof value === "string");

function callAlternatives({ callee, arguments: given, optional }, text) {
  if (callee.type !== "MemberExpression" || callee.computed || optional || callee.optional) return [];
  const name = callee.property.name;
  const all = given.map(text).join(", ");
  if (text(callee.object) === "Math") {
    if (Object.hasOwn(OTHER_OF_MATH, name)) return [`Math.${OTHER_OF_MATH[name]}(${all})`];
    return DROPPED_OF_MATH.has(name) ? [all] : [];
  }
  if (Object.hasOwn(OTHER_METHOD, name)) return [`${text(callee.object)}.${OTHER_METHOD[name]}(${all})`];
  return DROPPED_METHODS.has(name) && given.length > 0 ? [text(callee.object)] : [];
}

function literalAlternatives({ value, raw }) {
  if (typeof value === "boolean") return [String(!value)];
  if (typeof value === "bigint") return [`${raw} + 1n`];
  return typeof value === "number" ? [otherNumber(value, raw)] : [];
}

/**
 * A count or an exponent becomes one more, a figure that was measured 1 % more, a bare power of ten, which is a
 * tolerance, a thousand times as much.
 */
function otherNumber(value, raw) {
  if (/^\d(?:e-\d+)$/i.test(raw)) return String(value * 1000);
  if (Number.isInteger(value) && (value < 100 || raw.startsWith("0x"))) return String(value + 1);
  return Number.isInteger(value)
    ? String(Math.round(value * 1.01))
    : String(Number((value * 1.01).toPrecision(12)));
}
