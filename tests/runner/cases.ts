/**
 * How many cases a property test draws: few in each run of the tests, as many as are wanted in a long search:
 * HEADFALL_CASES=5000 HEADFALL_SEED=17 npm test -- tests/hostile
 * HEADFALL_MOST_CASES holds every property to so many, where the same tests are run a thousand times.
 */
export function cases(few: number): { readonly numRuns: number } {
  const text = process.env["HEADFALL_CASES"] ?? String(few);
  if (!/^[1-9]\d*$/.test(text))
    throw new Error(`HEADFALL_CASES is "${text}". It is a whole number, for instance 5000.`);
  return { numRuns: Math.min(Number(text), Number(process.env["HEADFALL_MOST_CASES"] ?? text)) };
}
