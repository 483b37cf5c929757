import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** Tests read the sources, so that a failing line is the line one edits. */
export default defineConfig({
  root: here(".."),
  resolve: {
    alias: {
      "@headfall/hydraulics": here("../packages/hydraulics/src/index.ts"),
      "@headfall/ui": here("../packages/ui/src/index.ts"),
    },
  },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: "node",
          environment: "node",
          include: ["tests/**/*.test.ts"],
          exclude: ["tests/ui/browser/**", "node_modules/**"],
        },
      },
    ],
  },
});
