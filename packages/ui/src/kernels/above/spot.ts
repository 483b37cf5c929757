/** A place on the ground seen from above [m]: x to the right, y up on the drawing. */
export interface Ground {
  readonly x: number;
  readonly y: number;
}
