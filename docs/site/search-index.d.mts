import type MiniSearch from "minisearch";
import type { RenderedPage } from "./build-site.mjs";

export function buildSearchIndex(pages: readonly Pick<RenderedPage, "page" | "rendered">[]): MiniSearch;
