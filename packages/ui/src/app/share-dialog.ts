import { html, nothing } from "lit";
import { LONG_LINK, LONGEST_LINK, writeLink } from "../storage/share-link.js";
import type { Desk } from "./desk.js";
import { PageDialog } from "./page-dialog.js";

/** Shows the plan as a link to copy or to hand on; where it is too long for that, as a file. */
export function sharePlan(desk: Desk): void {
  void new ShareDialog(desk).show();
}

class ShareDialog {
  readonly #desk: Desk;
  readonly #dialog = new PageDialog("Share this plan", () => this.#view());
  #link: string | undefined;
  #said = "";

  constructor(desk: Desk) {
    this.#desk = desk;
  }

  async show(): Promise<void> {
    this.#link = await writeLink(this.#desk.plan, location.href).catch(() => undefined);
    this.#dialog.show();
  }

  #view() {
    const isLink = this.#link !== undefined && this.#link.length <= LONGEST_LINK;
    return html`${isLink ? this.#linkView(this.#link!) : this.#noLinkView()}
      <div role="status">${this.#said === "" ? nothing : html`<p>${this.#said}</p>`}</div>
      <div class="acts"><button class=${isLink ? nothing : "chief"} @click=${() => this.#desk.savePlan()}>Save the plan as a file</button></div>`;
  }

  #linkView(link: string) {
    return html`<p>The whole plan is in the link itself. No server sees it; whoever opens the link gets a copy of their own.</p>
      <label class="wide">Link<input type="text" readonly .value=${link} @focus=${(event: Event) => (event.target as HTMLInputElement).select()} /></label>
      ${
        link.length > LONG_LINK
          ? html`<p>It is ${link.length.toLocaleString("en")} signs long. Some programs that pass messages on cut off what is longer than ${LONG_LINK.toLocaleString("en")}: a file is safer there.</p>`
          : nothing
      }
      <div class="acts">
        <button class="chief" @click=${() => this.#copy(link)}>Copy the link</button>
        ${"share" in navigator ? html`<button @click=${() => this.#handOn(link)}>Hand it on ...</button>` : nothing}
      </div>`;
  }

  #noLinkView() {
    const why =
      this.#link === undefined
        ? "This browser cannot make links of plans."
        : `As a link, this plan would be ${this.#link.length.toLocaleString("en")} signs long: too long to pass on.`;
    return html`<p>${why} Save it as a file and send that; Headfall opens it everywhere.</p>`;
  }

  async #copy(link: string): Promise<void> {
    try {
      await navigator.clipboard.writeText(link);
      this.#say("The link is copied.");
    } catch {
      this.#dialog.focus("input");
      this.#say(
        "The browser does not let the page copy. The link is marked: copy it by Ctrl+C, or press it long.",
      );
    }
  }

  async #handOn(link: string): Promise<void> {
    const title = this.#desk.plan.name ?? "A drinker line";
    // Given up by the user, or refused: the link is still there to be copied.
    await navigator.share({ title, url: link }).catch(() => undefined);
  }

  #say(words: string): void {
    this.#said = words;
    this.#dialog.update();
  }
}
