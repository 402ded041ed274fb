import type { Page } from 'playwright-core';
import { bringChecks } from '../harness/inpage';
import type { Ink } from '../inpage/ink';
import { browser } from '../harness/visit';

/** What WCAG 2.2 asks of text of any size here; large text may do with less, ours does not. */
export const leastContrast = 4.5;

/**
 * Texts whose colour is too near to what lies under them. The page is photographed with and without its
 * glyphs: where the two differ there is a glyph, and the photograph without shows the ground it stands
 * on, whatever paints it: a box, a bar of a picture, a halo. No style sheet is asked for a background.
 */
export async function faintTexts(page: Page): Promise<string[]> {
    await bringChecks(page);
    const scale = await page.evaluate(() => devicePixelRatio);
    let judged = 0;
    for (let tries = 1; ; tries++) {
        const inks = await page.evaluate(() => inPage.inks());
        const withGlyphs = await photograph(page);
        await page.evaluate(() => {
            inPage.hideGlyphs(true);
        });
        const without = await photograph(page);
        await page.evaluate(() => {
            inPage.hideGlyphs(false);
        });
        // What moved between the two (an answer that came) is on neither as it is on the other.
        const after = await page.evaluate(() => inPage.inks());
        if (tries < 20 && JSON.stringify(inks) !== JSON.stringify(after)) {
            continue;
        }
        const faint = tooFaint(await judge(withGlyphs, without, inks, scale));
        judged++;
        // A frame that was painted late leaves a text out of one photograph; one that is faint is so in all.
        if (faint.length === 0 || judged === 5) {
            return faint;
        }
    }
}

function tooFaint(judged: { text: string; contrast: number }[]): string[] {
    return judged
        .filter(({ contrast }) => contrast < leastContrast)
        .map(({ text, contrast }) => `“${text}” ${contrast.toFixed(2)} : 1`);
}

async function photograph(page: Page): Promise<string> {
    // What was changed just now is painted two frames later.
    await page.evaluate(
        () =>
            new Promise(done =>
                requestAnimationFrame(() => {
                    requestAnimationFrame(done);
                }),
            ),
    );
    return (await page.screenshot({ animations: 'disabled', caret: 'hide' })).toString('base64');
}

let room: Promise<Page> | undefined;

/** An empty page without a policy, where photographs are taken apart. */
function darkroom(): Promise<Page> {
    room ??= browser().then(async one => (await one.newContext()).newPage());
    return room;
}

async function judge(
    withGlyphs: string,
    without: string,
    inks: Ink[],
    scale: number,
): Promise<{ text: string; contrast: number }[]> {
    return (await darkroom()).evaluate(
        async given => {
            async function pixels(base64: string): Promise<ImageData> {
                const answer = await fetch(`data:image/png;base64,${base64}`);
                const bitmap = await createImageBitmap(await answer.blob());
                const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
                const brush = canvas.getContext('2d', { willReadFrequently: true });
                if (brush === null) {
                    throw new Error('no canvas');
                }
                brush.drawImage(bitmap, 0, 0);
                return brush.getImageData(0, 0, bitmap.width, bitmap.height);
            }
            // WCAG 2.2, relative luminance.
            function luminance(r: number, g: number, b: number): number {
                const [x = 0, y = 0, z = 0] = [r, g, b].map(value => {
                    const share = value / 255;
                    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
                });
                return 0.2126 * x + 0.7152 * y + 0.0722 * z;
            }
            const seen = await pixels(given.withGlyphs);
            const ground = await pixels(given.without);
            const near = (i: number) =>
                [0, 1, 2].every(
                    k => Math.abs((seen.data[i + k] ?? 0) - (ground.data[i + k] ?? 0)) <= 2,
                );
            // A pixel at a glance: most are the same in both, and few colours lie under a text.
            const seenWords = new Uint32Array(seen.data.buffer);
            const groundWords = new Uint32Array(ground.data.buffer);
            return given.inks.map(ink => {
                const [r, g, b, alpha] = ink.colour;
                const known = new Map<number, number>();
                const contrastOn = (i: number): number => {
                    const [x = 0, y = 0, z = 0] = ground.data.subarray(i, i + 3);
                    const text = luminance(
                        r * alpha + x * (1 - alpha),
                        g * alpha + y * (1 - alpha),
                        b * alpha + z * (1 - alpha),
                    );
                    const paper = luminance(x, y, z);
                    return (Math.max(text, paper) + 0.05) / (Math.min(text, paper) + 0.05);
                };
                const contrasts: number[] = [];
                for (const box of ink.boxes) {
                    const left = Math.max(0, Math.floor(box.left * given.scale));
                    const right = Math.min(seen.width, Math.ceil(box.right * given.scale));
                    const top = Math.max(0, Math.floor(box.top * given.scale));
                    const bottom = Math.min(seen.height, Math.ceil(box.bottom * given.scale));
                    for (let y = top; y < bottom; y++) {
                        for (let x = left; x < right; x++) {
                            const at = y * seen.width + x;
                            const under = groundWords[at] ?? 0;
                            if (under === seenWords[at] || near(4 * at)) {
                                continue;
                            }
                            const contrast = known.get(under) ?? contrastOn(4 * at);
                            known.set(under, contrast);
                            contrasts.push(contrast);
                        }
                    }
                }
                contrasts.sort((one, other) => one - other);
                // A tenth may lie on a line that crosses; a text of which nothing is seen is as faint as can be.
                return {
                    text: ink.text,
                    contrast: contrasts[Math.floor(contrasts.length / 10)] ?? 1,
                };
            });
        },
        { withGlyphs, without, inks, scale },
    );
}
