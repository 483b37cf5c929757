import { MOST_VARIANTS, type Plan, type Variant, writeProblem } from "@headfall/hydraulics";
import type { ReactiveControllerHost } from "lit";
import { RestedAsker } from "../controllers/rested-asker.js";
import { readFiles } from "../storage/read-plan-files.js";
import type { KeptPlan } from "./room.js";

/** Rest after the last change before plans are compared [ms]. */
const REST_MS = 300;

/** Keeps the plans that are set beside the one in hand, and has them compared once the hand has rested. */
export class BesideController {
  others: readonly KeptPlan[] | undefined;
  chosen: ReadonlySet<string> = new Set();
  variants: readonly Variant[] | undefined;
  /** Why a file or the list could not be read, or plans not be compared. */
  problems: readonly string[] = [];
  /** Whether what is shown is of other plans, or of a plan before. */
  isOld = false;

  readonly #host: ReactiveControllerHost;
  readonly #asker: RestedAsker;
  #files = 0;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    this.#asker = new RestedAsker(host);
  }

  /** Lists what is kept elsewhere; plans from files stay on the list. */
  async list(kept: () => Promise<readonly KeptPlan[]>): Promise<void> {
    this.problems = [];
    try {
      const found = await kept();
      this.others = [...found, ...(this.others ?? []).filter(({ id }) => id.startsWith(FILE))];
    } catch {
      this.problems = ["Your other plans could not be read: the browser's storage does not answer."];
    }
    this.#host.requestUpdate();
  }

  /** Takes plans from files onto the list, already chosen. Nothing is kept of them. */
  async openFiles(files: readonly File[]): Promise<void> {
    const { plans, refusals } = await readFiles(files);
    const opened = plans.map((plan): KeptPlan => {
      this.#files += 1;
      return { id: `${FILE}${this.#files}`, name: plan.name ?? "", plan };
    });
    this.others = [...(this.others ?? []), ...opened];
    this.chosen = new Set([...this.chosen, ...opened.map(({ id }) => id)].slice(0, MOST_VARIANTS - 1));
    this.problems = refusals.map(
      ({ name, problems }) =>
        `"${name}" could not be read: ${problems.slice(0, 3).map(writeProblem).join(" ")}`,
    );
    this.#host.requestUpdate();
  }

  choose(id: string, isChosen: boolean): void {
    const others = [...this.chosen].filter((each) => each !== id);
    this.chosen = new Set(isChosen ? [...others, id].slice(0, MOST_VARIANTS - 1) : others);
    this.#host.requestUpdate();
  }

  /** Has the plan in hand compared with those chosen. */
  compare(plan: Plan, day: string | undefined): void {
    const beside = (this.others ?? []).filter(({ id }) => this.chosen.has(id));
    if (beside.length === 0) {
      this.#asker.close();
      this.variants = undefined;
      return;
    }
    this.isOld = true;
    const plans = [plan, ...beside.map((each) => each.plan)];
    this.#asker.ask({ kind: "compare", plans, day }, REST_MS, (told) => {
      if (told.ok) this.variants = told.answer;
      this.problems = told.ok ? [] : told.problems.map(writeProblem);
      this.isOld = false;
    });
  }
}

const FILE = "file ";
