import { expect, test } from "vitest";
import { smallLine } from "../fixtures/stored-plans.js";
import { type PlansPage, visitPlans } from "./plans-page.js";
import { PHONE_SIZE as PHONE, SCREENS } from "./screens.js";

const HEN_HOUSE = "Alder Bank, hen house";

/** Begins a plan of one's own, as on a first visit. */
async function begin(plans: PlansPage): Promise<void> {
  await plans.button("Draw a line of your own").click();
  await plans.button("Bucket, 20 L").click();
  await expect.poll(() => plans.name()).toBe("My line");
  await plans.saved();
}

test("on a first visit an example is shown, and nothing is kept until something is changed", async () => {
  await visitPlans(async (plans) => {
    await plans.button("Look at an example").click();
    await plans.button("Look at an example").waitFor({ state: "detached" });
    expect(await plans.name()).toBe(HEN_HOUSE);
    expect(await plans.records()).toEqual([]);
    await plans.raiseStand("72 cm");
    await plans.saved();
    expect(await plans.records()).toMatchObject([{ name: HEN_HOUSE, revision: 1 }]);
  });
});

test("on a first visit, the drawing stays under a hand that drags on it, and the first question goes once it is lifted", async () => {
  await visitPlans(async (plans) => {
    const { page } = plans;
    const stand = page.getByRole("slider", { name: /stand/i }).first();
    await stand.scrollIntoViewIfNeeded();
    const box = (await stand.boundingBox())!;
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y - 20, { steps: 5 });
    await plans.saved();
    expect(await plans.button("Draw a line of your own").count()).toBe(1);
    await page.mouse.up();
    await plans.button("Draw a line of your own").waitFor({ state: "detached" });
  });
});

test("a line of one's own begins with one question, and is there again after a reload", async () => {
  await visitPlans(async (plans) => {
    await begin(plans);
    expect(await plans.stand()).toBe("50 cm");
    await plans.reload();
    expect(await plans.name()).toBe("My line");
    expect(await plans.button("Draw a line of your own").count()).toBe(0);
  });
});

test("a reload in the very moment of a change keeps the change", async () => {
  await visitPlans(async (plans) => {
    for (const typed of ["71 cm", "72 cm", "73 cm"]) {
      await plans.raiseStand(typed);
      await plans.reload();
      expect(await plans.stand()).toBe(typed);
    }
    expect(await plans.records()).toHaveLength(1);
  });
});

test("units and light are remembered; where units are US, a line begins on a stand in inches", async () => {
  await visitPlans(async (plans) => {
    await plans.page.getByRole("combobox", { name: "Units" }).selectOption("us");
    await plans.page.getByRole("combobox", { name: "Light" }).selectOption("dark");
    await plans.reload();
    expect(await plans.page.getByRole("combobox", { name: "Units" }).inputValue()).toBe("us");
    expect(await plans.page.getByRole("combobox", { name: "Light" }).inputValue()).toBe("dark");
    expect(await plans.page.locator("headfall-line").getAttribute("units")).toBe("us");
    expect(await plans.page.locator("html").getAttribute("data-light")).toBe("dark");
    await begin(plans);
    expect(await plans.stand()).toBe("18 in");
  });
});

test("a plan can be renamed, copied, deleted and brought back from the list; a new name is a step that can be undone", async () => {
  await visitPlans(async (plans) => {
    await begin(plans);
    await plans.openList();
    await plans.press("Rename My line");
    await plans.dialog.getByLabel("New name").fill("Duck pen");
    await plans.press("Keep this name");
    await plans.press("Copy Duck pen");
    await expect.poll(() => plans.listed()).toEqual(["Duck pen (copy)", "Duck pen"]);
    await plans.press("Delete Duck pen (copy)");
    await expect.poll(() => plans.listed()).toEqual(["Duck pen"]);
    await plans.dialog
      .getByRole("status")
      .getByRole("button", { name: "Bring back Duck pen (copy)" })
      .click();
    await expect.poll(() => plans.listed()).toEqual(["Duck pen (copy)", "Duck pen"]);
    await plans.closeDialog();
    expect(await plans.name()).toBe("Duck pen");
    await plans.reload();
    expect(await plans.name()).toBe("Duck pen");
    await plans.openList();
    await plans.press("Rename Duck pen");
    await plans.dialog.getByLabel("New name").fill("Goose pen");
    await plans.page.keyboard.press("Enter");
    await plans.dialog.locator(".plan", { hasText: "Goose pen" }).waitFor();
    await plans.closeDialog();
    await plans.button(/^Undo/).click();
    await expect.poll(() => plans.name()).toBe("Duck pen");
  });
});

test("deleting the plan in hand opens the one changed before it, and after the last an example; emptied, the deleted are gone for good", async () => {
  await visitPlans(async (plans) => {
    await begin(plans);
    await plans.open({ name: "second.json", text: JSON.stringify({ ...smallLine, name: "Second" }) });
    await expect.poll(() => plans.name()).toBe("Second");
    await plans.openList();
    await plans.press("Delete Second");
    await expect.poll(() => plans.name()).toBe("My line");
    await plans.dialog.getByText("Deleted (1)").click();
    await plans.press("Remove them for good");
    await plans.press("Remove for good");
    await expect.poll(() => plans.dialog.getByText("Deleted (1)").count()).toBe(0);
    expect((await plans.records()).map(({ name }) => name)).toEqual(["My line"]);
    await plans.press("Delete My line");
    await expect.poll(() => plans.name()).toBe(HEN_HOUSE);
  });
});

test("a search finds plans by a part of their name, and the plan chosen is opened", async () => {
  await visitPlans(async (plans) => {
    const named = (name: string) => ({ name: `${name}.json`, text: JSON.stringify({ ...smallLine, name }) });
    await plans.open(named("North pen"), named("South pen"), named("Brooder"));
    await plans.notice("3 plans were added").waitFor();
    await plans.openList();
    await plans.dialog.getByLabel("Search").fill("BROOD");
    await expect.poll(() => plans.listed()).toEqual(["Brooder"]);
    await plans.dialog.locator(".plan").first().click();
    await expect.poll(() => plans.name()).toBe("Brooder");
  });
});

test("examples and new plans are opened from the list, each as a plan of its own", async () => {
  await visitPlans(async (plans) => {
    await plans.openList();
    await plans.press("Alder Bank, two pens");
    await expect.poll(() => plans.name()).toBe("Alder Bank, two pens");
    await plans.openList();
    await plans.press("New plan");
    await plans.press("Tote on a pallet, 1000 L");
    await expect.poll(() => plans.name()).toBe("My line");
    await plans.openList();
    expect(await plans.listedOnce(2)).toEqual(["My line", "Alder Bank, two pens"]);
  });
});

test("all plans saved as one file are read again elsewhere, as they were", async () => {
  let file = { name: "", text: "" };
  await visitPlans(async (plans) => {
    await begin(plans);
    await plans.open({ name: "b.json", text: JSON.stringify(smallLine) });
    await plans.saved();
    await plans.openList();
    await plans.listedOnce(2);
    file = await plans.fileFrom(() => plans.press("Save all as one file"));
    expect(JSON.parse(file.text)).toMatchObject({
      "headfall-plans": 1,
      plans: [smallLine, { name: "My line" }],
    });
  });
  await visitPlans(async (plans) => {
    await plans.open(file);
    await plans.notice("2 plans were added").waitFor();
    expect(await plans.name()).toBe(smallLine.name);
    await plans.openList();
    expect(new Set(await plans.listedOnce(2))).toEqual(new Set([smallLine.name, "My line"]));
  });
});

test("of several files, the good ones are added and each of the others is refused with all its problems", async () => {
  await visitPlans(async (plans) => {
    await plans.open(
      { name: "good.json", text: JSON.stringify(smallLine) },
      {
        name: "bad.json",
        text: '{"headfall": 1, "sources": [{"vessel": "bucket-20l", "stand": "3 bananas"}], "runs": [{"length": "far"}]}',
      },
      { name: "no.json", text: "no JSON" },
    );
    const refusal = plans.page.getByRole("alert");
    await refusal.getByText('"bad.json" could not be opened: 2 problems').waitFor();
    await refusal.getByText('"no.json" could not be opened').waitFor();
    expect(await plans.name()).toBe(smallLine.name);
  });
});

test("a file of an older version is opened in the present one; a newer one is refused kindly", async () => {
  await visitPlans(async (plans) => {
    const { sources, ...rest } = smallLine;
    await plans.open({
      name: "old.json",
      text: JSON.stringify({ ...rest, headfall: 0, source: sources[0] }),
    });
    await expect.poll(() => plans.name()).toBe(smallLine.name);
    await plans.open({ name: "new.json", text: '{"headfall": 99, "pumps": []}' });
    await plans.page.getByRole("alert").getByText("Open it with a newer Headfall.").waitFor();
    expect(await plans.name()).toBe(smallLine.name);
  });
});

test("a stored plan of an older version opens; newer and damaged ones are listed, saved as they are, left alone", async () => {
  await visitPlans(async (plans) => {
    const { sources, ...rest } = smallLine;
    const older = { ...rest, headfall: 0, name: "Older", source: sources[0] };
    const newer = { id: "n", name: "Newer", plan: { headfall: 99, pumps: [1] }, revision: 2, changedAt: 5 };
    const damaged = { id: "d", name: "Damaged", plan: [null], revision: 2, changedAt: 4 };
    await plans.putRecord({ id: "o", name: "Older", plan: older, revision: 1, changedAt: 3 });
    await plans.putRecord(newer);
    await plans.putRecord(damaged);
    await plans.reload();
    expect(await plans.name()).toBe("Older");
    await plans.openList();
    expect(await plans.listed()).toEqual(["Newer", "Damaged", "Older"]);
    const file = await plans.fileFrom(() => plans.press("Save as it is Newer"));
    expect(JSON.parse(file.text)).toEqual(newer.plan);
    expect(await plans.ownFaults()).toEqual([]);
    await plans.closeDialog();
    await plans.raiseStand("72 cm");
    await plans.saved();
    expect(await plans.records()).toMatchObject([damaged, newer, { id: "o", plan: { headfall: 1 } }]);
  });
});

test("hostile names are text in the list, in what it says, and in the names of files", async () => {
  const hostile = '<img src=x onerror="document.title=1"><b>../.. \u05d0🐔"\'';
  await visitPlans(async (plans) => {
    await plans.open({ name: "hostile.json", text: JSON.stringify({ ...smallLine, name: hostile }) });
    await expect.poll(() => plans.name()).toBe(hostile);
    await plans.saved();
    await plans.openList();
    expect(await plans.listed()).toEqual([hostile]);
    const file = await plans.fileFrom(() => plans.press(`Save file ${hostile}`));
    expect(file.name).toMatch(/^[a-z0-9-]+\.json$/);
    await plans.press(`Delete ${hostile}`);
    await plans.dialog.getByRole("status").getByText("was deleted").waitFor();
    expect(await plans.page.locator("img, dialog b, h1 b").count()).toBe(0);
  });
});

test("on a phone the head is one row; what is not in it comes by More, and the keyboard goes back there", async () => {
  await visitPlans(
    async (plans) => {
      await plans.raiseStand("72 cm");
      await plans.saved();
      const { page } = plans;
      const more = page.locator("header").getByRole("button", { name: "More" });
      expect((await page.locator("header.top").boundingBox())!.height).toBeLessThan(72);
      expect(await page.getByRole("combobox", { name: "Light" }).isVisible()).toBe(false);
      await more.focus();
      await page.keyboard.press("Enter");
      await page.getByRole("combobox", { name: "Light" }).selectOption("dark");
      expect(await page.locator("html").getAttribute("data-light")).toBe("dark");
      await page.keyboard.press("Escape");
      expect(await page.getByRole("combobox", { name: "Light" }).isVisible()).toBe(false);
      await more.press("Enter");
      await plans.button("Share").press("Enter");
      await plans.closeDialog();
      expect(await more.evaluate((button) => button === document.activeElement)).toBe(true);
      await more.click();
      const file = await plans.fileFrom(() => plans.button("Save the plan").click());
      expect(JSON.parse(file.text).sources[0].stand).toBe("72 cm");
      expect(await plans.button("Save the plan").isVisible()).toBe(false);
    },
    { viewport: PHONE },
  );
});

test("the list is worked from the keyboard alone, and gives the keyboard back where it was", async () => {
  await visitPlans(async (plans) => {
    await begin(plans);
    await plans.page.locator("h1 button").focus();
    await plans.page.keyboard.press("Enter");
    await plans.dialog.waitFor();
    await plans.dialog.getByRole("button", { name: "Rename My line" }).focus();
    await plans.page.keyboard.press("Enter");
    await plans.page.keyboard.press("Control+A");
    await plans.page.keyboard.type("Typed");
    await plans.page.keyboard.press("Enter");
    await plans.dialog.locator(".plan", { hasText: "Typed" }).waitFor();
    await plans.page.keyboard.press("Escape");
    await plans.dialog.waitFor({ state: "detached" });
    expect(await plans.page.evaluate(() => document.activeElement?.closest("h1") !== null)).toBe(true);
  });
});

test.each(SCREENS)(
  "%s, axe finds nothing in the start card, the list, the new plan and the link; all fit, all are 44 px high",
  async (_where, viewport) => {
    await visitPlans(
      async (plans) => {
        const sound = async () => {
          expect(await plans.ownFaultsInBothLights()).toEqual([]);
          const room = await plans.page.evaluate(() => document.documentElement.scrollWidth);
          expect(room).toBeLessThanOrEqual(viewport.width);
          const heights = await plans.page
            .locator("dialog, header, .card")
            .locator("button, select, input[type=text], summary, label.button")
            .evaluateAll((nodes) =>
              nodes.map((node) => node.getBoundingClientRect().height).filter((height) => height > 0),
            );
          expect(Math.min(...heights)).toBeGreaterThanOrEqual(44);
        };
        await sound();
        await plans.button("Draw a line of your own").click();
        await plans.button("Bucket, 20 L").waitFor();
        await sound();
        await plans.button("Bucket, 20 L").click();
        await plans.saved();
        await plans.openList();
        await plans.press("Copy My line");
        await plans.listedOnce(2);
        await plans.press("Delete My line (copy)");
        await plans.dialog.getByText("Deleted (1)").click();
        await plans.press("Rename My line");
        await plans.dialog.getByLabel("New name").waitFor();
        await sound();
        await plans.press("New plan");
        await sound();
        await plans.closeDialog();
        if (viewport === PHONE) {
          await plans.page.locator("header").getByRole("button", { name: "More" }).click();
          await sound();
        }
        await plans.button("Share").click();
        await plans.dialog.getByLabel("Link").waitFor();
        await sound();
      },
      { viewport },
    );
  },
);
