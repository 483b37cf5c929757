import { afterEach, beforeAll, beforeEach, describe, expect, test, vi } from "vitest";
import { page, userEvent } from "vitest/browser";
import { HeadfallSave } from "../../../packages/ui/src/sheet/save-element.js";
import { HeadfallSheet } from "../../../packages/ui/src/sheet/sheet-element.js";
import { recordsOf } from "../../hydraulics/report/read-csv.js";
import { checkedOf, ELBOW, planOf } from "../kernels/sheet/alder-bank.js";
import { accessibilityFaults } from "./accessibility.js";

beforeAll(() => {
  for (const [name, element] of [
    ["headfall-sheet", HeadfallSheet],
    ["headfall-save", HeadfallSave],
  ] as const)
    if (customElements.get(name) === undefined) customElements.define(name, element);
});
afterEach(() => {
  vi.restoreAllMocks();
  document.body.replaceChildren();
  document.documentElement.style.colorScheme = "";
});

const plan = planOf(ELBOW);
const checked = checkedOf(plan);
const PIXELS_PER_MM = 96 / 25.4;

async function shownSheet(more: Partial<HeadfallSheet> = {}): Promise<HeadfallSheet> {
  const sheet = new HeadfallSheet();
  Object.assign(sheet, { plan, checked, date: "2026-11-25", ...more });
  document.body.append(sheet);
  await sheet.updateComplete;
  return sheet;
}

const pagesOf = (sheet: HeadfallSheet) => [...sheet.shadowRoot!.querySelectorAll<SVGSVGElement>(".page")];
const toldBy = (sheet: HeadfallSheet) => sheet.shadowRoot!.querySelector("[role=status]")!.textContent!;
const pageRules = () =>
  document.adoptedStyleSheets
    .flatMap((sheet) => [...sheet.cssRules])
    .filter((rule) => rule instanceof CSSPageRule);

describe("headfall-sheet", () => {
  test("has nothing that axe objects to, in light and in dark, from above and from the side", async () => {
    const sheet = await shownSheet();
    expect(await accessibilityFaults(sheet)).toEqual([]);
    sheet.style.colorScheme = "dark";
    await userEvent.click(page.getByRole("radio", { name: "From the side" }));
    expect(await accessibilityFaults(sheet)).toEqual([]);
  });

  test("begins with the drawing from above, the paper of its units, and the largest scale that fits", async () => {
    expect(toldBy(await shownSheet())).toMatch(/^One page of A4, upright\. Scale 1:\d+\.$/);
    document.body.replaceChildren();
    expect(toldBy(await shownSheet({ system: "us" }))).toMatch(
      /^One page of Letter, upright\. Scale .* in = 1 ft/,
    );
  });

  test("shows each page with its name to a screen reader", async () => {
    const sheet = await shownSheet();
    expect(pagesOf(sheet).map((each) => each.getAttribute("aria-label"))).toEqual(["Page A1: From above"]);
  });

  test("when another paper, side and scale are chosen by the keyboard, pages and words follow", async () => {
    const sheet = await shownSheet();
    page.getByRole("radio", { name: "A4" }).element().focus();
    await userEvent.keyboard("{ArrowRight}");
    page.getByRole("radio", { name: "Upright" }).element().focus();
    await userEvent.keyboard("{ArrowRight}");
    await userEvent.selectOptions(page.getByRole("combobox", { name: "Scale", exact: true }), "1:20");
    await expect
      .poll(() => toldBy(sheet))
      .toMatch(/\d+ pages .*of Letter, lying\. Scale 1:20\. 1:\d+ fits without a cut/);
    expect(pagesOf(sheet)[0]!.getAttribute("viewBox")).toBe("0 0 279.4 215.9");
  });

  test("when the units change, a scale of the others is let go", async () => {
    const sheet = await shownSheet();
    await userEvent.selectOptions(page.getByRole("combobox", { name: "Scale", exact: true }), "1:20");
    await expect.poll(() => toldBy(sheet)).toContain("1:20.");
    sheet.system = "us";
    await sheet.updateComplete;
    expect(sheet.choices.scale).toBeUndefined();
    expect(toldBy(sheet)).toContain("in = 1 ft");
  });

  test("when black and white is chosen, no line and no mark has another colour", async () => {
    const sheet = await shownSheet();
    const colours = () => {
      const painted = [...sheet.shadowRoot!.querySelectorAll(".page path, .page circle")];
      return painted
        .flatMap((each) => [getComputedStyle(each).stroke, getComputedStyle(each).fill])
        .flatMap((colour) =>
          /^rgb\((\d+), (\d+), (\d+)\)$/.exec(colour)?.slice(1) === undefined ? [] : [colour],
        )
        .filter((colour) => new Set(/\d+, \d+, \d+/.exec(colour)![0].split(", ")).size > 1);
    };
    expect(colours()).not.toEqual([]);
    await userEvent.click(page.getByRole("radio", { name: "Black and white" }));
    await expect.poll(colours).toEqual([]);
  });

  test("when the plan cannot be drawn from the side, it says why and prints nothing", async () => {
    const sheet = await shownSheet({ checked: undefined });
    await userEvent.click(page.getByRole("radio", { name: "From the side" }));
    await expect.poll(() => toldBy(sheet)).toContain("has not been worked out");
    expect((page.getByRole("button", { name: "Print" }).element() as HTMLButtonElement).disabled).toBe(true);
    dispatchEvent(new Event("beforeprint"));
    expect(document.querySelector(".headfall-printed")).toBeNull();
  });

  test("its fields can be pressed with a thumb", async () => {
    const sheet = await shownSheet();
    for (const target of sheet.shadowRoot!.querySelectorAll("label:has(input), select, button"))
      expect(target.getBoundingClientRect().height).toBeGreaterThanOrEqual(44);
  });

  test("is no wider than a screen of 360 px", async () => {
    const box = document.createElement("div");
    box.style.width = "360px";
    const sheet = await shownSheet();
    box.append(sheet);
    document.body.append(box);
    await sheet.updateComplete;
    for (const each of sheet.shadowRoot!.querySelectorAll("*"))
      expect(each.closest("svg") !== null || each.scrollWidth <= 361).toBe(true);
  });
});

describe("printing", () => {
  beforeEach(() => vi.spyOn(window, "print").mockImplementation(() => {}));

  test("Print asks the browser to print", async () => {
    await shownSheet();
    await userEvent.click(page.getByRole("button", { name: "Print" }));
    expect(window.print).toHaveBeenCalledOnce();
  });

  test("while the document prints it has the pages in it, at the size of the paper; afterwards all is as before", async () => {
    const before = document.adoptedStyleSheets.length;
    const sheet = await shownSheet();
    await userEvent.click(page.getByRole("radio", { name: "Lying" }));
    await sheet.updateComplete;
    dispatchEvent(new Event("beforeprint"));
    const holder = document.querySelector(".headfall-printed")!;
    const [printed] = holder.shadowRoot!.querySelectorAll("svg.page");
    expect([printed!.getAttribute("width"), printed!.getAttribute("height")]).toEqual(["297mm", "210mm"]);
    expect(pageRules().map(({ cssText }) => cssText.replace(/\s+/g, " "))).toEqual([
      "@page { size: 297mm 210mm; margin: 0px; }",
    ]);
    // Only the printer sees it.
    expect(holder.getBoundingClientRect().height).toBe(0);
    dispatchEvent(new Event("afterprint"));
    expect(document.querySelector(".headfall-printed")).toBeNull();
    expect(document.adoptedStyleSheets).toHaveLength(before);
  });

  test("a hidden sheet leaves the document's own print alone, and one taken away leaves nothing behind", async () => {
    const sheet = await shownSheet();
    sheet.style.display = "none";
    dispatchEvent(new Event("beforeprint"));
    expect(document.querySelector(".headfall-printed")).toBeNull();
    sheet.style.display = "";
    dispatchEvent(new Event("beforeprint"));
    sheet.remove();
    expect(document.querySelector(".headfall-printed")).toBeNull();
    expect(pageRules()).toEqual([]);
  });

  test("on the page as printed 1 m at 1:20 is 50 mm, and the bar to check the printer with is 100 mm", async () => {
    const sheet = await shownSheet();
    await userEvent.selectOptions(page.getByRole("combobox", { name: "Scale", exact: true }), "1:20");
    await expect.poll(() => toldBy(sheet)).toContain("1:20.");
    dispatchEvent(new Event("beforeprint"));
    const holder = document.querySelector<HTMLElement>(".headfall-printed")!;
    // Shown on the screen as the printer would lay it out: by its measures in mm.
    holder.style.setProperty("display", "block", "important");
    const wide = (selector: string) =>
      Math.max(
        ...[...holder.shadowRoot!.querySelectorAll(selector)].map(
          (each) => each.getBoundingClientRect().width,
        ),
      );
    const first = holder.shadowRoot!.querySelector("svg.page")!.getBoundingClientRect();
    expect(first.width / PIXELS_PER_MM).toBeCloseTo(210, 2);
    expect(first.height / PIXELS_PER_MM).toBeCloseTo(297, 2);
    expect(wide("path.check") / PIXELS_PER_MM).toBeCloseTo(100, 1);
    // The feed is 6 m.
    const feed = holder.shadowRoot!.querySelector(".window path.pipe")!;
    expect((feed as SVGPathElement).getBBox().width * 20).toBeCloseTo(6000, 0);
    expect(feed.getBoundingClientRect().width / PIXELS_PER_MM / 6).toBeCloseTo(50, 1);
    dispatchEvent(new Event("afterprint"));
  });
});

describe("headfall-save", () => {
  /** Files the browser was handed, by name. */
  let saved: Map<string, Blob>;
  beforeEach(() => {
    saved = new Map();
    const blobs = new Map<string, Blob>();
    vi.spyOn(URL, "createObjectURL").mockImplementation((blob) => {
      const address = original(blob as Blob);
      blobs.set(address, blob as Blob);
      return address;
    });
    vi.spyOn(HTMLAnchorElement.prototype, "click").mockImplementation(function (this: HTMLAnchorElement) {
      saved.set(this.download, blobs.get(this.href)!);
    });
  });
  const original = URL.createObjectURL.bind(URL);

  function drawing(name: string) {
    const svg = document.createElementNS("http://www.w3.org/2000/svg", "svg");
    svg.setAttribute("viewBox", "0 0 40 20");
    svg.setAttribute("width", "40");
    svg.setAttribute("height", "20");
    const circle = document.createElementNS("http://www.w3.org/2000/svg", "circle");
    circle.setAttribute("r", "5");
    svg.append(circle);
    document.body.append(svg);
    return { name, svg };
  }

  async function shownSave(more: Partial<HeadfallSave> = {}): Promise<HeadfallSave> {
    const drawings = [drawing("From above"), drawing("From the side")];
    const save = new HeadfallSave();
    Object.assign(save, { plan, checked, date: "2026-11-25", drawings: () => drawings, ...more });
    document.body.append(save);
    await save.updateComplete;
    return save;
  }
  const told = (save: HeadfallSave) => save.shadowRoot!.querySelector(".told")!.textContent!;

  test("has nothing that axe objects to, with the print open too", async () => {
    const save = await shownSave();
    expect(await accessibilityFaults(save)).toEqual([]);
    await userEvent.click(page.getByRole("button", { name: "Print to scale" }));
    await expect.poll(() => save.shadowRoot!.querySelector("dialog")?.open).toBe(true);
    expect(await accessibilityFaults(save)).toEqual([]);
  });

  test("saves the chosen drawing as SVG and as PNG, named for the plan, and says so", async () => {
    const save = await shownSave();
    await userEvent.selectOptions(page.getByRole("combobox", { name: "Drawing" }), "From the side");
    await userEvent.click(page.getByRole("button", { name: "Save a picture (SVG)" }));
    await expect.poll(() => told(save)).toBe("Saved as alder-bank-elbow-from-the-side.svg.");
    const svg = await saved.get("alder-bank-elbow-from-the-side.svg")!.text();
    expect(svg).toContain("Alder Bank, elbow: From the side");
    await userEvent.click(page.getByRole("button", { name: "Save a picture (PNG)" }));
    await expect.poll(() => told(save)).toBe("Saved as alder-bank-elbow-from-the-side.png.");
    const picture = await createImageBitmap(saved.get("alder-bank-elbow-from-the-side.png")!);
    expect([picture.width, picture.height]).toEqual([80, 40]);
  });

  test("saves each table with the mark that spreadsheets know UTF-8 by, in the chosen units", async () => {
    await shownSave({ system: "us" });
    for (const table of ["drinkers", "runs", "sources", "heights"]) {
      await userEvent.click(page.getByRole("button", { name: `Table of ${table} (CSV)` }));
      const bytes = new Uint8Array(await saved.get(`alder-bank-elbow-${table}.csv`)!.arrayBuffer());
      expect([...bytes.slice(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    }
    const rows = recordsOf(await saved.get("alder-bank-elbow-drinkers.csv")!.text());
    expect(rows).toHaveLength(11);
    expect(Number(rows[5]!["along the run [ft]"])).toBeCloseTo(6 / 0.3048, 5);
  });

  test("has no table to save while the plan has not been worked out", async () => {
    const save = await shownSave({ checked: undefined });
    const tables = [...save.shadowRoot!.querySelectorAll<HTMLButtonElement>("[part=tables] button")];
    expect(tables.map(({ disabled }) => disabled)).toEqual([true, true, true, true]);
  });

  test("when a picture cannot be made, it says so", async () => {
    const gone = drawing("From above");
    gone.svg.remove();
    const save = await shownSave({ drawings: () => [gone] });
    await userEvent.click(page.getByRole("button", { name: "Save a picture (SVG)" }));
    await expect.poll(() => told(save)).toContain("could not be saved");
  });

  test("finds a drawing that comes onto the screen later, and says so when there is none", async () => {
    let shown: { name: string; svg: SVGSVGElement }[] = [];
    const save = await shownSave({ drawings: () => shown });
    await userEvent.click(page.getByRole("button", { name: "Save a picture (SVG)" }));
    await expect.poll(() => told(save)).toContain("No drawing is shown");
    shown = [drawing("From above"), drawing("From the side")];
    page.getByRole("button", { name: "Save a picture (PNG)" }).element().focus();
    await expect.element(page.getByRole("combobox", { name: "Drawing" })).toBeInTheDocument();
  });

  test("opens the print over the page, and Escape closes it and takes it out", async () => {
    const save = await shownSave();
    await userEvent.click(page.getByRole("button", { name: "Print to scale" }));
    await expect.poll(() => save.shadowRoot!.querySelector("headfall-sheet")).not.toBeNull();
    await userEvent.keyboard("{Escape}");
    await expect.poll(() => save.shadowRoot!.querySelector("dialog")).toBeNull();
    expect(save.shadowRoot!.activeElement?.textContent?.trim()).toBe("Print to scale ...");
  });
});
