import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { inBay } from '../harness/bay';
import { Folder } from '../harness/folder';
import { Hand } from '../harness/hand';
import { run } from '../harness/program';

/*
 * Every journey is gone once by pointer and once by keyboard alone. Where each is:
 *
 *                                   by pointer                         by keyboard alone
 *   fixed views, picking            solid: by pointer                  solid: by keyboard alone
 *   dragging with snap and twin     solid: by pointer                  solid: by keyboard alone; keyboard: a fan is moved
 *   measuring between two things    solid: all four tests              solid: all four tests (D, Page Up, Page Down)
 *   heat played                     heat: every moment; plays          heat: every moment that keys choose; solid: heat in 3D
 *   failures played                 faults: its own buttons            faults: each line that keys choose; solid: a failure
 *   flights played                  jobs: by pointer flights           jobs: by keys alone flights
 *   glTF saved                      solid: by pointer                  solid: by keyboard alone (both by the format's validator)
 *   compared with its saved file    compare: by pointer                compare: by keys alone
 *   compared with another file,
 *     with the rig of a test        below                              below
 *   a slider kept                   compare: by pointer                below
 *   a slider let go                 below                              compare: by keys alone
 *   search                          below                              compare: by keys alone
 *   formula, source, test           compare: by pointer                below (head of a column); compare (search)
 *   long work begun, stopped,
 *     taken up, left, found again   jobs: by pointer flights, losses   jobs: by keys alone losses
 *   a test explained without the
 *     page, stopped, taken up       why: by pointer                    why: by keys alone
 *   a log read in                   why: by pointer                    why: by keys alone
 *   cards                           cards: by pointer                  cards: by keys alone
 */

/** The machine may have other work. */
const patience = { timeout: 120_000 };

/** Curlew with a revision beside it and a test that was made before its mass was changed. */
async function folder(): Promise<Folder> {
    const folder = Folder.of('curlew');
    const rig = folder.read('rig.yaml');
    const before = rig.replace('mass: 165 g', 'mass: 160 g');
    expect(before).not.toBe(rig);
    folder.write('rig.yaml', before);
    const rows = Array.from({ length: 200 }, (_, k) => `${k * 0.1},${k < 100 ? 20 : 40},${k}`);
    folder.write('scale.csv', ['time [s],throttle [%],thrust [N]', ...rows, ''].join('\n'));
    const at = (name: string): string => `${folder.path}/${name}`;
    await run('log', 'add', at('rig.yaml'), at('scale.csv'), '--date', '2026-03-14');
    folder.write('rig.yaml', rig);
    folder.write('lighter.yaml', rig.replace('mass: 165 g', 'mass: 150 g'));
    return folder;
}

async function tabTo(page: Page, to: Locator): Promise<void> {
    for (let k = 0; k < 250; k++) {
        if (await to.evaluate(element => element === document.activeElement)) return;
        await page.keyboard.press('Tab');
    }
    throw new Error('Tab does not reach it');
}

/** One place of the file has changed, and the difference of the answers has its band. */
async function compared(page: Page, with_: string): Promise<void> {
    await page.locator('.compare .verdict').waitFor(patience);
    await page.waitForFunction(
        words => document.querySelector('.compare')?.textContent.includes(words),
        with_,
        patience,
    );
    const changed = page.getByRole('table', { name: 'What changed in the file' });
    expect(await changed.locator('tbody tr').count()).toBe(1);
    expect(await changed.innerText()).toContain(with_);
    expect(await page.locator('.compare [data-low]').count()).toBeGreaterThan(0);
}

test(
    'compared with another file and with the rig of a test, a slider kept and one let go, search',
    async () =>
        inBay(await folder(), async ({ visit: { page } }) => {
            const hand = new Hand(page);
            await hand.open('learning');
            await page.locator('[data-test="2026-03-14-1"]').waitFor(patience);
            await hand.open('lift');
            await hand.whole();
            const choice = page.getByLabel('The rig as it stands, against');
            const start = page.getByRole('button', { name: 'Compare lift' });

            // By pointer.
            await hand.menu(/^Compare with another revision/);
            await choice.selectOption({ label: 'lighter.yaml' });
            await start.click();
            await compared(page, '150 g');
            await choice.selectOption({ label: 'the rig of test 2026-03-14-1' });
            await start.click();
            await compared(page, '160 g');
            await hand.press('Back to the question');

            // By keys.
            await page.keyboard.press('Alt+c');
            await tabTo(page, choice);
            await page.keyboard.type('light');
            await tabTo(page, start);
            await page.keyboard.press('Enter');
            await compared(page, '150 g');
            await choice.focus();
            await page.keyboard.type('the rig');
            await tabTo(page, start);
            await page.keyboard.press('Enter');
            await compared(page, '160 g');
            await tabTo(page, page.getByRole('button', { name: 'Back to the question' }));
            await page.keyboard.press('Enter');

            // A slider let go by pointer, kept by keys.
            await hand.press('Find what moves this verdict most');
            const slider = page.getByRole('slider').first();
            await slider.waitFor(patience);
            const box = await slider.boundingBox();
            if (box === null) throw new Error('no slider');
            await page.mouse.click(box.x + box.width - 3, box.y + box.height / 2);
            const tried = page.getByRole('region', { name: 'Tried, not kept' });
            await tried.getByText('With it:').waitFor(patience);
            await hand.press('Let it go', tried);
            await tried.waitFor({ state: 'hidden' });
            await page.keyboard.press('Alt+1');
            await tabTo(page, slider);
            await page.keyboard.press('ArrowLeft');
            await tried.getByText('With it:').waitFor(patience);
            await page.keyboard.press('Alt+1');
            await tabTo(page, tried.getByRole('button', { name: 'Keep' }));
            await page.keyboard.press('Enter');
            await page.getByText('not saved to the file yet').waitFor();

            // Search by pointer: a number by a word of its formula, a part to its place in the file.
            await hand.press('Search');
            const box2 = page.getByRole('combobox', { name: /^Search parts/ });
            await box2.fill('usable lift PlantAgainstRefereeTest');
            const found = page.getByRole('listbox', { name: 'Found' }).getByRole('option');
            await found.first().click();
            const formula = page.getByRole('dialog');
            await formula.getByText(/PlantAgainstRefereeTest/).waitFor();
            await hand.press('Close', formula);
            await hand.press('Search');
            await box2.fill('fan.3');
            await found
                .filter({ hasText: /^part\s*fan\.3\b/ })
                .first()
                .click();
            await page.getByRole('dialog').waitFor({ state: 'hidden' });

            // A number's formula by keys, from the head of its column; the focus comes back to it.
            const fold = hand.sheet.locator('.numbers summary').first();
            await fold.press('Enter');
            const head = hand.sheet.locator('.numbers .field-name').first();
            await head.press('Enter');
            await formula.getByText('formula').waitFor();
            await page.keyboard.press('Escape');
            await expect
                .poll(() => head.evaluate(element => element === document.activeElement))
                .toBe(true);
        }),
    400_000,
);
