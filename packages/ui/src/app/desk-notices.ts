import type { SaveState } from "../storage/autosave.js";
import type { TroubleKind } from "../storage/storage-trouble.js";
import { writeTrouble } from "../storage/trouble-words.js";
import type { Page } from "./desk.js";

const KEPT_WORDS = {
  untouched: "",
  saved: "Saved",
  saving: "Saving",
  faulty: "Not saved: see the problems below",
  unsaved: "Not saved",
};

/** What the page says of how its plans are kept. */
export class DeskNotices {
  readonly #page: Page;
  readonly #savePlan: () => unknown;

  /** @param savePlan  hands the plan in hand out as a file */
  constructor(page: Page, savePlan: () => unknown) {
    this.#page = page;
    this.#savePlan = savePlan;
  }

  showState(state: SaveState): void {
    this.#page.keptWords = KEPT_WORDS[state.kind];
    if (state.kind === "unsaved") this.#tellUnsaved(state.trouble);
    else this.#page.untell("unsaved");
  }

  #tellUnsaved(trouble: TroubleKind): void {
    this.#page.tell({
      key: "unsaved",
      words: `The plan is not saved: ${writeTrouble(trouble)}. It lives on in this window only; saving is tried again at the next change.`,
      acts: [{ words: "Save the plan as a file", act: this.#savePlan }],
    });
  }

  /** The plan in hand goes on as one of its own. */
  tellParted(before: string, name: string): void {
    const words = `Another tab changed the same place of "${before}". Both are kept: yours goes on here as "${name}", the other is in the list of plans.`;
    this.#page.tell({ key: "parted", words, acts: [] });
  }

  tellDeleted(bringBack: () => Promise<void>): void {
    const act = () => {
      this.#page.untell("deleted");
      return this.#page.withDesk(bringBack);
    };
    const words = "This plan was deleted in another tab. The next change brings it back.";
    this.#page.tell({ key: "deleted", words, acts: [{ words: "Bring back", act }] });
  }
}
