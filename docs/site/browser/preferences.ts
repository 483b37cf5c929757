/** What the reader chose on the page that draws lines: units and light, where they stand in the same browser. */
export function readPreferences(): { units: "metric" | "us"; light: string } {
  const [units = "", light = ""] = remembered().split(" ");
  return { units: units === "us" ? "us" : "metric", light };
}

/** Even to ask for storage may be refused. */
function remembered(): string {
  try {
    return localStorage.getItem("headfall-preferences") ?? "";
  } catch {
    return "";
  }
}
