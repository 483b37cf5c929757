import { deflateRawSync } from "node:zlib";
import type { Plan } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import { LINK_MARK } from "../../../packages/ui/src/storage/link-mark.js";
import { readLink, writeLink } from "../../../packages/ui/src/storage/share-link.js";
import { smallLine } from "../fixtures/stored-plans.js";

const PAGE = "https://example.test/sub/folder/";
const hashOf = (link: string) => link.slice(link.indexOf("#"));
const packed = (text: string | Buffer) => LINK_MARK + deflateRawSync(text).toString("base64url");

test("readLink gives back the very plan that writeLink packed, names in every script included", async () => {
  const plan: Plan = { ...smallLine, name: "Hühner 鶏 🐔 \u05d0", note: "a\nb".repeat(300) };
  const link = await writeLink(plan, `${PAGE}#plan=old`);
  expect(link.startsWith(`${PAGE}${LINK_MARK}`)).toBe(true);
  expect(hashOf(link).slice(LINK_MARK.length)).toMatch(/^[\w-]+$/);
  expect(await readLink(hashOf(link))).toEqual({ ok: true, plan });
});

test("writeLink carries the plan behind the # only, so that no server is sent it", async () => {
  const link = new URL(await writeLink(smallLine, `${PAGE}?a=1`));
  expect(link.origin + link.pathname + link.search).toBe(`${PAGE}?a=1`);
});

test("readLink says of every link that was cut off or shifted that it cannot be opened, and never throws", async () => {
  const whole = hashOf(await writeLink(smallLine, PAGE));
  for (let length = LINK_MARK.length; length < whole.length; length++) {
    expect(await readLink(whole.slice(0, length))).toMatchObject({ ok: false });
  }
  expect(await readLink(`${LINK_MARK}%%%`)).toMatchObject({ ok: false, because: "broken" });
  const signs = whole.slice(LINK_MARK.length);
  expect(await readLink(`${LINK_MARK}A${signs}`)).toMatchObject({ ok: false });
});

test("readLink drops a link that unpacks to more than a plan may hold before it has unpacked it", async () => {
  const bomb = packed(Buffer.alloc(300_000_000, 32));
  expect(bomb.length).toBeLessThan(1_000_000);
  const before = process.memoryUsage().rss;
  expect(await readLink(bomb)).toEqual({ ok: false, because: "tooLarge", problems: [] });
  expect(process.memoryUsage().rss - before).toBeLessThan(150_000_000);
});

test("readLink refuses a link of more signs than any browser carries, unread", async () => {
  expect(await readLink(LINK_MARK + "A".repeat(2_000_001))).toMatchObject({ because: "tooLarge" });
});

test("readLink refuses bytes that are no text, text that is no plan, and a plan from a newer page", async () => {
  expect(await readLink(packed(Buffer.from([0xff, 0xfe, 0x80])))).toMatchObject({ because: "broken" });
  expect(await readLink(packed("[1, 2]"))).toMatchObject({ because: "notAPlan" });
  const newer = await readLink(packed('{"headfall": 99}'));
  expect(newer).toMatchObject({ because: "notAPlan", problems: [{ code: "versionNewer" }] });
});

test("readLink brings a plan of an older version to the present one", async () => {
  const { sources, ...rest } = smallLine;
  const older = { ...rest, headfall: 0, source: sources[0] };
  expect(await readLink(packed(JSON.stringify(older)))).toMatchObject({ ok: true, plan: smallLine });
});
