import { expect, test } from 'vitest';
import { inBay } from '../harness/bay';
import { Hand } from '../harness/hand';
import { shoot } from '../harness/shots';

test('the solid view opens, turns by key, and is a table where it is asked for', () =>
    inBay(
        'mudlark',
        async ({ visit: { page } }) => {
            const hand = new Hand(page);
            await hand.allAnswered();
            await shoot(page, 'readme-lift');
            await hand.open('balance');
            await hand.allAnswered();
            await shoot(page, 'readme-balance');
            await hand.press('Turn the rig in 3D');
            const canvas = hand.sheet.locator('figure canvas').first();
            await canvas.waitFor();
            await canvas.scrollIntoViewIfNeeded();
            await page.waitForTimeout(500);
            const before = await canvas.screenshot();
            const box = await canvas.boundingBox();
            expect(box).not.toBeNull();
            if (box !== null) {
                await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
                await page.mouse.down();
                await page.mouse.move(box.x + box.width / 2 + 80, box.y + box.height / 2, {
                    steps: 4,
                });
                await page.mouse.up();
            }
            await page.waitForTimeout(500);
            const after = await canvas.screenshot();
            await shoot(page, 'solid');
            expect(after.equals(before)).toBe(false);
        },
        { width: 1280, height: 900 },
    ));
