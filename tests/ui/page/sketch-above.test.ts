import type { Plan } from "@headfall/hydraulics";
import { expect, test } from "vitest";
import { middleOf } from "./fingers.js";
import { DESKTOP, PHONE, type SketchPage, visitSketch } from "./sketch-page.js";
import { YARD } from "./sketch-yard.js";

const namesOf = ({ runs }: Plan) => runs.map(({ id }) => id);
const metres = (typed: string) => Number.parseFloat(typed);

/** Opens the yard on a phone, seen from above. */
async function onPhone(visit: (sketch: SketchPage) => Promise<void>): Promise<void> {
  await visitSketch(async (sketch) => {
    await sketch.open(YARD);
    await sketch.turnTo("Above");
    await sketch.part("end far").waitFor();
    await visit(sketch);
  }, PHONE);
}

test("a finger held on a run draws a branch from it, and undo takes the tee out again", async () => {
  await onPhone(async (sketch) => {
    const middle = await middleOf(sketch.part("run feed"));
    const plan = await sketch.there(() =>
      sketch.fingers.holdAndDrag(middle, { x: middle.x, y: middle.y + 90 }),
    );
    // The feed is two runs now, and the branch begins where they meet.
    expect(plan.runs).toHaveLength(4);
    const [feed, onward] = [plan.runs[0]!, plan.runs.find(({ to }) => to === "bend")!];
    expect(metres(feed.length) + metres(onward.length)).toBeCloseTo(6, 2);
    expect(plan.runs.filter(({ from }) => from === feed.to)).toHaveLength(2);
  });
});

test("a run drawn by finger from one joint to another closes a ring, and every drinker of it is judged", async () => {
  await onPhone(async (sketch) => {
    const [from, to] = [await middleOf(sketch.part("end far")), await middleOf(sketch.part("source barrel"))];
    await sketch.button("Draw a run").tap();
    const plan = await sketch.there(() => sketch.fingers.drag(from, to));
    expect(plan.runs.at(-1)).toMatchObject({ from: "far", to: "barrel" });
    await sketch.line.settled();
    expect(await sketch.line.counts()).toMatch(/^6 /);
    await expect.poll(() => sketch.part("joint far").count()).toBe(1);
  });
});

test("a joint is moved by finger and the length of its run follows", async () => {
  await onPhone(async (sketch) => {
    const far = await middleOf(sketch.part("end far"));
    const lower = { x: far.x, y: far.y + 40 };
    const plan = await sketch.there(() => sketch.fingers.drag(far, lower));
    const { length } = plan.runs[1]!;
    expect(metres(length)).toBeGreaterThan(5.2);
    const { place } = plan.points!.find(({ id }) => id === "far")!;
    expect(metres(length)).toBeCloseTo(Math.abs(metres(place!.y)), 2);
  });
});

test("by thumb in the panel, a run is cut in two, made one again, duplicated and deleted", async () => {
  await onPhone(async (sketch) => {
    const { panel } = sketch;
    const press = (name: string) => panel.getByRole("button", { name, exact: true }).tap();
    await sketch.fingers.tap(await middleOf(sketch.part("run feed")));
    await panel.getByText("More", { exact: true }).tap();
    const cut = await sketch.there(() => press("Cut in two"));
    expect(cut.runs).toHaveLength(3);
    // The cut is chosen now, and its panel mends it.
    await expect.poll(() => panel.locator("h2").textContent()).toBe(`Joint: ${cut.runs[0]!.to}`);
    const joined = await sketch.there(() => press("Make one run of the two"));
    expect(joined.runs).toHaveLength(2);
    expect(metres(joined.runs[0]!.length)).toBeCloseTo(6, 2);
    // Beside its drinkers, since a touch on one of them tells how its verdict was got.
    const row = (await sketch.part("run row").boundingBox())!;
    await sketch.fingers.tap({ x: row.x + row.width / 2, y: row.y + row.height * 0.8 });
    const doubled = await sketch.there(() => press("Duplicate"));
    expect(doubled.runs).toHaveLength(3);
    expect(doubled.runs[2]!.length).toBe("5 m");
    const deleted = await sketch.there(() => press("Delete"));
    expect(deleted.runs).toHaveLength(2);
  });
});

test("from the keyboard: branch, move, duplicate, delete, ring, cut, join, each undone and done again by keys", async () => {
  await visitSketch(async (sketch) => {
    await sketch.open(YARD);
    const { page, panel } = sketch;
    const keys = async (name: string, ...pressed: string[]) => {
      await sketch.part(name).focus();
      for (const key of ["Enter", ...pressed]) await page.keyboard.press(key);
    };
    const there = (act: () => Promise<void>) =>
      sketch.there(
        act,
        () => page.keyboard.press("ControlOrMeta+z"),
        () => page.keyboard.press("ControlOrMeta+Shift+z"),
      );
    const branched = await there(() => keys("run feed", "r"));
    expect(branched.runs).toHaveLength(4);
    const moved = await there(() => keys("end far", "Shift+ArrowDown"));
    expect(metres(moved.runs.find(({ id }) => id === "row")!.length)).toBeGreaterThan(5);
    const doubled = await there(() => keys("run row", "d"));
    expect(doubled.runs).toHaveLength(5);
    const last = await panel.locator("h2").textContent();
    const deleted = await there(() => keys(last!.toLowerCase().replace(/^run: (run )?/, "run "), "Delete"));
    expect(namesOf(deleted)).toEqual(namesOf(moved));
    await keys("run row");
    const end = panel.getByRole("combobox", { name: "To", exact: true });
    await panel.getByText("More", { exact: true }).press("Enter");
    // Its choices are laid out once the keyboard comes to it.
    await end.focus();
    const ring = await there(async () => void (await end.selectOption("barrel")));
    expect(ring.runs.find(({ id }) => id === "row")!.to).toBe("barrel");
    const cut = await there(() => panel.getByRole("button", { name: "Cut in two" }).press("Enter"));
    expect(cut.runs).toHaveLength(5);
    const joined = await there(() =>
      panel.getByRole("button", { name: "Make one run of the two" }).press("Enter"),
    );
    expect(namesOf(joined)).toEqual(namesOf(ring));
  }, DESKTOP);
});

test("closer by ctrl and wheel, by keys and by buttons; aside by hand and by keys; and all of it again", async () => {
  await visitSketch(async (sketch) => {
    await sketch.open(YARD);
    const { page } = sketch;
    const drawing = page.locator("headfall-above svg.drawing");
    const feed = async () => (await sketch.part("run feed").boundingBox())!;
    const whole = await feed();
    const restored = async () =>
      Math.abs((await feed()).width - whole.width) + Math.abs((await feed()).x - whole.x);
    const middle = await middleOf(drawing);
    await page.mouse.move(middle.x, middle.y);
    await page.keyboard.down("Control");
    await page.mouse.wheel(0, -300);
    await page.keyboard.up("Control");
    await expect.poll(async () => (await feed()).width).toBeGreaterThan(whole.width * 1.3);
    await page.keyboard.press("Escape");
    await drawing.focus();
    await page.keyboard.press("0");
    await expect.poll(restored).toBeLessThan(1);
    await page.keyboard.press("+");
    await expect.poll(async () => (await feed()).width).toBeGreaterThan(whole.width * 1.2);
    await page.keyboard.press("-");
    await expect.poll(async () => Math.abs((await feed()).width - whole.width)).toBeLessThan(1);
    await sketch.button("Closer").first().click();
    await expect.poll(async () => (await feed()).width).toBeGreaterThan(whole.width * 1.3);
    await sketch.button("Show the whole plan").click();
    await expect.poll(restored).toBeLessThan(1);
    await page.mouse.move(middle.x - 200, middle.y + 100);
    await page.mouse.down();
    await page.mouse.move(middle.x - 120, middle.y + 130, { steps: 8 });
    await page.mouse.up();
    await expect.poll(async () => (await feed()).x - whole.x).toBeCloseTo(80, 0);
    await drawing.focus();
    await page.keyboard.press("Escape");
    await page.keyboard.press("ArrowRight");
    await expect.poll(async () => Math.abs((await feed()).x - whole.x - 80)).toBeGreaterThan(20);
    await page.keyboard.press("0");
    await expect.poll(restored).toBeLessThan(1);
    expect(await sketch.plan()).toEqual(await sketch.saved());
  }, DESKTOP);
});

test("two fingers pinch the drawing closer and shift it, and neither chooses nor moves a part", async () => {
  await onPhone(async (sketch) => {
    const before = await sketch.plan();
    const row = async () => (await sketch.part("run row").boundingBox())!;
    const { height } = await row();
    const left = await sketch.placeAbove(0.3, 0.5);
    const right = await sketch.placeAbove(0.6, 0.5);
    await sketch.fingers.down(left, right);
    await sketch.fingers.move({ x: left.x - 50, y: left.y }, { x: right.x + 50, y: right.y });
    await sketch.fingers.up();
    await expect.poll(async () => (await row()).height).toBeGreaterThan(height * 1.6);
    await sketch.button("Show the whole plan").tap();
    await expect.poll(async () => Math.abs((await row()).height - height)).toBeLessThan(1);
    expect(await sketch.plan()).toEqual(before);
    await expect(sketch.button(/^Undo/).isDisabled()).resolves.toBe(true);
  });
});
