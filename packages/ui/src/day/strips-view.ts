import { html, nothing, svg } from "lit";
import {
  type CrowdStrip,
  type DayPlot,
  type LevelStrip,
  layCrowdStrip,
  layLevelStrip,
  timeToX,
  xToTime,
} from "../kernels/day/day-strip.js";
import { axisUnit } from "../kernels/typed-quantity.js";
import { type DayRoom, isFed } from "./room.js";

/** The charts of a day, laid out once; only the line that says what time it is moves. */
export interface DayStrips {
  readonly crowds: readonly { readonly pen: string; readonly strip: CrowdStrip; readonly words: string }[];
  readonly levels: readonly { readonly source: string; readonly strip: LevelStrip }[];
  readonly levelSign: string;
}

export function layStrips(room: Omit<DayRoom, "acts">): DayStrips {
  const width = room.isWide ? 680 : 330;
  return {
    crowds: crowdStrips(room, width),
    levels: levelStrips(room, width),
    levelSign: room.system === "us" ? "in" : "cm",
  };
}

/** Birds at the drinkers through the day, of each pen with birds at the line. */
const crowdStrips = (
  { result, index, checked, isWide }: Omit<DayRoom, "acts">,
  width: number,
): DayStrips["crowds"] =>
  result.pens.flatMap(({ pen, birds, mostAtOnce }, p) => {
    if (birds === 0) return [];
    const places = checked?.flock?.pens.find((one) => one.pen === pen)?.places;
    const of = places === undefined ? "" : ` of ${places} places`;
    return {
      pen,
      strip: layCrowdStrip({ index, pen: p, places, width, height: isWide ? 170 : 150 }),
      words: `Birds of ${pen} at their drinkers through the day: at most ${mostAtOnce} at once${of}`,
    };
  });

/** Levels of the sources; what the line fills counts as full all day: there is nothing to see. */
const levelStrips = (
  { plan, result, checked, system, isWide }: Omit<DayRoom, "acts">,
  width: number,
): DayStrips["levels"] =>
  result.sources.flatMap(({ source }, s) =>
    isFed(plan, s)
      ? []
      : [
          {
            source,
            strip: layLevelStrip({
              time: result.levels.time,
              level: result.levels.level[s] ?? new Float64Array(0),
              full: checked?.line.sources.find(({ id }) => id === source)?.levels.full ?? 0,
              unit: system === "us" ? axisUnit(system).length / 12 : 0.01,
              width,
              height: isWide ? 140 : 120,
            }),
          },
        ],
  );

export function stripsView(strips: DayStrips, time: number, seek: (time: number) => void) {
  return html`<section aria-labelledby="strips">
    <h3 id="strips">Through the day</h3>
    ${strips.crowds.map(
      ({ pen, strip, words }, p) => html`<h4>Birds of ${pen} at their drinkers</h4>
        ${chart(strip, words, "birds, by the hour of the day", time, seek, crowdShapes(strip, `hatch-${p}`))}`,
    )}
    <ul class="key" aria-label="Marks of the charts">
      <li>${swatch("drink-area")} drinking</li>
      <li>${swatch("wait-area")} waiting, on top of them</li>
      <li><svg viewBox="0 0 30 14" width="30" height="14" aria-hidden="true"><path class="places" d="M1 7H29"></path></svg> all places</li>
    </ul>
    ${strips.levels.map(
      ({ source, strip }) => html`<h4>Level of ${source}</h4>
        ${chart(strip, `Level of ${source} through the day`, `${strips.levelSign}, by the hour of the day`, time, seek, svg`<path class="level-line" d=${strip.line}></path>`)}`,
    )}
  </section>`;
}

const swatch = (look: string) =>
  html`<svg viewBox="0 0 30 14" width="30" height="14" aria-hidden="true">${look === "wait-area" ? hatch("key-hatch") : nothing}<path
    class=${look} d="M1 1H29V13H1Z" fill=${look === "wait-area" ? "url(#key-hatch)" : nothing}></path></svg>`;

const hatch = (id: string) =>
  svg`<pattern id=${id} width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect class="hatch-back" width="5" height="5"></rect><path class="hatch" d="M0 0V5"></path></pattern>`;

const crowdShapes = ({ both, drinking, placesY, plot }: CrowdStrip, id: string) =>
  svg`${hatch(id)}<path class="wait-area" d=${both} fill=${`url(#${id})`}></path><path class="drink-area" d=${drinking}></path>
    ${placesY === undefined ? nothing : svg`<path class="places" d="M${plot.left} ${placesY}H${plot.right}"></path>`}`;

function chart(
  strip: DayPlot,
  words: string,
  axis: string,
  time: number,
  seek: (time: number) => void,
  shapes: unknown,
) {
  const { width, height, plot, hours, ticks } = strip;
  const x = timeToX(strip, time);
  return html`<svg class="chart" viewBox="0 0 ${width} ${height}" role="img" aria-label=${words}
    @click=${(event: MouseEvent) => seek(xToTime(strip, placeOf(event, width)))}>
    ${ticks.map(
      ({ at, value }) => svg`<path class="grid" d="M${plot.left} ${at}H${plot.right}"></path>
      <text class="tick" x=${plot.left - 6} y=${at + 4} text-anchor="end">${value}</text>`,
    )}
    ${shapes}
    ${hours.map(
      ({ at, value }) => svg`<path class="grid" d="M${at} ${plot.bottom}v4"></path>
      <text class="tick" x=${at} y=${plot.bottom + 17} text-anchor=${value === 24 ? "end" : "middle"}>${value}:00</text>`,
    )}
    <text class="tick" x="4" y="13">${axis}</text>
    <path class="now-line" d="M${x} ${plot.top}V${plot.bottom}"></path>
  </svg>`;
}

/** Where a press was, in the chart's own measure. */
function placeOf(event: MouseEvent, width: number): number {
  const box = (event.currentTarget as Element).getBoundingClientRect();
  return ((event.clientX - box.left) / box.width) * width;
}
