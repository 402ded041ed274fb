import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const script = readFileSync(
    path.resolve(import.meta.dirname, '../../node_modules/axe-core/axe.min.js'),
    'utf8',
);

/** What axe finds against WCAG 2.2 AA and its own best practices: one line a broken rule and place. */
export function axeFindings(page: Page, fingers = false): Promise<string[]> {
    return findings(page, {
        // Of WCAG 2.2 AA, and not asked unless it is named: 24 px for a finger, or as far from the next.
        rules: { 'target-size': { enabled: fingers } },
    });
}

/** The rules of axe that look at a colour. A theme changes nothing that the others look at: names, roles, order. */
export function axeOfColours(page: Page): Promise<string[]> {
    return findings(page, { runOnly: ['color-contrast', 'link-in-text-block'] });
}

async function findings(page: Page, how: object): Promise<string[]> {
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
            ...asked,
        });
    }, how);
    return results.violations.flatMap(broken =>
        broken.nodes.map(
            node => `${broken.id}: ${node.target.join(' ')}: ${node.html.slice(0, 160)}`,
        ),
    );
}
