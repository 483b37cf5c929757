/**
 * The switch that changed files ask which of their mutants is on.
 *
 * @param count how many mutants there are, numbered from 1
 */
export function makeSwitch(count) {
  return {
    /** The mutant that is on; 0 is none. */
    on: 0,
    /** Whether it counts how often each mutant's place is passed. */
    isCounting: false,
    counts: new Uint32Array(count + 1),
    /** How often the place of the mutant that is on may be passed in one test before the test is given up. */
    limit: Number.POSITIVE_INFINITY,
    passed: 0,
    /** Called when the tests of a file are about to be described. */
    startFile() {},

    /** What works the constants of a file out again, in the order of the imports. */
    makers: [],
    onSwitched(maker) {
      this.makers.push(maker);
    },

    is(id) {
      if (id !== this.on) {
        if (this.isCounting) this.counts[id] += 1;
        return false;
      }
      this.passed += 1;
      if (this.passed > this.limit) throw new Error(RUNS_AWAY);
      return true;
    },

    isIn(first, last) {
      return this.isCounting || (this.on >= first && this.on <= last);
    },
  };
}

/** What is thrown where a mutant makes a loop go on for ever. */
export const RUNS_AWAY = "the mutant's place was passed too often";
