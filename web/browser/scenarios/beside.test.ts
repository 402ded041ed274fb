import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { clean } from '../checks/clean';
import { inBay } from '../harness/bay';
import { Folder } from '../harness/folder';
import { Hand } from '../harness/hand';
import { shoot } from '../harness/shots';

/** The machine may have other work. */
const patience = { timeout: 120_000 };

/** Curlew, and beside it Curlew as it was: its flight computer 50 mm higher, a fan outboard nearer, fans weaker. */
function folder(): Folder {
    const folder = Folder.of('curlew');
    const now = folder.read('rig.yaml');
    const was = now
        .replace('at: {mount: pod, up: 40 mm}}', 'at: {mount: pod, up: 90 mm}}')
        .replace('spacing: 150 mm,', 'spacing: 146 mm,')
        .replace('thrust: 92 N', 'thrust: 88 N');
    expect(was).not.toBe(now);
    folder.write('earlier.yaml', was);
    return folder;
}

function shifts(page: Page): Locator {
    return page.getByRole('list', { name: 'what stands elsewhere than before' });
}

/** The figure in which something is told to have moved by so many millimetres, as the file says. */
async function told(page: Page): Promise<void> {
    const computer = shifts(page).getByRole('listitem').filter({ hasText: 'flight computer' });
    expect(await computer.innerText()).toContain('50 mm: 0 mm forward, 0 mm right, 50 mm down');
    const outer = shifts(page).getByRole('listitem').filter({ hasText: 'fan.1' });
    // The outer of four stands one and a half spacings from the middle.
    expect(Number(await outer.locator('[data-m]').getAttribute('data-m'))).toBeCloseTo(0.006, 9);
}

test(
    'by pointer two revisions stand in one waterfall, in one view and in 3D, with how far each part moved',
    () =>
        inBay(folder(), async ({ visit: { page } }) => {
            const hand = new Hand(page);
            await hand.open('lift');
            await hand.whole();
            await hand.menu(/^Compare with another revision/);
            await hand.choose('The rig as it stands, against', 'file earlier.yaml');
            await hand.press('Compare lift');
            await page.locator('.compare .verdict').waitFor(patience);
            const fall = page.getByRole('figure', { name: 'From rated thrust to usable lift' });
            expect(await fall.locator('.was-bar').count()).toBeGreaterThan(5);
            expect(await fall.getByText(/^[\d.]+\sN, was [\d.]+\sN$/).count()).toBeGreaterThan(1);
            await told(page);
            const rig = page.getByRole('figure', { name: 'The rig, and as it was before' });
            await rig.getByRole('button', { name: 'flight computer' }).click();
            await rig.getByRole('button', { name: /: in 3D$/ }).click();
            const canvas = rig.locator('canvas');
            await canvas.waitFor(patience);
            await canvas.scrollIntoViewIfNeeded();
            await page.waitForTimeout(700);
            await rig.locator('.solid-labels').getByText('flight computer 50 mm').waitFor();
            await shoot(page, 'beside-3d');
            const frames = await canvas.getAttribute('data-frames');
            await page.waitForTimeout(600);
            expect(await canvas.getAttribute('data-frames'), 'drawn at rest').toBe(frames);
            await page.setViewportSize({ width: 1280, height: 5200 });
            await shoot(page, 'beside');
            await clean(page);
            await page.setViewportSize({ width: 800, height: 1280 });
            await clean(page);
            await shoot(page, 'beside-tablet', true);
        }),
    400_000,
);

test(
    'by keys alone charge over time is compared, and what moved is gone through in 3D',
    () =>
        inBay(folder(), async ({ visit: { page } }) => {
            const hand = new Hand(page);
            await hand.whole();
            await page.keyboard.press('Alt+2');
            await hand.whole();
            await page.keyboard.press('Alt+c');
            const other = page.getByLabel('The rig as it stands, against');
            await other.focus();
            await page.keyboard.type('earlier');
            expect(await other.inputValue()).toBe('file earlier.yaml');
            await page.keyboard.press('Tab');
            await page.keyboard.press('Enter');
            await page.locator('.compare .verdict').waitFor(patience);
            const charge = page.getByRole('figure', { name: /^Charge left in the emptiest cell/ });
            await charge.getByText('emptiest cell, before').waitFor();
            await charge.getByText('emptiest cell, now').waitFor();
            await told(page);
            const rig = page.getByRole('figure', { name: 'The rig, and as it was before' });
            await rig.getByRole('button', { name: /: in 3D$/ }).focus();
            await page.keyboard.press('Enter');
            const canvas = rig.locator('canvas');
            await canvas.waitFor(patience);
            await canvas.focus();
            await page.keyboard.press('PageDown');
            const pressed = shifts(page).locator('[aria-pressed="true"]');
            expect(await pressed.innerText()).toBe('flight computer');
            await page.keyboard.press('PageDown');
            expect(await pressed.innerText()).not.toBe('flight computer');
            await shoot(page, 'beside-by-keys');
        }),
    400_000,
);
