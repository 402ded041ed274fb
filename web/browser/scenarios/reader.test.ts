import { expect, test } from 'vitest';
import { readingFaults } from '../checks/reading';
import { inBay } from '../harness/bay';
import { Hand, questions } from '../harness/hand';

test('every rung has landmarks, headings in order and names for who hears it, and so have search and a formula', () =>
    inBay('sandpiper', async ({ visit: { page } }) => {
        const hand = new Hand(page);
        for (const question of questions) {
            await hand.open(question);
            await hand.nominal();
            expect.soft(await readingFaults(page), question).toEqual([]);
        }
        await hand.open('lift');
        const button = page.getByRole('button', { name: 'Search' });
        await button.press('Enter');
        const box = page.getByRole('combobox', { name: /^Search parts/ });
        await box.fill('usable lift');
        expect(await page.getByRole('dialog', { name: 'Search' }).ariaSnapshot()).toMatch(
            /- combobox "Search parts.*[^]*- status: \d+ found[^]*- listbox "Found":/,
        );
        await page.keyboard.press('Escape');
        // The focus comes back to what opened it.
        await expect
            .poll(() => button.evaluate(element => element === document.activeElement))
            .toBe(true);
        // What is wrong is found: the check itself can fail.
        await page.evaluate(() => {
            const main = document.querySelector('main');
            const bad = document.createElement('div');
            bad.append(
                document.createElement('button'),
                document.createElement('h1'),
                document.createElement('h6'),
                document.createElement('figure'),
            );
            const [, one, six, figure] = bad.children;
            if (one && six) one.textContent = six.textContent = 'wrong';
            figure?.append(document.createElement('canvas'));
            main?.append(bad);
            document.querySelector('.ladder')?.setAttribute('aria-label', 'else');
        });
        const faults = (await readingFaults(page)).join('\n');
        for (const wanted of [
            'without a name: - button',
            'level 6 after',
            'not one heading of level 1',
            'without a table',
            'no landmark',
        ]) {
            expect.soft(faults).toContain(wanted);
        }
    }));
