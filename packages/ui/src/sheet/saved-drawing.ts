/** A drawing that is on the screen now and can be saved as a picture. */
export interface SavedDrawing {
  /** As said to the user, and in the name of the file: "From above". */
  readonly name: string;
  readonly description?: string;
  readonly svg: SVGSVGElement;
}
