import type { Page } from 'playwright-core';
import { questions, type Hand } from '../harness/hand';

/** The machine may have other work. */
const patience = { timeout: 240_000 };

/** Somewhere on the page that is worth a look, and how to get there from anywhere else. */
export interface Place {
    name: string;
    /** Only where the example has what is shown. */
    only?: string;
    go: (hand: Hand) => Promise<void>;
}

async function inSpace(hand: Hand, question: 'heat' | 'failures', figure: string): Promise<void> {
    await hand.open(question);
    await hand.answered();
    const shown = hand.sheet.locator(`figure.${figure}`).first();
    await shown.getByRole('button', { name: /in 3D$/ }).click();
    await settled(hand.page, `figure.${figure} canvas`);
}

/** Drawn, and not drawn again for a while. */
async function settled(page: Page, canvas: string): Promise<void> {
    await page.locator(canvas).first().waitFor(patience);
    await page.locator(canvas).first().scrollIntoViewIfNeeded();
    await page.waitForTimeout(900);
}

const rungs: Place[] = questions.map(question => ({
    name: question,
    go: async hand => {
        await hand.open(question);
        await hand.allAnswered();
    },
}));

export const places: readonly Place[] = [
    ...rungs,
    {
        name: 'sliders',
        go: async hand => {
            await hand.open('lift');
            await hand.whole();
            await hand.press('Find what moves this verdict most');
            await hand.page.getByRole('slider').first().waitFor(patience);
            const box = await hand.page.getByRole('slider').first().boundingBox();
            if (box !== null) await hand.page.mouse.click(box.x + box.width - 3, box.y + 6);
            await hand.page
                .getByRole('region', { name: 'Tried, not kept' })
                .getByText('With it:')
                .waitFor(patience);
        },
    },
    {
        name: 'comparison',
        go: async hand => {
            if ((await hand.page.getByRole('button', { name: 'Keep', exact: true }).count()) > 0) {
                await hand.press('Keep');
            }
            await hand.open('balance');
            await hand.whole();
            await hand.page.keyboard.press('Alt+c');
            await hand.press(/^Compare balance/);
            await hand.page.locator('.compare .verdict').waitFor(patience);
        },
    },
    {
        name: 'search',
        go: async hand => {
            await hand.open('lift');
            await hand.page.keyboard.press('Alt+/');
            await hand.page.keyboard.type('thrust');
            await hand.page.locator('.search li').first().waitFor(patience);
        },
    },
    {
        name: 'formula',
        go: async hand => {
            await hand.page.keyboard.press('Escape');
            await hand.open('lift');
            await hand.whole();
            await hand.page.locator('.numbers summary').first().click();
            await hand.page.locator('.numbers .field-name').first().click();
            await hand.page.getByRole('dialog').getByText('formula').waitFor(patience);
        },
    },
    {
        name: 'solid',
        go: async hand => {
            await hand.page.keyboard.press('Escape');
            await hand.open('balance');
            await hand.answered();
            await hand.press('Turn the rig in 3D');
            await settled(hand.page, 'figure.solid canvas');
        },
    },
    { name: 'solid-heat', go: hand => inSpace(hand, 'heat', 'playback') },
    { name: 'solid-failure', go: hand => inSpace(hand, 'failures', 'cases') },
    {
        name: 'solid-held',
        go: async hand => {
            await hand.open('restraint');
            await hand.answered();
            for (const figure of await hand.sheet.locator('figure.elevation').all()) {
                await figure.getByRole('button', { name: /in 3D$/ }).click();
            }
            await settled(hand.page, 'figure.elevation canvas');
        },
    },
    {
        name: 'many-flights',
        only: 'curlew',
        go: async hand => {
            await hand.open('flight');
            const form = hand.page.getByRole('form', { name: 'Fly it many times' });
            await form.waitFor(patience);
            await hand.fill('Flights', '12', form);
            await hand.press('Fly them', form);
            await hand.page.locator('.jobs .job.done').first().waitFor(patience);
            await hand.page.locator('.worst-flights tbody button').first().click(patience);
            const flown = hand.page.getByRole('region', { name: /^Flight \d+, / });
            await flown.locator('.strip-clock').waitFor(patience);
            await hand.press('Play it in 3D', flown);
            await settled(hand.page, '.flown canvas, figure canvas');
        },
    },
    {
        name: 'card',
        go: async hand => {
            await hand.open('trials');
            await hand.laid();
            const rows = hand.page.locator('.card-row');
            await rows.nth(Math.min(8, (await rows.count()) - 1)).click();
            await hand.page.locator('.picture.card').first().waitFor(patience);
        },
    },
    {
        name: 'menu',
        go: async hand => {
            await hand.press('Menu');
        },
    },
    {
        name: 'keys',
        go: async hand => {
            await hand.page.keyboard.press('Escape');
            await hand.page.keyboard.press('F1');
            await hand.page.waitForTimeout(300);
        },
    },
];
