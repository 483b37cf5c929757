import axe from "axe-core";

/** What axe finds wrong inside an element, one line each; empty when nothing is. */
export async function accessibilityFaults(element: Element): Promise<string[]> {
  const { violations } = await axe.run(element, {
    resultTypes: ["violations"],
    runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
    rules: {
      region: { enabled: false },
      "page-has-heading-one": { enabled: false },
      "heading-order": { enabled: false },
    },
  });
  return violations.flatMap(({ id, help, nodes }) =>
    nodes.map(({ target }) => `${id}: ${help} (${target.join(" ")})`),
  );
}
