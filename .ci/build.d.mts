export function buildPackages(options?: { afresh?: boolean; packages?: readonly string[] }): boolean;
export function buildPage(folder?: string, options?: { help?: string }): Promise<void>;
export function buildStandalone(folder?: string): Promise<void>;
