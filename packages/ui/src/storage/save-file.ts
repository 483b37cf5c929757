/** Hands a text or picture to the browser as a file to keep. */
export function saveFile(name: string, content: Blob): void {
  const address = URL.createObjectURL(content);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // The browser has the address in hand once the click has been dealt with.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
