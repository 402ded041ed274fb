import type { Page } from 'playwright-core';
import type { Question } from '../../src/core/wire';
import { asked, questions } from '../harness/hand';
import { type Sheet } from './sheet';

/** From the opening of the page to the last line of each answer, s. */
type Ends = Partial<Record<Question, number>>;

/** Flown only where somebody looks. */
const LOOKED_AT: Question = 'flight';

/** Listens to what the page is told, for no rung says when the last of it has come. */
export class Answers {
    private constructor(private readonly page: Page) {}

    /** Opens the page. */
    static async from(page: Page, link: string): Promise<Answers> {
        await page.addInitScript(() => {
            const ends: Record<string, number> = {};
            Object.assign(globalThis, { answersEnded: ends });
            const ask = fetch;
            const listen = async (body: ReadableStream<Uint8Array>): Promise<void> => {
                const read = body.getReader();
                const decoder = new TextDecoder();
                let rest = '';
                for (;;) {
                    const { value, done } = await read.read();
                    if (done) return;
                    const lines = (rest + decoder.decode(value, { stream: true })).split('\n');
                    rest = lines.pop() ?? '';
                    for (const line of lines) {
                        const question = /^\{"stage":"whole","question":"(\w+)"/.exec(line)?.[1];
                        if (question !== undefined) ends[question] ??= performance.now() / 1000;
                    }
                }
            };
            globalThis.fetch = async (...words) => {
                const answer = await ask(...words);
                const url = words[0] instanceof Request ? words[0].url : String(words[0]);
                if (!url.endsWith('/api/ask') || answer.body === null) return answer;
                const [mine, theirs] = answer.body.tee();
                listen(mine).catch(() => undefined); // the page has stopped it
                return new Response(theirs, answer);
            };
        });
        await page.goto(link);
        return new Answers(page);
    }

    /** Tells when each rung was answered to its end, and returns those that were within that time. */
    async told(sheet: Sheet, withinMs: number): Promise<Question[]> {
        const wanted = questions.filter(question => question !== LOOKED_AT);
        const ends = () =>
            this.page.evaluate(
                () => (globalThis as unknown as { answersEnded: Ends }).answersEnded,
            );
        const late = performance.now() + withinMs;
        let now = await ends();
        while (wanted.some(question => now[question] === undefined) && performance.now() < late) {
            await this.page.waitForTimeout(500);
            now = await ends();
        }
        for (const question of wanted) {
            const end = now[question];
            const words = end === undefined ? `not in ${withinMs / 1000} s` : `${end.toFixed(1)} s`;
            sheet.tell(`${asked[question]}: answered to its end`, words, '');
        }
        return wanted.filter(question => now[question] !== undefined);
    }
}
