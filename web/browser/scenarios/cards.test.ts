import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { axeFindings, axeOfColours } from '../checks/axe';
import { faintTexts } from '../checks/contrast';
import { cutTexts, overlappingTexts } from '../checks/layout';
import { CommandLine, numbersAgainst } from '../checks/numbers';
import { inBay } from '../harness/bay';
import { Folder } from '../harness/folder';
import { Hand } from '../harness/hand';
import { run } from '../harness/program';
import { shoot } from '../harness/shots';

/** A card may be computed on a machine that has other work. */
const patience = { timeout: 90_000 };

function row(page: Page, card: string): Locator {
    return page.locator(`.card-row[data-card="${card}"]`);
}

function step(page: Page, card: string): Locator {
    return page.locator('.card-step', { has: row(page, card) });
}

async function cards(page: Page): Promise<Record<string, string>> {
    const rows = await page.locator('.card-row').all();
    const states = await Promise.all(
        rows.map(async one => [
            (await one.getAttribute('data-card')) ?? '',
            await one.locator('.card-state strong').innerText(),
        ]),
    );
    return Object.fromEntries(states) as Record<string, string>;
}

async function opened(page: Page, card: string): Promise<void> {
    await row(page, card).click();
    await step(page, card).locator('.picture.card').waitFor(patience);
}

async function stateIs(page: Page, card: string, state: string): Promise<void> {
    await page
        .locator(`.trials:not(.old) .card-step.${state} .card-row[data-card="${card}"]`)
        .waitFor(patience);
}

/** A copy of an example with passes on record, written by the command line. */
async function tested(example: string, ...passed: string[]): Promise<Folder> {
    const folder = Folder.of(example);
    for (const card of passed) {
        await run('card', 'pass', folder.path, card, '--by', 'A. Nobody', '--clean-runs', '10');
    }
    return folder;
}

test('by pointer a card is opened, read, printed, and what came of it recorded', () =>
    inBay('curlew', async ({ folder, visit: { page } }) => {
        const hand = new Hand(page);
        await hand.open('trials');
        await hand.answered();
        expect(await cards(page)).toMatchObject({ mass: 'open', centre: 'closed' });
        await opened(page, 'mass');
        const card = step(page, 'mass').locator('.open-card');
        for (const form of ['PDF', 'HTML']) {
            const [file] = await Promise.all([
                page.waitForEvent('download', patience),
                hand.press(`Save as ${form}`, card),
            ]);
            expect(file.suggestedFilename()).toBe(`mass-a4.${form.toLowerCase()}`);
            const kept = path.join(folder.path, `printed.${form}`);
            await file.saveAs(kept);
            const begins = readFileSync(kept, 'latin1').slice(0, 5);
            expect(begins).toMatch(form === 'PDF' ? /^%PDF-/ : /^<!/);
        }
        await card.getByText('Record what came of it').click();
        const form = card.getByRole('form');
        await hand.choose('What came of it', 'passed', form);
        await hand.fill('Who did it', 'A. Nobody', form);
        await hand.fill('Clean runs in a row', '3', form);
        await hand.press('Record it', form);
        await form.getByText('Written as number 1').waitFor(patience);
        await stateIs(page, 'mass', 'passed');
        expect(await step(page, 'mass').innerText()).toMatch(/passed \d{4}-\d\d-\d\d/);
        await stateIs(page, 'centre', 'open');
        expect(folder.read('rig.passes/0001.yaml')).toContain('A. Nobody');
        const told = JSON.parse(await run('card', folder.path, '--json')) as object;
        expect(JSON.stringify(told)).toContain('"text":"passed"');
        await shoot(page, 'cards-recorded');
    }));

test('by keys alone a card is found, opened, read, and left by the way that proves it', () =>
    inBay('curlew', async ({ visit: { page } }) => {
        const hand = new Hand(page);
        await hand.nominal();
        await page.keyboard.press('Alt+8');
        await hand.answered();
        const at = () => page.evaluate(() => document.activeElement?.getAttribute('data-card'));
        for (let i = 0; i < 60 && (await at()) === null; i++) await page.keyboard.press('Tab');
        expect(await at()).not.toBeNull();
        const all = Object.keys(await cards(page));
        await page.keyboard.press('Home');
        for (const card of all) {
            expect(await at()).toBe(card);
            await page.keyboard.press('ArrowDown');
        }
        expect(await at()).toBe(all.at(-1));
        await page.keyboard.press('Enter');
        const last = step(page, all.at(-1) ?? '');
        await last.locator('.reproof li').first().waitFor(patience);
        const first = await last.locator('.reproof li button').first().innerText();
        await page.keyboard.press('Tab');
        await page.keyboard.press('Tab');
        // In the cheapest set, or the button that stops the card: the set is first where it is drawn.
        for (let i = 0; i < 6 && !(await within(last.locator('.reproof li button').first())); i++) {
            await page.keyboard.press(i < 3 ? 'Shift+Tab' : 'Tab');
        }
        expect(await within(last.locator('.reproof li button').first())).toBe(true);
        await page.keyboard.press('Enter');
        const led = await at();
        expect(await row(page, led ?? '').innerText()).toContain(first);
        expect(await row(page, led ?? '').getAttribute('aria-expanded')).toBe('true');
        await page.keyboard.press('Enter');
        expect(await row(page, led ?? '').getAttribute('aria-expanded')).toBe('false');
    }));

function within(element: Locator): Promise<boolean> {
    return element.evaluate(one => one === document.activeElement);
}

test('a moved pack voids at once what rests on places, from what to what, and undo brings it back', async () => {
    const folder = await tested('curlew', 'mass', 'centre', 'throttle');
    await inBay(folder, async ({ visit: { page } }) => {
        const hand = new Hand(page);
        await hand.open('trials');
        await hand.answered();
        for (const card of ['mass', 'centre', 'throttle']) await stateIs(page, card, 'passed');
        await hand.menu(/Show the file as outline/);
        const packs = hand.file.locator('details', {
            has: page.locator('> summary', { hasText: /^packs/ }),
        });
        for (const inner of [1, 2]) await packs.locator('summary').nth(inner).click(); // one pack, its place
        const up = packs.getByLabel('up', { exact: true });
        expect(await up.inputValue()).toBe('60 mm');
        await up.fill('90 mm');
        await up.press('Enter');
        await stateIs(page, 'centre', 'voided');
        await stateIs(page, 'mass', 'passed');
        await stateIs(page, 'throttle', 'passed');
        await page.getByText('not saved to the file yet').waitFor();
        const why = await step(page, 'centre').locator('.voidings').first().innerText();
        expect(why).toMatch(/^packs\/p\.1\/at\/.*: from .*0\.06 m to .*0\.09 m/);
        await shoot(page, 'cards-voided');
        await page.getByRole('button', { name: 'Undo' }).click();
        await stateIs(page, 'centre', 'passed');
        expect(await page.locator('.voidings').count()).toBe(0);
    });
});

test('every number of the way and of a card is the command line’s', async () => {
    const folder = await tested('curlew', 'mass', 'cells.C80');
    await inBay(folder, async ({ visit: { page } }) => {
        const lines = await Promise.all([
            run('card', folder.path, '--json'),
            run('card', 'status', folder.path, '--for', 'first-spin.F140', '--json'),
            run('card', folder.path, 'first-spin.F140', '--json'),
        ]);
        const commandLine = CommandLine.told(lines);
        const hand = new Hand(page);
        await hand.open('trials');
        await hand.answered();
        const way = await numbersAgainst(page, commandLine);
        expect(way.strange).toEqual([]);
        expect(way.shown.length).toBeGreaterThan(10);
        await opened(page, 'first-spin.F140');
        const card = await numbersAgainst(page, commandLine);
        expect(card.strange).toEqual([]);
        expect(card.shown.length).toBeGreaterThan(way.shown.length + 30);
        expect(card.shown.filter(one => one.low !== undefined).length).toBeGreaterThan(5);
        // One digit off, and it is seen.
        await page.evaluate(() => {
            const number = document.querySelector('.open-card [data-si]');
            const si = Number(number?.getAttribute('data-si'));
            number?.setAttribute('data-si', String(si * (1 + 1e-9) + 1e-12));
        });
        expect((await numbersAgainst(page, commandLine)).strange).toHaveLength(1);
    });
});

test('an open card and its form are clean for axe, apart, whole and dark enough, in light and dark', async () => {
    const folder = await tested('mudlark', 'mass');
    await inBay(folder, async ({ visit: { page } }) => {
        const hand = new Hand(page);
        await hand.open('trials');
        await hand.answered();
        await opened(page, 'first-spin.F140');
        await page.getByText('Record what came of it').click();
        for (const theme of ['light', 'dark'] as const) {
            await page.emulateMedia({ colorScheme: theme });
            await page.setViewportSize({ width: 1280, height: 9000 });
            const axe = theme === 'light' ? axeFindings : axeOfColours;
            expect(await axe(page), theme).toEqual([]);
            expect(await faintTexts(page), theme).toEqual([]);
            // A theme moves nothing: the small screens are looked at in one.
            for (const width of theme === 'light' ? [1280, 1024, 800] : [1280]) {
                await page.setViewportSize({ width, height: 9000 });
                expect(await overlappingTexts(page), `on one another, ${width}`).toEqual([]);
                expect((await cutTexts(page)).slice(0, 9), `cut off, ${width}`).toEqual([]);
            }
            await page.setViewportSize({ width: 1280, height: 720 });
            await row(page, 'first-spin.F140').scrollIntoViewIfNeeded();
            await shoot(page, `cards-open-${theme}`);
            await shoot(page, `cards-open-${theme}-whole`, true);
        }
    });
});
