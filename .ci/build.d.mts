export function buildPackages(options?: { afresh?: boolean; packages?: readonly string[] }): boolean;
export function buildPage(folder?: string): Promise<void>;
export function buildStandalone(folder?: string): Promise<void>;
