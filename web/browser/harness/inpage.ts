import type { Page } from 'playwright-core';
import { inject } from 'vitest';
import type * as InPage from '../inpage/index';

declare global {
    var inPage: typeof InPage;
}

/** Brings the checks into the page as it stands; the debugger's door, which no page policy bars. */
export async function bringChecks(page: Page): Promise<void> {
    if (!(await page.evaluate(() => 'inPage' in globalThis))) {
        await page.evaluate(inject('inPage'));
    }
}
