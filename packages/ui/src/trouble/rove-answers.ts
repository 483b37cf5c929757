/**
 * Arrow keys go from answer to answer along a row, and up and down in one column, so that a list of many drinkers is one
 * stop of the tab key.
 */
export function roveAnswers(event: KeyboardEvent): void {
  const step = STEPS[event.key];
  const button = (event.target as Element).closest("button");
  if (step === undefined || button === null || event.altKey || event.ctrlKey || event.metaKey) return;
  const list = event.currentTarget as HTMLElement;
  const rows = [...list.querySelectorAll(".row")].map((row) => [...row.querySelectorAll("button")]);
  const at = rows.findIndex((row) => row.includes(button));
  const target = rows[at + step[0]]?.[(rows[at]?.indexOf(button) ?? 0) + step[1]];
  event.preventDefault();
  if (target === undefined) return;
  setTabStop(list, target);
  target.focus();
}

const STEPS: Readonly<Record<string, readonly [row: number, column: number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};

/** One button of a list is a stop of the tab key: the one last at hand, else the first. */
export function setTabStop(list: Element, stop?: HTMLElement): void {
  const buttons = [...list.querySelectorAll<HTMLElement>(".row button")];
  const kept =
    stop ?? buttons.find((button) => button.tabIndex === 0 && button.dataset["stop"] !== undefined);
  const chosen = kept ?? buttons[0];
  for (const button of buttons) {
    button.tabIndex = button === chosen ? 0 : -1;
    if (button === chosen) button.dataset["stop"] = "";
    else delete button.dataset["stop"];
  }
}
