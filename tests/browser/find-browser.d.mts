export declare const NO_BROWSER: string;
export declare const BROWSER_SWITCHES: string[];
export declare const SHORT_LIFE: string[];
export declare function findBrowser(): Promise<string | undefined>;
export declare function ensureBrowser(): Promise<string>;
