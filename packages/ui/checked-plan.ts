import { readFile } from "node:fs/promises";
import type { Plan } from "@headfall/hydraulics";
import type { Plugin } from "vite";

/** How a module asks for a plan file that is known to be good: `import plan from "./example.json?plan"`. */
const ASKED = /\?plan$/;

/**
 * Checks plans that come with the page when it is built, so that the page need not: what checks a plan is larger than all that
 * shows its verdict. The module is the plan as the library reads it; a faulty plan fails the build with all its problems.
 */
export function checkedPlans(): Plugin {
  return {
    name: "headfall-checked-plans",
    enforce: "pre",
    async load(id) {
      if (!ASKED.test(id)) return undefined;
      const path = id.replace(ASKED, "");
      this.addWatchFile(path);
      const plan = await checkedPlan(path, await readFile(path, "utf8"));
      return { code: `export default ${JSON.stringify(plan)};`, moduleType: "js" };
    },
  };
}

/**
 * A plan as the library reads it.
 *
 * @throws Error with every problem of a faulty one
 */
export async function checkedPlan(path: string, text: string): Promise<Plan> {
  // Only a build needs it; whoever serves what is built does not wait for it to load.
  const { readPlan, writeProblem } = await import("@headfall/hydraulics");
  const reading = readPlan(text);
  if (reading.ok) return reading.plan;
  throw new Error([`${path} is no plan:`, ...reading.problems.map((each) => writeProblem(each))].join("\n"));
}
