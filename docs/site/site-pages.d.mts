import type { SitePage } from "./build-site.mjs";

export const DOCS: string;
export function readPages(folder?: string): SitePage[];
export function pageOf(path: string, text: string): SitePage;
export function pagesByKind(pages: readonly SitePage[]): { name: string; pages: SitePage[] }[];
export function outOf(path: string): string;
