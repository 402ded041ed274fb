import { expect, test } from 'vitest';
import { axeFindings } from '../checks/axe';
import { cutTexts, overlappingTexts } from '../checks/layout';
import { inBay } from '../harness/bay';
import { Hand } from '../harness/hand';
import { shoot } from '../harness/shots';

/** A rig is flown a dozen times, on a machine that has other work. */
const patience = { timeout: 240_000 };

test(
    'a rig is flown when its rung is opened, and another profile when that is chosen by keys',
    () =>
        inBay('curlew', async ({ visit: { page } }) => {
            const hand = new Hand(page);
            await hand.open('flight');
            await page.locator('#sheet .strip-canvas').first().waitFor(patience);
            const choice = page.getByLabel('Profile');
            const names = await choice.locator('option').allInnerTexts();
            expect(names.length).toBeGreaterThan(1);
            const first = await page.locator('#sheet .verdict').innerText();
            await choice.focus();
            await page.keyboard.press('End');
            expect(await choice.inputValue()).toBe(names.at(-1));
            await page.waitForFunction(
                before => {
                    const now = document.querySelector('#sheet .verdict');
                    return now !== null && now.textContent !== '' && now.textContent !== before;
                },
                first,
                patience,
            );
            await page.locator('#sheet .strip-canvas').first().waitFor(patience);
            expect(await axeFindings(page)).toEqual([]);
            expect(await overlappingTexts(page)).toEqual([]);
            expect(await cutTexts(page)).toEqual([]);
            await shoot(page, 'flight');
        }),
    500_000,
);
