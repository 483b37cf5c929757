import type { Plan } from "@headfall/hydraulics";
import { HeadfallAbove } from "../../../packages/ui/src/above/above-element.js";
import type { Selected } from "../../../packages/ui/src/kernels/selected.js";
import type { EditWantedEvent } from "../../../packages/ui/src/store/edit-wanted-event.js";
import { checkedOf, PLACED } from "../fixtures/placed-plan.js";

if (customElements.get("headfall-above") === undefined)
  customElements.define("headfall-above", HeadfallAbove);

/** A drawing on the page, all it has asked for, and how one finds one's way on it. */
export class AboveBench {
  readonly above = new HeadfallAbove();
  readonly edits: EditWantedEvent[] = [];
  readonly chosen: (Selected | undefined)[] = [];
  readonly givenUp: string[] = [];

  constructor(properties: Partial<HeadfallAbove> = {}) {
    const plan = properties.plan ?? PLACED;
    Object.assign(this.above, { plan, checked: checkedOf(plan), ...properties });
    this.above.addEventListener("edit-wanted", (event) => this.edits.push(event));
    this.above.addEventListener("gesture-given-up", ({ gesture }) => this.givenUp.push(gesture));
    this.above.addEventListener("part-chosen", ({ part }) => {
      this.chosen.push(part);
      this.above.selected = part;
    });
  }

  /** Puts it on the page and waits until it is drawn. */
  async show(width = 700, height = 420): Promise<this> {
    const box = document.createElement("div");
    box.style.width = `${width}px`;
    this.above.style.height = `${height}px`;
    box.append(this.above);
    document.body.append(box);
    while (this.above.shadowRoot?.querySelector(".drawing") == null) await nextFrame();
    return this;
  }

  get drawing(): SVGSVGElement {
    return this.above.shadowRoot!.querySelector<SVGSVGElement>(".drawing")!;
  }

  part(key: string): SVGGElement {
    const part = this.above.shadowRoot!.querySelector<SVGGElement>(`[data-part="${key}"]`);
    if (part === null) throw new Error(`no part "${key}" is drawn`);
    return part;
  }

  get parts(): string[] {
    return [...this.above.shadowRoot!.querySelectorAll<SVGGElement>(".part")].map(
      (part) => part.dataset["part"]!,
    );
  }

  /** Pixels a metre, read off the two ends of the feed. */
  get scale(): number {
    const [one, other] = ["source 0", "joint tee"].map((key) => this.middleOf(key));
    return (other!.x - one!.x) / 10;
  }

  /** Middle of a part on the drawing [px]. */
  middleOf(key: string): { x: number; y: number } {
    const box = this.part(key).getBoundingClientRect();
    const sheet = this.drawing.getBoundingClientRect();
    return { x: box.x + box.width / 2 - sheet.x, y: box.y + box.height / 2 - sheet.y };
  }

  /** Pixel of a place on the ground of the placed plan. */
  at(x: number, y: number): { x: number; y: number } {
    const origin = this.middleOf("source 0");
    return { x: origin.x + x * this.scale, y: origin.y - y * this.scale };
  }

  texts(): string[] {
    return [...this.above.shadowRoot!.querySelectorAll(".label")].map((each) =>
      each.textContent!.replace(/\s+/g, " ").trim(),
    );
  }

  async redrawn(changes: Partial<HeadfallAbove> = {}): Promise<void> {
    Object.assign(this.above, changes);
    await this.above.updateComplete;
  }
}

export const nextFrame = (): Promise<void> =>
  new Promise((resolve) => requestAnimationFrame(() => resolve()));

/** The plan with one of its joints elsewhere. */
export function withPlace(plan: Plan, joint: string, x: string, y: string): Plan {
  const points = (plan.points ?? []).map((point) =>
    point.id === joint ? { ...point, place: { x, y } } : point,
  );
  return { ...plan, points };
}
