import { css, html, LitElement } from "lit";
import { afterEach, expect, test } from "vitest";
import { page, userEvent } from "vitest/browser";

/** The smallest element of the kind the page is made of: reactive by static properties, styled by its own sheet. */
class TapCounter extends LitElement {
  static override properties = { turns: { type: Number } };
  static override styles = css`
    button {
      min-height: 44px;
    }
  `;
  turns = 0;

  override render() {
    return html`<button @click=${() => (this.turns += 1)}>Turned ${this.turns} times</button>`;
  }
}
customElements.define("test-tap-counter", TapCounter);

afterEach(() => document.body.replaceChildren());

test("an element redraws when one of its properties changes, since class fields do not hide them", async () => {
  document.body.append(new TapCounter());
  await userEvent.click(page.getByRole("button", { name: "Turned 0 times" }));
  await expect.element(page.getByRole("button", { name: "Turned 1 times" })).toBeVisible();
});

test("an element is styled by a constructed sheet, which the page's policy allows, and by no style tag", async () => {
  const element = new TapCounter();
  document.body.append(element);
  await element.updateComplete;
  expect(element.shadowRoot?.querySelector("style")).toBeNull();
  expect(element.shadowRoot?.adoptedStyleSheets).toHaveLength(1);
  expect(element.shadowRoot?.querySelector("button")?.offsetHeight).toBeGreaterThanOrEqual(44);
});
