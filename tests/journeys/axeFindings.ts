import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from '@playwright/test';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface AxeResult {
  readonly violations: readonly { readonly id: string; readonly nodes: readonly { readonly html: string }[] }[];
  readonly passes: readonly unknown[];
}

/** What axe-core finds wrong with the page as it stands: one line a finding, rule and element. Empty: nothing. */
export async function axeFindings(page: Page): Promise<string[]> {
  // The page's own policy lets no foreign script in; the debugger's evaluation is not bound by it.
  await page.evaluate(axe);
  const result = await page.evaluate(
    (): Promise<AxeResult> =>
      (globalThis as unknown as { axe: { run(options: object): Promise<AxeResult> } }).axe.run({
        rules: { 'color-contrast-enhanced': { enabled: true }, 'target-size': { enabled: true } },
      }),
  );
  if (result.passes.length === 0) throw new Error('axe looked at nothing');
  return result.violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
}
