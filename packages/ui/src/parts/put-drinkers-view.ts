import type { Plan } from "@headfall/hydraulics";
import { html } from "lit";
import { live } from "lit/directives/live.js";
import { idOf, problemView } from "../fields/entry-view.js";
import { type FreshField, freshView, pressForm, readFresh } from "../fields/fresh-field.js";
import { TEXT_KINDS } from "../fields/text-kinds.js";
import { mostThatFit, usualRow } from "../kernels/put-along.js";
import { showLength } from "../kernels/shown.js";
import { drinkerKinds } from "./drinkers-entries.js";
import type { PanelRequest } from "./panel-request.js";
import { lengthOfRun, runNames } from "./plan-context.js";

const USUAL_KIND = "nipple-side-action";
/** How far apart drinkers usually are [m]. */
export const USUAL_SPACING = { metric: 0.3, us: 0.3048 } as const;

/** "Ten, every 30 cm": puts a row of drinkers along a run. */
export function putDrinkersView(request: PanelRequest, run: number, rank: "chief" | "" = "") {
  const { plan, typing } = request;
  const kindKey = `${runNames(plan)[run]} put kind`;
  const kind = typing.draft(kindKey) ?? lastKind(plan);
  const { count, every } = fields(request, run);
  const key = `${runNames(plan)[run]} put`;
  return html`<form @submit=${pressForm(() => putAlong(request, run, kind))}>
    <fieldset>
      <legend>Put drinkers along it</legend>
      <div class="field">
        <label for=${idOf(kindKey)}>Kind</label>
        <select id=${idOf(kindKey)} @change=${(event: Event) => typing.keep(kindKey, (event.target as HTMLSelectElement).value)}>
          ${drinkerKinds(plan).map(
            ({ label, options }) => html`<optgroup label=${label}>
              ${options.map(({ value, words }) => html`<option value=${value} .selected=${live(value === kind)}>${words}</option>`)}
            </optgroup>`,
          )}
        </select>
      </div>
      <div class="pair">${freshView(count, typing)} ${freshView(every, typing)}</div>
      <button type="submit" class=${rank}>Put them</button>
      ${problemView(typing, key)}
    </fieldset>
  </form>`;
}

/** The kind chosen last in this plan. */
export function lastKind(plan: Plan): string {
  for (const run of plan.runs.toReversed()) {
    const { drinkers } = run;
    const last = Array.isArray(drinkers) ? drinkers.at(-1) : drinkers;
    if (last !== undefined) return last.kind;
  }
  return USUAL_KIND;
}

function fields({ plan, system }: PanelRequest, run: number): { count: FreshField; every: FreshField } {
  const name = runNames(plan)[run]!;
  const usual = usualRow(lengthOfRun(plan, run), USUAL_SPACING[system]);
  const write = (length: number) => TEXT_KINDS.length.write(length, system);
  return {
    count: { key: `${name} put count`, title: "How many", kind: "count", usual: String(usual.count) },
    every: { key: `${name} put every`, title: "One every", kind: "length", usual: write(usual.every) },
  };
}

async function putAlong(request: PanelRequest, run: number, kind: string): Promise<void> {
  const { plan, typing, system } = request;
  const { count, every } = fields(request, run);
  const [many, spacing] = [await readFresh(count, typing), await readFresh(every, typing)];
  if (many === undefined || spacing === undefined) return;
  const length = lengthOfRun(plan, run);
  if (many.value < 1) return typing.complain(count.key, "At least one drinker. Write for instance 6.");
  const most = mostThatFit(length, many.value, spacing.value);
  if (most !== undefined) {
    const needed = showLength(many.value * spacing.value, system);
    const has = showLength(length, system);
    return typing.complain(
      count.key,
      `${many.value} drinkers every ${spacing.typed} take ${needed} of pipe; the run has ${has}. ${most === 0 ? "None" : `At most ${most}`} would fit: take fewer, or put them closer together.`,
    );
  }
  typing.want(
    `${runNames(plan)[run]} put`,
    { kind: "addDrinkers", run, drinkers: { kind, count: many.value, every: spacing.typed } },
    undefined,
    [count.key, every.key],
  );
}
