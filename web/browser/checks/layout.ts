import type { Page } from 'playwright-core';
import { bringChecks } from '../harness/inpage';

/** Pairs of texts that lie on one another. */
export async function overlappingTexts(page: Page): Promise<string[]> {
    await bringChecks(page);
    return page.evaluate(() => inPage.overlaps());
}

/** Texts that something cuts, or that stand beyond a side of the page. */
export async function cutTexts(page: Page): Promise<string[]> {
    await bringChecks(page);
    return page.evaluate(() => inPage.cutTexts());
}
