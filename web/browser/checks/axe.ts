import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const script = readFileSync(
    path.resolve(import.meta.dirname, '../../node_modules/axe-core/axe.min.js'),
    'utf8',
);

/** What axe finds against WCAG 2.2 AA and its own best practices: one line a broken rule and place. */
export async function axeFindings(page: Page, fingers = false): Promise<string[]> {
    if (!(await page.evaluate(() => 'axe' in globalThis))) {
        await page.evaluate(script);
    }
    const results = await page.evaluate(asked => {
        const { axe } = globalThis as unknown as {
            axe: { run: (where: Document, how: object) => Promise<AxeResults> };
        };
        return axe.run(document, {
            preload: false,
            resultTypes: ['violations'],
            // Of WCAG 2.2 AA, and not asked unless it is named: 24 px for a finger, or as far from the next.
            rules: { 'target-size': { enabled: asked } },
        });
    }, fingers);
    return results.violations.flatMap(broken =>
        broken.nodes.map(
            node => `${broken.id}: ${node.target.join(' ')}: ${node.html.slice(0, 160)}`,
        ),
    );
}
