import type { Download } from 'playwright-core';
import { expect, test } from 'vitest';
import { inBay } from '../harness/bay';
import { Folder } from '../harness/folder';
import { Hand, questions } from '../harness/hand';
import { browser } from '../harness/visit';
import { shoot } from '../harness/shots';

async function saved(
    hand: Hand,
    press: () => Promise<void>,
): Promise<{ name: string; bytes: Buffer }> {
    const coming = hand.page.waitForEvent('download', { timeout: 90_000 });
    await press();
    const download: Download = await coming;
    const parts: Buffer[] = [];
    for await (const part of await download.createReadStream()) {
        parts.push(part as Buffer);
    }
    return { name: download.suggestedFilename(), bytes: Buffer.concat(parts) };
}

/** What a picture saved as SVG is, read by another page that knows nothing of ours. */
async function readSvg(
    text: string,
): Promise<{ fault: string; texts: string; strangers: string[]; wide: number }> {
    const page = await (await (await browser()).newContext()).newPage();
    const read = await page.evaluate(async svg => {
        const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml');
        const strangers = [...parsed.querySelectorAll('*')]
            .filter(
                element =>
                    ['script', 'foreignObject', 'image', 'a'].includes(element.localName) ||
                    [...element.attributes].some(
                        at =>
                            /^on/.test(at.name) ||
                            (/href$/.test(at.name) && !at.value.startsWith('#')),
                    ),
            )
            .map(element => element.outerHTML.slice(0, 100));
        const image = new Image();
        image.src = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
        await image.decode();
        return {
            fault: parsed.querySelector('parsererror')?.textContent ?? '',
            texts: [...parsed.querySelectorAll('text')].map(one => one.textContent).join('\n'),
            strangers,
            wide: image.naturalWidth,
        };
    }, text);
    await page.context().close();
    return read;
}

test('every picture is saved as SVG, PNG and CSV, and reads back', () =>
    inBay('mudlark', async ({ visit: { page } }) => {
        const hand = new Hand(page);
        let pictures = 0;
        // Cards are kept as PDF and HTML; a person at the throttle leaves no picture of a flight.
        const drawn = questions.filter(
            each => each !== 'flight' && each !== 'trials' && each !== 'learning',
        );
        for (const question of drawn) {
            await hand.open(question);
            await hand.answered();
            const one = hand.sheet.locator('figure').first();
            const svg = await saved(hand, () =>
                one
                    .getByRole('button', { name: /as SVG$/ })
                    .first()
                    .click(),
            );
            const drawn = await readSvg(svg.bytes.toString('utf8'));
            expect(svg.name).toMatch(/\.svg$/);
            expect(drawn.fault).toBe('');
            expect(drawn.strangers).toEqual([]);
            expect(drawn.wide).toBeGreaterThan(100);
            const png = await saved(hand, () =>
                one.getByRole('button', { name: /as PNG$/ }).click(),
            );
            expect(png.bytes.subarray(0, 8).toString('latin1')).toBe('\x89PNG\r\n\x1a\n');
            expect(png.bytes.readUInt32BE(16)).toBeGreaterThan(400);
            const csv = await saved(hand, () =>
                one.getByRole('button', { name: /as CSV$/ }).click(),
            );
            const lines = csv.bytes.toString('utf8').trim().split(/\r?\n/);
            expect(lines.length).toBeGreaterThan(3);
            pictures++;
        }
        expect(pictures).toBe(drawn.length);
    }));

// Of the rig that is soonest answered: page and report are both whole, and neither knows its size.
test('the report holds the verdicts of the page', () =>
    inBay('sandpiper', async ({ visit: { page } }) => {
        const hand = new Hand(page);
        await hand.answered();
        const words = (await hand.verdict.innerText()).trim();
        const report = await saved(hand, () => hand.menu('Save a report of all answers'));
        expect(report.name).toMatch(/\.html$/);
        const reader = await (await (await browser()).newContext()).newPage();
        await reader.setContent(report.bytes.toString('utf8'));
        const text = (await reader.locator('body').innerText()).replace(/\s+/g, ' ');
        expect(text).toContain(words.replace(/^.*?: /s, '').split(';')[0]);
        expect(text).toContain('This is a calculation, not a certificate');
        await reader.context().close();
    }));

test('hostile names stay words on every rung, in every picture and in every file', async () => {
    const hostile = '"><img src=x onerror=document.title=1><script>document.title=2</script>';
    const folder = Folder.of('mudlark');
    folder.write(
        'rig.yaml',
        folder
            .read('rig.yaml')
            .replace('rig: Mudlark', `rig: '${hostile}'`)
            .replace(/back-bottom/g, 'constructor toString proto x-y-z 0123456789 abcd'),
    );
    folder.write(
        '=cmd&<b>.yaml',
        `rig: '=HYPERLINK("x")'\nliftwright: 1\n'x<img src=x onerror=alert(1)>': 1\n`,
    );
    await inBay(folder, async ({ visit }) => {
        const { page } = visit;
        const hand = new Hand(page);
        if (await page.getByRole('button', { name: 'Menu' }).isVisible()) {
            await hand.menu(/rig\.yaml$/);
        }
        for (const question of questions) {
            await hand.open(question);
            await hand.answered();
            expect(await page.locator('img, main script, [onerror]').count()).toBe(0);
            await shoot(page, `hostile-${question}`);
        }
        expect(await page.getByRole('heading', { level: 1 }).innerText()).toContain('<img src=x');
        expect(await page.title()).not.toMatch(/^[12]$/);
        await hand.open('restraint');
        await hand.answered();
        const svg = await saved(hand, () =>
            hand.sheet
                .getByRole('button', { name: /as SVG$/ })
                .first()
                .click(),
        );
        expect((await readSvg(svg.bytes.toString('utf8'))).strangers).toEqual([]);
        expect(svg.name).not.toMatch(/[<>:"/\\|?*]/);
        const csv = await saved(hand, () =>
            hand.sheet
                .getByRole('button', { name: /as CSV$/ })
                .first()
                .click(),
        );
        expect(csv.bytes.toString('utf8')).not.toMatch(/(^|,)"?[=@]/m);
        await hand.menu(/=cmd/);
        const problems = page.getByRole('region', { name: 'Problems of the rig file' });
        await problems.getByText('<img').first().waitFor();
        await shoot(page, 'hostile-refused');
        expect(await page.locator('img, main script, [onerror]').count()).toBe(0);
    });
});
