import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { clean } from '../checks/clean';
import { inBay } from '../harness/bay';
import { Folder } from '../harness/folder';
import { Hand } from '../harness/hand';
import { run } from '../harness/program';
import { shoot } from '../harness/shots';
import { browser, Visit } from '../harness/visit';

/** Flights are flown on a machine that has other work. */
const patience = { timeout: 240_000 };

/** Curlew with a profile of two seconds, which is the one that is flown unless another is chosen. */
function folder(): Folder {
    const folder = Folder.of('curlew');
    folder.write(
        'profiles/a-short.yaml',
        [
            'liftwright profile: 1',
            'name: a short hold',
            'start: {on: held, height: 1 m}',
            'steps:',
            '  - hold: 2 s',
            '',
        ].join('\n'),
    );
    return folder;
}

/** The link of the program that serves the folder already. */
async function again(of: Folder): Promise<string> {
    const said = await run('open', of.path, '--no-browser');
    const link = /http:\/\/127\.0\.0\.1:\d+\/\S*/.exec(said)?.[0];
    if (link === undefined) throw new Error(`no link in ${said}`);
    return link;
}

const job = (page: Page) => page.locator('.jobs .job').first();

async function standing(page: Page, state: string): Promise<void> {
    await page.locator(`.jobs .job.${state}`).first().waitFor(patience);
}

/** The name of what has the focus. */
function focused(page: Page): Promise<string> {
    return page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '');
}

test(
    'by pointer flights are begun, left, found again, stopped, taken up, read and played in 3D',
    () =>
        inBay(folder(), async bay => {
            const { folder, visit } = bay;
            const hand = new Hand(visit.page);
            await hand.open('flight');
            const form = visit.page.getByRole('form', { name: 'Fly it many times' });
            await form.waitFor(patience);
            await hand.fill('Flights', '80', form);
            await hand.fill('Seed', '5', form);
            await hand.press('Fly them', form);
            await standing(visit.page, 'running');
            await hand.open('lift');
            const line = visit.page.getByRole('button', { name: /^Work that goes on: 80 flights/ });
            await line.waitFor(patience);
            expect(await line.boundingBox().then(box => (box?.y ?? 9999) < 720)).toBe(true);
            await shoot(visit.page, 'jobs-from-elsewhere');

            // The page is closed in the middle; another one finds it going on.
            await visit.page.close();
            expect(visit.complaints).toEqual([]);
            bay.visit = await Visit.of(await browser(), await again(folder));
            {
                const { page } = bay.visit;
                const other = new Hand(page);
                await page.getByRole('button', { name: /^Work that goes on/ }).click(patience);
                await standing(page, 'running');
                await page.waitForFunction(
                    () => {
                        const bar = document.querySelector<HTMLProgressElement>('.job progress');
                        return bar !== null && bar.value >= 3;
                    },
                    undefined,
                    patience,
                );
                await other.press(/^Stop 80 flights/);
                await standing(page, 'stopped');
                expect(await job(page).locator('.job-state').innerText()).toMatch(
                    /stopped at \d+ of 80/,
                );
                await page.locator('.told-flights .verdict').waitFor(patience);
                await shoot(page, 'jobs-stopped');
                await other.press(/^Go on with 80 flights/);
                await standing(page, 'done');
                await page.locator('.told-flights figure.curve').waitFor(patience);
                await page.getByText('of 80 flights').first().waitFor(patience);

                const worst = page.locator('.worst-flights tbody tr').first();
                const number = /\d+/.exec(await worst.getByRole('button').innerText())?.[0] ?? '';
                await worst.getByRole('button').click();
                const flown = page.getByRole('region', { name: new RegExp(`^Flight ${number}, `) });
                await flown.locator('.strip-clock').waitFor(patience);
                await other.press('Play it in 3D', flown);
                const slider = flown.getByRole('slider', { name: /^moment of flight/ });
                await slider.waitFor(patience);
                const strip = flown.locator('.strip-canvas').first();
                await strip.evaluate(one => {
                    one.scrollIntoView({ block: 'center' });
                });
                const box = await strip.boundingBox();
                if (box === null) throw new Error('no strip');
                await page.mouse.move(box.x + box.width / 2, box.y + 20);
                // The strips' moment is that of the slider and of the rig in space.
                await expect
                    .poll(async () => Number(await slider.inputValue()))
                    .toBeGreaterThan(0.3);
                const clock = flown.getByRole('slider', { name: /^Moment of/ });
                expect(Number(await clock.getAttribute('aria-valuenow'))).toBeCloseTo(
                    Number(await slider.inputValue()),
                    1,
                );
                await shoot(page, 'jobs-played');
                await page.setViewportSize({ width: 1280, height: 7000 });
                await shoot(page, 'jobs-whole');
                await clean(page);
            }
            const kept = folder.read('.liftwright/jobs/1/flights.csv');
            expect(kept).toContain('# counted: 80');
        }),
    500_000,
);

test(
    'by keys alone flights are flown and one of them is played',
    () =>
        inBay(folder(), async ({ visit: { page } }) => {
            await page.getByRole('button', { name: /hold it\?/ }).waitFor(patience);
            await page.keyboard.press('Alt+7');
            const form = page.getByRole('form', { name: 'Fly it many times' });
            await form.waitFor(patience);
            // The key takes along who presses it, a frame later.
            await page.waitForFunction(() => document.activeElement?.id === 'sheet');
            await form.getByLabel('Flights').focus();
            await page.keyboard.press('Control+A');
            await page.keyboard.type('0');
            await form.getByText('1 to 99999').waitFor();
            await page.keyboard.press('Control+A');
            await page.keyboard.type('6');
            await page.keyboard.press('Enter');
            await standing(page, 'done');
            const first = page.locator('.worst-flights tbody button').first();
            await first.waitFor(patience);
            await first.focus();
            await page.keyboard.press('Enter');
            const flown = page.getByRole('region', { name: /^Flight \d+, / });
            await flown.locator('.strip-clock').waitFor(patience);
            const play = flown.getByRole('button', { name: 'Play it in 3D' });
            await play.focus();
            await page.keyboard.press('Enter');
            const slider = flown.getByRole('slider', { name: /^moment of flight/ });
            await slider.waitFor(patience);
            await slider.focus();
            await page.keyboard.press('PageUp');
            await page.keyboard.press('ArrowRight');
            expect(await slider.getAttribute('aria-valuetext')).toMatch(/ s, .* m forward/);
            expect(await first.getAttribute('aria-pressed')).toBe('true');
            await shoot(page, 'jobs-by-keys');
        }),
    500_000,
);

test(
    'by pointer losses in twos and threes are begun, stopped and taken up, and read when done',
    () =>
        inBay(folder(), async ({ folder, visit: { page } }) => {
            const hand = new Hand(page);
            await hand.open('failures');
            const begin = page.getByRole('button', {
                name: 'Work out every two and three at once',
            });
            await begin.click(patience);
            await standing(page, 'running');
            await hand.press(/^Stop two and three losses/);
            await standing(page, 'stopped');
            expect(folder.has('.liftwright/jobs/1/parts.bin')).toBe(true);
            await hand.press(/^Go on with two and three losses/);
            await standing(page, 'done');
            await expect.poll(() => folder.has('.liftwright/jobs/1/parts.bin')).toBe(false);
            const counts = page.locator('.losses summary', { hasText: 'Every three fans' });
            await counts.click(patience);
            await page.locator('.losses table').first().waitFor();
            await shoot(page, 'jobs-losses');
        }),
    500_000,
);

test(
    'by keys alone losses are begun, stopped, taken up, left with the page and found again',
    () =>
        inBay(folder(), async bay => {
            const { page } = bay.visit;
            await new Hand(page).rung('failures').waitFor();
            await page.keyboard.press('Alt+5');
            const begin = page.getByRole('button', {
                name: 'Work out every two and three at once',
            });
            await begin.waitFor(patience);
            await begin.focus();
            await page.keyboard.press('Enter');
            const stop = page.getByRole('button', { name: /^Stop two and three losses/ });
            await stop.waitFor(patience);
            await stop.focus();
            await page.keyboard.press('Enter');
            await standing(page, 'stopped');
            // The focus stays with the work: the next Enter takes it up.
            await expect.poll(() => focused(page)).toMatch(/^Go on with/);
            await page.keyboard.press('Enter');
            await standing(page, 'running');
            await page.close();
            bay.visit = await Visit.of(await browser(), await again(bay.folder));
            const next = bay.visit.page;
            const line = next.getByRole('button', { name: /^Work that goes on/ });
            await line.waitFor(patience);
            await line.focus();
            await next.keyboard.press('Enter');
            await standing(next, 'running');
            const other = next.getByRole('button', { name: /^Stop two and three losses/ });
            await other.focus();
            await next.keyboard.press('Enter');
            await standing(next, 'stopped');
        }),
    500_000,
);

test(
    'many flights are whole, apart and dark enough in light and dark',
    () =>
        inBay(folder(), async ({ visit: { page } }) => {
            const hand = new Hand(page);
            await hand.open('flight');
            const form = page.getByRole('form', { name: 'Fly it many times' });
            await hand.fill('Flights', '75', form);
            await hand.press('Fly them', form);
            await page.locator('.jobs-line').waitFor(patience);
            for (const theme of ['dark', 'light'] as const) {
                await page.emulateMedia({ colorScheme: theme });
                await shoot(page, `jobs-running-${theme}`);
            }
            await standing(page, 'done');
            await page.getByText('of 75 flights').first().waitFor(patience);
            for (const theme of ['light', 'dark'] as const) {
                await page.emulateMedia({ colorScheme: theme });
                for (const [width, height] of [
                    [1280, 8000],
                    [800, 8000],
                ] as const) {
                    await page.setViewportSize({ width, height });
                    await shoot(page, `jobs-told-${theme}-${width}`);
                    await clean(page);
                }
            }
        }),
    500_000,
);
