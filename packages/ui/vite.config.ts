import { fileURLToPath } from "node:url";
import { defineConfig, type Plugin, type UserConfig } from "vite";
import type { VitePWAOptions } from "vite-plugin-pwa";
import { checkedPlans } from "./checked-plan.js";
import { withoutDescriptions } from "./without-descriptions.js";

/**
 * What the page may load: its own files and nothing else. Styles come as linked or constructed sheets and
 * never as a style attribute; pictures may also be drawn by the page itself (data: and blob:, for exports).
 */
const contentPolicy = [
  "default-src 'self'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "worker-src 'self'",
  "manifest-src 'self'",
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

/**
 * What makes the page work without a network and lets it be installed. A new version waits until the user wants it
 * (app/offline.ts asks); no script is written into the page for that.
 */
const offline: Partial<VitePWAOptions> = {
  registerType: "prompt",
  injectRegister: false,
  strategies: "generateSW",
  includeAssets: ["icon.svg"],
  manifest: {
    name: "Headfall",
    short_name: "Headfall",
    description: "Plan gravity-fed watering for a small flock, and see which drinkers get water.",
    lang: "en",
    start_url: "./",
    scope: "./",
    display: "standalone",
    background_color: "#fbf9f3",
    theme_color: "#0a4f63",
    icons: [
      { src: "icon.svg", sizes: "any", type: "image/svg+xml", purpose: "any" },
      { src: "icon-192.png", sizes: "192x192", type: "image/png", purpose: "any" },
      { src: "icon-512.png", sizes: "512x512", type: "image/png", purpose: "any" },
      { src: "icon-maskable.svg", sizes: "any", type: "image/svg+xml", purpose: "maskable" },
      { src: "icon-maskable-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
    ],
  },
  workbox: {
    globPatterns: ["**/*.{js,css,html,svg,png,webmanifest}"],
    navigateFallback: "index.html",
    // The documents, where they stand beside the page, look after themselves.
    navigateFallbackDenylist: [/\/docs\//],
    cleanupOutdatedCaches: true,
    // Records of rain are fetched only when they are chosen; once they were, they work without a network too.
    runtimeCaching: [
      { urlPattern: /\.csv$/, handler: "CacheFirst", options: { cacheName: "headfall-examples" } },
    ],
    // From the first visit on: parts of the page that are fetched later then come from the same version.
    clientsClaim: true,
    maximumFileSizeToCacheInBytes: 4_000_000,
  },
};

/** Only a build needs them; whoever serves what is built does not wait for them to load. */
async function offlinePlugins() {
  const { VitePWA } = await import("vite-plugin-pwa");
  return VitePWA(offline);
}

export default defineConfig(
  async ({ command, isPreview }): Promise<UserConfig> => ({
    root: fileURLToPath(new URL(".", import.meta.url)),
    base: "./",
    resolve: {
      alias: {
        "@headfall/hydraulics": fileURLToPath(new URL("../hydraulics/src/index.ts", import.meta.url)),
      },
    },
    plugins: [
      policyInPage(),
      checkedPlans(),
      withoutDescriptions(),
      ...(command === "build" && !isPreview ? await offlinePlugins() : []),
    ],
    worker: { format: "es" },
    build: {
      target: "es2022",
      outDir: "dist/page",
      emptyOutDir: true,
      // Nothing is turned into a data: address, which the policy would refuse for anything but pictures.
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
      // What is taken in from elsewhere keeps its notice.
      license: { fileName: "licences.md" },
      // What the first verdict needs comes in one piece: it packs better than many, and is asked for at once.
      rollupOptions: {
        output: { codeSplitting: { groups: [{ name: "first", test: /[\\/]app[\\/]main\.ts$/ }] } },
      },
      chunkSizeWarningLimit: 1000,
    },
    preview: {
      headers: {
        "Content-Security-Policy": `${contentPolicy}; frame-ancestors 'none'`,
        "X-Content-Type-Options": "nosniff",
        "Referrer-Policy": "no-referrer",
      },
    },
  }),
);
