import { expect, test } from 'vitest';
import { CommandLine, numbersAgainst } from '../checks/numbers';
import { inBay } from '../harness/bay';
import { Hand, questions } from '../harness/hand';

test('every number in every picture and table is the command line’s, and a picture on a canvas is also a table', () =>
    inBay('mudlark', async ({ folder, visit: { page } }) => {
        // Heat and failures to their end take long on a large rig: their numbers are met on smaller ones.
        // Flights and trials have verbs of their own, and tests of their own.
        const quick = questions.filter(
            each => !['heat', 'failures', 'flight', 'trials', 'learning'].includes(each),
        );
        const commandLine = await CommandLine.of(folder.path, ...quick);
        const hand = new Hand(page);
        for (const question of quick) {
            await hand.open(question);
            await hand.answered();
            for (const fold of await hand.sheet.locator('summary').all()) {
                await fold.click();
            }
            const drawn = await numbersAgainst(page, commandLine);
            expect(drawn.strange, `${question}, drawn`).toEqual([]);
            const painted = await hand.sheet
                .locator('figure', { has: page.locator('canvas') })
                .elementHandles();
            if (question === 'endurance') expect(painted.length).toBeGreaterThan(0);
            for (const turn of await hand.sheet.getByRole('button', { name: 'as a table' }).all()) {
                await turn.click();
            }
            for (const figure of painted) {
                await figure.waitForSelector('table');
                expect((await figure.$$('table tr')).length).toBeGreaterThan(3);
            }
            const { shown, strange } = await numbersAgainst(page, commandLine);
            expect(strange, `${question}, as tables`).toEqual([]);
            expect(shown.length).toBeGreaterThan(30);
            expect(shown.filter(one => one.low !== undefined).length).toBeGreaterThan(1);
        }
        // One digit off, and it is seen.
        await page.evaluate(() => {
            const number = document.querySelector('main [data-si]');
            const si = Number(number?.getAttribute('data-si'));
            number?.setAttribute('data-si', String(si * (1 + 1e-9) + 1e-12));
        });
        expect((await numbersAgainst(page, commandLine)).strange).toHaveLength(1);
    }));
