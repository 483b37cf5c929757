import { beforeAll, expect, test } from "vitest";
import { buildCommand } from "../command/run-headfall.js";
import { readTop } from "./packed.js";

interface Sizes {
  readonly IMPORTS: readonly (readonly [name: string, what: string])[];
  readonly sizeOf: (name: string) => Promise<{ bytes: number; gzip: number }>;
}

beforeAll(buildCommand, 120_000);

const rows = [
  ...readTop("docs/reference/sizes.md").matchAll(/^\| `(.+?)` \| .* \| ([\d.]+) \| ([\d.]+) \|$/gm),
];

test("what an import weighs is as sizes.md says, to a tenth; one formula brings nothing with it", async () => {
  const { IMPORTS, sizeOf }: Sizes = await import(
    new URL("../../docs/write-sizes.mjs", import.meta.url).href
  );
  expect(rows.map(([, name]) => name)).toEqual(IMPORTS.map(([name]) => name));
  for (const [, name, bytes, gzip] of rows) {
    const size = await sizeOf(name);
    // Half of the last figure for what is rounded.
    expect(Math.abs(size.bytes / 1000 - Number(bytes)), name).toBeLessThan(0.1 * Number(bytes) + 0.05);
    expect(Math.abs(size.gzip / 1000 - Number(gzip)), name).toBeLessThan(0.1 * Number(gzip) + 0.05);
  }
  expect((await sizeOf("headLossHazenWilliams")).bytes).toBeLessThan(2000);
}, 60_000);
