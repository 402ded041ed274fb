import type { Page } from 'playwright-core';
import { bringChecks } from '../harness/inpage';
import type { Held } from '../inpage/focus';

/** What a walk through the page by Tab met, and what was wrong on the way. */
export interface Walk {
    stops: string[];
    faults: string[];
}

/**
 * Presses Tab until the page has been left or begins again. A stop is at fault where it cannot be seen to
 * hold the focus: outside the window, covered, or drawn with it as without it.
 */
export async function walkByTab(page: Page, most = 400): Promise<Walk> {
    await bringChecks(page);
    await page.evaluate(() => {
        inPage.letGo();
    });
    const walk: Walk = { stops: [], faults: [] };
    const met = new Set<number>();
    for (let i = 0; i < most; i++) {
        await page.keyboard.press('Tab');
        const held = await page.evaluate(() => inPage.held());
        if (held === null) {
            return walk;
        }
        if (met.has(held.key)) {
            if (held.what === walk.stops.at(-1)) {
                walk.faults.push(`${held.what} keeps the focus for itself`);
            }
            return walk;
        }
        met.add(held.key);
        walk.stops.push(held.what);
        const fault = await faultOf(page, held);
        if (fault !== null) {
            walk.faults.push(`${held.what} ${fault}`);
        }
    }
    walk.faults.push(`after ${most} stops there was no end`);
    return walk;
}

async function faultOf(page: Page, held: Held): Promise<string | null> {
    if (!held.inWindow || held.box.width <= 0 || held.box.height <= 0) {
        return 'holds the focus out of sight';
    }
    if (held.covered) {
        return 'holds the focus under something else';
    }
    const same = await page.evaluate(() => inPage.looksTheSame());
    return same ? 'looks the same with and without the focus' : null;
}
