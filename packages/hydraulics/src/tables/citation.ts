/** Where a figure comes from. `source` is a key in the table of sources. */
export interface Citation {
  readonly source: string;
  /** Table, page or column in the source. */
  readonly where: string;
  /** Read at the source, recalled, or worked out from cited figures. */
  readonly seen: "seen" | "from memory" | "derived";
}
