import { gzipSync } from 'node:zlib';
import { chromium, type Page } from 'playwright-core';
import { inject, test } from 'vitest';
import { bringChecks } from '../harness/inpage';
import { Folder } from '../harness/folder';
import { Program } from '../harness/program';
import { Hand, nominalTexts } from '../harness/hand';
import { desk, Visit } from '../harness/visit';
import { kB, ms, percentile, Sheet } from './sheet';

const drags = Number(process.env['DRAGS'] ?? '500');

test('what the page costs', async () => {
    const sheet = new Sheet();
    const browser = await chromium.connect(inject('chromium'));
    const folder = Folder.of('mudlark');
    try {
        await start(sheet, folder, browser);
        const program = await Program.open(folder.path);
        const visit = await Visit.of(browser, program.link, { ...desk, height: 900 });
        try {
            const hand = new Hand(visit.page);
            await hand.allAnswered();
            await bringChecks(visit.page);
            await visit.page.evaluate(selector => {
                inPage.startWatching(selector);
            }, nominalTexts);
            await idle(sheet, visit.page);
            await hand.open('balance');
            await hand.answered();
            await dragging(sheet, hand);
            await longTasks(sheet, hand);
            await bands(sheet, hand);
            for (const complaint of visit.complaints) {
                sheet.tell('complaint', complaint, 'none');
            }
        } finally {
            await visit.close();
            await program.stop();
        }
    } finally {
        sheet.print();
        folder.remove();
        await browser.close();
    }
});

/** Cold server, warm browser: three starts, the middle one told. */
async function start(
    sheet: Sheet,
    folder: Folder,
    browser: Awaited<ReturnType<typeof chromium.connect>>,
): Promise<void> {
    const usable: number[] = [];
    for (let i = 0; i < 3; i++) {
        const program = await Program.open(folder.path);
        const printed = performance.now();
        const visit = await Visit.of(browser, 'about:blank', desk);
        const files: { url: string; bytes: number; text: string; late: boolean }[] = [];
        const reading: Promise<void>[] = [];
        let painted = false;
        visit.page.on('response', response => {
            if (/\.(js|css|html|woff2)$|\/$/.test(new URL(response.url()).pathname)) {
                const late = painted;
                reading.push(
                    response.body().then(body => {
                        files.push({
                            url: response.url(),
                            bytes: gzipSync(body, { level: 9 }).length,
                            text: body.toString('utf8'),
                            late,
                        });
                    }),
                );
            }
        });
        await visit.page.goto(program.link);
        const hand = new Hand(visit.page);
        await hand.nominal();
        usable.push(performance.now() - printed);
        painted = true;
        if (i === 2) {
            const first = await visit.page.evaluate(
                () => performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? NaN,
            );
            const before = await visit.page.evaluate(
                paint =>
                    performance
                        .getEntriesByType('resource')
                        .filter(entry => entry.startTime < paint)
                        .map(entry => entry.name),
                first,
            );
            await hand.answered();
            await Promise.all(reading);
            const holds = (url: string, mark: string) =>
                files.some(file => file.url === url && file.text.includes(mark));
            sheet.tell('first paint after the start of loading', ms(first), '');
            sheet.tell(
                'code of the editor asked for before first paint',
                before.some(url => holds(url, 'cm-editor')) ? 'yes' : 'no',
                'no',
            );
            sheet.tell(
                'code of the solid view asked for before first paint',
                before.some(url => holds(url, 'WebGLRenderer')) ? 'yes' : 'no',
                'no',
            );
            sheet.tell(
                'page with editor, gzip',
                kB(files.reduce((sum, file) => sum + file.bytes, 0)),
                '500 kB',
            );
        }
        await visit.close();
        await program.stop();
    }
    sheet.tell(
        'first nominal verdict after the link is printed',
        ms(percentile(usable, 0.5)),
        '1500 ms',
    );
}

/** Five seconds in which nobody does anything. */
async function idle(sheet: Sheet, page: Page): Promise<void> {
    const session = await page.context().newCDPSession(page);
    await session.send('Performance.enable');
    const count = async () => {
        const { metrics } = await session.send('Performance.getMetrics');
        const of = (name: string) => metrics.find(metric => metric.name === name)?.value ?? NaN;
        return { layouts: of('LayoutCount'), styles: of('RecalcStyleCount') };
    };
    const frames = (await page.evaluate(() => inPage.watched())).frames;
    const before = await count();
    await page.waitForTimeout(5000);
    const after = await count();
    const asked = (await page.evaluate(() => inPage.watched())).frames - frames;
    sheet.tell('idle 5 s: frames asked for', String(asked), '0');
    // Reading the counters evaluates a script, which may look at styles once.
    sheet.tell('idle 5 s: layouts', String(after.layouts - before.layouts), '0');
    sheet.tell('idle 5 s: styles computed', String(after.styles - before.styles), '0');
    await session.detach();
}

async function dragging(sheet: Sheet, hand: Hand): Promise<void> {
    const late: number[] = [];
    let missed = 0;
    for (let round = 0; late.length + missed < drags; round++) {
        const grip = await hand.grab(fans[round % fans.length] ?? 'left.1', 'above');
        for (let i = 0; i < 25; i++) {
            const turn = (i * 2.399963) % (2 * Math.PI); // golden angle: never the same place twice
            const next = hand.page.evaluate(() => inPage.nextNominal(3000)).catch(() => null);
            await hand.page.mouse.move(
                grip.x + (18 + i) * Math.cos(turn),
                grip.y + (18 + i) * Math.sin(turn),
            );
            const took = await next;
            if (took === null) {
                missed++;
                break; // it may not have been taken at all: take it again
            } else {
                late.push(took);
            }
        }
        await hand.giveUp();
    }
    sheet.tell(
        `${late.length} drags: pointer to new nominal text, median`,
        ms(percentile(late, 0.5)),
        '',
    );
    sheet.tell('    95th percentile', ms(percentile(late, 0.95)), '100 ms');
    sheet.tell('    longest', ms(Math.max(...late)), '');
    sheet.tell('    without a new text within 3 s', String(missed), '0');
}

const fans = ['left.1', 'right.1', 'left.5', 'right.5'];

async function longTasks(sheet: Sheet, hand: Hand): Promise<void> {
    const before = (await hand.page.evaluate(() => inPage.watched())).longTasksMs.length;
    const grip = await hand.grab('left.1', 'above');
    const end = performance.now() + 10_000;
    for (let i = 0; performance.now() < end; i++) {
        await hand.page.mouse.move(grip.x + 50 * Math.cos(i / 9), grip.y + 50 * Math.sin(i / 7));
        await hand.page.waitForTimeout(8);
    }
    await hand.giveUp();
    const tasks = (await hand.page.evaluate(() => inPage.watched())).longTasksMs.slice(before);
    sheet.tell('10 s of dragging: tasks over 50 ms', String(tasks.length), '0');
    sheet.tell('    longest', tasks.length > 0 ? ms(Math.max(...tasks)) : 'none', '');
}

async function bands(sheet: Sheet, hand: Hand): Promise<void> {
    const took: number[] = [];
    await hand.drag('left.1', 0, 20, 'above');
    await hand.changed();
    for (let i = 0; i < 9; i++) {
        const before = performance.now();
        await hand.press(i % 2 === 0 ? /^Undo/ : /^Redo/);
        await hand.page.waitForTimeout(20); // until the page has greyed what was
        await hand.banded();
        took.push(performance.now() - before);
    }
    sheet.tell(
        'undo to bands of the open question, median of 9',
        ms(percentile(took, 0.5)),
        '500 ms',
    );
}
