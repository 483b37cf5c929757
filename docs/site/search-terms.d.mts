import type { Options, SearchOptions } from "minisearch";

export const INDEX_OPTIONS: Options;
export const SEARCH_OPTIONS: SearchOptions;
export function wordStem(term: string): string | undefined;
