import { afterEach, expect, test } from "vitest";
import { HeadfallAbove } from "../../../packages/ui/src/above/above-element.js";
import { pictureOf } from "../../../packages/ui/src/sheet/picture.js";
import { dotsPerPixel, pngOf } from "../../../packages/ui/src/sheet/png.js";
import { checkedOf, ELBOW, planOf } from "../kernels/sheet/alder-bank.js";
import { profileShown } from "./profile-host.js";

afterEach(() => {
  document.body.replaceChildren();
  document.documentElement.style.colorScheme = "";
});

async function profileDrawing(scheme = "light"): Promise<SVGSVGElement> {
  const profile = await profileShown(["good", "drips", "starves", "dry"], { width: 640, scheme });
  return profile.shadowRoot!.querySelector<SVGSVGElement>("figure > svg")!;
}

/** A drawing made for one test, styled by a sheet adopted by its shadow root. */
function drawn(build: (svg: SVGSVGElement) => void, css = ""): SVGSVGElement {
  const host = document.createElement("div");
  const root = host.attachShadow({ mode: "open" });
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(css);
  root.adoptedStyleSheets = [sheet];
  const svg = document.createElementNS("http://www.w3.org/2000/svg", "svg");
  svg.setAttribute("viewBox", "0 0 100 50");
  svg.setAttribute("width", "100");
  svg.setAttribute("height", "50");
  build(svg);
  root.append(svg);
  document.body.append(host);
  return svg;
}

const part = (name: string, attributes: Record<string, string>, ...children: (Node | string)[]) => {
  const element = document.createElementNS("http://www.w3.org/2000/svg", name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  element.append(...children);
  return element;
};

function parsed(picture: string): Document {
  const read = new DOMParser().parseFromString(picture, "image/svg+xml");
  expect(read.querySelector("parsererror")).toBeNull();
  return read;
}

/** Every dot of a picture, drawn by itself. */
async function dotsOf(blob: Blob): Promise<ImageData> {
  const image = await createImageBitmap(blob);
  const canvas = new OffscreenCanvas(image.width, image.height);
  const brush = canvas.getContext("2d")!;
  brush.drawImage(image, 0, 0);
  return brush.getImageData(0, 0, image.width, image.height);
}

test("pictureOf the profile carries its looks as attributes, and no class, style, script or foreign part", async () => {
  const read = parsed(
    pictureOf(await profileDrawing(), { title: "From the side", description: "Alder Bank" }),
  );
  expect(
    read.querySelectorAll("[class], [style], [part], style, script, foreignObject, image, a"),
  ).toHaveLength(0);
  expect(read.documentElement.outerHTML).not.toMatch(/var\(|light-dark|lit\$/);
  const pipe = [...read.querySelectorAll("path")].find(
    (path) => path.getAttribute("stroke-width") === "3.5px",
  );
  expect(pipe!.getAttribute("fill")).toBe("none");
  expect(pipe!.getAttribute("stroke")).toBe("rgb(46, 58, 54)");
  const title = read.querySelector("svg > title")!;
  expect(title.textContent).toBe("From the side");
  expect(read.querySelector("svg > desc")!.textContent).toBe("Alder Bank");
  expect(read.documentElement.getAttribute("aria-labelledby")!.split(" ")[0]).toBe(title.id);
});

test("a PNG of the picture has the pipe where the screen has it and in its colour, at two dots a pixel", async () => {
  const svg = await profileDrawing();
  const { width, height } = svg.getBoundingClientRect();
  const picture = pictureOf(svg, { title: "From the side" });
  const dots = await dotsOf(await pngOf(picture, { width, height }));
  expect([dots.width, dots.height]).toEqual([2 * width, 2 * height]);
  // The pipe is where the drawing has it, in the pipe's colour.
  const pipe = svg.querySelector<SVGPathElement>("path.pipe")!;
  const spot = pipe.getPointAtLength(pipe.getTotalLength() * 0.37);
  const at = 4 * (Math.round(2 * spot.y) * dots.width + Math.round(2 * spot.x));
  expect([...dots.data.slice(at, at + 4)]).toEqual([46, 58, 54, 255]);
});

test("when paper is asked for, a dark screen gives light colours, and the screen stays dark", async () => {
  const svg = await profileDrawing("dark");
  const back = () => getComputedStyle(svg.querySelector(".back")!).fill;
  const before = back();
  const dark = parsed(pictureOf(svg, { title: "a" }))
    .querySelector("rect")!
    .getAttribute("fill");
  const paper = parsed(pictureOf(svg, { title: "a", paper: true }))
    .querySelector("rect")!
    .getAttribute("fill");
  expect([dark, paper]).toEqual([before, "rgb(255, 255, 255)"]);
  expect(before).not.toBe("rgb(255, 255, 255)");
  expect(back()).toBe(before);
  expect(svg.hasAttribute("style")).toBe(false);
});

test("when it is to be transparent, the drawing's own ground is left out", async () => {
  const svg = await profileDrawing();
  const { width, height } = svg.getBoundingClientRect();
  const corner = async (transparent: boolean, ground?: string) => {
    const picture = pictureOf(svg, { title: "a", transparent });
    const { data } = await dotsOf(await pngOf(picture, { width, height, ...(ground && { ground }) }));
    return [...data.slice(4 * 900, 4 * 901)];
  };
  expect(await corner(false)).toEqual([255, 255, 255, 255]);
  expect(await corner(true)).toEqual([0, 0, 0, 0]);
  expect(await corner(true, "#fff")).toEqual([255, 255, 255, 255]);
});

test("pictureOf the drawing from above has its words and its pipes, and nothing that is only there to be pressed", async () => {
  if (customElements.get("headfall-above") === undefined)
    customElements.define("headfall-above", HeadfallAbove);
  const above = new HeadfallAbove();
  Object.assign(above, { plan: planOf(ELBOW), checked: checkedOf(planOf(ELBOW)) });
  document.body.append(above);
  const find = () => above.shadowRoot?.querySelector<SVGSVGElement>("svg[part~=drawing]");
  await expect.poll(() => find()?.querySelectorAll(".pipe").length).toBeGreaterThan(2);
  const svg = find()!;
  const read = parsed(pictureOf(svg, { title: "From above", paper: true }));
  const words = (root: ParentNode) =>
    [...root.querySelectorAll("text")].map((each) => each.textContent!.trim());
  expect(words(read)).toEqual(words(svg));
  expect(words(read).join(" ")).toContain("feed");
  const grips = svg.querySelectorAll(".grip").length;
  expect(grips).toBeGreaterThan(2);
  const shapes = "path, rect, circle, ellipse, line, polyline, polygon";
  expect(read.querySelectorAll(shapes).length).toBeLessThanOrEqual(
    svg.querySelectorAll(shapes).length - grips,
  );
  expect(read.documentElement.outerHTML).not.toMatch(/var\(|light-dark|tabindex|class=/);
});

test("ids are made the picture's own, and what refers to them follows", () => {
  const svg = drawn(
    (root) =>
      root.append(
        part("clipPath", { id: "inside" }, part("rect", { width: "10", height: "10" })),
        part("g", { class: "cut" }, part("rect", { id: "box", width: "50", height: "50" })),
        part("use", { href: "#box", x: "60" }),
      ),
    ".cut { clip-path: url(#inside); } clipPath rect { fill: none; }",
  );
  const [first, second] = ["One", "Two"].map((title) => parsed(pictureOf(svg, { title })));
  const ids = (read: Document) => [...read.querySelectorAll("[id]")].map(({ id }) => id);
  expect(new Set([...ids(first!), ...ids(second!)]).size).toBe(6);
  const clip = first!.querySelector("clipPath")!.id;
  expect(first!.querySelectorAll("clipPath > rect")).toHaveLength(1);
  expect(first!.querySelector("g")!.getAttribute("clip-path")).toBe(`url(#${clip})`);
  expect(first!.querySelector("use")!.getAttribute("href")).toBe(`#${first!.querySelector("g > rect")!.id}`);
});

test("scripts, handlers, embedded pages, links and addresses elsewhere stay behind; names stay text", () => {
  const svg = drawn(
    (root) =>
      root.append(
        part("script", {}, "void 0"),
        part("foreignObject", {}, document.createElement("iframe")),
        part("image", { href: "https://elsewhere.example/x.png" }),
        part("use", { href: "https://elsewhere.example/x.svg#a" }),
        part("rect", {
          onclick: "alert(1)",
          width: "5",
          height: "5",
          style: "fill: url(https://elsewhere.example/#a)",
        }),
        part("text", {}, "<script>alert(1)</script> \u0007&amp; \u{1f414}"),
      ),
    "text { font-family: serif }",
  );
  const picture = pictureOf(svg, { title: '"><script>alert(1)</script>' });
  const read = parsed(picture);
  expect(read.querySelectorAll("script, foreignObject, iframe, image")).toHaveLength(0);
  expect(picture.replaceAll(/xmlns(:\w+)?="[^"]*"/g, "")).not.toMatch(/elsewhere|onclick|https?:/);
  expect(read.querySelector("text")!.textContent).toBe("<script>alert(1)</script> &amp; \u{1f414}");
  expect(read.querySelector("title")!.textContent).toBe('"><script>alert(1)</script>');
});

test("what is not shown is not in the picture", () => {
  const svg = drawn(
    (root) =>
      root.append(part("rect", { class: "gone", width: "5", height: "5" }), part("circle", { r: "3" })),
    ".gone { display: none }",
  );
  const read = parsed(pictureOf(svg, { title: "a" }));
  expect(read.querySelectorAll("rect")).toHaveLength(0);
  expect(read.querySelectorAll("circle")).toHaveLength(1);
});

test("dotsPerPixel is 2, and less for drawings that browsers would not draw so large", () => {
  expect(dotsPerPixel(1200, 400)).toBe(2);
  expect(dotsPerPixel(20_000, 100) * 20_000).toBeCloseTo(8192, 6);
  expect(dotsPerPixel(6000, 6000) ** 2 * 36e6).toBeCloseTo(40e6, 0);
});
