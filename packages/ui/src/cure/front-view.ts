import { type FrontPoint, writeChange, writeCost, writeHead, writeQuantity } from "@headfall/hydraulics";
import { html, nothing, svg } from "lit";
import {
  type CostTerm,
  type FrontChart,
  layFrontChart,
  nearestPoint,
  termOf,
} from "../kernels/cure/front-chart.js";
import type { UnitSystem } from "../kernels/typed-quantity.js";
import { FOOT, INCH } from "../kernels/us-units.js";
import type { TradedRoom, TradeOff } from "./room.js";
import { takeButton } from "./take-button.js";

interface Told {
  readonly which: TradeOff;
  readonly title: string;
  readonly points: readonly FrontPoint[];
  /** What the axis to the right shows of a point [m], and what that is called. */
  readonly across: (point: FrontPoint) => number;
  readonly acrossWords: string;
  readonly headed: string;
  /** Said where there is one point only. */
  readonly alone: string;
}

/** Both trade-offs: what more head to spare costs, and what a higher stand saves in pipe. */
export function frontView(room: TradedRoom) {
  const { front } = room;
  const told: readonly Told[] = [
    {
      which: "margin",
      title: "What more head to spare costs",
      points: front.costAgainstMargin.filter(({ margin }) => Number.isFinite(margin)),
      across: ({ margin }) => margin,
      acrossWords: "head to spare",
      headed: "To spare",
      alone: "Nothing in sizes and stands leaves more to spare than this:",
    },
    {
      which: "height",
      title: "What a higher stand saves in pipe",
      points: front.heightAgainstSize,
      across: ({ stand }) => stand,
      acrossWords: "height of the stand",
      headed: "Stand",
      alone: "No higher stand saves any pipe. The lowest that works:",
    },
  ];
  if (told.every(({ points }) => points.length === 0))
    return html`<p>No sizes and stands by themselves make it work, so there is nothing to trade.</p>`;
  return html`${told.map((one) => tradeView(one, room))}
    <p class="quiet">${front.proven ? "No plan in sizes and stands is both cheaper and better than one of these." : "The search ended early: for some of these a cheaper one is not ruled out."}</p>`;
}

function tradeView(told: Told, room: TradedRoom) {
  const { which, title, points } = told;
  const at = Math.min(room.at[which], points.length - 1);
  const chosen = points[at];
  return html`<section aria-labelledby="trade-${which}" class="trade">
    <h4 id="trade-${which}">${title}</h4>
    ${
      chosen === undefined
        ? html`<p>Nothing that was searched makes it work.</p>`
        : html`${points.length === 1 ? html`<p>${told.alone}</p>` : html`<div class="beside-chart"><div>${chartView(told, at, room)} ${sliderView(told, at, room)}</div>${tableView(told, at, room)}</div>`}
          ${chosenView(told, chosen, room)}`
    }
  </section>`;
}

function chosenView({ which }: Told, chosen: FrontPoint, room: TradedRoom) {
  const words = which === "margin" ? "more head to spare" : "another stand and pipe";
  return html`<div class="chosen" role="group" aria-label="The point chosen">
    ${chosen.changes.length === 0 ? html`<p>This is the plan as it is.</p>` : html`<ul class="changes">${chosen.changes.map((change) => html`<li>${writeChange(change, room.system)}</li>`)}</ul>`}
    <p>${standOf(chosen, room.system)}, ${spareOf(chosen, room.system)} to spare; ${writeCost(chosen.cost, room.front.money, room.system)}.</p>
    ${chosen.changes.length === 0 ? nothing : takeButton(room, chosen.plan, words, "the point chosen")}
  </div>`;
}

const standOf = ({ stand }: FrontPoint, system: UnitSystem) =>
  `Stand ${writeQuantity(stand, "length", system, 3)}`;
const spareOf = ({ margin }: FrontPoint, system: UnitSystem) =>
  Number.isFinite(margin) ? writeHead(margin, system) : "nothing";

/** One stop of the tab key, arrows from point to point, 44 px high for a thumb. */
function sliderView(told: Told, at: number, { acts, system, front }: TradedRoom) {
  const { which, points, title } = told;
  if (points.length < 2) return nothing;
  const words = (point: FrontPoint) =>
    `${which === "margin" ? `${spareOf(point, system)} to spare` : standOf(point, system)}: ${writeCost(point.cost, front.money, system)}`;
  return html`<input type="range" min="0" max=${points.length - 1} step="1" .value=${String(at)} aria-label="Point of: ${title}"
    aria-valuetext=${words(points[at]!)} @input=${(event: Event) => acts.point(which, Number((event.target as HTMLInputElement).value))} />`;
}

function chartView(told: Told, at: number, room: TradedRoom) {
  const { front, system, isWide } = room;
  const { which, points } = told;
  const term = termOf(points, front.by, which === "height");
  const unit = unitsOf(term, system, front.money);
  const chart = layFrontChart({
    points: points.map((point) => ({ x: told.across(point), y: point.cost[term] })),
    unitX: system === "us" ? INCH : 0.01,
    unitY: unit.size,
    width: isWide ? 480 : 330,
    height: 250,
  });
  const press = (event: MouseEvent) => {
    const box = (event.currentTarget as SVGElement).getBoundingClientRect();
    const scale = chart.width / box.width;
    room.acts.point(
      which,
      nearestPoint(chart, (event.clientX - box.left) * scale, (event.clientY - box.top) * scale),
    );
  };
  const words = `${told.title}: ${points.length} ${points.length === 1 ? "point" : "points"}; the figures stand in the table.`;
  return svg`<svg class="chart" viewBox="0 0 ${chart.width} ${chart.height}" role="img" aria-label=${words} @click=${press}>
    ${axesView(chart)}
    <text class="tick" x=${chart.plot.left} y=${chart.height - 6}>${told.acrossWords}, ${system === "us" ? "in" : "cm"}; upwards: ${unit.words}</text>
    <path class="front-line" d=${chart.path}></path>
    ${chart.points.map(({ x, y }, k) => svg`<circle class=${k === at ? "dot now" : "dot"} cx=${x} cy=${y} r=${k === at ? 8 : 5}></circle>`)}
  </svg>`;
}

function axesView({ plot, across, up }: FrontChart) {
  return svg`${up.map(
    ({ at, value }) => svg`<line class="grid" x1=${plot.left} x2=${plot.right} y1=${at} y2=${at}></line>
      <text class="tick" x=${plot.left - 6} y=${at + 4} text-anchor="end">${value}</text>`,
  )}${across.map(
    ({
      at,
      value,
    }) => svg`<line class="grid" x1=${at} x2=${at} y1=${plot.bottom} y2=${plot.bottom + 5}></line>
      <text class="tick" x=${at} y=${plot.bottom + 18} text-anchor="middle">${value}</text>`,
  )}`;
}

function unitsOf(term: CostTerm, system: UnitSystem, money: string | undefined) {
  const isUs = system === "us";
  switch (term) {
    case "money":
      return { size: 1, words: money ?? "money" };
    case "parts":
      return { size: 1, words: "things to buy" };
    case "pipe":
      return { size: isUs ? FOOT : 1, words: `pipe to buy, ${isUs ? "ft" : "m"}` };
    case "stand":
      return { size: isUs ? INCH : 0.01, words: `stand moved, ${isUs ? "in" : "cm"}` };
  }
}

function tableView({ which, points, headed, title }: Told, at: number, { system, front, acts }: TradedRoom) {
  return html`<div class="scroller" role="region" aria-label="${title}, as a table" tabindex="0"><table class="points">
    <thead><tr><th scope="col">${headed}</th><th scope="col" class="words">${which === "margin" ? "Cost" : "Cost of pipe"}</th><td></td></tr></thead>
    <tbody>${points.map(
      (
        point,
        k,
      ) => html`<tr aria-current=${k === at ? "true" : nothing}><th scope="row">${which === "margin" ? spareOf(point, system) : writeQuantity(point.stand, "length", system, 3)}</th>
        <td class="words">${writeCost(point.cost, front.money, system)}</td>
        <td><button type="button" aria-pressed=${k === at ? "true" : "false"} @click=${() => acts.point(which, k)}>Look<span class="spoken"> at point ${k + 1}</span></button></td></tr>`,
    )}</tbody>
  </table></div>`;
}
