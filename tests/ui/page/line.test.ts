import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { BrowserContextOptions } from "playwright";
import { expect, inject, test } from "vitest";
import { contrastOf } from "./contrast.js";
import { countMarks } from "./count-marks.js";
import { beginVisit, browserOfTests, sharedVisit, visitPage } from "./harness.js";
import { LinePage } from "./line-page.js";
import { visitRested } from "./rested-visit.js";
import { DESKTOP_SIZE as DESKTOP, PHONE_SIZE as PHONE, SCREENS } from "./screens.js";

const STAND = "Stand";

/** A tee with three drinkers to the left and five to the right; all of it invented. */
const BRANCHES = {
  headfall: 1,
  sources: [{ id: "barrel", vessel: "drum-55gal-plastic", stand: "60 cm" }],
  points: [{ id: "tee", ground: "-10 cm", above: "20 cm" }],
  runs: [
    { id: "main", from: "barrel", to: "tee", length: "5 m" },
    { id: "left", from: "tee", length: "3 m", drinkers: { kind: "nipple-bucket", count: 3 } },
    { id: "right", from: "tee", length: "5 m", drinkers: { kind: "nipple-bucket", count: 5 } },
  ],
};

const HEN_HOUSE = JSON.parse(readFileSync("docs/examples/alder-bank-hen-house.json", "utf8")) as object;

async function visitLine(
  visit: (line: LinePage) => Promise<void>,
  options: BrowserContextOptions = {},
): Promise<void> {
  await visitRested(
    async ({ page, faults }) => {
      const line = new LinePage(page);
      await line.settled();
      await visit(line);
      expect(faults).toEqual([]);
    },
    { viewport: DESKTOP, ...options },
  );
}

const share = sharedVisit(async () => beginVisit(await browserOfTests(), { viewport: DESKTOP }));
let opened = 0;

/** The example anew, worked out, on a page that other tests use too. */
const withHenHouse = (visit: (line: LinePage) => Promise<void>) =>
  share(async ({ page }) => {
    const line = new LinePage(page);
    opened += 1;
    // A name of its own tells that it is there.
    const name = `Alder Bank, hen house ${opened}`;
    await line.open("hen-house.json", JSON.stringify({ ...HEN_HOUSE, name }));
    await page.getByRole("heading", { level: 1, name }).waitFor();
    await line.settled();
    await visit(line);
  });

test("the page opens on the Alder Bank hen-house line, worked out; verdicts change while the stand is dragged, and are told once the hand has rested", async () => {
  await visitLine(async (line) => {
    await expect(line.page.getByRole("heading", { level: 1 }).textContent()).resolves.toContain("Alder Bank");
    const before = await line.counts();
    expect(before).toMatch(/^(\d+ (good|drips?|starves?|dry) ?)+$/);
    expect(await countMarks(line.page)).toBeGreaterThan(5);
    await line.startDrag(STAND, 1);
    // Before the hand lets go.
    await expect.poll(() => line.counts()).not.toBe(before);
    await line.page.mouse.up();
    await expect.poll(() => line.field(STAND).inputValue()).toMatch(/^(25\d|2[34]\d)(\.\d)? cm$/);
    const worst = (await line.counts()).split(" ").slice(0, 2).join(" ");
    // In a polite live region.
    await expect
      .poll(() => line.page.locator("headfall-line [role=status]").first().textContent())
      .toContain(worst);
  });
});

test("the stand can be raised from the keyboard alone; a sum typed for it is worked out under the page's own policy", async () => {
  await withHenHouse(async (line) => {
    const before = Number.parseFloat(await line.field(STAND).inputValue());
    await line.slider(STAND).focus();
    for (let press = 0; press < 5; press++) await line.page.keyboard.press("ArrowRight");
    await expect.poll(() => line.field(STAND).inputValue()).toBe(`${before + 5} cm`);
    await line.type(STAND, "=3*24 cm");
    await expect.poll(() => line.field(STAND).inputValue()).toBe("72 cm");
  });
});

test("a broken file is refused with all its problems at once, and the plan in hand is unharmed", async () => {
  await withHenHouse(async (line) => {
    await line.type(STAND, "72 cm");
    await line.settled();
    const counts = await line.counts();
    const broken = {
      headfall: 1,
      sources: [{ vessel: "bucket-20l", stand: "3 bananas" }],
      runs: [{ length: "12 furlongs" }],
    };
    await line.open("broken.json", JSON.stringify(broken));
    const refusal = line.page.getByRole("alert").filter({ hasText: "broken.json" });
    await refusal.waitFor();
    const problems = await refusal.getByRole("listitem").allTextContents();
    expect(problems.join("\n")).toMatch(/sources\[0\]\.stand.*3 bananas/s);
    expect(problems.join("\n")).toMatch(/runs\[0\]\.length.*12 furlongs/s);
    expect(await line.counts()).toBe(counts);
    expect(await line.field(STAND).inputValue()).toBe("72 cm");
    expect(JSON.parse((await line.save()).text).sources[0].stand).toBe("72 cm");
  });
});

test("a plan dropped onto the page is opened, and hostile names in it are shown as text, never as markup", async () => {
  await withHenHouse(async (line) => {
    const plan = JSON.parse((await line.save()).text);
    plan.name = '<img src=x onerror="document.title=1"><script>alert(1)</script>';
    plan.note = "<b>bold</b>";
    await line.drop("hostile.json", JSON.stringify(plan));
    await expect
      .poll(() => line.page.getByRole("heading", { level: 1 }).textContent())
      .toContain("<img src=x");
    expect(await line.page.locator("h1 img, h1 script, .note b").count()).toBe(0);
  });
});

test("a plan saved and opened again is the same plan, as typed", async () => {
  await withHenHouse(async (line) => {
    await line.type(STAND, "2 ft 6 in");
    await line.settled();
    const counts = await line.counts();
    const saved = await line.save();
    expect(saved.name).toMatch(/^alder-bank.*\.json$/);
    expect(saved.text).toContain('"2 ft 6 in"');
    await line.type(STAND, "10 cm");
    await line.settled();
    await line.open(saved.name, saved.text);
    await expect.poll(() => line.counts()).toBe(counts);
    expect((await line.save()).text).toBe(saved.text);
  });
});

test("units switch to feet and inches and back; the plan keeps what was typed", async () => {
  await withHenHouse(async (line) => {
    const before = await line.save();
    const typed = await line.field(STAND).inputValue();
    await line.page.getByRole("combobox", { name: "Units" }).selectOption("us");
    await expect.poll(() => line.field(STAND).inputValue()).toMatch(/ft|in/);
    await expect
      .poll(() => line.page.locator("headfall-line tbody tr").first().textContent())
      .toMatch(/\d (ft|in)/);
    expect((await line.save()).text).toBe(before.text);
    await line.page.getByRole("combobox", { name: "Units" }).selectOption("metric");
    await expect.poll(() => line.field(STAND).inputValue()).toBe(typed);
  });
});

test("every number of a drinker tells how it was got, with its figures and its source", async () => {
  await withHenHouse(async (line) => {
    await line.page
      .getByRole("button", { name: /^How .* was got$/ })
      .nth(3)
      .click();
    const figures = line.page.locator("headfall-line section[part=drinker] [data-how]");
    const panel = line.page.locator("headfall-how [part=panel]");
    expect(await figures.count()).toBe(7);
    let words = "";
    for (const figure of await figures.all()) {
      const result = ((await figure.textContent()) ?? "").trim();
      await figure.click();
      await expect.poll(() => panel.locator(".main-result").textContent()).toBe(result);
      words += await panel.textContent();
    }
    expect(words).toContain("head = water surface");
    expect(words).toMatch(/Source: .*hazen-williams/);
  });
});

test("of a line with branches, the way to the worst drinker is drawn, and any other end can be chosen", async () => {
  await withHenHouse(async (line) => {
    await line.open("branches.json", JSON.stringify(BRANCHES));
    await line.settled();
    const marks = () => countMarks(line.page);
    const chooser = line.page.getByRole("combobox", { name: "Drinker to look at" });
    await chooser.selectOption("left 1");
    await expect.poll(marks).toBe(3);
    await chooser.selectOption("right 1");
    await expect.poll(marks).toBe(5);
  });
});

test("all JavaScript that is fetched before the first verdict is at most 100 kB gzip", async () => {
  const folder = inject("pageFolder");
  const before = () => {
    const marked = window as unknown as { verdictAt: number };
    addEventListener("line-checked", () => (marked.verdictAt ??= performance.now()));
  };
  await visitPage(
    async ({ page }) => {
      await new LinePage(page).settled();
      const fetched = await page.evaluate(() => {
        const { verdictAt } = window as unknown as { verdictAt: number };
        return performance
          .getEntriesByType("resource")
          .filter(({ startTime, name }) => startTime < verdictAt && new URL(name).pathname.endsWith(".js"))
          .map(({ name }) => new URL(name).pathname);
      });
      const html = readFileSync(join(folder, "index.html"), "utf8");
      const named = [...html.matchAll(/(?:src|href)="\.(\/[^"]+\.js)"/g)].map((match) => match[1]!);
      expect(named.length).toBeGreaterThan(0);
      expect(fetched).toEqual(expect.arrayContaining(named));
      const sizeOf = (name: string) => gzipSync(readFileSync(join(folder, name)), { level: 9 }).length;
      const bytes = [...new Set(fetched)].reduce((sum, name) => sum + sizeOf(name), 0);
      expect(bytes).toBeLessThanOrEqual(100_000);
    },
    { before },
  );
});

test.each(SCREENS)(
  "%s, axe finds nothing, nothing scrolls sideways, and verdicts stand out by 7 to 1, by light and by dark",
  async (_where, viewport) => {
    await visitLine(
      async (line) => {
        expect(await line.faultsInBothLights()).toEqual([]);
        const width = await line.page.evaluate(() => document.documentElement.scrollWidth);
        expect(width).toBeLessThanOrEqual(viewport.width);
        for (const colorScheme of ["light", "dark"] as const) {
          await line.page.emulateMedia({ colorScheme });
          for (const { colour, paper } of await line.verdictColours()) {
            expect(contrastOf(colour, paper)).toBeGreaterThanOrEqual(7);
          }
        }
      },
      { viewport },
    );
  },
);

test("on a phone, the drawing stays in view while the controls pass under it", async () => {
  await visitLine(
    async (line) => {
      await line.slider(STAND).scrollIntoViewIfNeeded();
      await line.page.mouse.wheel(0, 150);
      const drawing = (await line.page.locator("headfall-profile").boundingBox())!;
      expect(drawing.y).toBeGreaterThanOrEqual(0);
      expect(drawing.y + drawing.height).toBeLessThanOrEqual(PHONE.height);
    },
    { viewport: PHONE, hasTouch: true },
  );
});

test("every control on a phone is at least 44 px high, in every view", async () => {
  await visitLine(
    async ({ page }) => {
      for (const view of ["Above", "Side", "Table"]) {
        await page.getByRole("button", { name: view, exact: true }).click();
        const small = await page
          .locator("button, select, input[type=text], input[type=range], .choices label, summary, textarea")
          .evaluateAll((nodes) =>
            nodes
              .filter((node) => node.checkVisibility())
              // Numbers of a table stand in rows; 24 px is what WCAG asks of them.
              .filter((node) => node.getBoundingClientRect().height < (node.matches("td .number") ? 24 : 44))
              .map((node) => `${node.localName} ${node.textContent} ${node.getBoundingClientRect().height}`),
          );
        expect(small, view).toEqual([]);
      }
      expect(await page.locator("button").count()).toBeGreaterThan(20);
    },
    { viewport: PHONE },
  );
});
