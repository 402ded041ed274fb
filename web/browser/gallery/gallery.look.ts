import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { inBay } from '../harness/bay';
import { Hand } from '../harness/hand';
import { places } from './places';

/** A desk, a small screen, a workshop tablet upright. */
const screens = [
    [1280, 720],
    [1024, 768],
    [800, 1280],
] as const;

/** What is shown is cut into pieces of this height, which stand beside each other. */
const PIECE = 1500;

const folder = path.resolve(import.meta.dirname, '../../target/gallery');
const only = (process.env['GALLERY'] ?? '').split(',').filter(name => name !== '');

describe.each(['mudlark', 'curlew'])('%s', example => {
    test.each(['light', 'dark'] as const)('in %s', theme =>
        inBay(
            example,
            async ({ visit }) => {
                visit.forgive(/./);
                const { page } = visit;
                const hand = new Hand(page);
                const failed: string[] = [];
                for (const place of places) {
                    if (only.length > 0 && !only.includes(place.name)) continue;
                    if (place.only !== undefined && place.only !== example) continue;
                    try {
                        await page.setViewportSize({ width: 1280, height: 720 });
                        await place.go(hand);
                        for (const [width, height] of screens) {
                            await page.setViewportSize({ width, height });
                            await page.waitForTimeout(250);
                            await keep(page, `${example}-${theme}-${place.name}-${width}`, width);
                        }
                    } catch (fault) {
                        failed.push(`${place.name}: ${String(fault).slice(0, 300)}`);
                    }
                }
                expect(failed).toEqual([]);
            },
            { width: 1280, height: 720, theme },
        ),
    );
});

/** The page from its top to its foot, in pieces beside each other, so that nothing is too small to be read. */
async function keep(page: Page, name: string, width: number): Promise<void> {
    mkdirSync(folder, { recursive: true });
    const tall = await page.evaluate(() => document.documentElement.scrollHeight);
    const all = await page.screenshot({ animations: 'disabled', fullPage: true });
    const pieces = Math.ceil(tall / PIECE);
    if (pieces === 1) {
        writeFileSync(path.join(folder, `${name}.png`), all);
        return;
    }
    const together = width < 1000 ? 2 : 1;
    const table = await page.context().newPage();
    const source = `data:image/png;base64,${all.toString('base64')}`;
    for (let first = 0, sheet = 1; first < pieces; first += together, sheet++) {
        const shown = Math.min(together, pieces - first);
        await table.setViewportSize({ width: shown * (width + 8), height: PIECE });
        await table.setContent(
            `<body style="margin:0;background:#888;display:flex;gap:8px">${Array.from(
                { length: shown },
                (_, k) =>
                    `<div style="width:${width}px;height:${PIECE}px;overflow:hidden"><img src="${source}" style="margin-top:-${(first + k) * PIECE}px"></div>`,
            ).join('')}</body>`,
        );
        await table.waitForFunction(() => [...document.images].every(image => image.complete));
        await table.screenshot({ path: path.join(folder, `${name}-${sheet}.png`) });
    }
    await table.close();
}
