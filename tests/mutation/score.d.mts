export interface FileScore {
  readonly date: string;
  readonly oneIn: number;
  readonly mutants: number;
  readonly killed: number;
  readonly timedOut: number;
  readonly explained: number;
  readonly notReached: number;
  readonly survived: number;
}
export declare function readScore(): Record<string, FileScore>;
export declare function readExplained(): { why: string; mutants: string[] }[];
export declare function scoreTable(score: Readonly<Record<string, FileScore>>): string;
