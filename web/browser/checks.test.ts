import { afterEach, describe, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { axeFindings } from './checks/axe';
import { faintTexts } from './checks/contrast';
import { walkByTab } from './checks/focus';
import { cutTexts, overlappingTexts } from './checks/layout';
import { browser } from './harness/visit';

/** Pages with a fault put there on purpose: a check that finds nothing here finds nothing anywhere. */
let page: Page | undefined;

async function show(body: string, style = ''): Promise<Page> {
    const context = await (await browser()).newContext({ viewport: { width: 600, height: 400 } });
    page = await context.newPage();
    await page.setContent(
        `<!doctype html><html lang="en"><title>t</title><style>body{font:16px sans-serif;background:#fff;color:#000;margin:20px}${style}</style><main><h1>Head</h1>${body}</main></html>`,
    );
    return page;
}

afterEach(async () => {
    await page?.context().close();
});

describe('overlapping texts', () => {
    test('are found in text, in pictures and between the two', async () => {
        const at = await show(
            `<p>upper line</p><p id="up">lower line</p>
             <svg width="300" height="100" role="img" aria-label="a picture">
               <text x="10" y="50">first</text><text x="20" y="52">second</text>
               <text x="200" y="50">alone</text></svg>`,
            '#up{margin-top:-30px}',
        );
        const found = await overlappingTexts(at);
        expect(found).toContain('“upper line” × “lower line”');
        expect(found).toContain('“first” × “second”');
        expect(found).toHaveLength(2);
    });

    test('are not those that are near, turned, covered or scrolled away', async () => {
        const at = await show(
            `<p style="line-height:1;margin:0">one<br>two</p>
             <svg width="300" height="120" role="img" aria-label="a picture">
               <text x="100" y="30" transform="rotate(45 100 30)">turned turned</text>
               <text x="150" y="40">beside</text></svg>
             <div style="height:40px;overflow-y:auto" tabindex="0"><p>in</p><p>below</p><p>below again</p></div><p>after</p>
             <div style="position:absolute;left:20px;top:20px;width:200px;height:40px;background:#eee">over the head</div>`,
        );
        expect(await overlappingTexts(at)).toEqual([]);
    });
});

describe('cut texts', () => {
    test('are found where a box, an ellipsis or the page ends too early', async () => {
        const at = await show(
            `<p id="box">a text that is too long for its box</p>
             <p id="dots">a text that ends in dots because it is long</p>
             <p id="out">far out</p><div id="low">two<br>lines</div>`,
            `#box{width:80px;white-space:nowrap;overflow:hidden}
             #dots{width:80px;white-space:nowrap;overflow:hidden;text-overflow:ellipsis}
             #out{position:absolute;left:580px;white-space:nowrap} #low{height:20px;overflow:hidden}`,
        );
        const found = (await cutTexts(at)).join('\n');
        expect(found).toContain('“a text that is too long for its box” is cut by p#box');
        expect(found).toContain('“a text that ends in dots');
        expect(found).toContain('“far out” stands beyond a side of the page');
        expect(found).toContain('“lines” is cut by div#low');
        expect(found).toMatch(/the page is \d+ px wide where 600 px are seen/);
    });

    test('are not those that a scroll brings up', async () => {
        const at = await show(
            `<div style="height:60px;overflow-y:auto" tabindex="0"><p>one</p><p>two</p><p>three</p></div>`,
        );
        expect(await cutTexts(at)).toEqual([]);
    });
});

describe('faint texts', () => {
    test('are found on a box, on a bar of a picture, half see-through, and where nothing is seen', async () => {
        const at = await show(
            `<p class="grey">grey on white</p><p class="half">half there</p><p class="none">white on white</p>
             <svg width="300" height="60" role="img" aria-label="a picture">
               <rect width="150" height="60" fill="#333"></rect><text x="10" y="30">dark on dark</text>
               <text x="160" y="30">dark on white</text></svg>`,
            '.grey{color:#999}.half{opacity:.4}.none{color:#fff}',
        );
        const found = await faintTexts(at);
        expect(found.map(line => /“(.*)”/.exec(line)?.[1])).toEqual([
            'grey on white',
            'half there',
            'white on white',
            'dark on dark',
        ]);
        // #999 on white is 2.85 : 1, from WCAG's formula by hand.
        expect(found[0]).toBe('“grey on white” 2.85 : 1');
    });

    test('are found in a shadow', async () => {
        const at = await show('<div id="host"></div>');
        await at.evaluate(() => {
            const root = document.querySelector('#host')?.attachShadow({ mode: 'open' });
            const text = document.createElement('p');
            text.textContent = 'in the shadow';
            text.setAttribute('style', 'color:#aaa');
            root?.append(text);
        });
        expect((await faintTexts(at)).join()).toContain('in the shadow');
    });

    test('are not those with a halo of their own', async () => {
        const at = await show(
            `<svg width="300" height="60" role="img" aria-label="a picture">
               <rect width="150" height="60" fill="#333"></rect>
               <text x="10" y="30" stroke="#fff" stroke-width="4" paint-order="stroke">on a halo</text></svg>`,
        );
        expect(await faintTexts(at)).toEqual([]);
    });
});

describe('the walk by Tab', () => {
    test('finds what shows no focus, what is covered and what is out of sight', async () => {
        const at = await show(
            `<button>good</button><button class="bare">bare</button>
             <button class="off">off</button><button class="under">under</button>
             <div class="lid">lid</div>`,
            `.bare{outline:none}.off{position:absolute;left:-900px}
             .under{position:fixed;left:100px;top:200px}.lid{position:fixed;left:90px;top:190px;width:200px;height:60px;background:#fff}`,
        );
        const walk = await walkByTab(at);
        expect(walk.stops).toHaveLength(4);
        expect(walk.faults).toEqual([
            'button.bare “bare” looks the same with and without the focus',
            'button.off “off” holds the focus out of sight',
            'button.under “under” holds the focus under something else',
        ]);
    });

    test('finds one that does not let go', async () => {
        const at = await show('<button>first</button><textarea aria-label="trap"></textarea>');
        await at.evaluate(() => {
            document.querySelector('textarea')?.addEventListener('keydown', event => {
                event.preventDefault();
            });
        });
        expect((await walkByTab(at)).faults).toEqual([
            'textarea “trap” keeps the focus for itself',
        ]);
    });
});

test('axe finds a button without a name', async () => {
    const at = await show('<button></button>');
    expect((await axeFindings(at)).join()).toContain('button-name');
});
