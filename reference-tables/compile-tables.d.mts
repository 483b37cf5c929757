export function compileTables(): ReadonlyMap<string, string>;
