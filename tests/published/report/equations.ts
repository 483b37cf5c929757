import { readdirSync, readFileSync } from "node:fs";
import { Session } from "node:inspector";

const LIBRARY = new URL("../../../packages/hydraulics/src/", import.meta.url);
const ORACLE = new URL("../../oracle/", import.meta.url);
/** Folders whose functions each carry an equation of the outside world. */
const FOLDERS = ["physics", "birds"];

/** An exported function whose docstring shows a numbered equation. */
export interface Equation {
  readonly file: string;
  readonly name: string;
}

export function listEquations(): Equation[] {
  return FOLDERS.flatMap((folder) =>
    readdirSync(new URL(`${folder}/`, LIBRARY))
      .sort()
      .flatMap((file) => {
        const text = readFileSync(new URL(`${folder}/${file}`, LIBRARY), "utf8");
        const found = text.matchAll(
          /\/\*\*(?:(?!\*\/)[\s\S])*?\(1\)\n(?:(?!\*\/)[\s\S])*\*\/\nexport function (\w+)/g,
        );
        return [...found].map(([, name]) => ({ file: `${folder}/${file}`, name: name! }));
      }),
  );
}

/**
 * Runs something, and tells which equations ran in it. Told by the engine, so that an equation which is reached
 * through others counts too.
 */
export function equationsRunIn<Result>(run: () => Result): { result: Result; ran: ReadonlySet<string> } {
  const session = new Session();
  session.connect();
  session.post("Profiler.enable");
  session.post("Profiler.startPreciseCoverage", { callCount: false, detailed: false });
  const result = run();
  const ran = new Set<string>();
  session.post("Profiler.takePreciseCoverage", (_error, taken) => {
    for (const { url, functions } of taken?.result ?? []) {
      const file = /hydraulics\/src\/((?:physics|birds)\/[\w-]+\.ts)/.exec(url)?.[1];
      if (file === undefined) continue;
      for (const { functionName, ranges } of functions) {
        if (ranges[0]!.count > 0) ran.add(`${file} ${functionName}`);
      }
    }
  });
  session.post("Profiler.stopPreciseCoverage");
  session.disconnect();
  return { result, ran };
}

/** Names that the comparisons with another implementation import by themselves. */
export function namesInOracle(): ReadonlySet<string> {
  const texts = readdirSync(ORACLE)
    .filter((name) => name.endsWith(".ts"))
    .map((name) => readFileSync(new URL(name, ORACLE), "utf8"));
  return new Set(texts.join("\n").match(/\w+/g));
}
