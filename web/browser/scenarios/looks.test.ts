import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { Question } from '../../src/core/wire';
import { axeFindings, axeOfColours } from '../checks/axe';
import { faintTexts } from '../checks/contrast';
import { walkByTab } from '../checks/focus';
import { cutTexts, overlappingTexts } from '../checks/layout';
import { inBay } from '../harness/bay';
import { Hand, questions } from '../harness/hand';
import { shoot } from '../harness/shots';

/** So tall that nothing is scrolled away: what is looked at is all there is. */
const whole = { width: 1280, height: 4200 };
const screens = [
    { width: 1280, height: 720 },
    { width: 1024, height: 768 },
    { width: 800, height: 1280 },
];

async function expectClean(page: Page, where: string): Promise<void> {
    expect.soft(await overlappingTexts(page), `texts on one another, ${where}`).toEqual([]);
    expect.soft((await cutTexts(page)).slice(0, 9), `texts cut off, ${where}`).toEqual([]);
}

// All on one page: to answer all of Mudlark takes longer than most looks at it.
test(
    'every rung is clean for axe, apart, whole and dark enough, in every theme, on every screen and at 200 % zoom, and Tab reaches everything',
    () =>
        inBay('mudlark', async ({ visit: { page } }) => {
            const hand = new Hand(page);
            const axe = { light: axeFindings, dark: axeOfColours };
            // What comes late is waited for first: it would move what is photographed, and each photograph is dear.
            for (const question of ['heat', 'failures'] as const) {
                await hand.open(question);
                await hand.whole({ timeout: 240_000 });
            }
            for (const question of questions) {
                await hand.open(question);
                await hand.allAnswered();
                for (const theme of ['light', 'dark'] as const) {
                    await page.emulateMedia({ colorScheme: theme });
                    await page.setViewportSize(whole);
                    const where = `${question}, ${theme}`;
                    expect.soft(await axe[theme](page), `axe, ${where}`).toEqual([]);
                    expect.soft(await faintTexts(page), `faint, ${where}`).toEqual([]);
                    await expectClean(page, where);
                    // A theme moves nothing: the small screens are looked at in one.
                    for (const screen of theme === 'light' ? screens : screens.slice(0, 1)) {
                        await page.setViewportSize(screen);
                        // From its top: what is scrolled goes under the head.
                        await page.evaluate(() => {
                            window.scrollTo(0, 0);
                        });
                        const size = `${screen.width}x${screen.height}`;
                        await expectClean(page, `${where}, ${size}`);
                        await shoot(page, `${question}-${theme}-${size}`);
                    }
                }
                // Forced colours keep marks and words. The browser paints text in the reader's colours itself:
                // there is no other to be too faint.
                await page.emulateMedia({ colorScheme: 'light', forcedColors: 'active' });
                await page.setViewportSize({ width: 1280, height: 720 });
                expect.soft(await axeOfColours(page), `axe, ${question}, forced`).toEqual([]);
                expect.soft(await strangeColours(page), `colours, ${question}`).toEqual([]);
                await expectClean(page, `${question}, forced`);
                await shoot(page, `${question}-forced`);
                await page.emulateMedia({ forcedColors: 'none' });
                await zoomed(page, async () => {
                    await expectClean(page, `${question}, zoom`);
                    await shoot(page, `${question}-zoom`);
                });
                await page.setViewportSize({ width: 1280, height: 720 });
                await reachedByTab(page, question);
            }
        }),
    600_000,
);

/** Tab reaches everything, shows where it is, and leaves again. */
async function reachedByTab(page: Page, question: Question): Promise<void> {
    const walk = await walkByTab(page);
    expect.soft(walk.faults, question).toEqual([]);
    const stops = walk.stops.join('\n');
    // A rig that a person steers is not flown: there is no picture to save.
    const own: Partial<Record<Question, string>> = {
        flight: '',
        trials: 'weigh the parts',
        learning: 'Read in a log',
    };
    const missing = [
        'Save',
        'Undo',
        'Menu',
        'Will it lift',
        own[question] ?? 'save ',
        'Text of the rig file',
    ].filter(wanted => !stops.includes(wanted));
    expect.soft(missing, `${question}, of ${walk.stops.length} stops`).toEqual([]);
}

/** As a browser's zoom of 200 % on a screen of 1280 × 720: half the page's pixels, each of them doubled. */
async function zoomed(page: Page, look: () => Promise<void>): Promise<void> {
    await page.setViewportSize({ width: 640, height: 360 });
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setDeviceMetricsOverride', {
        width: 640,
        height: 360,
        deviceScaleFactor: 2,
        mobile: false,
    });
    expect(await page.evaluate(() => [innerWidth, devicePixelRatio])).toEqual([640, 2]);
    await look();
    await session.send('Emulation.clearDeviceMetricsOverride');
    await session.detach();
}

test('with reduced motion nothing moves by itself', () =>
    inBay(
        'mudlark',
        async ({ visit: { page } }) => {
            const hand = new Hand(page);
            await hand.open('balance');
            await hand.banded();
            // Other answers are still on their way: what shows that may not move either.
            await hand.drag('left.1', 0, 20, 'above');
            const moving = await page.evaluate(() =>
                document.getAnimations().map(one => {
                    const effect = one.effect as KeyframeEffect | null;
                    return effect?.target?.outerHTML.slice(0, 80) ?? 'something';
                }),
            );
            expect(moving).toEqual([]);
            await hand.changed();
        },
        { width: 1280, height: 720, reducedMotion: true },
    ));

/** Texts of pictures in a colour that is not the reader's: those the browser does not see to by itself. */
function strangeColours(page: Page): Promise<string[]> {
    return page.evaluate(() => {
        const probe = document.createElement('span');
        document.body.append(probe);
        const system = ['CanvasText', 'LinkText', 'ButtonText', 'GrayText', 'HighlightText'].map(
            name => {
                probe.style.color = name;
                return getComputedStyle(probe).color;
            },
        );
        probe.remove();
        return [...document.querySelectorAll('svg text')]
            .filter(text => !system.includes(getComputedStyle(text).fill))
            .map(text => `${text.textContent} ${getComputedStyle(text).fill}`);
    });
}
