/**
 * Stands in for the test runner where the same tests are run some thousand times in one process: it keeps each test's
 * function, so that a test can be run again without anything being read or imported anew.
 */
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  chai,
  customMatchers,
  GLOBAL_EXPECT,
  getState,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from "@vitest/expect";

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);

export const expect = Object.assign((value, message) => chai.expect(value, message), chai.expect);
Object.defineProperty(globalThis, GLOBAL_EXPECT, { value: expect, writable: true, configurable: true });
expect.getState = () => getState(expect);
expect.setState = (state) => setState(state, expect);
setState({ assertionCalls: 0, isExpectingAssertions: false, expectedAssertionsNumber: null }, expect);
chai.expect.extend(expect, customMatchers);
Object.assign(expect, globalThis[ASYMMETRIC_MATCHERS_OBJECT]);

/** The tests in the order in which they were described: { file, name, run }. */
let tests = [];
let file = "";
let within = [];

/** Gives the tests described since it was last asked. */
export function takeTests() {
  const taken = tests;
  tests = [];
  return taken;
}

/** Says that the tests described from here on stand in this file. */
export function startFile(path) {
  file = path;
  globalThis.__mutation.startFile(path);
}

/** What each file of tests does when it is imported. */
const bodies = new Map();

/** Describes the tests of a file, and keeps how, so that it can be done again. */
export function describeFile(path, body) {
  startFile(path);
  bodies.set(path, body);
  body();
}

/** Describes the tests of a file again: what they share is worked out anew. None where that cannot be. */
export function describeAgain(path) {
  const kept = tests;
  [tests, file, within] = [[], path, []];
  try {
    bodies.get(path)?.();
    return tests;
  } finally {
    tests = kept;
  }
}

const isFunction = (one) => typeof one === "function";

export const describe = Object.assign(
  (name, ...given) => {
    within = [...within, name];
    given.find(isFunction)();
    within = within.slice(0, -1);
  },
  { each: eachOf((...given) => describe(...given)) },
);

export const it = Object.assign(
  (name, ...given) => {
    const run = given.find(isFunction);
    tests.push({ file, name: [...within, name].join(" > "), run });
  },
  { each: eachOf((...given) => it(...given)), skip: () => {}, todo: () => {} },
);
export const test = it;

function eachOf(one) {
  return (cases) =>
    (name, ...given) => {
      for (const [index, row] of cases.entries()) {
        const values = Array.isArray(row) ? row : [row];
        const called = (body) => () => body(...values);
        one(`${name} (${index})`, ...given.map((part) => (isFunction(part) ? called(part) : part)));
      }
    };
}
