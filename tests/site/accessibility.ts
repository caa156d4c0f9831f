import axe from 'axe-core';
import type { Page } from 'playwright-core';

/** WCAG 2.2, levels A and AA, as axe-core tags them. */
const criteria = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/**
 * What axe-core finds wrong on the page as it stands, one text a place: the rule, what it asks for, the element.
 * Empty when the page meets every criterion that a program can judge.
 */
export async function findAccessibilityFaults(page: Page): Promise<string[]> {
  // Evaluated, not added as a script element, which the page's content security policy would refuse.
  await page.evaluate(axe.source);
  const violations = await page.evaluate(async (tags) => {
    const runner = (globalThis as unknown as { axe: typeof axe }).axe;
    const result = await runner.run(document, { runOnly: { type: 'tag', values: tags } });
    return result.violations.map(({ id, help, nodes }) => ({
      id,
      help,
      nodes: nodes.map((node) => node.html),
    }));
  }, criteria);
  return violations.flatMap(({ id, help, nodes }) =>
    nodes.map((html) => `${id}: ${help}: ${html.slice(0, 200)}`),
  );
}
