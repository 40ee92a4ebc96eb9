import axe from 'axe-core';

/** What axe finds wrong on the page, by rule and element; empty when it finds nothing. */
export async function findings(root: Element): Promise<readonly string[]> {
  const { violations } = await axe.run(root, {
    runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
    // The page around a component in a test has neither a title of its own nor a language.
    rules: { region: { enabled: false } },
  });
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
}
