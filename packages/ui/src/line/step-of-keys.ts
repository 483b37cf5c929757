/** Ctrl+Z, Ctrl+Shift+Z and Ctrl+Y, but not where text is being typed: there they mean the text. */
export function stepOfKeys(event: KeyboardEvent): "undo" | "redo" | undefined {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return undefined;
  const target = event.composedPath()[0];
  if (target instanceof HTMLInputElement && target.type === "text") return undefined;
  if (target instanceof HTMLTextAreaElement) return undefined;
  const key = event.key.toLowerCase();
  if (key === "y" || (key === "z" && event.shiftKey)) return "redo";
  return key === "z" ? "undo" : undefined;
}
