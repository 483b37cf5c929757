import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** The library and the elements as one file, `dist/headfall.js`, for pages without a bundler. */
export default defineConfig({
  root: here("."),
  publicDir: false,
  // Its workers are looked for beside it, wherever a page keeps it.
  base: "./",
  resolve: { alias: { "@headfall/hydraulics": here("../hydraulics/src/index.ts") } },
  define: { "process.env.NODE_ENV": JSON.stringify("production") },
  worker: { format: "es" },
  build: {
    target: "es2022",
    outDir: "dist",
    emptyOutDir: false,
    // What is taken in from elsewhere keeps its notice.
    license: { fileName: "headfall.licences.md" },
    lib: { entry: here("src/standalone.ts"), formats: ["es"], fileName: () => "headfall.js" },
    rollupOptions: { output: { codeSplitting: false } },
    chunkSizeWarningLimit: 2000,
  },
});
