import { expect, test } from 'vitest';
import { walkByTab } from '../checks/focus';
import { inBay } from '../harness/bay';
import { Hand, questions } from '../harness/hand';

test('Tab reaches everything, shows where it is, and leaves again', () =>
    inBay('mudlark', async ({ visit: { page } }) => {
        const hand = new Hand(page);
        for (const question of questions) {
            await hand.open(question);
            await hand.answered();
            const walk = await walkByTab(page);
            expect.soft(walk.faults, question).toEqual([]);
            const stops = walk.stops.join('\n');
            const missing = [
                'Save',
                'Undo',
                'Menu',
                'Will it lift',
                // A rig that a person steers is not flown: there is no picture to save.
                { flight: '', trials: 'weigh the parts', learning: 'Read in a log' }[
                    question as string
                ] ?? 'save ',
                'Text of the rig file',
            ].filter(wanted => !stops.includes(wanted));
            expect.soft(missing, `${question}, of ${walk.stops.length} stops`).toEqual([]);
        }
    }));

test('a fan is moved, kept, taken back and saved by keys alone', () =>
    inBay('mudlark', async ({ folder, visit: { page } }) => {
        const before = folder.read('rig.yaml');
        const hand = new Hand(page);
        await hand.banded();
        await page.keyboard.press('Alt+4');
        await hand.banded();
        const fan = hand.part('back-top.1', 'behind');
        for (let i = 0; i < 80 && !(await within(fan)); i++) {
            await page.keyboard.press('Tab');
            // Once inside a view, its own keys walk from part to part.
            if (await hand.view('behind').evaluate(view => view.contains(document.activeElement))) {
                await page.keyboard.press('Home');
                for (let k = 0; k < 60 && !(await within(fan)); k++) {
                    await page.keyboard.press('PageDown');
                }
            }
        }
        expect(await within(fan)).toBe(true);
        await page.keyboard.press('Shift+ArrowLeft');
        await page.keyboard.press('Enter');
        await hand.changed();
        await page.keyboard.press('Control+s');
        await page.getByText('saved', { exact: true }).waitFor();
        expect(folder.read('rig.yaml')).not.toBe(before);
        await page.keyboard.press('Control+z');
        await hand.changed();
        await page.keyboard.press('Control+s');
        await page.getByText('saved', { exact: true }).waitFor();
        expect(folder.read('rig.yaml')).toBe(before);
    }));

function within(fan: ReturnType<Hand['part']>): Promise<boolean> {
    return fan.evaluate(element => element === document.activeElement);
}
