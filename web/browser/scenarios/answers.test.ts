import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { faintTexts } from '../checks/contrast';
import { inBay } from '../harness/bay';
import { Hand } from '../harness/hand';
import { shoot } from '../harness/shots';

test('a verdict is pale, and says so, from the change of the rig until it is answered again', () =>
    inBay('mudlark', async ({ visit: { page } }) => {
        const hand = new Hand(page);
        await hand.answered();
        await holdAnswers(page);
        await hand.menu(/Show the file as outline/);
        const mass = hand.file.getByLabel('mass', { exact: true }).first();
        await mass.fill('80 kg ± 0.4 kg');
        await mass.press('Enter');
        await page.locator('.verdict-line.old').waitFor();
        expect(await hand.sheet.innerText()).toContain('before your last change');
        expect(await faintTexts(page)).toEqual([]);
        await shoot(page, 'pale');
        await releaseAnswers(page);
        await hand.menu('Answer again');
        await hand.answered();
        expect(await page.locator('.old').count()).toBe(0);
    }));

test('units are switched everywhere, and back', () =>
    inBay('mudlark', async ({ visit: { page } }) => {
        const hand = new Hand(page);
        await hand.answered();
        const metric = await hand.sheet.innerText();
        expect(metric).toMatch(/\d\sN\b/);
        expect(metric).not.toContain('lbf');
        await hand.choose('Units', 'us');
        await hand.sheet.getByText('lbf').first().waitFor();
        await hand.answered();
        const customary = await hand.sheet.innerText();
        expect(customary).toContain('lbf');
        expect(customary).not.toMatch(/\d\sN\b/);
        await hand.choose('Units', 'si');
        await page.waitForFunction(
            () => !document.querySelector('main')?.textContent.includes('lbf'),
        );
        await hand.answered();
        expect(await hand.verdict.innerText()).toBe(metric.match(/.*lift over weight.*/)?.[0]);
    }));

test('long work can be stopped, and goes on when asked', () =>
    inBay('mudlark', async ({ visit: { page } }) => {
        const hand = new Hand(page);
        await hand.answered();
        const whole = await hand.verdict.innerText();
        await holdAnswers(page, 'nominal');
        await hand.menu('Answer again');
        await hand.sheet.getByText('being judged').waitFor();
        await hand.press('Stop', hand.sheet);
        await hand.sheet.getByText('Stopped before its end').waitFor();
        expect(await hand.verdict.innerText()).not.toBe(whole);
        await releaseAnswers(page);
        await hand.press('Go on', hand.sheet);
        await hand.answered();
        expect(await hand.verdict.innerText()).toBe(whole);
    }));

test('a page at rest draws nothing', () =>
    inBay('sandpiper', async ({ visit: { page } }) => {
        const hand = new Hand(page);
        await hand.allAnswered();
        const session = await page.context().newCDPSession(page);
        await session.send('Performance.enable');
        const drawn = async () => {
            const { metrics } = await session.send('Performance.getMetrics');
            return metrics
                .filter(({ name }) => ['LayoutCount', 'RecalcStyleCount'].includes(name))
                .map(({ name, value }) => `${name} ${value}`);
        };
        // Heat and failures may still be on their way, for long on a busy machine: it has to come to rest.
        let before: string[] = [];
        let after = await drawn();
        for (let i = 0; i < 36 && before.join() !== after.join(); i++) {
            before = after;
            await page.waitForTimeout(2500);
            after = await drawn();
        }
        expect(after).toEqual(before);
        // The counters count: what is drawn shows in them.
        await hand.open('balance');
        expect(await drawn()).not.toEqual(before);
    }));

/** From now on no answer comes through beyond those of a stage, or none at all, as on a very slow machine. */
function holdAnswers(page: Page, past?: 'nominal'): Promise<void> {
    return page.evaluate(stage => {
        const held = globalThis as unknown as { ask?: typeof fetch };
        const ask = (held.ask ??= fetch);
        globalThis.fetch = async (...words) => {
            const answer = await ask(...words);
            const url = words[0] instanceof Request ? words[0].url : String(words[0]);
            if (!url.endsWith('/api/ask') || answer.body === null) {
                return answer;
            }
            const read = answer.body.pipeThrough(new TextDecoderStream()).getReader();
            let rest = '';
            const some = new ReadableStream<string>({
                async pull(to) {
                    for (;;) {
                        const { value, done } = await read.read();
                        rest += value ?? '';
                        const lines = rest.split('\n');
                        rest = lines.pop() ?? '';
                        const told = lines.filter(
                            line => stage !== undefined && line.includes(`"${stage}"`),
                        );
                        if (told.length > 0) {
                            to.enqueue(told.map(line => `${line}\n`).join(''));
                            return;
                        }
                        if (done) {
                            return new Promise<void>(() => undefined);
                        }
                    }
                },
                cancel: () => read.cancel(),
            });
            return new Response(some.pipeThrough(new TextEncoderStream()), answer);
        };
    }, past);
}

/** Answers come through again; those that were held are asked for anew. */
async function releaseAnswers(page: Page): Promise<void> {
    await page.evaluate(() => {
        const { ask } = globalThis as unknown as { ask?: typeof fetch };
        globalThis.fetch = ask ?? fetch;
    });
}
