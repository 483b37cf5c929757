import { fileURLToPath } from "node:url";
import { defineConfig, type Plugin } from "vite";

/**
 * What the page may load: its own files and nothing else. Styles come as linked or constructed sheets and
 * never as a style attribute; pictures may also be drawn by the page itself (data: and blob:, for exports).
 */
const contentPolicy = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

/** Writes the policy into the built page, so that it holds on any host, whatever headers that host sends. */
function policyInPage(): Plugin {
  return {
    name: "headfall-content-policy",
    apply: "build",
    transformIndexHtml: () => [
      {
        tag: "meta",
        attrs: { "http-equiv": "Content-Security-Policy", content: contentPolicy },
        injectTo: "head-prepend",
      },
    ],
  };
}

export default defineConfig({
  root: fileURLToPath(new URL(".", import.meta.url)),
  base: "./",
  resolve: {
    alias: { "@headfall/hydraulics": fileURLToPath(new URL("../hydraulics/src/index.ts", import.meta.url)) },
  },
  plugins: [policyInPage()],
  worker: { format: "es" },
  build: {
    target: "es2022",
    outDir: "dist/page",
    emptyOutDir: true,
    // Nothing is turned into a data: address, which the policy would refuse for anything but pictures.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 1000,
  },
  preview: {
    headers: {
      "Content-Security-Policy": `${contentPolicy}; frame-ancestors 'none'`,
      "X-Content-Type-Options": "nosniff",
      "Referrer-Policy": "no-referrer",
    },
  },
});
