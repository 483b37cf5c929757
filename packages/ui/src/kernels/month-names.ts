/** The months as charts and tables call them. */
export const MONTH_NAMES = [
  ...["Jan", "Feb", "Mar", "Apr", "May", "Jun"],
  ...["Jul", "Aug", "Sep", "Oct", "Nov", "Dec"],
] as const;
