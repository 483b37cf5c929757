import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import { StorageTrouble, troubleOf } from "./storage-trouble.js";
import type { StoredPlan } from "./stored-plan.js";

interface Shelves extends DBSchema {
  plans: { key: string; value: StoredPlan };
}

/** Version of the database. A page that knows only an older one refuses to touch it. */
const VERSION = 1;
/** A database that has not answered by then counts as out of order [ms]. */
const PATIENCE_MS = 5000;

/** What becomes of a record: another in its place, nothing at all, or as it was. */
export type Turn = StoredPlan | "remove" | "leave";

/**
 * The browser's own database, as a shelf of records. It is opened at the first use, and again at the next use after
 * it was refused or taken away. What it gives back is untrusted: another version may have written it.
 *
 * @throws StorageTrouble from every method
 */
export class PlanShelf {
  readonly #name: string;
  #opening: Promise<IDBPDatabase<Shelves>> | undefined;

  constructor(name = "headfall") {
    this.#name = name;
  }

  /** Whether there is no record at all. */
  isEmpty(): Promise<boolean> {
    return this.#use(async (database) => (await database.count("plans")) === 0);
  }

  /** One record as it stands; undefined when there is none. */
  one(id: string): Promise<unknown> {
    return this.#use((database) => database.get("plans", id));
  }

  /** Every record with its key. */
  all(): Promise<readonly (readonly [string, unknown])[]> {
    return this.#use(async (database) => {
      const { store, done } = database.transaction("plans");
      const [keys, records] = await Promise.all([store.getAllKeys(), store.getAll(), done]);
      return keys.map((key, index) => [String(key), records[index]] as const);
    });
  }

  /** Reads one record and puts another in its place, whole or not at all: nobody comes between. */
  turn(id: string, decide: (found: unknown) => Turn): Promise<void> {
    return this.#use(async (database) => {
      // What has been told to be saved is to outlive a flat battery.
      const transaction = database.transaction("plans", "readwrite", { durability: "strict" });
      const ended = transaction.done;
      ended.catch(() => undefined); // told below
      // What was called not saved must not come about later after all.
      const timer = setTimeout(() => giveUp(transaction), PATIENCE_MS);
      try {
        const turn = decide(await transaction.store.get(id));
        if (turn === "remove") await transaction.store.delete(id);
        else if (turn !== "leave") await transaction.store.put(turn);
        await ended;
      } finally {
        clearTimeout(timer);
      }
    });
  }

  /** Lets go of the database; the next use opens it again. */
  async close(): Promise<void> {
    const opening = this.#opening;
    this.#opening = undefined;
    (await opening?.catch(() => undefined))?.close();
  }

  async #use<T>(work: (database: IDBPDatabase<Shelves>) => Promise<T>): Promise<T> {
    try {
      this.#opening ??= this.#open();
      const database = await this.#opening;
      // A turn ends by itself at its own time; this is for what is only read.
      return await patient(work(database), 2 * PATIENCE_MS);
    } catch (error) {
      const trouble = troubleOf(error);
      if (trouble.kind !== "full") await this.close();
      throw trouble;
    }
  }

  async #open(): Promise<IDBPDatabase<Shelves>> {
    const opening = openDB<Shelves>(this.#name, VERSION, {
      upgrade: (database) => void database.createObjectStore("plans", { keyPath: "id" }),
      // A newer page wants to change the database: this one stands aside, and is refused kindly from then on.
      blocking: () => void this.close(),
      terminated: () => void this.close(),
    });
    const answered = patient(opening, PATIENCE_MS);
    // One that opens after all is of no use to anyone any more.
    answered.catch(() => opening.then((database) => database.close()).catch(() => undefined));
    return answered;
  }
}

/** The answer, or after some time the word that there was none. */
function patient<T>(answer: Promise<T>, patience: number): Promise<T> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tooLate = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new StorageTrouble("silent")), patience);
  });
  return Promise.race([answer, tooLate]).finally(() => clearTimeout(timer));
}

function giveUp(transaction: { abort(): void }): void {
  try {
    transaction.abort();
  } catch {
    // It has ended by itself; the page was at work, and is told after this.
  }
}
