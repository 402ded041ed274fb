import { mkdirSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'playwright-core';

const folder = path.resolve(import.meta.dirname, '../../target/screenshots');

/** Keeps what the page looks like, to be opened and judged: web/target/screenshots/NAME.png. */
export async function shoot(page: Page, name: string, whole = false): Promise<void> {
    mkdirSync(folder, { recursive: true });
    await page.screenshot({
        path: path.join(folder, `${name}.png`),
        animations: 'disabled',
        fullPage: whole,
    });
}
