import type { Locator } from "playwright";

/**
 * A drawing as it is seen, as the text of an SVG file: each shape with where it is and the colours it has. Places are
 * rounded to whole pixels (to hundredths where a pixel is smaller than the unit), so that the text is the same on any
 * machine; the fonts of that machine leave no trace, since nothing on the drawings is placed by measured text.
 */
export function drawnPicture(drawing: Locator): Promise<string> {
  return drawing.evaluate((svg) => {
    const PLACES = [
      ...["viewBox", "transform", "d", "x", "y", "width", "height", "rx", "ry", "cx", "cy", "r", "dx", "dy"],
      ...["x1", "y1", "x2", "y2", "points"],
    ];
    const LOOKS = [
      ...["fill", "fill-opacity", "stroke", "stroke-width", "stroke-dasharray", "stroke-opacity"],
      ...["opacity", "paint-order"],
    ];
    const TEXT_LOOKS = ["font-size", "font-weight", "text-anchor"];
    const USUAL: Record<string, string> = {
      "stroke-dasharray": "none",
      "paint-order": "normal",
      "font-weight": "400",
      "text-anchor": "start",
      opacity: "1",
      "fill-opacity": "1",
      "stroke-opacity": "1",
    };

    const escaped = (text: string) =>
      text.replace(/[&<>"]/g, (sign) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" })[sign]!);

    // The small addition keeps halves from falling to one side on one machine and to the other on the next.
    const rounded = (words: string, digits: number) =>
      words
        .replace(/\s+/g, " ")
        .replace(/-?\d+(\.\d+)?(e-?\d+)?/g, (number) =>
          String(Number((Number(number) + 1e-6).toFixed(digits)) + 0),
        );

    const isSeen = (element: SVGElement) => {
      const style = getComputedStyle(element);
      if (style.display === "none" || style.visibility === "hidden") return false;
      if (element.childElementCount > 0 || ["g", "svg", "text", "tspan"].includes(element.localName))
        return true;
      const isClear = (paint: string) => paint === "none" || paint === "rgba(0, 0, 0, 0)";
      return !(isClear(style.fill) && isClear(style.stroke));
    };

    const placesOf = (element: SVGGraphicsElement) => {
      const isScaled = Math.abs((element.getScreenCTM?.()?.a ?? 1) - 1) > 0.01;
      const isRoot = element === svg;
      return PLACES.filter(
        (name) => element.hasAttribute(name) && !(isRoot && /^(width|height)$/.test(name)),
      ).map((name) => {
        const words = element.getAttribute(name)!;
        return words === "" ? "" : ` ${name}="${rounded(words, isScaled || name === "transform" ? 2 : 0)}"`;
      });
    };

    const looksOf = (element: SVGElement) => {
      const style = getComputedStyle(element);
      const isText = element.localName === "text" || element.localName === "tspan";
      return [...LOOKS, ...(isText ? TEXT_LOOKS : [])]
        .filter((name) => style.stroke !== "none" || !/^(stroke-|paint)/.test(name))
        .map((name) => [name, style.getPropertyValue(name)] as const)
        .filter(([name, look]) => look !== USUAL[name])
        .map(([name, look]) => ` ${name}="${look.startsWith("rgb") ? look : rounded(look, 2)}"`);
    };

    // A page to be printed is shown as large as the screen lets it be; on paper it is one and the same.
    const sizeOf = ({ classList, clientWidth, clientHeight }: SVGGraphicsElement) =>
      classList.contains("page") ? "" : ` width="${clientWidth}" height="${clientHeight}"`;

    const rootWords = (root: SVGGraphicsElement) =>
      ` xmlns="http://www.w3.org/2000/svg" font-family="sans-serif"${sizeOf(root)}`;

    const write = (element: SVGGraphicsElement, indent: string): string => {
      if (!isSeen(element)) return "";
      const { localName: tag } = element;
      const inner = [...element.children]
        .filter((child) => child instanceof SVGElement && !["title", "desc"].includes(child.localName))
        .map((child) => write(child as SVGGraphicsElement, `${indent}  `))
        .join("");
      const words = element.childElementCount > 0 ? "" : escaped((element.textContent ?? "").trim());
      if (tag === "g" && inner === "") return "";
      const isShape = !["g", "svg"].includes(tag);
      const attributes = [...placesOf(element), ...(isShape ? looksOf(element) : [])].join("");
      const space = indent === "" ? rootWords(element) : "";
      const body = inner === "" ? words : `\n${inner}${indent}`;
      return body === ""
        ? `${indent}<${tag}${space}${attributes}/>\n`
        : `${indent}<${tag}${space}${attributes}>${body}</${tag}>\n`;
    };
    return write(svg as SVGGraphicsElement, "");
  });
}
