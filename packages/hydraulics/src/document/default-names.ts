/** What sources and runs are called that the plan does not name. */

export const defaultSourceId = (index: number) => (index === 0 ? "barrel" : `source ${index + 1}`);
export const defaultRunId = (index: number) => `run ${index + 1}`;
/** The name of the place where a run without `to` ends. */
export const endOfRun = (id: unknown, index: number) =>
  `${typeof id === "string" ? id : defaultRunId(index)} end`;
