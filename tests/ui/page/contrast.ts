/** Contrast of two colours as the page computes them ("rgb(1, 2, 3)"), from 1 to 21, by WCAG 2.2's definition. */
export function contrastOf(one: string, other: string): number {
  const [darker, lighter] = [luminanceOf(one), luminanceOf(other)].sort((a, b) => a - b) as [number, number];
  return (lighter + 0.05) / (darker + 0.05);
}

function luminanceOf(colour: string): number {
  const parts = /^rgba?\((\d+), (\d+), (\d+)/.exec(colour);
  if (parts === null) throw new Error(`"${colour}" is not a computed colour`);
  const [red, green, blue] = parts.slice(1).map((part) => linear(Number(part) / 255)) as [
    number,
    number,
    number,
  ];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

const linear = (share: number): number =>
  share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
