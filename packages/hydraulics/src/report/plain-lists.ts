/** A result whose typed arrays have become plain lists, as JSON has them. */
export type PlainLists<Result> = Result extends ArrayBufferView
  ? readonly number[]
  : Result extends object
    ? { readonly [Key in keyof Result]: PlainLists<Result[Key]> }
    : Result;

/**
 * Writes a result with its typed arrays as plain lists, so that JSON shows them as lists; nothing else changes.
 *
 * @param result  plain data, numbers finite
 * @returns a copy; keys whose value is undefined are left out
 * @example withPlainLists({ levels: Float64Array.of(1, 2) })   // { levels: [1, 2] }
 */
export function withPlainLists<Result>(result: Result): PlainLists<Result> {
  const asList = (_: string, value: unknown) =>
    ArrayBuffer.isView(value) ? Array.from(value as Float64Array) : value;
  return JSON.parse(JSON.stringify(result, asList)) as PlainLists<Result>;
}
