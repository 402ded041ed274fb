import { signal } from '@preact/signals';
import type { RawSource } from '../core/samples';
import type { Span } from '../core/span';
import { asked, ended, told, unasked, type Rungs } from '../core/verdicts';
import type { AnswerDocument, Stretch, Stretches, TestTold } from '../core/wire';
import type { Where } from './cards';
import type { Server } from './server';
import { nextTurn } from './turn';

/** The test that lies open, what was learned from it, and the one that is laid over it. */
export class Tests {
    readonly open = signal<string | undefined>(undefined);
    /** Of the rungs that of the question why alone: the answer about the open test. */
    readonly rungs = signal<Rungs>(unasked());
    readonly beside = signal<string | undefined>(undefined);
    /** The clock of the other test, read on that of the open one, begins so much later, s. */
    readonly shiftS = signal(0);
    private running: AbortController | undefined;

    constructor(
        private readonly server: Server,
        private readonly where: () => Where | undefined,
        /** The list of tests is another now. */
        private readonly listed: (list: AnswerDocument) => void,
    ) {}

    /** Opens a test, or closes it where it lies open. */
    turn(test: string): void {
        this.stop();
        this.rungs.value = unasked();
        this.compare(undefined);
        this.open.value = this.open.value === test ? undefined : test;
        void this.ask();
    }

    compare(test: string | undefined): void {
        this.beside.value = test;
        this.shiftS.value = 0;
    }

    /** Another rig altogether. */
    forget(): void {
        this.stop();
        this.rungs.value = unasked();
        this.open.value = undefined;
        this.compare(undefined);
    }

    stop(): void {
        const running = this.running;
        this.running = undefined;
        running?.abort();
        const of = this.open.peek();
        if (of !== undefined) this.rungs.value = ended(this.rungs.value, of, true);
    }

    /** A test is never changed, so what was answered about one stays. */
    async ask(): Promise<void> {
        const where = this.where();
        const test = this.open.value;
        if (where === undefined || test === undefined) return;
        this.stop();
        const running = new AbortController();
        this.running = running;
        this.rungs.value = asked(this.rungs.value);
        const { rig, units } = where;
        const end = await this.server.stream(
            '/api/test',
            { rig, units, test, turn: nextTurn() },
            running.signal,
            read => {
                const line = read as TestTold;
                if (this.running !== running) return;
                if ('logbook' in line) this.listed(line.logbook);
                else this.rungs.value = told(this.rungs.value, test, line);
            },
        );
        if (this.running !== running) return;
        this.running = undefined;
        this.rungs.value = ended(this.rungs.value, test, true);
        if (end.kind === 'fault') {
            const refused = end.fault.sentence;
            this.rungs.value = told(this.rungs.value, test, { refused, question: 'learning' });
        }
    }

    /** All samples of a test. */
    samples(test: string): RawSource {
        const rig = this.where()?.rig ?? '';
        return {
            id: `${rig}\n${test}`,
            stretches: (channels, span, pixels) =>
                this.stretches(rig, test, channels, span, pixels),
        };
    }

    private async stretches(
        rig: string,
        test: string,
        channels: readonly string[],
        { from, to }: Span,
        pixels: number,
    ): Promise<readonly Stretch[] | undefined> {
        const body = { rig, test, channels, from, to, pixels };
        const reply = await this.server.call<Stretches>('/api/samples', body);
        return reply.kind === 'done' ? reply.value.channels : undefined;
    }
}
