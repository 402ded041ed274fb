import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { AnswerDocument, Playback } from '../../src/core/wire';
import { CommandLine, numbersAgainst } from '../checks/numbers';
import { inBay } from '../harness/bay';
import { Hand } from '../harness/hand';
import { shoot } from '../harness/shots';

async function inHeat(page: Page): Promise<Hand> {
    const hand = new Hand(page);
    await hand.rung('heat').waitFor();
    await page.keyboard.press('Alt+3');
    await hand.warmed();
    return hand;
}

function slider(hand: Hand) {
    return hand.sheet.getByRole('slider');
}

/** Value and limit of each part that is listed, SI, by its name. */
function listed(hand: Hand): Promise<[string, number, number][]> {
    return hand.sheet.locator('.ahead li').evaluateAll(rows =>
        rows.map(row => {
            const [value, limit] = [...row.querySelectorAll('[data-si]')].map(each =>
                Number(each.getAttribute('data-si')),
            );
            return [row.querySelector('button')?.textContent ?? '', value ?? NaN, limit ?? NaN];
        }),
    );
}

test('every number of the answer, and of each moment that keys or the pointer choose, is the command line’s', () =>
    inBay('sandpiper', async ({ folder, visit: { page } }) => {
        const commandLine = await CommandLine.of(folder.path, 'heat');
        const [document] = commandLine.documents as [AnswerDocument];
        const played = document.answer.sections.find(
            (each): each is Playback => each.kind === 'playback',
        );
        if (played === undefined) throw new Error('nothing is played');
        const hand = await inHeat(page);
        await hand.whole();
        for (const fold of await hand.sheet.locator('summary').all()) {
            await fold.click();
        }
        const all = await numbersAgainst(page, commandLine);
        expect(all.strange).toEqual([]);
        expect(all.shown.filter(one => one.low !== undefined).length).toBeGreaterThan(1);
        await slider(hand).focus();
        const last = played.times.length - 1;
        const told = async (moment: number, by: string): Promise<void> => {
            const at = Number(await slider(hand).inputValue());
            expect(at).toBeCloseTo(played.times[moment] ?? NaN, 9);
            const rows = await listed(hand);
            expect(rows.length).toBeGreaterThan(2);
            for (const [name, value, limit] of rows) {
                const track = played.tracks.find(each => `${each.part}, ${each.kind}` === name);
                expect([value, limit], `${name} ${by}`).toEqual([
                    track?.values[moment],
                    track?.limit,
                ]);
            }
        };
        const moments: [string, number][] = [
            ['Home', 0],
            ['ArrowRight', 1],
            ['End', last],
            ['ArrowLeft', last - 1],
        ];
        for (const [key, moment] of moments) {
            await page.keyboard.press(key);
            await told(moment, `after ${key}`);
            const rows = await listed(hand);
            // What a reader of the screen hears is what stands there.
            const heard = (await slider(hand).getAttribute('aria-valuetext')) ?? '';
            expect(heard).toContain(await hand.sheet.locator('.player output').innerText());
            expect(heard).toContain(rows[0]?.[0] ?? 'nothing');
        }
        // By pointer: drawn from where it stands to the left end, which is the first moment.
        const box = await slider(hand).boundingBox();
        if (box === null) throw new Error('no slider');
        const y = box.y + box.height / 2;
        await page.mouse.move(box.x + box.width / 2, y);
        await page.mouse.down();
        const half = Number(await slider(hand).inputValue());
        expect(half).toBeGreaterThan(0.4 * (played.times[last] ?? NaN));
        expect(half).toBeLessThan(0.6 * (played.times[last] ?? NaN));
        await page.mouse.move(box.x + 1, y, { steps: 4 });
        await page.mouse.up();
        await told(0, 'by pointer');
    }));

test('it plays where it is asked to, and rests without a stroke', () =>
    inBay('sandpiper', async ({ visit: { page } }) => {
        const hand = await inHeat(page);
        await hand.whole(); // what comes in later is drawn
        await hand.press('play', hand.sheet);
        await page.waitForFunction(() => {
            const at = document.querySelector<HTMLInputElement>('main input[type=range]');
            return Number(at?.value) > 2;
        });
        await hand.press('pause', hand.sheet);
        await page.waitForTimeout(200); // the stroke that was under way
        const strokes = await page.evaluate(async () => {
            let count = 0;
            const watch = new MutationObserver(changes => {
                count += changes.length;
            });
            // Other rungs are still answered beside it.
            const picture = document.querySelector('figure.playback');
            if (picture === null) throw new Error('nothing plays');
            watch.observe(picture, { subtree: true, attributes: true, childList: true });
            await new Promise(done => setTimeout(done, 1000));
            watch.disconnect();
            return count;
        });
        expect(strokes).toBe(0);
        await shoot(page, 'heat-played');
    }));

test('who wants no motion steps through it', () =>
    inBay(
        'sandpiper',
        async ({ visit: { page } }) => {
            const hand = await inHeat(page);
            await hand.press('next moment', hand.sheet);
            expect(await slider(hand).inputValue()).toBe('0');
            await page.waitForTimeout(700);
            expect(await slider(hand).inputValue()).toBe('0');
            await hand.press('next moment', hand.sheet);
            expect(Number(await slider(hand).inputValue())).toBeGreaterThan(0);
        },
        { width: 1280, height: 720, reducedMotion: true },
    ));

describe('the timeline', () => {
    test('is walked by keys, and Enter marks the part in it and on the rig', () =>
        inBay('sandpiper', async ({ visit: { page } }) => {
            const hand = await inHeat(page);
            const rows = hand.sheet.locator('figure.timeline .bar-row .row-ground');
            await rows.first().focus();
            await page.keyboard.press('ArrowDown');
            await page.keyboard.press('Home');
            await page.keyboard.press('Enter');
            await hand.sheet.locator('figure.timeline .bar-row.picked').first().waitFor();
        }));

    test('stands beside the rig where there is room, and above it where there is none', () =>
        inBay(
            'sandpiper',
            async ({ visit: { page } }) => {
                const hand = await inHeat(page);
                await page.keyboard.press('Alt+B'); // the rig file closed
                const top = async (kind: string) =>
                    (await hand.sheet.locator(`figure.${kind}`).boundingBox())?.y ?? NaN;
                await expect
                    .poll(async () => (await top('timeline')) - (await top('playback')))
                    .toBe(0);
                await shoot(page, 'heat-beside');
                await page.setViewportSize({ width: 700, height: 900 });
                await expect
                    .poll(async () => (await top('playback')) - (await top('timeline')))
                    .toBeGreaterThan(100);
            },
            { width: 1600, height: 1000 },
        ));
});

test('the soldering list is saved as a file of every row', () =>
    inBay('sandpiper', async ({ visit: { page } }) => {
        const hand = await inHeat(page);
        await hand.whole();
        await hand.sheet
            .locator('summary', { hasText: /^Soldering list/ })
            .first()
            .click();
        const coming = page.waitForEvent('download');
        await hand.press(/^save Soldering list.* as CSV$/, hand.sheet);
        const parts: Buffer[] = [];
        for await (const part of await (await coming).createReadStream()) {
            parts.push(part as Buffer);
        }
        const lines = Buffer.concat(parts).toString('utf8').trim().split(/\r?\n/);
        const table = hand.sheet.getByRole('table', { name: /^Soldering list/ });
        // A row whose long words stand below it is a body of its own.
        const bodies = await table.locator('tbody').count();
        const rows = bodies > 1 ? bodies : await table.locator('tbody tr').count();
        expect(lines.length - 1).toBe(rows);
        expect(lines.length).toBeGreaterThan(5);
        expect(lines[0]).toMatch(/part.*cut to \[m\].*torque \[N\.m\]/);
    }));
