import { checkDocument, type Plan, type Problem } from "@headfall/hydraulics";
import { nameFor, newId, withName } from "./plan-names.js";
import type { PlanShelf, Turn } from "./plan-shelf.js";
import { type KeptPlan, type OpenablePlan, readStored, type StoredPlan } from "./stored-plan.js";

/** What came of a saving: the revision it has now, or what somebody else has saved in the meantime. */
export type Saving =
  | { readonly ok: true; readonly revision: number }
  | { readonly ok: false; readonly stored: KeptPlan };

/** What came of a new name. */
export type Renaming = { readonly ok: true } | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * The plans kept in this browser. Each method is one turn of one record: it happens whole or not at all, also when
 * the page is ended in the middle of it. A record that cannot be opened is never written.
 *
 * @throws StorageTrouble from every method
 */
export class PlanLibrary {
  readonly #shelf: PlanShelf;

  constructor(shelf: PlanShelf) {
    this.#shelf = shelf;
  }

  /** All of them, the deleted ones too; what was changed last comes first. */
  async list(): Promise<readonly KeptPlan[]> {
    const all = await this.#shelf.all();
    return all.map(([id, record]) => readStored(id, record)).sort((a, b) => b.changedAt - a.changedAt);
  }

  async read(id: string): Promise<KeptPlan | undefined> {
    const record = await this.#shelf.one(id);
    return record === undefined ? undefined : readStored(id, record);
  }

  /** Keeps a plan as a new one. */
  async add(plan: Plan): Promise<OpenablePlan> {
    const id = newId();
    const saving = await this.save(id, plan, 0);
    const kept = await this.read(id);
    if (!saving.ok || kept?.kind !== "openable") throw new Error("A new plan could not be read back.");
    return kept;
  }

  /**
   * Puts a plan in the place of the one that was read or saved at `revision`; a deleted one is brought back by it.
   * When the record stands at another revision by now, nothing is written. One that is gone is made anew.
   */
  async save(id: string, plan: Plan, revision: number): Promise<Saving> {
    let saving: Saving = { ok: true, revision: revision + 1 };
    await this.#shelf.turn(id, (found) => {
      const kept = found === undefined ? undefined : readStored(id, found);
      if (kept !== undefined && kept.revision !== revision) {
        saving = { ok: false, stored: kept };
        return "leave";
      }
      return { ...withoutDeletion(found), ...record(id, plan, revision + 1) };
    });
    return saving;
  }

  /** Keeps the same plan a second time, as "... (copy)". */
  async copy(id: string): Promise<OpenablePlan | undefined> {
    const kept = await this.read(id);
    if (kept?.kind !== "openable") return undefined;
    const taken = new Set((await this.list()).map(({ name }) => name));
    return this.add(withName(kept.plan, nameFor(kept.name, "copy", taken)));
  }

  async rename(id: string, name: string): Promise<Renaming> {
    let renaming: Renaming = { ok: true };
    await this.#turnOpenable(id, (kept, found) => {
      const reading = checkDocument(withName(kept.plan, name));
      if (reading.ok) return { ...found, ...record(id, reading.plan, kept.revision + 1) };
      renaming = { ok: false, problems: reading.problems };
      return "leave";
    });
    return renaming;
  }

  /** Lays a plan among the deleted ones, from where it can be brought back. */
  delete(id: string): Promise<void> {
    return this.#turnOpenable(id, ({ revision }, found) => ({
      ...found,
      revision: revision + 1,
      deletedAt: Date.now(),
    }));
  }

  bringBack(id: string): Promise<void> {
    return this.#turnOpenable(id, ({ revision }, found) => ({
      ...(withoutDeletion(found) as StoredPlan),
      revision: revision + 1,
    }));
  }

  /** Removes the deleted ones for good; tells how many. One that was brought back in the meantime stays. */
  async emptyDeleted(): Promise<number> {
    const deleted = (await this.list()).filter(({ deletedAt }) => deletedAt !== undefined);
    let removed = 0;
    for (const { id } of deleted) {
      await this.#turnOpenable(id, ({ deletedAt }) => {
        if (deletedAt === undefined) return "leave";
        removed += 1;
        return "remove";
      });
    }
    return removed;
  }

  #turnOpenable(id: string, decide: (kept: OpenablePlan, found: StoredPlan) => Turn): Promise<void> {
    return this.#shelf.turn(id, (found) => {
      if (found === undefined) return "leave";
      const kept = readStored(id, found);
      return kept.kind === "openable" ? decide(kept, found as StoredPlan) : "leave";
    });
  }
}

function record(id: string, plan: Plan, revision: number): StoredPlan {
  return { id, name: plan.name ?? "", plan, revision, changedAt: Date.now() };
}

/** Whatever else a record holds is kept: a newer page may have put it there. */
function withoutDeletion(found: unknown): object {
  const { deletedAt: _, ...rest } = (found ?? {}) as Partial<StoredPlan>;
  return rest;
}
