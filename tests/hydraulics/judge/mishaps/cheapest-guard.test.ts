import { expect, test } from "vitest";
import { cheapestGuard } from "../../../../packages/hydraulics/src/judge/mishaps/cheapest-guard.js";

const guard = (name: string, isEnough: boolean, harmAfter: number | undefined, savesWater = 0) => ({
  ...{ name, isEnough, harmAfter, savesWater },
});

test("cheapestGuard is the first that is enough, though a dearer one gives longer", () => {
  const guards = [guard("look", false, 9), guard("tap", true, 30), guard("second", true, undefined)];
  expect(cheapestGuard(guards)?.name).toBe("tap");
});

test("cheapestGuard is, where none is enough, the one that gives longest; of these the one that saves most water", () => {
  expect(cheapestGuard([guard("a", false, 5), guard("b", false, 7), guard("c", false, 6)])?.name).toBe("b");
  expect(cheapestGuard([guard("a", false, 5), guard("never", false, undefined)])?.name).toBe("never");
  expect(cheapestGuard([guard("a", false, 5, 1), guard("b", false, 5, 2), guard("c", false, 5)])?.name).toBe(
    "b",
  );
  expect(cheapestGuard([])).toBeUndefined();
});
