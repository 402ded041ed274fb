import type { Page } from 'playwright-core';

/** What has to be there on every rung, as a reader of the screen goes from landmark to landmark. */
const LANDMARKS = [/^- banner/m, /^\s*- navigation "Questions"/m, /^\s*- main/m, /"Rig file"/];
/** What says nothing without a name. */
const NAMED =
    /^\s*- (?:button|link|textbox|combobox|listbox|slider|checkbox|img|figure|dialog|progressbar|navigation|table)(?: \[[^\]]*\])*:?$/;
const HEADING = /^\s*- heading "(.*)" \[level=(\d)\]/;

/** What somebody who hears the page would miss: names, landmarks, the order of headings. */
export async function readingFaults(page: Page): Promise<string[]> {
    const tree = await page.locator('body').ariaSnapshot();
    const lines = tree.split('\n');
    const headings = lines.flatMap(line => {
        const [, words = '', level = ''] = HEADING.exec(line) ?? [];
        return words === '' ? [] : [{ words, level: Number(level) }];
    });
    return [
        ...LANDMARKS.filter(each => !each.test(tree)).map(each => `no landmark ${each.source}`),
        ...lines.filter(line => NAMED.test(line)).map(line => `without a name: ${line.trim()}`),
        ...headings
            .filter(({ level }, k) => k > 0 && level > (headings[k - 1]?.level ?? 0) + 1)
            .map(({ words, level }) => `heading of level ${level} after a lesser: ${words}`),
        ...(headings.filter(({ level }) => level === 1).length === 1
            ? []
            : ['not one heading of level 1']),
        ...(await page.evaluate(pictureFaults)),
    ];
}

/** In the page: pictures without numbers in words beneath, and progress that would be read out at every step. */
function pictureFaults(): string[] {
    const name = (element: Element): string =>
        element.getAttribute('aria-label') ??
        element.querySelector('figcaption, h3, h4')?.textContent ??
        element.className;
    return [
        ...[...document.querySelectorAll('main figure')]
            .filter(figure => figure.querySelector('svg[role=img], canvas') !== null)
            .filter(figure => {
                const turns = [...figure.querySelectorAll('button')];
                const told = turns.some(each => /table/.test(each.textContent));
                return !told && figure.querySelector('table') === null;
            })
            .map(figure => `a picture without a table: ${name(figure)}`),
        ...[...document.querySelectorAll('[aria-live] progress, [role=status] progress')].map(
            () => 'progress would be read out at every step',
        ),
    ];
}
