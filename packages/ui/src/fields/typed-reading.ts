/** What typing into a field came to: the text to keep with its value in SI, or what is wrong with it. */
export type TypedReading =
  | { readonly ok: true; readonly typed: string; readonly value: number }
  | { readonly ok: false; readonly problem: string };
