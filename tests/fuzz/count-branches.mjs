/**
 * Sources that count, as they run, which of their branches are taken: each block and each arrow's value adds one to a
 * counter of its own in `globalThis.__branches`.
 *
 * @param isCounted  says of a file, by its path, whether its branches are counted
 * @returns a plugin of the bundler; `count()` tells how many counters there are
 */
export function countBranches(isCounted) {
  let counters = 0;
  return {
    count: () => counters,
    plugin: {
      name: "count-branches",
      transform(code, id) {
        if (!isCounted(id)) return undefined;
        const marks = [];
        walk(this.parse(code), (node) => marks.push(...marksOf(node, () => `__branches[${counters++}]++`)));
        return { code: insert(code, marks), map: null };
      },
    },
  };
}

/** What is put into the text for a node, and where. */
function marksOf(node, next) {
  const around = (value) => [
    { at: value.start, text: `(${next()}, ` },
    { at: value.end, text: ")", isEnd: true },
  ];
  if (node.type === "BlockStatement") return [{ at: node.start + 1, text: `${next()};` }];
  if (node.type === "ArrowFunctionExpression" && node.body.type !== "BlockStatement")
    return around(node.body);
  if (node.type === "ConditionalExpression") return [...around(node.consequent), ...around(node.alternate)];
  if (node.type === "LogicalExpression") return around(node.right);
  return [];
}

/** Goes through a syntax tree, outer nodes first. */
function walk(node, visit) {
  visit(node);
  for (const value of Object.values(node)) {
    for (const one of Array.isArray(value) ? value : [value]) {
      if (typeof one?.type === "string") walk(one, visit);
    }
  }
}

/** Puts the marks in; at one place, ends stand before beginnings, inner ends before outer ones. */
function insert(code, marks) {
  const ordered = marks.map((mark, order) => ({ ...mark, order }));
  ordered.sort(
    (a, b) =>
      a.at - b.at ||
      Number(b.isEnd ?? false) - Number(a.isEnd ?? false) ||
      (a.isEnd ? b.order - a.order : a.order - b.order),
  );
  let text = "";
  let done = 0;
  for (const mark of ordered) {
    text += code.slice(done, mark.at) + mark.text;
    done = mark.at;
  }
  return text + code.slice(done);
}
