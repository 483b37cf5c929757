import { checkDocument, type Plan } from "@headfall/hydraulics";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { Autosave, type Draft } from "../storage/autosave.js";
import { findLastPlan } from "../storage/find-last-plan.js";
import { forgetLeftover, leaveText } from "../storage/leftovers.js";
import { PlanLibrary, type Renaming } from "../storage/plan-library.js";
import { newId, withName } from "../storage/plan-names.js";
import type { PlanShelf } from "../storage/plan-shelf.js";
import { writeLeftover } from "../storage/recover-leftover.js";
import type { KeptPlan } from "../storage/stored-plan.js";
import { Tabs } from "../storage/tabs.js";
import type { PlanStore } from "../store/plan-store.js";
import type { Begun } from "./begin-with-last.js";
import type { Desk, Page } from "./desk.js";
import { DeskNotices } from "./desk-notices.js";
import { EXAMPLES } from "./examples.js";
import { LiftedHand } from "./lifted-hand.js";
import type { Notice } from "./notice.js";
import { watchPage } from "./page-life.js";
import { ParkedPlans } from "./parked-plans.js";
import { passKeys } from "./pass-keys.js";
import { rememberPlan } from "./preferences.js";
import { Rooms } from "./rooms.js";

/** Where the plan in hand meets the plans that are kept: opens, saves, and tells the page how it stands. */
export class PlanDesk implements Desk {
  readonly #library: PlanLibrary;
  readonly parked: ParkedPlans;
  readonly #page: Page;
  readonly #store: PlanStore;
  readonly #shelf: PlanShelf;
  readonly #autosave: Autosave;
  readonly #tabs: Tabs;
  readonly #notices: DeskNotices;
  readonly #hand = new LiftedHand();
  readonly #pageId = newId();
  onListChanged: () => void = () => undefined;

  constructor(page: Page, store: PlanStore, shelf: PlanShelf, begun: Begun) {
    this.#page = page;
    this.#store = store;
    this.#shelf = shelf;
    this.#library = new PlanLibrary(shelf);
    this.parked = new ParkedPlans(this.#library);
    this.#notices = new DeskNotices(page, () => this.savePlan());
    this.#tabs = new Tabs((id) => this.#savedElsewhere(id));
    this.#autosave = new Autosave(store, this.#library, draftOf(begun, store.plan), {
      onState: (state) => this.#notices.showState(state),
      onSaved: (id) => this.#saved(id),
      onParted: (before, name) => this.#notices.tellParted(before, name),
      onDeleted: (id) => this.#notices.tellDeleted(() => this.bringBack(id)),
    });
    if (begun.kept !== undefined) rememberPlan(begun.kept.id);
    if (begun.news !== undefined) page.tell(begun.news);
    this.#notices.showState(
      begun.trouble === undefined ? this.#autosave.state : { kind: "unsaved", trouble: begun.trouble.kind },
    );
    if (begun.arrived !== undefined) void this.#autosave.flush();
    watchPage(this);
    passKeys(page.line);
    new Rooms(page.line, store);
    void import("./offline.js").then(({ workOffline }) => workOffline(this));
  }

  get plan(): Plan {
    return this.#store.plan;
  }
  get openId(): string {
    return this.#autosave.draft.id;
  }
  get isUnsavable(): boolean {
    return (
      this.parked.all.length > 0 || (this.#autosave.hasChanges && this.#autosave.state.kind === "unsaved")
    );
  }
  get units(): UnitSystem {
    return this.#page.line.units;
  }

  async open(id: string): Promise<void> {
    if (id === this.openId) return;
    const parked = this.parked.take(id);
    if (parked !== undefined) return this.#turnTo(parked.draft, parked.plan);
    const kept = await this.#library.read(id);
    if (kept?.kind !== "openable") return;
    await this.#turnTo({ id, revision: kept.revision, base: kept.plan }, kept.plan);
  }

  openNew(plan: Plan): Promise<void> {
    return this.#turnTo({ id: newId(), revision: 0, base: undefined }, plan);
  }

  async addAll(plans: readonly Plan[]): Promise<void> {
    for (const plan of plans) {
      const draft = { id: newId(), revision: 0, base: undefined };
      this.parked.park(draft, plan);
      await this.parked.save();
      this.#tabs.tell(draft.id);
    }
  }

  async copy(id: string): Promise<void> {
    await this.#autosave.flush();
    const copy = await this.#library.copy(id);
    if (copy !== undefined) this.#tabs.tell(copy.id);
  }

  async rename(id: string, name: string): Promise<Renaming> {
    if (id !== this.openId) {
      const renaming = await this.#library.rename(id, name);
      this.#tabs.tell(id);
      return renaming;
    }
    const reading = checkDocument(withName(this.plan, name));
    if (!reading.ok) return reading;
    this.#store.replace(withName(this.plan, name), `name ${name}`);
    await this.#autosave.flush();
    return { ok: true };
  }

  async delete(id: string): Promise<void> {
    await this.#autosave.flush();
    await this.#library.delete(id);
    this.#tabs.tell(id);
    if (id !== this.openId) return;
    const next = await findLastPlan(this.#shelf, []);
    if (next !== undefined) await this.open(next.id);
    else await this.#turnTo({ id: newId(), revision: 0, base: EXAMPLES[0]! }, EXAMPLES[0]!);
  }

  async bringBack(id: string): Promise<void> {
    await this.#library.bringBack(id);
    this.#tabs.tell(id);
    await this.#autosave.lookElsewhere();
  }

  emptyDeleted(): Promise<number> {
    return this.#library.emptyDeleted();
  }

  async list(): Promise<readonly KeptPlan[]> {
    await this.#autosave.flush();
    return this.#library.list();
  }

  async showPlans(): Promise<void> {
    (await import("./plans-dialog.js")).showPlans(this);
  }

  async share(): Promise<void> {
    (await import("./share-dialog.js")).sharePlan(this);
  }

  async savePlan(): Promise<void> {
    (await import("./save-file.js")).savePlanFile(this.plan);
  }

  async openFiles(files: readonly File[]): Promise<void> {
    await (await import("./open-files.js")).openFiles(this, this.#page, files);
  }

  async beginOwn(): Promise<void> {
    const { vesselChoice, beginPlan } = await import("./vessel-choice.js");
    this.#page.card = vesselChoice(async (vessel) => {
      await beginPlan(this, vessel);
      this.#page.focus("main");
    });
    this.#page.show();
    this.#page.focus(".card h2");
  }

  keepExample(): void {
    this.#closeCard();
    this.#page.focus("main");
  }

  flush(): Promise<void> {
    return this.#autosave.flush();
  }

  leave(): void {
    if (this.#autosave.hasChanges) leaveText(this.#pageId, writeLeftover(this.#autosave.draft, this.plan));
    void this.#autosave.flush();
  }

  lookElsewhere(): Promise<void> {
    return this.#autosave.lookElsewhere();
  }

  tell(notice: Notice): void {
    this.#page.tell(notice);
  }

  async #turnTo(draft: Draft, plan: Plan): Promise<void> {
    await this.#autosave.flush();
    if (this.#autosave.hasChanges) this.parked.park(this.#autosave.draft, this.plan);
    this.#autosave.take(draft);
    this.#store.open(plan);
    this.#closeCard();
    if (draft.revision > 0) rememberPlan(draft.id);
    await this.#autosave.flush();
  }

  #closeCard(): void {
    this.#page.card = undefined;
    this.#page.show();
  }

  #saved(id: string): void {
    rememberPlan(id);
    forgetLeftover(this.#pageId);
    this.#tabs.tell(id);
    this.#hand.when(() => this.#closeCard());
    this.onListChanged();
    if (this.parked.all.length > 0) void this.parked.save();
  }

  #savedElsewhere(id: string): void {
    if (id === this.openId) void this.#autosave.lookElsewhere();
    this.onListChanged();
  }
}

function draftOf({ kept, arrived }: Begun, plan: Plan): Draft {
  if (arrived !== undefined) return { id: newId(), revision: 0, base: undefined };
  if (kept !== undefined) return { id: kept.id, revision: kept.revision, base: kept.plan };
  return { id: newId(), revision: 0, base: plan };
}
