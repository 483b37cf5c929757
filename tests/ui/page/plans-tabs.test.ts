import { expect, test } from "vitest";
import { PlansPage } from "./plans-page.js";
import { visitRested } from "./rested-visit.js";

/** Within this both tabs have been told what to do at once [ms]. */
const SOON = 2000;

/** Two tabs of one browser on the same plan, as typed at `60 cm`. */
async function visitTwoTabs(visit: (one: PlansPage, other: PlansPage) => Promise<void>): Promise<void> {
  await visitRested(async ({ page }) => {
    const one = new PlansPage(page);
    await one.ready();
    await one.raiseStand("60 cm");
    await one.saved();
    const second = await page.context().newPage();
    const thrown: string[] = [];
    second.on("pageerror", ({ message }) => thrown.push(message));
    await second.goto(page.url());
    const other = new PlansPage(second);
    await other.ready();
    await expect.poll(() => other.stand()).toBe("60 cm");
    await other.saved();
    await visit(one, other);
    expect(thrown).toEqual([]);
  });
}

test("an edit in one tab is seen in the other, both ways, and can be undone there", async () => {
  await visitTwoTabs(async (one, other) => {
    await one.raiseStand("70 cm");
    await expect.poll(() => other.stand()).toBe("70 cm");
    await other.lengthen("11 m");
    await expect.poll(() => one.length()).toBe("11 m");
    await one.button(/^Undo: change made in another tab/).click();
    await expect.poll(() => other.length()).toBe("9 m");
    expect(await one.stand()).toBe("70 cm");
  });
});

test("edits made in both tabs at once at different places are both kept in both", async () => {
  await visitTwoTabs(async (one, other) => {
    const at = Date.now() + SOON;
    await Promise.all([one.raiseStand("70 cm", at), other.lengthen("11 m", at)]);
    for (const tab of [one, other]) {
      await expect.poll(() => tab.stand()).toBe("70 cm");
      await expect.poll(() => tab.length()).toBe("11 m");
    }
    expect(await one.records()).toHaveLength(1);
  });
});

test("edits made in both tabs at once at the same place are both kept, one under a name of its own, and it says so", async () => {
  await visitTwoTabs(async (one, other) => {
    const at = Date.now() + SOON;
    await Promise.all([one.raiseStand("70 cm", at), other.raiseStand("80 cm", at)]);
    const told = [one, other].map((tab) => tab.notice("Another tab changed the same place"));
    await expect.poll(async () => (await told[0]!.count()) + (await told[1]!.count())).toBe(1);
    await expect.poll(async () => (await one.records()).length).toBe(2);
    const kept = (await one.records()) as { name: string; plan: { sources: { stand: string }[] } }[];
    const stands = Object.fromEntries(kept.map(({ name, plan }) => [name, plan.sources[0]!.stand]));
    const names = ["Alder Bank, hen house", "Alder Bank, hen house (other tab)"];
    expect(Object.keys(stands).sort()).toEqual(names);
    expect(Object.values(stands).sort()).toEqual(["70 cm", "80 cm"]);
    expect(new Set([await one.name(), await other.name()])).toEqual(new Set(names));
  });
});

test("a plan deleted in one tab stays on the screen of the other, and can be brought back from there", async () => {
  await visitTwoTabs(async (one, other) => {
    await one.openList();
    await one.press("Delete Alder Bank, hen house");
    await other.notice("deleted in another tab").getByRole("button", { name: "Bring back" }).click();
    await expect.poll(async () => (await other.records())[0]).not.toHaveProperty("deletedAt");
    expect(await other.stand()).toBe("60 cm");
  });
});

test("each tab keeps its own plan through a reload", async () => {
  await visitTwoTabs(async (one, other) => {
    await other.openList();
    await other.press("Alder Bank, two pens");
    await expect.poll(() => other.name()).toBe("Alder Bank, two pens");
    await other.saved();
    await one.reload();
    await other.reload();
    expect(await one.name()).toBe("Alder Bank, hen house");
    expect(await other.name()).toBe("Alder Bank, two pens");
  });
});

test("a list that is open follows what another tab does", async () => {
  await visitTwoTabs(async (one, other) => {
    await other.openList();
    await one.openList();
    await one.press("Copy Alder Bank, hen house");
    expect(await other.listedOnce(2)).toContain("Alder Bank, hen house (copy)");
  });
});
