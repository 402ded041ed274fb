import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { axeFindings } from '../checks/axe';
import { cutTexts, overlappingTexts } from '../checks/layout';
import { inBay } from '../harness/bay';
import { Hand } from '../harness/hand';
import { shoot } from '../harness/shots';

/** The machine may have other work. */
const patience = { timeout: 120_000 };

async function tidy(page: Page): Promise<void> {
    expect(await axeFindings(page)).toEqual([]);
    expect(await overlappingTexts(page)).toEqual([]);
    expect(await cutTexts(page)).toEqual([]);
}

async function tabTo(page: Page, to: Locator): Promise<void> {
    for (let k = 0; k < 250; k++) {
        if (await to.evaluate(element => element === document.activeElement)) return;
        await page.keyboard.press('Tab');
    }
    throw new Error('Tab does not reach it');
}

test(
    'a slider is moved and kept, the rig compared with its file, a number opened, by pointer',
    () =>
        inBay('curlew', async ({ visit: { page } }) => {
            const hand = new Hand(page);
            await hand.open('lift');
            await hand.whole();
            await page.getByRole('button', { name: 'Find what moves this verdict most' }).click();
            const sliders = page.getByRole('slider');
            await sliders.first().waitFor(patience);
            expect(await sliders.count()).toBeGreaterThan(1);
            const moved = page
                .locator('.slider')
                .filter({ has: page.getByRole('slider') })
                .first();
            const place = await moved.locator('.link').innerText();
            const box = await sliders.first().boundingBox();
            if (box === null) throw new Error('no slider');
            await page.mouse.click(box.x + box.width - 3, box.y + box.height / 2);
            const tried = page.getByRole('region', { name: 'Tried, not kept' });
            await tried.getByText('With it:').waitFor(patience);
            await tidy(page);
            await sliders.first().scrollIntoViewIfNeeded();
            await shoot(page, 'sliders');
            await tried.getByRole('button', { name: 'Keep' }).click();
            await page.getByText('not saved to the file yet').waitFor();

            await page.getByRole('button', { name: 'Menu' }).click();
            await page.getByRole('button', { name: /^Compare with another revision/ }).click();
            await page.getByRole('button', { name: 'Compare lift' }).click();
            await page.locator('.compare .verdict').waitFor(patience);
            const changed = page.getByRole('table', { name: 'What changed in the file' });
            expect(await changed.locator('tbody tr').count()).toBe(1);
            expect(await changed.innerText()).toContain(place);
            await page.getByRole('figure', { name: 'The rig, and as it was before' }).waitFor();
            await tidy(page);
            await shoot(page, 'compare', true);
            await page.emulateMedia({ colorScheme: 'dark' });
            await shoot(page, 'compare-dark');
            await page.emulateMedia({ colorScheme: 'light' });
            await page.setViewportSize({ width: 800, height: 1280 });
            await shoot(page, 'compare-tablet');
            await page.setViewportSize({ width: 1280, height: 720 });

            // Every number that is shown is one whose formula is known.
            const numbers = page.locator('#sheet td[data-field]');
            expect(await numbers.count()).toBeGreaterThan(0);
            await numbers.first().click();
            const dialog = page.getByRole('dialog');
            await dialog.getByText('formula').waitFor();
            expect(await dialog.innerText()).not.toContain('Nothing is known');
            await shoot(page, 'formula');
        }),
    400_000,
);

test(
    'search, a formula, a slider and a comparison by keys alone',
    () =>
        inBay('curlew', async ({ visit: { page } }) => {
            const hand = new Hand(page);
            await hand.whole();
            await page.keyboard.press('Alt+1');
            await page.keyboard.press('Alt+/');
            await page.getByRole('combobox', { name: /^Search parts/ }).waitFor();
            await page.keyboard.type('usable lift upward force');
            await page.locator('.search li').first().waitFor();
            await shoot(page, 'search');
            expect(await axeFindings(page)).toEqual([]);
            await page.keyboard.press('Enter');
            const formula = page.getByRole('dialog');
            await formula.getByText('PlantAgainstRefereeTest.withAllEffects').waitFor();
            await page.keyboard.press('Escape');
            await page.keyboard.press('Alt+/');
            await page.keyboard.type('fan.3');
            await page.keyboard.press('Enter');
            await page.getByRole('dialog').waitFor({ state: 'hidden' });

            await page.keyboard.press('Alt+1');
            await tabTo(page, page.getByRole('button', { name: /^Find what moves/ }));
            await page.keyboard.press('Enter');
            const slider = page.getByRole('slider').first();
            await slider.waitFor(patience);
            await page.keyboard.press('Alt+1');
            await tabTo(page, slider);
            await page.keyboard.press('ArrowRight');
            await page.keyboard.press('ArrowRight');
            expect(await slider.inputValue()).toBe('12');
            const tried = page.getByRole('region', { name: 'Tried, not kept' });
            await tried.getByText('With it:').waitFor(patience);
            await page.keyboard.press('Alt+1');
            await tabTo(page, tried.getByRole('button', { name: 'Let it go' }));
            await page.keyboard.press('Enter');
            await tried.waitFor({ state: 'hidden' });
            expect(await slider.inputValue()).toBe('10');

            await page.keyboard.press('Alt+c');
            await tabTo(page, page.getByRole('button', { name: 'Compare lift' }));
            await page.keyboard.press('Enter');
            await page.locator('.compare .verdict').waitFor(patience);
            expect(await page.locator('.compare .verdict').innerText()).toContain(
                'the file says the same',
            );
            await tabTo(page, page.getByRole('button', { name: 'Back to the question' }));
            await page.keyboard.press('Enter');
            await page.getByRole('heading', { name: 'Will it lift me?', level: 2 }).waitFor();
        }),
    400_000,
);
