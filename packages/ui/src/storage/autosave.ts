import { checkDocument, type Plan } from "@headfall/hydraulics";
import type { PlanStore } from "../store/plan-store.js";
import { mergePlans } from "./merge-plans.js";
import type { PlanLibrary } from "./plan-library.js";
import { nameFor, newId, withName } from "./plan-names.js";
import { StorageTrouble, type TroubleKind, troubleOf } from "./storage-trouble.js";
import type { KeptPlan } from "./stored-plan.js";

/** Rest after the last change before it is saved [ms]. */
const REST_MS = 300;

/** Which record the plan in hand belongs to, and how it stood there when last seen. */
export interface Draft {
  readonly id: string;
  /** 0 when it has never been saved. */
  readonly revision: number;
  /** What is saved; a plan that is this very one needs no saving. Undefined when nothing is. */
  readonly base: Plan | undefined;
}

export type SaveState =
  | { readonly kind: "untouched" | "saved" | "saving" | "faulty" }
  | { readonly kind: "unsaved"; readonly trouble: TroubleKind };

/** What those around are told. */
export interface AutosaveEvents {
  readonly onState: (state: SaveState) => void;
  /** After each saving. */
  readonly onSaved: (id: string) => void;
  /** When the plan in hand goes on as one of its own, since another tab changed the same place. */
  readonly onParted: (before: string, name: string) => void;
  /** When the plan in hand was deleted in another tab. The next change brings it back. */
  readonly onDeleted: (id: string) => void;
}

/**
 * Saves the plan in hand shortly after each change, and brings in what another tab has saved. Nothing is ever
 * overwritten unseen: a record that stands at another revision is first read, and the own changes are made on it.
 */
export class Autosave {
  readonly #store: PlanStore;
  readonly #library: PlanLibrary;
  readonly #events: AutosaveEvents;
  readonly #stop: () => void;
  #draft: Draft;
  #state: SaveState;
  #timer: ReturnType<typeof setTimeout> | undefined;
  #queue: Promise<void> = Promise.resolve();

  constructor(store: PlanStore, library: PlanLibrary, draft: Draft, events: AutosaveEvents) {
    this.#store = store;
    this.#library = library;
    this.#events = events;
    this.#draft = draft;
    this.#state = this.#atRest();
    this.#stop = store.listen(() => this.#planChanged());
    if (this.hasChanges) this.#planChanged();
  }

  get draft(): Draft {
    return this.#draft;
  }

  get state(): SaveState {
    return this.#state;
  }

  /** Whether the plan in hand is another than the saved one. */
  get hasChanges(): boolean {
    return this.#store.plan !== this.#draft.base;
  }

  /** From now on, the plan in hand is another; the one before is to have been saved. */
  take(draft: Draft): void {
    clearTimeout(this.#timer);
    this.#draft = draft;
    this.#become(this.#atRest());
  }

  /** Saves at once what is not saved yet. Never rejects: what is in the way stands in `state`. */
  flush(): Promise<void> {
    clearTimeout(this.#timer);
    return this.#enqueue(() => this.#save());
  }

  /** Brings in what another tab may have saved. */
  lookElsewhere(): Promise<void> {
    return this.#enqueue(async () => {
      const draft = this.#draft;
      const stored = draft.revision === 0 ? undefined : await this.#library.read(draft.id);
      if (stored === undefined || this.#draft !== draft || stored.revision <= draft.revision) return;
      this.#bringIn(stored);
      if (this.hasChanges) await this.#save();
    });
  }

  close(): void {
    clearTimeout(this.#timer);
    this.#stop();
  }

  #planChanged(): void {
    clearTimeout(this.#timer);
    if (this.hasChanges) {
      if (this.#state.kind !== "unsaved") this.#become({ kind: "saving" });
      this.#timer = setTimeout(() => void this.flush(), REST_MS);
    } else this.#become(this.#atRest());
  }

  #enqueue(work: () => Promise<void>): Promise<void> {
    this.#queue = this.#queue.then(work).catch((error: unknown) => {
      if (this.hasChanges) this.#become({ kind: "unsaved", trouble: troubleOf(error).kind });
      if (!(error instanceof StorageTrouble)) reportError(error);
    });
    return this.#queue;
  }

  async #save(): Promise<void> {
    while (this.hasChanges) {
      const draft = this.#draft;
      const { plan } = this.#store;
      if (!checkDocument(plan).ok) return this.#become({ kind: "faulty" });
      const saving = await this.#library.save(draft.id, plan, draft.revision);
      if (this.#draft !== draft) continue;
      if (saving.ok) {
        this.#draft = { ...draft, revision: saving.revision, base: plan };
        this.#events.onSaved(draft.id);
      } else this.#bringIn(saving.stored);
    }
    this.#become(this.#atRest());
  }

  /** Makes the own changes on what another tab has saved; where that cannot be, both are kept. */
  #bringIn(stored: KeptPlan): void {
    const { id, base } = this.#draft;
    const mine = this.#store.plan;
    const merged =
      stored.kind === "openable" && base !== undefined ? mergePlans(base, mine, stored.plan) : undefined;
    if (merged === undefined || stored.kind !== "openable") {
      this.#part(mine);
      return;
    }
    this.#draft = { id, revision: stored.revision, base: stored.plan };
    this.#store.replace(merged, "change made in another tab", "elsewhere");
    if (stored.deletedAt !== undefined && !this.hasChanges) this.#events.onDeleted(id);
  }

  #atRest(): SaveState {
    return { kind: this.#draft.revision === 0 ? "untouched" : "saved" };
  }

  #part(mine: Plan): void {
    const before = mine.name ?? "";
    const name = nameFor(before, "other tab", new Set());
    this.#draft = { id: newId(), revision: 0, base: undefined };
    this.#store.replace(withName(mine, name), "kept as a plan of its own", "elsewhere");
    this.#events.onParted(before, name);
  }

  #become(state: SaveState): void {
    this.#state = state;
    this.#events.onState(state);
  }
}
