export declare function writeTestFile(
  path: string,
  source: string,
  as: { readonly name: string; readonly call: string; readonly from: string },
): string | undefined;
