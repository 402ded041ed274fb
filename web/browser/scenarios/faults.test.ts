import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { AnswerDocument, Cases, Matrix } from '../../src/core/wire';
import { CommandLine, numbersAgainst } from '../checks/numbers';
import { inBay } from '../harness/bay';
import { Hand } from '../harness/hand';
import { shoot } from '../harness/shots';

async function inFailures(page: Page): Promise<Hand> {
    const hand = new Hand(page);
    await hand.rung('failures').waitFor();
    await page.keyboard.press('Alt+5');
    await hand.failed();
    return hand;
}

async function inRestraint(page: Page): Promise<Hand> {
    const hand = new Hand(page);
    await hand.rung('restraint').waitFor();
    await page.keyboard.press('Alt+6');
    await hand.whole();
    return hand;
}

/** The row of the matrix that has the focus. */
function focused(page: Page): Promise<string> {
    return page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '');
}

describe('failures', () => {
    test('every number is the command line’s, and each line that keys choose is played', () =>
        inBay('sandpiper', async ({ folder, visit: { page } }) => {
            const commandLine = await CommandLine.of(folder.path, 'failures');
            const [document] = commandLine.documents as [AnswerDocument];
            const { sections } = document.answer;
            const matrix = sections.find((each): each is Matrix => each.kind === 'matrix');
            const cases = sections.find((each): each is Cases => each.kind === 'cases');
            if (matrix === undefined || cases === undefined) throw new Error('nothing fails');
            const hand = await inFailures(page);
            await hand.whole();
            for (const fold of await hand.sheet.locator('summary').all()) {
                await fold.click();
            }
            expect((await numbersAgainst(page, commandLine)).strange).toEqual([]);
            for (const turn of await hand.sheet.getByRole('button', { name: 'as a table' }).all()) {
                await turn.click();
            }
            const tables = await numbersAgainst(page, commandLine);
            expect(tables.strange).toEqual([]);
            expect(tables.shown.filter(one => one.low !== undefined).length).toBeGreaterThan(9);
            for (const turn of await hand.sheet.getByRole('button', { name: 'as a table' }).all()) {
                await turn.click();
            }
            const played = matrix.lines
                .map(line => `${line.part}, ${line.what}`)
                .map((name, row) => ({
                    row,
                    name,
                    one: cases.cases.find(each => each.label === name),
                }))
                .filter(({ row, one }) => row < 16 && one !== undefined);
            expect(played.length).toBeGreaterThan(1);
            await hand.sheet.locator('figure.matrix .row-ground').first().focus();
            await page.keyboard.press('Home');
            let at = 0;
            for (const { row, name, one } of played.slice(0, 3)) {
                for (; at < row; at++) await page.keyboard.press('ArrowDown');
                expect(await focused(page)).toContain(name);
                await page.keyboard.press('Enter');
                const outcome = hand.sheet.locator('.case-outcome');
                await expect.poll(() => outcome.innerText()).toBe(`${name}: ${one?.outcome ?? ''}`);
                const lost = await hand.sheet
                    .locator('figure.cases [data-lost="true"]')
                    .evaluateAll(all => all.map(each => each.getAttribute('data-part')));
                expect(lost.sort()).toEqual(
                    cases.spots
                        .filter((_, k) => one?.lost[k])
                        .map(spot => spot.part)
                        .sort(),
                );
            }
            await shoot(page, 'failures-played');
        }));

    test('the drawn rig is stepped through by its own buttons, and the matrix follows', () =>
        inBay('sandpiper', async ({ visit: { page } }) => {
            const hand = await inFailures(page);
            const outcome = hand.sheet.locator('.case-outcome strong');
            const first = await outcome.innerText();
            await hand.press('next', hand.sheet);
            await expect.poll(() => outcome.innerText()).not.toBe(first);
            const name = await outcome.innerText();
            const chosen = hand.sheet.locator('figure.matrix .row-ground[aria-pressed="true"]');
            expect(await chosen.getAttribute('aria-label')).toContain(name);
        }));
});

describe('restraint', () => {
    test('every number of drawing, loads and tables is the command line’s', () =>
        inBay('sandpiper', async ({ folder, visit: { page } }) => {
            const commandLine = await CommandLine.of(folder.path, 'restraint');
            const hand = await inRestraint(page);
            const view = hand.sheet.locator('figure.elevation');
            expect(await view.locator('ol.loads li').count()).toBeGreaterThan(1);
            for (const fold of await hand.sheet.locator('summary').all()) {
                await fold.click();
            }
            expect((await numbersAgainst(page, commandLine)).strange).toEqual([]);
            await view.getByRole('button', { name: 'as a table' }).focus();
            await page.keyboard.press('t');
            await view.getByRole('table').first().waitFor();
            expect(await view.getByRole('table').count()).toBe(2);
            const tables = await numbersAgainst(page, commandLine);
            expect(tables.strange).toEqual([]);
            await page.keyboard.press('t');
            await shoot(page, 'restraint-drawn');
        }));
});
