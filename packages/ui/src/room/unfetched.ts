/** What is wrong where an example of a record could not be fetched. */
export const UNFETCHED_EXAMPLE = {
  code: "missing",
  path: "the example",
  found: "no answer",
  allowed: "It is fetched from where this page is from.",
  mend: "Is the network there? Try again, or open a file of your own.",
} as const;
