import { expect, test } from 'vitest';
import { inBay } from '../harness/bay';
import { Hand } from '../harness/hand';

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
