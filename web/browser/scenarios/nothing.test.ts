import { expect, test } from 'vitest';
import { inBay } from '../harness/bay';
import { Folder } from '../harness/folder';
import { Hand } from '../harness/hand';
import { shoot } from '../harness/shots';

test('from an empty folder a rig of twelve fans of one’s own, in at most sixty actions', () =>
    inBay(new Folder(), async ({ folder, visit: { page } }) => {
        const hand = new Hand(page);
        await page.getByRole('heading', { name: 'A rig from nothing' }).waitFor();
        await page.getByRole('button', { name: 'Make this rig' }).waitFor();
        await shoot(page, 'guide');
        const fields = await hand.sheet.locator('.field label').allInnerTexts();
        expect(fields.length).toBeGreaterThan(5);
        console.info(fields.join('\n'));
        await hand.press('Make this rig');
        await hand.answered();
        await hand.open('balance');
        await hand.answered();
        expect(
            await hand
                .view('behind')
                .getByRole('button', { name: /, fan,/ })
                .count(),
        ).toBe(12);
        await shoot(page, 'from-nothing');
        expect(hand.actions).toBeLessThanOrEqual(60);
        expect(folder.read('rig.yaml')).toContain('liftwright: 1');
    }));
