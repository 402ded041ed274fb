import { mkdirSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { axeFindings } from '../checks/axe';
import { faintTexts } from '../checks/contrast';
import { cutTexts, overlappingTexts } from '../checks/layout';
import { inBay } from '../harness/bay';
import { Hand } from '../harness/hand';
import { shoot } from '../harness/shots';

const folder = path.resolve(import.meta.dirname, '../../target/screenshots');

/** The darkest that is painted on the first canvas, 0 black to 1 white. */
function darkest(page: Page): Promise<number> {
    return page.evaluate(() => {
        const canvas = document.querySelector<HTMLCanvasElement>('.plot canvas');
        const pen = canvas?.getContext('2d');
        if (!canvas || !pen) return 1;
        const { data } = pen.getImageData(0, 0, canvas.width, canvas.height);
        let least = 1;
        for (let k = 0; k < data.length; k += 4) {
            const [r = 0, g = 0, b = 0, a = 0] = data.subarray(k, k + 4);
            if (a > 200) least = Math.min(least, (r + g + b) / 765);
        }
        return least;
    });
}

/** A4 less its margins, in the pixels that a printer is given. */
const sheet = { width: 703, height: 1000 };

test(
    'printed from a dark page, rungs are dark on white, and words that lead somewhere stay',
    () =>
        inBay(
            'curlew',
            async ({ visit: { page } }) => {
                const hand = new Hand(page);
                for (const question of ['endurance', 'balance', 'trials'] as const) {
                    await hand.open(question);
                    await hand.answered();
                    await page.setViewportSize(sheet);
                    await page.emulateMedia({ media: 'print' });
                    await shoot(page, `paper-${question}`, true);
                    expect.soft(await faintTexts(page), `faint, ${question}`).toEqual([]);
                    expect.soft(await overlappingTexts(page), question).toEqual([]);
                    expect.soft((await cutTexts(page)).slice(0, 9), question).toEqual([]);
                    // Curves are painted, not styled: they are painted anew for paper.
                    if (question === 'endurance') {
                        expect(await darkest(page)).toBeLessThan(0.2);
                    }
                    const ink = await page.evaluate(() => getComputedStyle(document.body).color);
                    expect(ink).toBe('rgb(0, 0, 0)');
                    const words = await page.locator('#sheet').innerText();
                    if (question === 'endurance') expect(words).toContain('reached after');
                    if (question === 'balance') expect(words).toContain('acceleration');
                    if (question === 'trials') expect(words).toContain('weigh the parts');
                    expect(words).not.toContain('save as');
                    expect(await page.locator('select:visible, input:visible').count()).toBe(0);
                    await page.emulateMedia({ media: 'screen' });
                    await page.setViewportSize({ width: 1280, height: 720 });
                }
                await hand.open('endurance');
                mkdirSync(folder, { recursive: true });
                const pdf = await page.pdf({
                    format: 'A4',
                    path: path.join(folder, 'paper-endurance.pdf'),
                });
                expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
            },
            { width: 1280, height: 720, theme: 'dark' },
        ),
    400_000,
);

test(
    'on a tablet all that is pressed is large enough for a finger, or far enough from the next',
    () =>
        inBay(
            'curlew',
            async ({ visit: { page } }) => {
                const hand = new Hand(page);
                for (const question of [
                    'lift',
                    'endurance',
                    'balance',
                    'restraint',
                    'trials',
                ] as const) {
                    await hand.open(question);
                    await hand.answered();
                    expect.soft(await axeFindings(page, true), question).toEqual([]);
                }
            },
            { width: 800, height: 1280 },
        ),
    400_000,
);
