/** How far the runs that leave a joint turn from the way that leads there, in the order tried [radians]. */
export const TURNS = [
  0,
  Math.PI / 2,
  -Math.PI / 2,
  Math.PI / 4,
  -Math.PI / 4,
  (3 * Math.PI) / 4,
  -(3 * Math.PI) / 4,
];
