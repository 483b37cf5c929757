/** Why a file cannot be read or written, in the system's words: without its code, and without the call that failed. */
export const fileFault = (error: unknown): string =>
  !(error instanceof Error)
    ? String(error)
    : isOfFolder(error)
      ? "it is a folder, and a file is wanted"
      : error.message.replace(/^[A-Z]+: |, [a-z]+( '.*')?$/g, "");

/** The system's own words for it are "illegal operation on a directory". */
const isOfFolder = (error: Error): boolean => "code" in error && error.code === "EISDIR";
