import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { clean } from '../checks/clean';
import { inBay } from '../harness/bay';
import { Hand } from '../harness/hand';
import { shoot } from '../harness/shots';

/** A test may be explained on a machine that has other work. */
const patience = { timeout: 150_000 };

/** A log of our own making: stairs of throttle, and a thrust that follows them. */
function log(rows: number, everyS: number): string {
    const lines = ['time [s],throttle [%],thrust [N]'];
    for (let k = 0; k < rows; k++) {
        const throttle = Math.min(60, 10 * Math.floor((8 * k) / rows));
        const thrust = 0.15 * throttle * throttle * (1 + 0.01 * Math.sin(k * 0.7));
        lines.push(`${(k * everyS).toFixed(4)},${throttle},${thrust.toFixed(4)}`);
        if (k === 50) lines.push(`${(k * everyS + everyS / 2).toFixed(4)},10,what?`);
    }
    return lines.join('\n');
}

async function readIn(page: Page, hand: Hand, text: string): Promise<void> {
    await hand.open('learning');
    await page.getByText('Read in a log', { exact: true }).click();
    await page.getByLabel('Logs of one test, as CSV').setInputFiles({
        name: 'scale.csv',
        mimeType: 'text/csv',
        buffer: Buffer.from(text),
    });
    await page.getByRole('form', { name: 'Keep it as a test' }).waitFor(patience);
}

async function kept(page: Page, hand: Hand): Promise<void> {
    const form = page.getByRole('form', { name: 'Keep it as a test' });
    await hand.fill(/Day of the test/, '2026-03-14', form);
    await hand.press('Keep it as a test', form);
    await page.locator('[data-test="2026-03-14-1"]').waitFor(patience);
}

/**
 * The causes of the open test are searched for by the server alone: watched, stopped in the middle,
 * and taken up.
 *
 * @param press how somebody presses what is called so
 */
async function explained(page: Page, press: (name: RegExp) => Promise<void>): Promise<void> {
    const opened = page.locator('.open-test');
    const standing = (state: string) => opened.locator(`.job.${state}`).waitFor(patience);
    await press(/^Go on without this page$/);
    await standing('running');
    await expect.poll(() => opened.locator('.job-state').innerText(), patience).toMatch(/: .*\d/);
    await press(/^Stop /);
    await standing('stopped');
    await press(/^Go on with /);
    await opened.locator('.job:is(.running, .done)').waitFor(patience);
}

test('by pointer a log is read in, looked at, kept, explained without the page and seen nearer', () =>
    inBay('curlew', async ({ folder, visit: { page } }) => {
        const hand = new Hand(page);
        await readIn(page, hand, log(1500, 0.02));
        const said = await page.locator('.read-log').innerText();
        expect(said).toMatch(/1500 rows/);
        expect(said).toMatch(/1 row set aside/);
        expect(said).toMatch(/what\?/);
        await shoot(page, 'why-understood');
        await kept(page, hand);
        expect(folder.read('rig.logbook/tests/2026-03-14-1/test.yaml')).toContain('2026-03-14');
        await page.locator('[data-test="2026-03-14-1"]').click();
        await explained(page, name => hand.press(name, page.locator('.open-test')));
        await page.locator('.open-test .job.done').waitFor(patience);
        await page.locator('.open-test .verdict', { hasText: 'lift were measured' }).waitFor();
        await page.locator('.strip-clock').waitFor(patience);
        const strip = page.locator('.strip-canvas').first();
        await strip.evaluate(one => {
            one.scrollIntoView({ block: 'center' });
        });
        const box = await strip.boundingBox();
        if (box === null) throw new Error('no strip');
        await page.mouse.move(box.x + 150, box.y + 40);
        await page.mouse.down();
        await page.mouse.move(box.x + 260, box.y + 40, { steps: 5 });
        await page.mouse.up();
        await expect
            .poll(() =>
                page.getByRole('button', { name: 'Whole test' }).getAttribute('aria-disabled'),
            )
            .toBe('false');
        await shoot(page, 'why-zoomed');
    }));

test('by keys alone a test is explained without the page, and a moment is read and seen nearer', () =>
    inBay('curlew', async ({ visit: { page } }) => {
        const hand = new Hand(page);
        await readIn(page, hand, log(600, 0.02));
        await kept(page, hand);
        await page.locator('[data-test="2026-03-14-1"]').focus();
        await page.keyboard.press('Enter');
        await explained(page, async name => {
            const button = page.locator('.open-test').getByRole('button', { name });
            await button.waitFor(patience);
            await button.focus();
            await page.keyboard.press('Enter');
        });
        const clock = page.getByRole('slider', { name: /^Moment of/ });
        await clock.waitFor(patience);
        await clock.focus();
        for (const key of ['ArrowRight', 'ArrowRight', '+', 'PageDown'])
            await page.keyboard.press(key);
        expect(await clock.getAttribute('aria-valuetext')).toMatch(/ s; /);
        expect(await page.locator('.strip-tools [role=status]').innerText()).not.toMatch(/^0 /);
        await page.keyboard.press('0');
        await expect
            .poll(() =>
                page.getByRole('button', { name: 'Whole test' }).getAttribute('aria-disabled'),
            )
            .toBe('true');
    }));

test('an open test is clean for axe, apart, whole and dark enough, in light and dark', () =>
    inBay('curlew', async ({ visit: { page } }) => {
        const hand = new Hand(page);
        await readIn(page, hand, log(2000, 0.02));
        await kept(page, hand);
        await page.locator('[data-test="2026-03-14-1"]').click();
        await page.locator('.strip-clock').waitFor(patience);
        for (const theme of ['light', 'dark'] as const) {
            await page.emulateMedia({ colorScheme: theme });
            for (const width of [1280, 1024, 800]) {
                await page.setViewportSize({ width, height: 720 });
                await shoot(page, `why-open-${theme}-${width}`);
            }
            await page.setViewportSize({ width: 1280, height: 6000 });
            await shoot(page, `why-open-${theme}-whole`);
            await clean(page);
        }
    }));
