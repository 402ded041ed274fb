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

/** What each of the six fullest rungs, and the comparison, must say on paper. */
const printed = {
    endurance: 'reached after',
    balance: 'acceleration',
    restraint: 'gives at',
    trials: 'weigh the parts',
    heat: 'What gives out first',
    failures: 'What is left with each failure',
};

/** The page as a printer is given it: dark on white, apart, whole, without what can only be pressed. */
async function onPaper(page: Page, name: string, words: string): Promise<void> {
    await page.setViewportSize(sheet);
    await page.emulateMedia({ media: 'print' });
    await shoot(page, `paper-${name}`, true);
    expect.soft(await faintTexts(page), `faint, ${name}`).toEqual([]);
    expect.soft(await overlappingTexts(page), name).toEqual([]);
    expect.soft((await cutTexts(page)).slice(0, 9), name).toEqual([]);
    // Curves are painted, not styled: they are painted anew for paper.
    if (name === 'endurance') expect(await darkest(page)).toBeLessThan(0.2);
    expect(await page.evaluate(() => getComputedStyle(document.body).color)).toBe('rgb(0, 0, 0)');
    const shown = await page.locator('#sheet').innerText();
    expect(shown).toContain(words);
    expect(shown).not.toContain('save as');
    expect(await page.locator('select:visible, input:visible').count(), name).toBe(0);
    mkdirSync(folder, { recursive: true });
    const pdf = await page.pdf({ format: 'A4', path: path.join(folder, `paper-${name}.pdf`) });
    expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
    await page.emulateMedia({ media: 'screen' });
    await page.setViewportSize({ width: 1280, height: 720 });
}

test(
    'printed from a dark page, rungs and the comparison are dark on white, and words that lead somewhere stay',
    () =>
        inBay(
            'curlew',
            async ({ folder: of, visit: { page } }) => {
                of.write('lighter.yaml', of.read('rig.yaml').replace('mass: 165 g', 'mass: 150 g'));
                const hand = new Hand(page);
                for (const [question, words] of Object.entries(printed)) {
                    await hand.open(question as keyof typeof printed);
                    await hand.answered();
                    // Heat and failures are answered for long: what changes is not looked at.
                    const stop = hand.sheet.getByRole('button', { name: 'Stop', exact: true });
                    if (question === 'heat' && (await stop.isVisible())) await stop.click();
                    await onPaper(page, question, words);
                }
                await hand.open('balance');
                await page.keyboard.press('Alt+c');
                await page
                    .getByLabel('The rig as it stands, against')
                    .selectOption({ label: 'lighter.yaml' });
                await hand.press('Compare balance');
                await page.locator('.compare .verdict').waitFor({ timeout: 120_000 });
                await onPaper(page, 'comparison', 'What changed in the file');
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
