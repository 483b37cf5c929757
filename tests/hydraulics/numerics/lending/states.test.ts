import { expect, it } from "vitest";
import { listStates } from "../../../../packages/hydraulics/src/numerics/lending/states.js";

const ask = (met: number, ...shares: number[]) => ({ weight: 1, met, shares });

it("listStates lists every number of pieces up to what is ever enough alone, and no kind that never serves", () => {
  const { kinds, states, isHeldDown } = listStates([5, 4, 3], [ask(0, 0.5, 0, 0.3), ask(0.4, 0.2, 0, 1)]);
  expect([kinds, isHeldDown]).toEqual([[0, 2], false]);
  // Three of the first are enough where two thirds are left, as four of the other: three are there.
  expect(states).toHaveLength(4 * 4);
  expect(states[0]).toEqual([0, 0]);
});

it("listStates holds down what would be too many: no more pieces wait than need be, and the list stays closed", () => {
  const shares = [0.1, 0.11, 0.12, 0.13, 0.14];
  const stock = [8, 8, 8, 8, 8];
  const { states, isHeldDown } = listStates(stock, [ask(0, ...shares), ask(0.5, ...shares)]);
  expect(isHeldDown).toBe(true);
  expect(states.length).toBeGreaterThan(1000);
  expect(states.length).toBeLessThanOrEqual(4000);
  const known = new Set(states.map((state) => state.join()));
  expect(known.size).toBe(states.length);
  for (const state of states)
    for (const [d, count] of state.entries()) {
      if (count === 0) continue;
      expect(known.has(state.map((own, e) => (e === d ? own - 1 : own)).join())).toBe(true);
    }
});

it("listStates lists all states of which each piece counts, where no more can be, and few that wait", () => {
  // Eleven kinds of a piece each, of which four are enough: 562 states of up to four, of 2,048.
  const { states, isHeldDown } = listStates(new Array(11).fill(1), [ask(0, ...new Array(11).fill(0.25))]);
  expect(isHeldDown).toBe(true);
  const counts = states.map((state) => state.reduce((sum, own) => sum + own, 0));
  expect(counts.filter((count) => count <= 4)).toHaveLength(1 + 11 + 55 + 165 + 330);
  // One that waits makes 462 more, and two as many again; three would be too many.
  expect(counts.filter((count) => count === 5)).toHaveLength(462);
  expect(Math.max(...counts)).toBe(6);
});

it("listStates holds nothing down where all of many states count", () => {
  // Eleven kinds of a piece each, all of which together meet half: 2,048 states, none of which waits.
  const { states, isHeldDown } = listStates(new Array(11).fill(1), [ask(0, ...new Array(11).fill(0.045))]);
  expect([states.length, isHeldDown]).toEqual([2048, false]);
});

it("listStates lets one wait though two would be too many", () => {
  // Eleven kinds of a piece each, of which five are enough: 1,024 states, 1,486 with one more, 1,816 with two.
  const { states } = listStates(new Array(11).fill(1), [ask(0, ...new Array(11).fill(0.2))]);
  expect(states).toHaveLength(1486);
});

it("listStates is the same whatever is served where nothing is asked, and where a kind is of no use", () => {
  const quarters = ask(0, ...new Array(11).fill(0.25));
  const alone = listStates(new Array(11).fill(1), [quarters]);
  const resting = { ...ask(0, ...new Array(11).fill(0.1)), weight: 0 };
  const picky = ask(0, 0.25, ...new Array(10).fill(0));
  for (const other of [resting, picky])
    expect(listStates(new Array(11).fill(1), [quarters, other])).toEqual(alone);
});
