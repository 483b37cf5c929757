export interface Switch {
  on: number;
  isCounting: boolean;
  readonly counts: Uint32Array;
  limit: number;
  passed: number;
  readonly makers: (() => void)[];
}
export declare const RUNS_AWAY: string;
export declare function makeSwitch(count: number): Switch;
