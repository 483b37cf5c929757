type Row = Readonly<Record<string, string>>;

export function inches(text: string): number;
export function checkRule(rule: string, row: Row): boolean | undefined;
export function checkRows(
  rules: readonly string[],
  rows: readonly Row[],
): { readonly broken: readonly string[]; readonly spokenOf: ReadonlyMap<string, number> };
