import { readFileSync } from "node:fs";
import { expect, test } from "vitest";

const read = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), "utf8");

interface Locked {
  readonly name: string;
  readonly license: string;
  readonly hasInstallScript?: boolean;
}
interface Licences {
  readonly licencesPage: () => string;
  readonly neededBy: (folder: string) => readonly Locked[];
}
const { licencesPage, neededBy }: Licences = await import(
  new URL("../../docs/write-licences.mjs", import.meta.url).href
);

/** Licences that ask for no more than that they are named. */
const FREE = ["MIT", "ISC", "BSD-2-Clause", "BSD-3-Clause", "Apache-2.0", "0BSD", "Unlicense"];

test("licences.md is what package-lock.json says", () => {
  expect(read("docs/reference/licences.md")).toBe(licencesPage());
});

test("what the library and the page need runs no script when installed, and is free to pass on", () => {
  const needed = [...neededBy("packages/hydraulics"), ...neededBy("packages/ui")];
  expect(needed.map(({ name }) => name)).toEqual(expect.arrayContaining(["zod", "lit", "d3-scale"]));
  for (const { name, license, hasInstallScript = false } of needed) {
    expect([name, FREE.includes(license), hasInstallScript]).toEqual([name, true, false]);
  }
});

test("no package at all, the tools included, runs a script when installed; each comes with the digest of what it is", () => {
  const packages: Record<string, Partial<Locked> & { integrity?: string; link?: boolean }> = JSON.parse(
    read("package-lock.json"),
  ).packages;
  const installed = Object.entries(packages).filter(
    ([path, { link }]) => path.includes("node_modules/") && !link,
  );
  expect(installed.length).toBeGreaterThan(50);
  const scripted = installed.filter(([, { hasInstallScript }]) => hasInstallScript);
  expect(scripted.map(([path]) => path)).toEqual([]);
  expect(
    installed.filter(([, { integrity }]) => !integrity?.startsWith("sha512-")).map(([path]) => path),
  ).toEqual([]);
});
