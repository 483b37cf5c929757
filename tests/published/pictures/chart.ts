import { line as pathOf, scaleLinear, scaleLog } from "d3";

/** Colours told apart with any sight (Okabe and Ito); shapes say the same again. */
const COLOURS = ["#0072b2", "#b34700", "#00795b", "#8a4f7d", "#4d4d4d", "#7a6200", "#1f5f8b"] as const;
const SHAPES = ["circle", "square", "triangle", "diamond", "cross", "upturned", "bar"] as const;

export interface Axis {
  /** With its unit in brackets. */
  readonly title: string;
  readonly from: number;
  readonly to: number;
  readonly isLog?: boolean;
}

/** One colour and shape, a word in the key: a line of ours, printed points, or both. */
export interface Series {
  readonly name: string;
  /** Ours. */
  readonly curve?: readonly (readonly [number, number])[];
  /** Printed; `within` is what the case allows, up and down. */
  readonly points?: readonly { readonly x: number; readonly y: number; readonly within?: number }[];
  /** Not read at the source: drawn hollow. */
  readonly isFromMemory?: boolean;
  readonly isDashed?: boolean;
}

export interface Panel {
  readonly x: Axis;
  readonly y: Axis;
  readonly height: number;
  readonly series: readonly Series[];
  /** No key beside it: that of the panel above holds. */
  readonly isKeyless?: boolean;
}

export interface Chart {
  readonly title: string;
  readonly panels: readonly Panel[];
  /** Lines under the drawing: where the points are from, what the lines are. */
  readonly under: readonly string[];
}

const WIDTH = 860;
const BOX = { left: 78, right: 614 } as const;
const STEP = 19;

/** A chart as one SVG file on a ground of its own, the same in light and dark. */
export function drawChart({ title, panels, under }: Chart): string {
  let top = 52;
  const drawn = panels.map((panel) => {
    const text = drawPanel(panel, top);
    top += panel.height + 64;
    return text;
  });
  const foot = under.map((text, k) => words(24, top + k * 17, text, 'class="under"'));
  const height = top + under.length * 17 + 6;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" width="${WIDTH}" height="${height}" role="img" aria-label="${escaped(title)}">
<style>text{font:13px system-ui,sans-serif;fill:#1c1c1c}.title{font-size:17px;font-weight:600}.under{font-size:12px;fill:#3a3a3a}.grid{stroke:#dcdcd6;stroke-width:1}.frame{fill:#fff;stroke:#6b6b6b}</style>
<rect width="${WIDTH}" height="${height}" fill="#f7f7f2"/>
${words(24, 32, title, 'class="title"')}
${[...drawn, ...foot].join("\n")}
</svg>
`;
}

function drawPanel({ x, y, height, series, isKeyless }: Panel, top: number): string {
  const clip = `at-${top}`;
  const across = scaleOf(x, [BOX.left, BOX.right]);
  const up = scaleOf(y, [top + height, top]);
  // Up to half a panel beyond its edges; what is outside is cut off.
  const beyond = (at: readonly [number, number]) => Math.abs(up(at[1]) - top - height / 2) <= height;
  const marks = series.map((one, k) => {
    const colour = COLOURS[k % COLOURS.length]!;
    const place = pathOf<readonly [number, number]>(
      ([a]) => across(a),
      ([, b]) => up(b),
    ).digits(1);
    const curve = one.curve?.filter(beyond);
    const dash = one.isDashed ? ' stroke-dasharray="6 4"' : "";
    return [
      ...(curve
        ? [
            `<path d="${place(curve)}" clip-path="url(#${clip})" fill="none" stroke="${colour}" stroke-width="1.8"${dash}/>`,
          ]
        : []),
      ...(one.points ?? []).map((point) =>
        drawPoint(point, k, one.isFromMemory === true, { across, up, clip }),
      ),
    ].join("\n");
  });
  return [
    `<clipPath id="${clip}"><rect x="${BOX.left}" y="${top}" width="${BOX.right - BOX.left}" height="${height}"/></clipPath>`,
    `<rect class="frame" x="${BOX.left}" y="${top}" width="${BOX.right - BOX.left}" height="${height}"/>`,
    drawAxes({ x, y }, { across, up }, top + height),
    ...marks,
    ...(isKeyless ? [] : drawKey(series, top)),
  ].join("\n");
}

interface Scales {
  readonly across: (value: number) => number;
  readonly up: (value: number) => number;
}

const scaleOf = ({ from, to, isLog }: Axis, range: [number, number]) =>
  (isLog ? scaleLog() : scaleLinear()).domain([from, to]).range(range);

function drawAxes({ x, y }: { x: Axis; y: Axis }, { across, up }: Scales, bottom: number): string {
  const top = up(y.to);
  const lines = [
    ...ticksOf(x).map((tick) => {
      const at = round(across(tick));
      return `<path class="grid" d="M${at},${top}V${bottom}"/>${words(at, bottom + 17, said(tick), 'text-anchor="middle"')}`;
    }),
    ...ticksOf(y).map((tick) => {
      const at = round(up(tick));
      return `<path class="grid" d="M${BOX.left},${at}H${BOX.right}"/>${words(BOX.left - 7, at + 4, said(tick), 'text-anchor="end"')}`;
    }),
  ];
  const middle = round((top + bottom) / 2);
  return [
    ...lines,
    words((BOX.left + BOX.right) / 2, bottom + 36, x.title, 'text-anchor="middle"'),
    words(20, middle, y.title, `text-anchor="middle" transform="rotate(-90 20 ${middle})"`),
  ].join("\n");
}

/** Round numbers along an axis; by decades, 1, 2 and 5 of each where there is room. */
function ticksOf({ from, to, isLog }: Axis): number[] {
  if (!isLog) return scaleLinear().domain([from, to]).ticks(6);
  const within = Math.log10(to / from) < 2.7 ? [1, 2, 5] : [1];
  const first = Math.floor(Math.log10(from));
  const decades = Array.from({ length: Math.ceil(Math.log10(to)) - first + 1 }, (_, k) => first + k);
  return decades
    .flatMap((decade) => within.map((step) => step * 10 ** decade))
    .filter((tick) => tick >= from * 0.999 && tick <= to * 1.001);
}

function drawPoint(
  { x, y, within }: { readonly x: number; readonly y: number; readonly within?: number },
  series: number,
  isHollow: boolean,
  { across, up, clip }: Scales & { readonly clip: string },
): string {
  const colour = COLOURS[series % COLOURS.length]!;
  const [a, b] = [round(across(x)), round(up(y))];
  const allowed =
    within === undefined
      ? ""
      : `<path clip-path="url(#${clip})" d="M${a},${round(up(y - within))}V${round(up(y + within))}" stroke="${colour}" stroke-width="1.2"/>`;
  return allowed + shapeAt(a, b, series, isHollow);
}

function shapeAt(a: number, b: number, series: number, isHollow: boolean): string {
  const colour = COLOURS[series % COLOURS.length]!;
  const look = `fill="${isHollow ? "#fff" : colour}" stroke="${colour}" stroke-width="1.6"`;
  const path = (d: string) => `<path transform="translate(${a},${b})" d="${d}" ${look}/>`;
  switch (SHAPES[series % SHAPES.length]!) {
    case "circle":
      return `<circle cx="${a}" cy="${b}" r="4" ${look}/>`;
    case "square":
      return path("M-4,-4H4V4H-4Z");
    case "triangle":
      return path("M0,-5L5,4H-5Z");
    case "diamond":
      return path("M0,-5.5L5,0L0,5.5L-5,0Z");
    case "cross":
      return path("M-1.5,-5H1.5V-1.5H5V1.5H1.5V5H-1.5V1.5H-5V-1.5H-1.5Z");
    case "upturned":
      return path("M0,5L5,-4H-5Z");
    case "bar":
      return path("M-5,-2H5V2H-5Z");
  }
}

function drawKey(series: readonly Series[], top: number): string[] {
  const left = BOX.right + 16;
  return series.map((one, k) => {
    const at = top + 12 + k * STEP;
    const colour = COLOURS[k % COLOURS.length]!;
    const dash = one.isDashed ? ' stroke-dasharray="6 4"' : "";
    return [
      ...(one.curve ? [`<path d="M${left},${at}h26" stroke="${colour}" stroke-width="1.8"${dash}/>`] : []),
      ...(one.points ? [shapeAt(left + 13, at, k, one.isFromMemory === true)] : []),
      words(left + 34, at + 4, one.name),
    ].join("");
  });
}

const words = (x: number, y: number, text: string, more = ""): string =>
  `<text x="${round(x)}" y="${round(y)}"${more === "" ? "" : ` ${more}`}>${escaped(text)}</text>`;

const round = (value: number): number => Number(value.toFixed(1));

const said = (tick: number): string => `${Number(tick.toPrecision(4))}`;

const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");
