import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { EditWantedEvent } from "../store/edit-wanted-event.js";
import type { PlanChange } from "../store/plan-change.js";
import type { TypedEntry } from "./entry.js";
import { readTyped } from "./read-typed.js";
import { type FieldKind, TEXT_KINDS } from "./text-kinds.js";
import type { TypedReading } from "./typed-reading.js";

/** A view with fields: it shows a plan, and is told when an edit of its own was refused. */
export interface TypingHost extends ReactiveControllerHost, EventTarget {
  readonly system: UnitSystem;
  readonly refusal: string;
}

/**
 * Keeps what is half-typed into the fields of a view, with what is wrong with it, until it has become part of the
 * plan: a plan that changes meanwhile, or an edit that is refused, takes no letter away.
 */
export class TypingController implements ReactiveController {
  readonly #host: TypingHost;
  readonly #drafts = new Map<string, string>();
  readonly #problems = new Map<string, string>();
  readonly #entered = new Set<string>();
  /** The field whose edit was wanted last, while it is not known what came of it, and what was typed for it. */
  #sent: { readonly key: string; readonly drafts: readonly string[]; isTold: boolean } | undefined;

  constructor(host: TypingHost) {
    this.#host = host;
    host.addController(this);
  }

  hostUpdate(): void {
    // An edit that was refused is told to the view that wanted it, and shown where it was typed.
    if (this.#sent === undefined || this.#sent.isTold || this.#host.refusal === "") return;
    this.#problems.set(this.#sent.key, this.#host.refusal);
    this.#sent.isTold = true;
  }

  get system(): UnitSystem {
    return this.#host.system;
  }

  /** A refusal that belongs to no field of this view. */
  get strayRefusal(): string {
    return this.#sent === undefined ? this.#host.refusal : "";
  }

  draft(key: string): string | undefined {
    return this.#drafts.get(key);
  }

  problem(key: string): string | undefined {
    return this.#problems.get(key);
  }

  /** Called by a view when the plan has become another one. */
  planChanged(): void {
    if (this.#sent === undefined || this.#host.refusal !== "") return;
    for (const key of [this.#sent.key, ...this.#sent.drafts]) this.forget(key);
    this.#sent = undefined;
  }

  /** Whether the hand or the keyboard has come to a choice yet. */
  isEntered(key: string): boolean {
    return this.#entered.has(key);
  }

  enter(key: string): void {
    this.#entered.add(key);
    this.#host.requestUpdate();
  }

  forget(key: string): void {
    this.#drafts.delete(key);
    this.#problems.delete(key);
  }

  /** Forgets all fields whose keys begin so: their places have moved. */
  forgetUnder(start: string): void {
    for (const key of [...this.#drafts.keys(), ...this.#problems.keys()])
      if (key.startsWith(start)) this.forget(key);
  }

  /** Forgets all: what the fields stood for is there no more. */
  forgetAll(): void {
    this.#drafts.clear();
    this.#problems.clear();
    this.#sent = undefined;
  }

  /** Takes note of a letter typed. The field shows it already, so nothing is drawn anew. */
  keep(key: string, text: string): void {
    this.#drafts.set(key, text);
  }

  /** Says what is wrong with a field. */
  complain(key: string, problem: string): void {
    this.#problems.set(key, problem);
    this.#host.requestUpdate();
  }

  /** What was typed is done: reads it and wants the edit, or says what is wrong. */
  async settle(entry: TypedEntry, text: string): Promise<void> {
    const { key } = entry;
    if (text === shownText(entry, this.system)) return this.escape(key);
    this.keep(key, text);
    if (text.trim() === "") {
      if (entry.isNeeded === true) return this.complain(key, `${entry.title}: something has to stand here.`);
      if (entry.typed === undefined) return this.escape(key);
      return this.want(key, entry.change(undefined));
    }
    const reading = await this.read(key, entry.kind, text);
    if (reading !== undefined) this.want(key, entry.change(valueToKeep(entry.kind, reading)));
  }

  /** Reads a text; where it cannot be read, says so and gives undefined. Also when newer text was typed meanwhile. */
  async read(key: string, kind: FieldKind, text: string): Promise<(TypedReading & { ok: true }) | undefined> {
    this.keep(key, text);
    const reading = await readTyped(text, TEXT_KINDS[kind], this.system);
    if (this.#drafts.get(key) !== text) return undefined;
    if (reading.ok) {
      this.#problems.delete(key);
      return reading;
    }
    this.complain(key, reading.problem);
    return undefined;
  }

  /** Takes back what is half-typed. */
  escape(key: string): void {
    this.forget(key);
    this.#host.requestUpdate();
  }

  /**
   * Wants an edit on behalf of a field or a button.
   *
   * @param drafts  keys of further fields whose text the edit takes up
   */
  want(key: string, change: PlanChange, gesture?: string, drafts: readonly string[] = []): void {
    this.#problems.delete(key);
    this.#sent = { key, drafts, isTold: false };
    this.#host.dispatchEvent(new EditWantedEvent(change, gesture));
    this.#host.requestUpdate();
  }
}

/** What a field shows of the plan: in the user's units, also where it was typed in others. */
export function shownText({ kind, typed }: Pick<TypedEntry, "kind" | "typed">, system: UnitSystem): string {
  if (typed === undefined) return "";
  const reading = TEXT_KINDS[kind].read(typed, system);
  return reading.ok ? TEXT_KINDS[kind].shown(typed, reading.value, system) : typed;
}

/** Counts and figures are kept as numbers, all else as typed. */
function valueToKeep(kind: FieldKind, { typed, value }: { typed: string; value: number }): string | number {
  if (kind === "count" || kind === "number") return value;
  return kind === "atWork" && !typed.includes("%") ? value : typed;
}

/** What stands in for a key that is left out, in the user's units. */
export function shownStandIn({ kind, standIn }: Pick<TypedEntry, "kind" | "standIn">, system: UnitSystem) {
  if (standIn === undefined) return undefined;
  const reading = TEXT_KINDS[kind].read(standIn, system);
  return reading.ok ? TEXT_KINDS[kind].shown(standIn, reading.value, system) : standIn;
}
