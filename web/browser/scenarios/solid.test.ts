import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { AnswerDocument, Drawing } from '../../src/core/wire';
import { CommandLine, numbersAgainst } from '../checks/numbers';
import { axeFindings } from '../checks/axe';
import { inBay } from '../harness/bay';
import { Hand } from '../harness/hand';
import { saved, soundModel } from '../harness/saved';
import { shoot } from '../harness/shots';

async function inSpace(page: Page): Promise<{ hand: Hand; figure: Locator; canvas: Locator }> {
    const hand = new Hand(page);
    await hand.open('balance');
    await hand.answered();
    await hand.press('Turn the rig in 3D');
    const figure = hand.sheet.locator('figure.solid');
    const canvas = figure.locator('canvas');
    await canvas.waitFor();
    await canvas.scrollIntoViewIfNeeded();
    await expect.poll(() => canvas.getAttribute('data-frames')).not.toBeNull();
    return { hand, figure, canvas };
}

const GLTF = /^save .* as glTF$/;

/** How far a part has come between two files of the rig: right, up, back, m. */
function wayOf(
    before: Map<string, readonly number[]>,
    after: Map<string, readonly number[]>,
): (part: string) => number[] {
    return part =>
        [0, 1, 2].map(k => (after.get(part)?.[k] ?? NaN) - (before.get(part)?.[k] ?? NaN));
}

/** By keys in the picture alone: from thing to thing, and how far they are apart. */
async function walked(figure: Locator, canvas: Locator): Promise<void> {
    const { keyboard } = canvas.page();
    await canvas.focus();
    const told = figure.locator('.part-words').last();
    await keyboard.press('PageDown');
    const first = await told.textContent();
    await keyboard.press('PageDown');
    expect(await told.textContent()).not.toBe(first);
    await keyboard.press('PageUp');
    expect(await told.textContent()).toBe(first);
    await keyboard.press('d');
    await keyboard.press('PageUp');
    const way = figure.locator('.measure output');
    await expect.poll(async () => Number(await way.getAttribute('data-m'))).toBeGreaterThan(0);
    const whole = Number(await way.getAttribute('data-m'));
    const metres = /^([\d ,.]+) mm: /.exec((await way.textContent()) ?? '')?.[1];
    expect(Number(metres) / 1000).toBeCloseTo(whole, 3);
    await keyboard.press('Escape');
    expect(await way.count()).toBe(0);
}

/** By pointer: two things by name, and one of them by a click where it is drawn. */
async function measured(figure: Locator): Promise<void> {
    await figure.getByLabel('measure', { exact: true }).check();
    const ends = figure.getByRole('group', { name: 'Measure' }).getByRole('combobox');
    await ends.nth(0).selectOption({ index: 1 });
    await ends.nth(1).selectOption({ index: 2 });
    const way = figure.locator('.measure output');
    expect(Number(await way.getAttribute('data-m'))).toBeGreaterThan(0);
    await figure.getByLabel('measure', { exact: true }).uncheck();
}

/** Where the chosen thing is on the page. */
async function chosenAt(canvas: Locator): Promise<{ x: number; y: number }> {
    await canvas.page().waitForTimeout(200);
    const [x = 0, y = 0] = ((await canvas.getAttribute('data-chosen-at')) ?? '')
        .split(' ')
        .map(Number);
    const box = await canvas.boundingBox();
    return { x: x + (box?.x ?? 0), y: y + (box?.y ?? 0) };
}

test('in 3D, by pointer: still at rest, picked, measured, dragged and undone', () =>
    inBay(
        'mudlark',
        async ({ folder, visit: { page } }) => {
            const { hand, figure, canvas } = await inSpace(page);
            await page.waitForTimeout(600);
            const frames = await canvas.getAttribute('data-frames');
            await shoot(page, 'solid-jets');
            await page.waitForTimeout(800);
            expect(await canvas.getAttribute('data-frames'), 'drawn at rest').toBe(frames);
            expect(Number(await canvas.getAttribute('data-calls'))).toBeLessThan(60);

            const thing = figure.getByRole('combobox', { name: 'thing' });
            await figure.getByRole('button', { name: 'from its left side' }).click();
            await thing.selectOption('left.1');
            const spot = await chosenAt(canvas);
            await thing.selectOption('right.2');
            await page.mouse.click(spot.x, spot.y);
            expect(await figure.locator('.part-words').textContent()).toContain('left.1');

            await figure.getByLabel('measure', { exact: true }).check();
            const ends = figure.getByRole('group', { name: 'Measure' }).getByRole('combobox');
            await ends.nth(0).selectOption('left.1');
            await ends.nth(1).selectOption('right.1');
            const told = figure.locator('.measure output');
            const line = await CommandLine.of(folder.path, 'balance');
            const fans = (line.documents as AnswerDocument[])
                .flatMap(document => document.answer.sections)
                .filter((each): each is Drawing => each.kind === 'drawing')
                .flatMap(each => each.layers)
                .filter(layer => layer.id === 'drawn-fans')
                .flatMap(layer => layer.rows);
            const at = (part: string): number[] =>
                fans
                    .filter(row => row[0]?.text === part)
                    .flatMap(row => [2, 3, 4].map(k => row[k]?.si ?? 0));
            const [a, b] = [at('left.1'), at('right.1')];
            const far = Math.hypot(...a.map((value, k) => value - (b[k] ?? 0)));
            expect(Number(await told.getAttribute('data-m'))).toBeCloseTo(far, 9);
            expect(await told.textContent()).toContain(`${(far * 1000).toFixed(0)} mm`);
            await shoot(page, 'solid-measured');
            await figure.getByLabel('measure', { exact: true }).uncheck();
            const numbers = await numbersAgainst(page, line);
            expect(numbers.strange).toEqual([]);

            const model = () => saved(page, () => hand.press(GLTF, figure)).then(soundModel);
            const stood = await model();
            await figure.getByRole('button', { name: 'from above' }).click();
            const from = await chosenAt(canvas);
            await page.mouse.move(from.x, from.y);
            await page.mouse.down();
            await page.mouse.move(from.x + 30, from.y - 20, { steps: 6 });
            await shoot(page, 'solid-dragging');
            await page.mouse.up();
            await hand.changed();
            const way = wayOf(stood, await model());
            const [x = 0, y = 0, z = 0] = way('left.1');
            expect(Math.hypot(x, y, z)).toBeGreaterThan(0.02);
            expect(way('right.1')).toEqual([-x, y, z].map(m => expect.closeTo(m, 9) as number));
            expect(way('left.2')).toEqual([0, 0, 0]);
            const before = folder.read('rig.yaml');
            await hand.save();
            expect(folder.read('rig.yaml')).not.toBe(before);
            const place = /left\.1: \{at: \{([^}]*)\}/.exec(folder.read('rig.yaml'))?.[1] ?? '';
            const written = [...place.matchAll(/(-?\d+(?:\.\d+)?) mm/g)].map(([, mm]) =>
                Number(mm),
            );
            expect(written.length).toBe(3);
            for (const mm of written) expect(mm % 5, `snapped: ${place}`).toBe(0);
            await hand.press(/^Undo/);
            await hand.save();
            expect(folder.read('rig.yaml')).toBe(before);
        },
        { width: 1280, height: 900 },
    ));

test('in 3D, by keyboard alone: views, from thing to thing, moved and put back', () =>
    inBay('sandpiper', async ({ visit: { page } }) => {
        const { hand, figure, canvas } = await inSpace(page);
        const unsaved = page.getByText('not saved to the file yet');
        await canvas.focus();
        const corner = await canvas.screenshot();
        await page.keyboard.press('2');
        await page.waitForTimeout(300);
        expect((await canvas.screenshot()).equals(corner)).toBe(false);
        await page.keyboard.press('PageDown');
        expect(await figure.locator('.part-words').textContent()).toContain('fan');
        await walked(figure, canvas);
        const model = () =>
            saved(page, () => figure.getByRole('button', { name: GLTF }).press('Enter')).then(
                soundModel,
            );
        const stood = await model();
        await canvas.focus();
        await page.keyboard.press('6');
        await page.keyboard.press('m');
        await page.keyboard.press('ArrowUp');
        await page.keyboard.press('ArrowUp');
        await expect.poll(() => figure.locator('.picture-told').textContent()).toContain(':');
        await page.keyboard.press('Escape');
        await page.waitForTimeout(400);
        expect(await unsaved.count()).toBe(0);
        await page.keyboard.press('m');
        await page.keyboard.press('ArrowUp');
        await page.keyboard.press('Enter');
        await hand.changed();
        // A step of 5 mm forward, to a number that reads well in the file.
        const way = wayOf(stood, await model());
        const [x = 0, y = 0, z = 0] = way('corner.1');
        expect(Math.abs(z + 0.005)).toBeLessThan(0.001);
        expect(way('corner.4')).toEqual([-x, y, z].map(m => expect.closeTo(m, 9) as number));
        expect(way('corner.2')).toEqual([0, 0, 0]);
        expect(await axeFindings(page)).toEqual([]);
    }));

test('heat in 3D: played by slider and keys, a run picked, still at rest', () =>
    inBay('curlew', async ({ visit: { page } }) => {
        const hand = new Hand(page);
        await hand.open('heat');
        await hand.warmed();
        const figure = hand.sheet.locator('figure.playback');
        await figure.getByRole('button', { name: /in 3D$/ }).press('Enter');
        const canvas = figure.locator('canvas');
        await canvas.waitFor();
        await canvas.scrollIntoViewIfNeeded();
        await page.waitForTimeout(500);
        const slider = figure.getByRole('slider', { name: /^moment of .*in 3D$/ });
        await slider.press('Home');
        await page.waitForTimeout(300);
        const cold = await canvas.screenshot();
        await slider.press('End');
        await page.waitForTimeout(300);
        expect((await canvas.screenshot()).equals(cold)).toBe(false);
        const frames = await canvas.getAttribute('data-frames');
        await page.waitForTimeout(700);
        expect(await canvas.getAttribute('data-frames')).toBe(frames);
        await canvas.scrollIntoViewIfNeeded();
        await walked(figure, canvas);
        await measured(figure);
        await shoot(page, 'solid-heat');
        expect(await axeFindings(page)).toEqual([]);
    }));

test('a failure in 3D, and what holds the rig in 3D', () =>
    inBay('curlew', async ({ visit: { page } }) => {
        const hand = new Hand(page);
        await hand.open('restraint');
        await hand.answered();
        for (const [k, figure] of (await hand.sheet.locator('figure.elevation').all()).entries()) {
            await figure.getByRole('button', { name: /in 3D$/ }).click();
            const canvas = figure.locator('canvas');
            await canvas.waitFor();
            await figure.getByRole('button', { name: 'whole zone' }).press('Enter');
            await page.waitForTimeout(500);
            await figure.getByRole('button', { name: 'whole zone' }).press('Enter');
            await canvas.scrollIntoViewIfNeeded();
            await page.waitForTimeout(600);
            if (k === 0) {
                await walked(figure, canvas);
                await measured(figure);
            }
            await shoot(page, `solid-held-${k + 1}`);
        }
        await hand.open('failures');
        await hand.failed();
        const figure = hand.sheet.locator('figure.cases');
        await figure.getByRole('button', { name: /in 3D$/ }).click();
        const canvas = figure.locator('canvas');
        await canvas.waitFor();
        await page.waitForTimeout(500);
        const first = await canvas.screenshot();
        // Two failures may leave the same; one that loses something else does not.
        const ahead = figure.locator('.ahead');
        const before = await ahead.textContent();
        for (let k = 0; k < 20 && (await ahead.textContent()) === before; k++) {
            await figure.getByRole('button', { name: 'next' }).press('Enter');
        }
        await page.waitForTimeout(400);
        expect((await canvas.screenshot()).equals(first)).toBe(false);
        await canvas.scrollIntoViewIfNeeded();
        await walked(figure, canvas);
        await measured(figure);
        await shoot(page, 'solid-failure');
        expect(await axeFindings(page)).toEqual([]);
    }));
