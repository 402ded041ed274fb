import { expect, test } from 'vitest';
import { faintTexts } from '../checks/contrast';
import { inBay } from '../harness/bay';
import { Hand } from '../harness/hand';
import { shoot } from '../harness/shots';

test('a verdict is pale, and says so, from the change of the rig until it is answered again', () =>
    inBay('mudlark', async ({ visit: { page } }) => {
        const hand = new Hand(page);
        await hand.answered();
        let go: () => void = () => undefined;
        const held = new Promise<void>(resolve => {
            go = resolve;
        });
        await page.route('**/api/ask', async route => {
            await held;
            await route.continue();
        });
        await hand.menu(/Show the file as outline/);
        const mass = hand.file.getByLabel('mass', { exact: true }).first();
        await mass.fill('80 kg ± 0.4 kg');
        await mass.press('Enter');
        await page.locator('.verdict-line.old').waitFor();
        expect(await hand.sheet.innerText()).toContain('before your last change');
        expect(await faintTexts(page)).toEqual([]);
        await shoot(page, 'pale');
        go();
        await hand.answered();
        expect(await page.locator('.old').count()).toBe(0);
    }));

test('units are switched everywhere, and back', () =>
    inBay('mudlark', async ({ visit: { page } }) => {
        const hand = new Hand(page);
        await hand.answered();
        const metric = await hand.sheet.innerText();
        expect(metric).toMatch(/\d N\b/);
        expect(metric).not.toContain('lbf');
        await hand.choose('Units', 'us');
        await page.getByText('lbf').first().waitFor();
        await hand.answered();
        const customary = await hand.sheet.innerText();
        expect(customary).toContain('lbf');
        expect(customary).not.toMatch(/\d N\b/);
        await hand.choose('Units', 'si');
        await page.waitForFunction(
            () => !document.querySelector('main')?.textContent.includes('lbf'),
        );
        await hand.answered();
        expect(await hand.verdict.innerText()).toBe(metric.match(/.*lift over weight.*/)?.[0]);
    }));

test('long work can be stopped, and goes on when asked', () =>
    inBay('mudlark', async ({ visit: { page } }) => {
        const hand = new Hand(page);
        await hand.open('endurance');
        await hand.sheet.getByRole('button', { name: 'Stop' }).click();
        await hand.sheet.getByText('Stopped before its end').waitFor();
        await hand.press('Go on', hand.sheet);
        await hand.answered();
    }));
