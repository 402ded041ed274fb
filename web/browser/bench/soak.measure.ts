import { chromium, type CDPSession } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import { Folder } from '../harness/folder';
import { asked, Hand, questions } from '../harness/hand';
import { Program } from '../harness/program';
import { shoot } from '../harness/shots';
import { desk, Visit } from '../harness/visit';
import { kB, percentile, Sheet } from './sheet';

const minutes = Number(process.env['SOAK_MINUTES'] ?? '30');
const seed = Number(process.env['SOAK_SEED'] ?? '1');

/**
 * Edits without end: a fan dragged, a line typed, a change taken back and done again, the file changed by
 * another program, a rung opened, all in an order drawn by the seed. After each save the file must be
 * what the edits so far make of it; at the end the memory of page and program is compared with the start.
 */
test(
    'half an hour of edits',
    async () => {
        const browser = await chromium.connect(inject('chromium'));
        const folder = Folder.of('mudlark');
        const program = await Program.open(folder.path);
        const sheet = new Sheet('soak');
        let edits: Edits | undefined;
        let memory: Memory | undefined;
        try {
            const visit = await Visit.of(browser, program.link, { ...desk, height: 900 });
            visit.page.setDefaultTimeout(60_000); // a machine may have other work
            visit.forgive(/409/); // what was on its way when the file changed is refused and asked anew
            edits = new Edits(new Hand(visit.page), folder);
            const session = await visit.context.newCDPSession(visit.page);
            memory = new Memory(session, program);
            await edits.begin();
            const end = performance.now() + minutes * 60_000;
            const pause = (minutes * 60_000) / 30;
            let next = performance.now() + 2 * pause; // caches and compiled code are no leak
            while (performance.now() < end) {
                await edits.one().catch(async (fault: unknown) => {
                    await shoot(visit.page, 'soak-failed');
                    throw fault;
                });
                if (performance.now() > next) {
                    await edits.rest();
                    await memory.look();
                    next = performance.now() + pause;
                }
            }
            sheet.tell('complaints of the page', String(visit.complaints.length), '0');
            expect(visit.complaints).toEqual([]);
            await visit.close();
        } finally {
            edits?.tell(sheet);
            memory?.tell(sheet);
            sheet.print();
            await program.stop();
            folder.remove();
            await browser.close();
        }
    },
    (minutes + 10) * 60_000,
);

/** A row of numbers in [0, 1) that a seed fixes (Park and Miller 1988, multiplier 48271). */
class Dice {
    constructor(private state: number) {}

    roll(): number {
        this.state = (this.state * 48271) % 2147483647;
        return this.state / 2147483647;
    }

    of<T>(all: readonly T[]): T {
        return all[Math.floor(this.roll() * all.length)] as T;
    }
}

// Those farthest out, which no other covers from above.
const fans = ['left.1', 'right.2', 'left.3', 'right.1', 'left.2', 'right.3'];

class Edits {
    private readonly dice = new Dice(seed);
    private readonly counts = new Map<string, number>();
    /** What the file must hold. */
    private text: string;
    private number = 0;
    private readonly kinds: (readonly [string, () => Promise<void>])[] = [
        ['lines typed', () => this.typed()],
        ['fans dragged', () => this.dragged()],
        ['drags taken back and done again', () => this.takenBack()],
        ['changes by another program', () => this.outside()],
        ['rungs opened', () => this.opened()],
    ];
    private saves = 0;
    /** Pairs of fans that stand away from their place, by how far on the screen, outwards and down. */
    private readonly away = new Map<string, { x: number; y: number }>();

    constructor(
        private readonly hand: Hand,
        private readonly folder: Folder,
    ) {
        this.text = folder.read('rig.yaml');
    }

    async begin(): Promise<void> {
        await this.hand.allAnswered();
    }

    async one(): Promise<void> {
        const [words, edit] = this.dice.of(this.kinds);
        this.counts.set(words, (this.counts.get(words) ?? 0) + 1);
        await edit();
    }

    /** The balance is open and answered: the same state whenever memory is looked at. */
    async rest(): Promise<void> {
        await this.hand.open('balance');
        await this.hand.answered();
    }

    private async saved(): Promise<string> {
        await this.hand.save();
        this.saves++;
        return this.folder.read('rig.yaml');
    }

    private async typed(): Promise<void> {
        const line = `# edit ${++this.number}`;
        await this.hand.typeAtEnd(`${line}\n`);
        await this.hand.page.getByText('not saved to the file yet').waitFor();
        this.text += `${line}\n`;
        expect(await this.saved()).toBe(this.text);
    }

    private async dragged(): Promise<void> {
        await this.drag();
        const now = await this.saved();
        this.moved(now);
        this.text = now;
    }

    private async takenBack(): Promise<void> {
        await this.drag();
        const moved = await this.saved();
        this.moved(moved);
        await this.hand.press(/^Undo/);
        await this.hand.changed();
        expect(await this.saved(), 'taken back').toBe(this.text);
        await this.hand.press(/^Redo/);
        await this.hand.changed();
        expect(await this.saved(), 'done again').toBe(moved);
        this.text = moved;
    }

    /** Another program writes while nothing is unsaved; the page must not write over it later. */
    private async outside(): Promise<void> {
        const warm = 5 + Math.floor(this.dice.roll() * 20);
        const now = this.text.replace(
            /temperature: [\d.]+ °C/,
            `temperature: ${warm}.${++this.number} °C`,
        );
        this.folder.write('rig.yaml', now);
        await this.hand.page.waitForTimeout(1500);
        this.text = now;
        await this.typed();
    }

    private async opened(): Promise<void> {
        const question = this.dice.of(questions);
        await this.hand.open(question);
        if (question !== 'learning') {
            await this.hand.nominal();
        }
    }

    private async drag(): Promise<void> {
        if (!(await this.hand.sheet.getByRole('heading', { name: asked.balance }).isVisible())) {
            await this.hand.open('balance');
        }
        await this.hand.banded();
        // Above: forward and aside, and next time back, so that in half an hour nothing lies under others.
        const part = this.dice.of(fans);
        const [side = '', number = ''] = part.split('.');
        const aside = side === 'right' ? 1 : -1;
        const far = () => 8 + 10 * this.dice.roll();
        const out = this.away.get(number);
        const to = out === undefined ? { x: far() / 2, y: -far() } : { x: -out.x, y: -out.y };
        await this.hand.drag(part, aside * to.x, to.y, 'above');
        if (out === undefined) {
            this.away.set(number, to);
        } else {
            this.away.delete(number);
        }
        await this.hand.changed();
    }

    /** Some lines are others now, none is more or less, and each typed line still stands there. */
    private moved(now: string): void {
        const was = this.text.split('\n');
        const is = now.split('\n');
        expect(is.length).toBe(was.length);
        const others = is.filter((line, i) => line !== was[i]);
        expect(others.length, 'a drag changes the file').toBeGreaterThan(0);
        expect(others.length, 'and no more than one part and its twin').toBeLessThanOrEqual(2);
    }

    tell(sheet: Sheet): void {
        for (const [words] of this.kinds) {
            sheet.tell(words, String(this.counts.get(words) ?? 0), '');
        }
        // One lost would have ended this run.
        sheet.tell(
            'saves, each compared with what the edits make of the file',
            String(this.saves),
            '',
        );
    }
}

interface Look {
    page: number;
    nodes: number;
    listeners: number;
    program: number;
}

class Memory {
    private readonly looks: Look[] = [];

    constructor(
        private readonly session: CDPSession,
        private readonly program: Program,
    ) {}

    async look(): Promise<void> {
        await this.session.send('Performance.enable');
        await this.session.send('HeapProfiler.collectGarbage');
        const { metrics } = await this.session.send('Performance.getMetrics');
        const of = (name: string) => metrics.find(metric => metric.name === name)?.value ?? NaN;
        this.looks.push({
            page: of('JSHeapUsedSize'),
            nodes: of('Nodes'),
            listeners: of('JSEventListeners'),
            program: await this.program.heapBytes(),
        });
    }

    tell(sheet: Sheet): void {
        const third = Math.max(1, Math.floor(this.looks.length / 3));
        const middle = (looks: Look[], of: (look: Look) => number) =>
            percentile(looks.map(of), 0.5);
        const row = (what: string, of: (look: Look) => number, shown: (n: number) => string) => {
            const first = middle(this.looks.slice(0, third), of);
            const last = middle(this.looks.slice(-third), of);
            const grown = (100 * (last - first)) / first;
            sheet.tell(
                `${what}, median of the first and the last third of ${this.looks.length} looks`,
                `${shown(first)} → ${shown(last)} (${grown.toFixed(1)} %)`,
                '+10 %',
            );
        };
        row('memory of the page', look => look.page, kB);
        row('its elements', look => look.nodes, String);
        row('its listeners', look => look.listeners, String);
        row('memory of the program', look => look.program, kB);
    }
}
