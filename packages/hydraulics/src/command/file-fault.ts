/** Why a file cannot be read or written, in the system's words: without its code, and without the call that failed. */
export const fileFault = (error: unknown): string =>
  error instanceof Error ? error.message.replace(/^[A-Z]+: |, [a-z]+( '.*')?$/g, "") : String(error);
