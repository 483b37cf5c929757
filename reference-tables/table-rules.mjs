/**
 * The rules a reference table must keep, read from `<table>.about.json` and run on every row.
 *
 * A rule is one line:
 *   expression (= expression ± tolerance | <= | < | >= | > expression) [where column is text]
 *   column in text | text | text [where column is text]
 *   column matches pattern [where column is text]
 * Expressions know + - * / ^ ( ), numbers, pi, column names, min(a, b), max(a, b), number(column), and
 * inches(column) for sizes such as 1-1/4. A row with a blank in any column that the rule names is passed over.
 */

const TOKEN = /\s*(\d+(?:\.\d+)?(?:e\d+)?|[a-z_][a-z_0-9]*|[-+*/^(),])/y;

/** Value of a size in inches written as a fraction: "1-1/4" is 1.25. */
export function inches(text) {
  return text
    .split("-")
    .map((part) => part.split("/").map(Number))
    .reduce((sum, [top, bottom = 1]) => sum + top / bottom, 0);
}

function splitTokens(text) {
  const tokens = [];
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < text.trimEnd().length) {
    const found = TOKEN.exec(text);
    if (found === null) throw new SyntaxError(`rule: cannot read "${text}"`);
    tokens.push(found[1]);
  }
  return tokens;
}

/** A small descent: sum of products of powers of atoms. Answers undefined when a column is blank. */
function evaluate(text, row) {
  const tokens = splitTokens(text);
  let at = 0;
  const next = () => tokens[at++];
  const cell = (name) => {
    if (!(name in row)) throw new SyntaxError(`rule: no column "${name}"`);
    return row[name];
  };
  const atom = () => {
    const token = next();
    if (token === "(") {
      const inside = sum();
      next();
      return inside;
    }
    if (token === "-") return -atom();
    if (/^\d/.test(token)) return Number(token);
    if (token === "pi") return Math.PI;
    if (token === "min" || token === "max") {
      next();
      const first = sum();
      next();
      const second = sum();
      next();
      return Math[token](first, second);
    }
    if (token === "inches" || token === "number") {
      next();
      const text = cell(next());
      next();
      return token === "inches" ? inches(text) : Number(text);
    }
    return cell(token) === "" ? Number.NaN : Number(cell(token));
  };
  const power = () => {
    const base = atom();
    if (tokens[at] !== "^") return base;
    next();
    return base ** atom();
  };
  const product = () => {
    let value = power();
    while (tokens[at] === "*" || tokens[at] === "/")
      value = next() === "*" ? value * power() : value / power();
    return value;
  };
  const sum = () => {
    let value = product();
    while (tokens[at] === "+" || tokens[at] === "-")
      value = next() === "+" ? value + product() : value - product();
    return value;
  };
  const value = sum();
  if (at !== tokens.length) throw new SyntaxError(`rule: cannot read "${text}"`);
  return Number.isNaN(value) ? undefined : value;
}

function compare(left, operator, right, tolerance) {
  if (operator === "=") return Math.abs(left - right) <= tolerance + 1e-9;
  if (operator === "<=") return left <= right;
  if (operator === "<") return left < right;
  if (operator === ">=") return left >= right;
  return left > right;
}

/** True, false, or undefined where the rule does not speak of this row. */
export function checkRule(rule, row) {
  const [claim, where] = rule.split(" where ");
  if (where !== undefined) {
    const [column, wanted] = where.split(" is ");
    if (!(column in row)) throw new SyntaxError(`rule: no column "${column}"`);
    if (row[column] !== wanted) return undefined;
  }
  const matches = claim.match(/^(\w+) matches (.+)$/);
  if (matches !== null) return new RegExp(matches[2]).test(row[matches[1]] ?? "");
  const among = claim.match(/^(\w+) in (.+)$/);
  if (among !== null) {
    const text = row[among[1]];
    if (text === undefined) throw new SyntaxError(`rule: no column "${among[1]}"`);
    return text === "" ? undefined : among[2].split(" | ").includes(text);
  }
  const parts = claim.match(/^(.+?) (=|<=|<|>=|>) (.+?)(?: ± (.+))?$/);
  if (parts === null) throw new SyntaxError(`rule: cannot read "${rule}"`);
  const left = evaluate(parts[1], row);
  const right = evaluate(parts[3], row);
  if (left === undefined || right === undefined) return undefined;
  return compare(left, parts[2], right, Number(parts[4] ?? 0));
}

/** Every break of a rule, as a sentence; and how many rows each rule spoke of. */
export function checkRows(rules, rows) {
  const broken = [];
  const spokenOf = new Map(rules.map((rule) => [rule, 0]));
  for (const rule of rules) {
    for (const row of rows) {
      const holds = checkRule(rule, row);
      if (holds === undefined) continue;
      spokenOf.set(rule, spokenOf.get(rule) + 1);
      if (!holds) broken.push(`${row.id} (${row.source}): breaks "${rule}"`);
    }
  }
  return { broken, spokenOf };
}
