import { parseSync } from "vite";

/**
 * Writes a test file so that what it works out when it is imported can be worked out again, with a mutant switched on:
 * all but its imports becomes the body of a function.
 *
 * @param path  of the file
 * @param call  names what is given the file's name and that function, and the module it comes from
 * @returns the text; undefined where the file has exports of its own, or waits at its top
 */
export function writeTestFile(path, source, { name, call, from }) {
  const { program, errors } = parseSync(path, source);
  if (errors.length > 0) throw new Error(`${path}: ${errors[0].message}`);
  const imports = program.body.filter(({ type }) => type === "ImportDeclaration");
  if (program.body.some(({ type }) => /^Export/.test(type)) || /^(const .*= )?await /m.test(source))
    return undefined;
  let rest = source;
  for (const { start, end } of imports)
    rest = rest.slice(0, start) + " ".repeat(end - start) + rest.slice(end);
  return [
    `import { ${call} } from ${JSON.stringify(from)};`,
    ...imports.map(({ start, end }) => source.slice(start, end)),
    `${call}(${JSON.stringify(name)}, () => {\n${rest}\n});`,
  ].join("\n");
}
