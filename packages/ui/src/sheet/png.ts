/** Dots of the picture for each pixel of the drawing: sharp on paper and on dense screens. */
const DOTS_PER_PIXEL = 2;
/** Most dots along one side, and in all, that every browser draws. */
const MOST_ALONG = 8192;
const MOST_DOTS = 40_000_000;

export interface PngRequest {
  readonly width: number;
  readonly height: number;
  /** Colour behind the drawing; none is left transparent. */
  readonly ground?: string;
}

/**
 * Draws the text of an SVG file as a PNG, two dots to a pixel (fewer where that would be more than browsers draw).
 *
 * @throws Error when the browser cannot draw it
 */
export async function pngOf(picture: string, { width, height, ground }: PngRequest): Promise<Blob> {
  const dots = dotsPerPixel(width, height);
  const address = URL.createObjectURL(new Blob([picture], { type: "image/svg+xml" }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = Math.max(1, Math.round(width * dots));
    canvas.height = Math.max(1, Math.round(height * dots));
    const brush = canvas.getContext("2d");
    if (brush === null) throw new Error("This browser draws no pictures.");
    if (ground !== undefined) {
      brush.fillStyle = ground;
      brush.fillRect(0, 0, canvas.width, canvas.height);
    }
    brush.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await blobOf(canvas);
  } finally {
    URL.revokeObjectURL(address);
  }
}

/** How many dots each pixel becomes. */
export function dotsPerPixel(width: number, height: number): number {
  const byLength = MOST_ALONG / Math.max(width, height, 1);
  const byArea = Math.sqrt(MOST_DOTS / Math.max(width * height, 1));
  return Math.min(DOTS_PER_PIXEL, byLength, byArea);
}

function blobOf(canvas: HTMLCanvasElement): Promise<Blob> {
  return new Promise((resolve, reject) => {
    canvas.toBlob((blob) => {
      if (blob === null) reject(new Error("This browser could not make the picture."));
      else resolve(blob);
    }, "image/png");
  });
}
