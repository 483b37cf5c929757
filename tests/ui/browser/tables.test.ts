import { html, LitElement } from "lit";
import { afterEach, expect, test } from "vitest";
import { userEvent } from "vitest/browser";
import { howGotOf } from "../../../packages/ui/src/kernels/how-got/how-got-of.js";
import type { HowSubject } from "../../../packages/ui/src/kernels/how-got/subject.js";
import { showHead } from "../../../packages/ui/src/kernels/shown.js";
import { controls } from "../../../packages/ui/src/styles/controls.js";
import { tokens } from "../../../packages/ui/src/styles/tokens.js";
import { drinkersTable } from "../../../packages/ui/src/tables/drinkers-table.js";
import { runsTable } from "../../../packages/ui/src/tables/runs-table.js";
import { sourcesTable } from "../../../packages/ui/src/tables/sources-table.js";
import { tableStyles } from "../../../packages/ui/src/tables/table.styles.js";
import { checkedExample } from "../fixtures/checked-example.js";
import { accessibilityFaults } from "./accessibility.js";

/** The three tables as the line shows them. */
class ShownTables extends LitElement {
  static override styles = [tokens, controls, tableStyles];
  of = checkedExample();
  system: "metric" | "us" = "metric";
  chosen = -1;
  asked: HowSubject[] = [];

  override render() {
    const { checked } = this.of;
    return html`<main @how-wanted=${(event: Event & { subject: HowSubject }) => this.asked.push(event.subject)}>
      ${drinkersTable({
        checked,
        system: this.system,
        lookedAt: 0,
        showsAll: false,
        onChoose: (drinker) => {
          this.chosen = drinker;
        },
        onShowAll: () => undefined,
      })}
      ${runsTable(checked, this.system)} ${sourcesTable(checked, this.system)}
    </main>`;
  }
}
customElements.define("shown-tables", ShownTables);

afterEach(() => document.body.replaceChildren());

async function shown(drinkers = 8): Promise<ShownTables> {
  const tables = new ShownTables();
  tables.of = checkedExample({ drinkers });
  document.body.append(tables);
  await tables.updateComplete;
  return tables;
}

const numbers = (tables: ShownTables) => [...tables.shadowRoot!.querySelectorAll<HTMLElement>("[data-how]")];

test("the tables have nothing that axe objects to, in either width", async () => {
  const tables = await shown();
  expect(await accessibilityFaults(tables)).toEqual([]);
  document.body.style.width = "360px";
  expect(await accessibilityFaults(tables)).toEqual([]);
  document.body.style.width = "";
});

/** A head as tables show it; how it was got has it in full. */
function asFineAsATape(result: string): string {
  const [, number, unit] = /^(-?[\d.]+) (mm|cm|m)$/.exec(result) ?? [];
  return unit === undefined ? result : showHead(Number(number) * METRES[unit]!, "metric");
}

const METRES: Readonly<Record<string, number>> = { mm: 0.001, cm: 0.01, m: 1 };

test("every number of every table asks how it was got, and is told with the figure shown", async () => {
  const tables = await shown();
  const { checked, plan } = tables.of;
  expect(numbers(tables).length).toBe(8 * 6 + 2 * 9 + 10);
  for (const number of numbers(tables)) {
    number.click();
    const how = howGotOf(tables.asked.at(-1)!, checked, plan, "metric")!;
    const text = number.textContent!.replace(/\s+/g, " ").trim();
    // What is no figure is told in other words: "not filled", "does not stall"; a regime carries its Reynolds number.
    if (/^[-+\d]/.test(text)) expect([how.result, asFineAsATape(how.result)], how.title).toContain(text);
    else expect(how.result).not.toBe("");
  }
  expect(tables.asked.length).toBe(numbers(tables).length);
});

test("every number is said with the head of its row and of its column, and is large enough to press", async () => {
  const tables = await shown();
  for (const number of numbers(tables)) {
    const ids = number.getAttribute("aria-describedby")!.split(" ");
    expect(ids.map((id) => tables.shadowRoot!.getElementById(id)?.textContent?.trim())).not.toContain("");
    const { width, height } = number.getBoundingClientRect();
    expect(Math.min(width, height)).toBeGreaterThanOrEqual(24);
  }
});

test("the tab key stops once in each table, and arrow keys go from number to number", async () => {
  const tables = await shown();
  const stops = numbers(tables).filter(({ tabIndex }) => tabIndex === 0);
  expect(stops.map(({ dataset }) => JSON.parse(dataset["how"]!).of)).toEqual([
    "verdict",
    "runLength",
    "sourceVolume",
  ]);
  stops[0]!.focus();
  await userEvent.keyboard("{ArrowDown}{ArrowRight}");
  const focused = tables.shadowRoot!.activeElement as HTMLElement;
  expect(JSON.parse(focused.dataset["how"]!)).toEqual({ of: "drinkerMargin", drinker: 1 });
  expect(numbers(tables).filter(({ tabIndex }) => tabIndex === 0).length).toBe(3);
  await userEvent.keyboard("{Enter}");
  expect(tables.asked).toEqual([{ of: "drinkerMargin", drinker: 1 }]);
});

test("when a row's button is pressed, its drinker is chosen and no number is asked", async () => {
  const tables = await shown();
  tables.shadowRoot!.querySelectorAll<HTMLElement>("[data-row]")[2]!.click();
  expect([tables.chosen, tables.asked.length]).toEqual([2, 0]);
});

test("when the plan changes, the figures follow, and the number that has the focus keeps it", async () => {
  const tables = await shown();
  const number = numbers(tables)[3]!;
  number.focus();
  const before = number.textContent;
  tables.of = checkedExample({ stand: "90 cm" });
  tables.requestUpdate();
  await tables.updateComplete;
  expect(numbers(tables)[3]).toBe(number);
  expect(number.textContent).not.toBe(before);
  expect(tables.shadowRoot!.activeElement).toBe(number);
});

/** What changes in the document while the tables are written again for another check. */
async function changesWith(tables: ShownTables, of: ShownTables["of"]): Promise<MutationRecord[]> {
  const records: MutationRecord[] = [];
  const observer = new MutationObserver((more) => records.push(...more));
  observer.observe(tables.shadowRoot!, {
    subtree: true,
    childList: true,
    attributes: true,
    characterData: true,
  });
  tables.of = of;
  tables.requestUpdate();
  await tables.updateComplete;
  records.push(...observer.takeRecords());
  observer.disconnect();
  return records;
}

test("of 120 drinkers written again, nothing is touched whose figures stayed, and only texts where they changed", async () => {
  const tables = await shown(130);
  expect(numbers(tables).length).toBe(120 * 6 + 2 * 9 + 10);
  const same = checkedExample({ drinkers: 130 });
  expect(await changesWith(tables, same)).toEqual([]);
  // The verdicts stay: a mark that changes is drawn anew.
  const higher = checkedExample({ drinkers: 130, stand: "61 cm" });
  const changes = await changesWith(tables, higher);
  expect(changes.length).toBeGreaterThan(100);
  expect(changes.length).toBeLessThan(900);
  expect(new Set(changes.map(({ type }) => type))).toEqual(new Set(["characterData"]));
});
