import { gzipSync } from 'node:zlib';
import { chromium, type Browser } from 'playwright-core';
import { inject, test } from 'vitest';
import type { Question } from '../../src/core/wire';
import { bringChecks } from '../harness/inpage';
import { Folder } from '../harness/folder';
import { Program } from '../harness/program';
import { asked, Hand, nominalTexts } from '../harness/hand';
import { desk, Visit } from '../harness/visit';
import { Answers } from './answers';
import { manyFans } from './many';
import { kB, ms, percentile, Sheet } from './sheet';

/** How much is measured on a rig. */
interface Effort {
    starts: number;
    /** What is not answered by then is told so and stopped: the rest is measured all the same. */
    answeringMs: number;
}

const mudlark: Effort = { starts: 3, answeringMs: 120_000 };
const many: Effort = { starts: 1, answeringMs: 180_000 };
const DRAGS = 500;
const DRAGGING_MS = 10_000;

/** Nobody touches the page for so long on each rung. */
const IDLE_MS = 2000;

test('what the page costs', async () => {
    const browser = await chromium.connect(inject('chromium'));
    try {
        await measured(browser, 'page', Folder.of('mudlark'), mudlark);
        await measured(browser, 'page-96-fans', manyFans(), many);
    } finally {
        await browser.close();
    }
});

async function measured(
    browser: Browser,
    name: string,
    folder: Folder,
    effort: Effort,
): Promise<void> {
    const sheet = new Sheet(name);
    try {
        await start(sheet, folder, browser, effort.starts);
        const program = await Program.open(folder.path);
        const visit = await Visit.of(browser, 'about:blank', { ...desk, height: 900 });
        try {
            const answers = await Answers.from(visit.page, program.link);
            const hand = new Hand(visit.page);
            const answered = await answers.told(sheet, effort.answeringMs);
            await hand.page.keyboard.press('Alt+.'); // stops the rest
            await bringChecks(visit.page);
            await visit.page.evaluate(selector => {
                inPage.startWatching(selector);
            }, nominalTexts);
            await rungs(sheet, hand, answered);
            await hand.open('balance');
            await hand.banded();
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
    }
}

/** Cold server, warm browser: the middle one of the starts is told. */
async function start(
    sheet: Sheet,
    folder: Folder,
    browser: Browser,
    starts: number,
): Promise<void> {
    const usable: number[] = [];
    for (let i = 0; i < starts; i++) {
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
        if (i === starts - 1) {
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
        // A body asked for and not read when the page closes is an error of nobody's.
        await Promise.allSettled(reading);
        await visit.close();
        await program.stop();
    }
    sheet.tell(
        'first nominal verdict after the link is printed',
        ms(percentile(usable, 0.5)),
        '1500 ms',
    );
}

/** Each rung that was answered opened, and some seconds on it in which nobody does anything. */
async function rungs(sheet: Sheet, hand: Hand, answered: readonly Question[]): Promise<void> {
    const session = await hand.page.context().newCDPSession(hand.page);
    await session.send('Performance.enable');
    const count = async () => {
        const { metrics } = await session.send('Performance.getMetrics');
        const of = (name: string) => metrics.find(metric => metric.name === name)?.value ?? NaN;
        return { layouts: of('LayoutCount'), styles: of('RecalcStyleCount') };
    };
    const watched = () => hand.page.evaluate(() => inPage.watched());
    for (const question of answered) {
        await hand.open(question);
        await hand.answered();
    }
    for (const question of answered) {
        const tasks = (await watched()).longTasksMs.length;
        const before = performance.now();
        await hand.open(question);
        await hand.answered();
        sheet.tell(`${asked[question]}: opened and drawn`, ms(performance.now() - before), '');
        const late = (await watched()).longTasksMs.slice(tasks);
        sheet.tell(
            '    its longest task over 50 ms',
            late.length > 0 ? ms(Math.max(...late)) : 'none',
            '',
        );
        await hand.page.waitForTimeout(500);
        const { frames } = await watched();
        const still = await count();
        await hand.page.waitForTimeout(IDLE_MS);
        const after = await count();
        const asks = (await watched()).frames - frames;
        // Reading the counters evaluates a script, which may look at styles once.
        const done = `${asks}, ${after.layouts - still.layouts}, ${after.styles - still.styles}`;
        sheet.tell('    idle 2 s: frames asked for, layouts, styles', done, '0, 0, 0');
    }
    await session.detach();
}

async function dragging(sheet: Sheet, hand: Hand): Promise<void> {
    const late: number[] = [];
    let missed = 0;
    for (let round = 0; late.length + missed < DRAGS; round++) {
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

/** On both rigs no other lies over them, seen from above. */
const fans = ['left.1', 'right.1', 'left.4', 'right.4'];

async function longTasks(sheet: Sheet, hand: Hand): Promise<void> {
    const before = (await hand.page.evaluate(() => inPage.watched())).longTasksMs.length;
    const grip = await hand.grab('left.1', 'above');
    const end = performance.now() + DRAGGING_MS;
    for (let i = 0; performance.now() < end; i++) {
        await hand.page.mouse.move(grip.x + 50 * Math.cos(i / 9), grip.y + 50 * Math.sin(i / 7));
        await hand.page.waitForTimeout(8);
    }
    await hand.giveUp();
    const tasks = (await hand.page.evaluate(() => inPage.watched())).longTasksMs.slice(before);
    sheet.tell(`${DRAGGING_MS / 1000} s of dragging: tasks over 50 ms`, String(tasks.length), '0');
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
