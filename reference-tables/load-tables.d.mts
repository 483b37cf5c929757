export interface AboutTable {
  readonly title: string;
  readonly columns: Readonly<Record<string, { readonly unit: string; readonly means: string }>>;
  readonly sorted: readonly string[];
  readonly rules: readonly string[];
}

export type TableRow = Readonly<Record<string, string>>;

export interface Table {
  readonly name: string;
  readonly about: AboutTable;
  readonly columns: readonly string[];
  readonly rows: readonly TableRow[];
}

export const tableNames: readonly string[];
export function loadTable(name: string): Table;
export function loadSources(): Readonly<Record<string, Readonly<Record<string, string>>>>;
