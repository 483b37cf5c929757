import type { Plan } from "@headfall/hydraulics";
import { saveFile } from "../storage/save-file.js";
import { pictureOf } from "./picture.js";
import { pngOf } from "./png.js";
import type { SavedDrawing } from "./saved-drawing.js";
import { savedName } from "./saved-name.js";

export interface PictureChoices {
  readonly paper: boolean;
  readonly transparent: boolean;
}

/** Saves a drawing as a picture; returns the name of the file. */
export async function savePicture(
  kind: "svg" | "png",
  drawing: SavedDrawing,
  plan: Plan,
  { paper, transparent }: PictureChoices,
): Promise<string> {
  const { svg, name, description } = drawing;
  const title = plan.name === undefined ? name : `${plan.name}: ${name}`;
  const picture = pictureOf(svg, { title, paper, transparent, ...(description && { description }) });
  const file = savedName(plan, name, kind);
  saveFile(
    file,
    kind === "svg" ? new Blob([picture], { type: "image/svg+xml" }) : await drawn(picture, svg, transparent),
  );
  return file;
}

function drawn(picture: string, svg: SVGSVGElement, transparent: boolean): Promise<Blob> {
  const { width, height } = svg.getBoundingClientRect();
  return pngOf(picture, { width, height, ...(transparent ? {} : { ground: "#fff" }) });
}
