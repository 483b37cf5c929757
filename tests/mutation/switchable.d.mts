export interface Mutant {
  readonly id: number;
  readonly line: number;
  readonly code: string;
  readonly was: string;
  readonly became: string;
  readonly isStatic: boolean;
}
export declare function writeSwitchable(
  path: string,
  source: string,
  firstId: number,
): { text: string; mutants: Mutant[]; imports: string[] };
