import type { PlanRun } from "@headfall/hydraulics";
import { html, nothing } from "lit";
import { live } from "lit/directives/live.js";
import type { Entry } from "../fields/entry.js";
import { cellView, fieldView, idOf, problemView } from "../fields/entry-view.js";
import { type FreshField, freshView, pressForm, readFresh } from "../fields/fresh-field.js";
import { readPairs } from "../fields/read-pairs.js";
import { metresOf } from "../kernels/typed-metres.js";
import { endReading } from "../store/plan-heights.js";
import { setAt } from "../store/set-at.js";
import { readingDoubtEntry } from "./doubt-entries.js";
import type { PanelRequest } from "./panel-request.js";
import { type PlanContext, runNames } from "./plan-context.js";
import { fallReferenceWords } from "./run-entries.js";

type Reading = NonNullable<PlanRun["survey"]>[number];

/** The three fields of one reading. */
export function readingEntries(
  { plan }: PlanContext,
  run: number,
  reading: number,
): Record<"along" | "fall" | "bleed", Entry> {
  const name = runNames(plan)[run]!;
  const { along, fall, bleed } = plan.runs[run]!.survey![reading]!;
  const at = (key: string) => setAt(["runs", run, "survey", reading, key], `survey of ${name}`);
  const typed = (
    key: "along" | "fall",
    title: string,
    kind: "distance" | "length",
    value: string,
  ): Entry => ({
    form: "typed",
    key: `${name} survey ${reading} ${key}`,
    title,
    name: `${title}, reading ${reading + 1} of ${name}`,
    kind,
    typed: value,
    isNeeded: true,
    change: at(key),
  });
  return {
    along: typed("along", "Distance", "distance", along),
    fall: typed("fall", "Drop", "length", fall),
    bleed: {
      form: "tick",
      key: `${name} survey ${reading} bleed`,
      title: "Air can leave",
      name: `Air can leave at reading ${reading + 1} of ${name}`,
      value: bleed ?? false,
      change: (value) => at("bleed")(value ? true : undefined),
    },
  };
}

/** Heights along a run, as read off a hose level or a string: typed one by one, or pasted. */
export function surveyView(request: PanelRequest, run: number) {
  const { plan, typing } = request;
  const name = runNames(plan)[run]!;
  const survey = plan.runs[run]!.survey ?? [];
  return html`<details ?open=${survey.length > 0}>
    <summary>Survey${survey.length > 0 ? `: ${survey.length} ${survey.length === 1 ? "reading" : "readings"}` : ""}</summary>
    <div>
      <p class="note quiet">
        As read off a hose level or a string: how far along the pipe from the start of the run, and how much lower the
        pipe is there than ${fallReferenceWords(plan, run)}. A minus where it is higher.
      </p>
      ${survey.length === 0 ? nothing : [readingsTable(request, run, survey), doubtsView(request, run, survey)]}
      ${newReading(request, run)}
      ${pasteView(request, run)} ${problemView(typing, `${name} survey`)}
    </div>
  </details>`;
}

function readingsTable(request: PanelRequest, run: number, survey: readonly Reading[]) {
  const { typing } = request;
  return html`<table class="small">
    <caption class="spoken">Survey of ${runNames(request.plan)[run]}</caption>
    <thead><tr><th scope="col">Distance</th><th scope="col">Drop</th><th scope="col">Air can leave</th><td></td></tr></thead>
    <tbody>
      ${survey.map((_, reading) => {
        const { along, fall, bleed } = readingEntries(request, run, reading);
        return html`<tr>
          <td>${cellView(along, typing)}</td><td>${cellView(fall, typing)}</td><td>${cellView(bleed, typing)}</td>
          <td>
            <button type="button" aria-label="Delete reading ${reading + 1}" @click=${() => deleteReading(request, run, reading)}>Delete</button>
          </td>
        </tr>`;
      })}
    </tbody>
  </table>`;
}

/** How far each may be off, where it was read better or worse than the others; that of the last one, if it is of the end, is told with the run. */
function doubtsView(request: PanelRequest, run: number, survey: readonly Reading[]) {
  const end = endReading(request.plan.runs[run]!);
  const between = survey.flatMap((_, reading) => (reading === end ? [] : [reading]));
  if (between.length === 0) return nothing;
  return html`<details ?open=${between.some((reading) => survey[reading]!.doubt !== undefined)}>
    <summary>How far each may be off</summary>
    <div>${between.map((reading) => fieldView(readingDoubtEntry(request, run, reading), request.typing))}</div>
  </details>`;
}

/** Takes one reading out; a survey with none left is left out whole. */
export function deleteReading(
  { plan, typing }: PanelRequest | SurveyRequest,
  run: number,
  reading: number,
): void {
  const name = runNames(plan)[run]!;
  const left = (plan.runs[run]!.survey ?? []).filter((_, index) => index !== reading);
  typing.forgetUnder(`${name} survey `);
  typing.want(
    `${name} survey`,
    setAt(["runs", run, "survey"], `survey of ${name}`)(left.length > 0 ? left : undefined),
  );
}

type SurveyRequest = PlanContext & Pick<PanelRequest, "typing">;

function newReading(request: PanelRequest, run: number) {
  const { plan, typing } = request;
  const name = runNames(plan)[run]!;
  const along: FreshField = { key: `${name} new along`, title: "Distance", kind: "distance", usual: "" };
  const fall: FreshField = { key: `${name} new fall`, title: "Drop", kind: "length", usual: "" };
  const add = async () => {
    const [far, low] = [await readFresh(along, typing), await readFresh(fall, typing)];
    if (far === undefined || low === undefined) return;
    addReadings(request, run, [{ along: far.typed, fall: low.typed }], [along.key, fall.key]);
  };
  return html`<form class="line" @submit=${pressForm(add)}>
    ${freshView(along, typing)} ${freshView(fall, typing)}
    <button type="submit">Add reading</button>
  </form>`;
}

/** Adds readings in the order of their distances; one at a distance there is already takes its place. */
export function addReadings(
  { plan, typing }: SurveyRequest,
  run: number,
  added: readonly Reading[],
  drafts: readonly string[],
): void {
  const name = runNames(plan)[run]!;
  const far = ({ along }: Reading) => metresOf(along);
  const isReplaced = (old: Reading) => added.some((each) => Math.abs(far(each) - far(old)) < 1e-6);
  const kept = (plan.runs[run]!.survey ?? []).filter((old) => !isReplaced(old));
  const survey = [...kept, ...added].sort((one, other) => far(one) - far(other));
  typing.forgetUnder(`${name} survey `);
  typing.want(
    `${name} survey`,
    setAt(["runs", run, "survey"], `survey of ${name}`)(survey),
    undefined,
    drafts,
  );
}

function pasteView(request: PanelRequest, run: number) {
  const { plan, typing, system } = request;
  const key = `${runNames(plan)[run]} paste`;
  const id = idOf(key);
  const take = () => {
    const read = readPairs(typing.draft(key) ?? "", ["distance", "length"], system);
    if (!read.ok) return typing.complain(key, read.problem);
    const readings = read.pairs.map(({ first, second }) => ({ along: first.typed, fall: second.typed }));
    addReadings(request, run, readings, [key]);
  };
  return html`<form @submit=${pressForm(take)}>
    <div class="field">
      <label for=${id}>Or many at once, one pair a line</label>
      <textarea
        id=${id} placeholder=${system === "us" ? "6 ft, 5 in" : "2 m, 15 cm"} aria-describedby="${id}-note"
        .value=${live(typing.draft(key) ?? "")}
        @input=${(event: Event) => typing.keep(key, (event.target as HTMLTextAreaElement).value)}
      ></textarea>
      <p class="note quiet" id="${id}-note">Distance, then drop. Two columns of a spreadsheet can be pasted as they are.</p>
      ${problemView(typing, key)}
    </div>
    <button type="submit">Take these readings</button>
  </form>`;
}
