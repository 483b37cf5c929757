import type { Plan } from "@headfall/hydraulics";
import type { TemplateResult } from "lit";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import type { HeadfallLine } from "../line/line-element.js";
import type { Renaming } from "../storage/plan-library.js";
import type { KeptPlan } from "../storage/stored-plan.js";
import type { Notice } from "./notice.js";
import type { ParkedPlans } from "./parked-plans.js";

/** What the desk needs of the page around it. */
export interface Page {
  /** How well the plan is kept, in a word or two. */
  keptWords: string;
  /** What stands above the line on a first visit. */
  card: TemplateResult | undefined;
  readonly line: HeadfallLine;
  show(): void;
  tell(notice: Notice): void;
  untell(key: string): void;
  /** Puts the keyboard on a part of the page, where what it was on is gone. */
  focus(selector: string): void;
  withDesk(act: (desk: Desk) => unknown): Promise<void>;
}

/** What the page, its dialogs and its notices ask of the desk: where the plan in hand meets the plans that are kept. */
export interface Desk {
  readonly plan: Plan;
  /** Id of the plan in hand. */
  readonly openId: string;
  readonly units: UnitSystem;
  /** Whether leaving the page would lose something that could not be saved. */
  readonly isUnsavable: boolean;
  readonly parked: ParkedPlans;
  /** Told when the list of plans has changed, while it is open. */
  onListChanged: () => void;

  /** Opens a plan from the list. */
  open(id: string): Promise<void>;
  /** Opens a plan as a new one in the list. */
  openNew(plan: Plan): Promise<void>;
  /** Adds plans to the list without opening them. */
  addAll(plans: readonly Plan[]): Promise<void>;
  copy(id: string): Promise<void>;
  /** Gives a plan another name: the one in hand by an edit that can be undone, any other where it lies. */
  rename(id: string, name: string): Promise<Renaming>;
  /** Lays a plan among the deleted; when it is the one in hand, the one changed last before it is opened instead. */
  delete(id: string): Promise<void>;
  bringBack(id: string): Promise<void>;
  /** Removes the deleted ones for good. */
  emptyDeleted(): Promise<number>;
  /** All plans that are kept; what was changed last comes first. */
  list(): Promise<readonly KeptPlan[]>;

  showPlans(): Promise<void>;
  share(): Promise<void>;
  savePlan(): Promise<void>;
  openFiles(files: readonly File[]): Promise<void>;
  /** Asks what holds the water, and begins a plan with it. */
  beginOwn(): Promise<void>;
  keepExample(): void;

  /** What is not saved yet is saved at once. */
  flush(): Promise<void>;
  /** The page may not come back: what there is no time to save is left where the next page finds it. */
  leave(): void;
  /** Brings in what another tab may have saved. */
  lookElsewhere(): Promise<void>;
  /** Says something on the page. */
  tell(notice: Notice): void;
}
