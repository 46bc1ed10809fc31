import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from '@playwright/test';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** WCAG 2.0 to 2.2, levels A and AA, and what axe calls best practice. */
const ALL_TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
/** Rules whose answer may be another in another dress of the same page. */
export const COLOUR_RULES = ['color-contrast', 'link-in-text-block'];

interface Finding {
  readonly id: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[];
}

interface Axe {
  run(where: Document | string, how: object): Promise<{ violations: Finding[]; passes: Finding[] }>;
}

/** What axe finds wrong on the page as it stands, or in the part that `within` selects, one line for each place. */
export async function axeFindings(
  page: Page,
  rules: readonly string[] | null = null,
  within: string | null = null,
): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(AXE);
  const violations = await page.evaluate(
    async ({ rules, tags, within }) => {
      const { axe } = globalThis as unknown as { axe: Axe };
      const runOnly = rules === null ? { type: 'tag', values: tags } : { type: 'rule', values: rules };
      return (await axe.run(within ?? document, { runOnly, resultTypes: ['violations'] })).violations;
    },
    { rules, tags: ALL_TAGS, within },
  );
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ html, failureSummary = '' }) => `${id}: ${html} ${failureSummary.replace(/\s+/g, ' ')}`),
  );
}

/** What a screen is looked at in besides its light dress. */
export const DRESSES = [
  { name: 'dark', media: { colorScheme: 'dark', contrast: 'no-preference' } },
  { name: 'high contrast', media: { colorScheme: 'light', contrast: 'more' } },
] as const;
export const LIGHT = { colorScheme: 'light', contrast: 'no-preference' } as const;
