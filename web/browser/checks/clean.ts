import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { axeFindings } from './axe';
import { faintTexts } from './contrast';
import { cutTexts, overlappingTexts } from './layout';

/** Nothing on the page that axe finds, and no text that is faint, covered or cut. */
export async function clean(page: Page): Promise<void> {
    expect(await axeFindings(page)).toEqual([]);
    expect(await faintTexts(page)).toEqual([]);
    expect(await overlappingTexts(page)).toEqual([]);
    expect((await cutTexts(page)).slice(0, 9)).toEqual([]);
}
