export declare const NO_SECOND_BROWSER: string;
export declare function findSecondBrowser(environment?: NodeJS.ProcessEnv): string | undefined;
